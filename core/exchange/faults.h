// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Every fault found in a folder, not only the first.

#include "core/base/fault.h"

#include <vector>

namespace coneline::exchange {

class Faults {
 public:
  void add(Fault fault) {
    // A file of another kind has a fault in every row; nobody reads so many.
    constexpr std::size_t most_listed = 10'000;
    if (listed_.size() < most_listed)
      listed_.push_back(std::move(fault));
    else
      ++unlisted_;
  }
  [[nodiscard]] bool none() const { return listed_.empty(); }
  [[nodiscard]] const std::vector<Fault>& listed() const { return listed_; }
  [[nodiscard]] std::size_t unlisted() const { return unlisted_; } ///< found beyond those listed

 private:
  std::vector<Fault> listed_;
  std::size_t unlisted_ = 0;
};

/// A value as a message shows it: long ones cut, so that a message stays one.
std::string shortened(std::string_view value);

} // namespace coneline::exchange
