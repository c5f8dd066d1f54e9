// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A day that is known to be one.

#include "core/base/date.h"

#include <string_view>

namespace coneline::tests {

/// "2026-11-01"; throws where that is no day.
inline Date day(std::string_view iso) {
  return Date::parse(iso).value();
}

} // namespace coneline::tests
