// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the grower's own seed says about the float test: of what sank and of what floated, how many
// were filled when cut open, and how many came up later. A seed that came up was filled; one that
// did not may have been.
//
// The model: a share s of what sinks and a share f of what floats is filled; a filled seed comes up
// in the end with probability v. So an opened seed is filled with probability s or f, and a sown
// one comes up with probability s v or f v. Seed still waiting in a tray says nothing against it:
// only what came up and what was taken out or given up counts as tried. Seasons of one taxon
// differ, so each season's counts are beta-binomial with one spread rho around s, f, s v and f v.
//
// Any s, f and v is as likely as another beforehand, and rho is exponential with the mean of
// share_posterior.h: a prior that a dozen seeds overrule. The answer averages over all four.

#include "core/stats/share_interval.h"

#include <cstdint>
#include <span>

namespace coneline::stats {

/// Seed of one part of one season that was opened or sown.
struct PartRecord {
  std::int64_t opened = 0;
  std::int64_t opened_filled = 0;
  std::int64_t tried = 0; ///< sown, less what still waits in trays
  std::int64_t came_up = 0;
};

struct SeasonRecord {
  PartRecord sank;
  PartRecord floated;
};

/// A share as the middle and the range of what is possible.
struct LearnedShare {
  double middle = 0.5;
  Interval range;
};

struct FloatLearned {
  LearnedShare sank_filled;
  LearnedShare floated_filled;
  LearnedShare filled_comes_up;
};

/// `confidence` lies between 0 and 1; (1 - confidence)/2 lie on each side of a range. Counts within
/// a record are sound: 0 <= opened_filled <= opened, 0 <= came_up <= tried.
FloatLearned learn_float(std::span<const SeasonRecord> seasons, double confidence);

enum class FloatVerdict { not_known, trusted, not_trusted };

/// Up to this share of floaters may be filled where the test is trusted (common practice: a tenth;
/// no source).
constexpr double most_filled_floaters = 0.10;

/// Trusted where the whole range of filled floaters lies at or below `most_filled_floaters`, not
/// trusted where all of it lies above.
FloatVerdict verdict(const FloatLearned& learned);

} // namespace coneline::stats
