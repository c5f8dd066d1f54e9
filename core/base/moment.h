// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A moment by the clock of the place, without zone, written 2026-03-09T14:05:00.

#include "core/base/date.h"

namespace coneline {

struct Moment {
  Date date;
  int second = 0; ///< of the day, 0 to 86399

  /// Reads exactly YYYY-MM-DDTHH:MM:SS.
  static Result<Moment> parse(std::string_view text);
  [[nodiscard]] std::string iso() const;
  /// Hours since 1970-01-01 00:00 by the same clock.
  [[nodiscard]] double hours() const { return 24.0 * date.days() + second / 3600.0; }

  auto operator<=>(const Moment&) const = default;
};

} // namespace coneline
