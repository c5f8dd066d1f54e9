// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/progress.h"

#include <algorithm>

namespace coneline {

Progress ProgressOfParts::part(double from, double to) {
  if (!whole_)
    return {};
  return [this, from, to](std::size_t done, std::size_t of) {
    constexpr std::size_t whole = 1000;
    const double share =
        of == 0 ? 1 : std::min(1.0, static_cast<double>(done) / static_cast<double>(of));
    const auto there = (from + (to - from) * share) * static_cast<double>(whole);
    stopped_ = stopped_ || !whole_(static_cast<std::size_t>(there), whole);
    return !stopped_;
  };
}

Fault stopped_taking_in() {
  return fault("stopped: nothing came into the book", "Begin again when there is time.");
}

Fault stopped_copying() {
  return fault("stopped: the book is as it was", "Begin again when there is time.");
}

} // namespace coneline
