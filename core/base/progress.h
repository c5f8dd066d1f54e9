// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How far long work has come, and whether it goes on.

#include "core/base/fault.h"

#include <cstddef>
#include <functional>

namespace coneline {

/// Asked now and then with how much is done, of how much; false stops the work. The share never
/// falls. Where it is empty, nobody wants to know.
using Progress = std::function<bool(std::size_t done, std::size_t of)>;

/// Passes on how far work of several parts has come as a whole, and remembers that it was stopped.
/// Outlives the parts that it gave.
class ProgressOfParts {
 public:
  explicit ProgressOfParts(const Progress& whole) : whole_(whole) {}
  ProgressOfParts(const ProgressOfParts&) = delete;
  ProgressOfParts& operator=(const ProgressOfParts&) = delete;

  /// What one part is to ask, which goes from one share of the whole to another.
  [[nodiscard]] Progress part(double from, double to);
  [[nodiscard]] bool stopped() const { return stopped_; }

 private:
  const Progress& whole_;
  bool stopped_ = false;
};

/// What is said where taking something into a book was stopped, and where copying, moving or
/// putting back a book was.
Fault stopped_taking_in();
Fault stopped_copying();

} // namespace coneline
