// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How many rows are done, asked for every thousandth. Private to this room.

#include "core/base/progress.h"

namespace coneline::exchange {

class RowsDone {
 public:
  RowsDone(const Progress& progress, std::size_t of) : progress_(progress), of_(of) {}

  /// Before each row, or some that belong together. False once it was stopped.
  bool go_on(std::size_t rows = 1) {
    constexpr std::size_t between = 1000;
    const auto before = done_;
    done_ += rows;
    if (progress_ && !stopped_ && done_ / between != before / between)
      stopped_ = !progress_(done_, of_);
    return !stopped_;
  }
  /// After the last row, whatever was counted.
  void end() {
    if (progress_ && !stopped_)
      stopped_ = !progress_(of_, of_);
  }

 private:
  const Progress& progress_;
  std::size_t of_;
  std::size_t done_ = 0;
  bool stopped_ = false;
};

} // namespace coneline::exchange
