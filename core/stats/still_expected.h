// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/stats/curve.h"
#include "core/stats/germination_data.h"

#include <cstdint>
#include <optional>
#include <span>

namespace coneline::stats {

struct StillExpected {
  std::int64_t median = 0;
  std::int64_t low = 0;
  std::int64_t high = 0;
};

} // namespace coneline::stats
