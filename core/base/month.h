// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A month where programs read it.

#include "core/base/date.h"

#include <string>

namespace coneline {

/// "2027-05" (ISO 8601), the month a day is in.
inline std::string iso_month(Date day) {
  return day.iso().substr(0, 7);
}

} // namespace coneline
