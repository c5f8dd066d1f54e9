// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How many seeds to sow for so many plants, when only a share survives each stage.
//
//   100 plants through one stage of 0.6  ->  167 expected, 185 for 95 % assurance
//
// Losses multiply; the expected number is rounded up once, at the end.

#include "core/base/fault.h"

#include <cstdint>
#include <span>

namespace coneline::stats {

struct Sowing {
  std::int64_t expected = 0; ///< plants / product of the shares, rounded up
  std::int64_t assured = 0;  ///< smallest n with P(Binomial(n, product) >= plants) >= assurance
};

/// Both numbers, exactly for the shares and the assurance as they were written. Seeds fare
/// independently here; a bad cone is bad in all its seeds, which the forecast counts in.
/// Fails unless plants >= 1, each share is above 0 and at most 1, there is one, 0 < assurance < 1,
/// and the expected number is at most 10^12.
Result<Sowing> seeds_to_sow(std::int64_t plants, std::span<const double> shares, double assurance);

} // namespace coneline::stats
