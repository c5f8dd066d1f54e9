// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Root and first leaf are two events, weeks apart. Each has its figures; between them lies a wait
// that for some roots has not ended yet.
//
// Which root a leaf belongs to is not written down: the earliest root without a leaf is taken to be
// the next to leaf. A root without a leaf has waited until the last look; roots that died since are
// among them, so the wait is told too long rather than too short. Looks count as exact to the day.

#include "core/stats/germination_figures.h"
#include "core/stats/kaplan_meier.h"
#include "core/work/germination.h"

namespace coneline::work {

/// From root to leaf, days.
struct LeafWait {
  std::size_t roots = 0;            ///< seen before a leaf
  std::size_t leafed = 0;           ///< of those
  std::size_t straight_to_leaf = 0; ///< leaf and root first seen at one look: no wait known
  std::optional<double> half;       ///< days by which half of the roots have their leaf
  stats::TimeRange half_range;
  std::optional<double> nine_tenths;
  std::vector<stats::Wait> waits;
};

struct RootAndLeaf {
  std::string name;
  std::string taxon;
  std::size_t trays = 0;
  stats::GroupFigures root;
  stats::GroupFigures leaf;
  stats::GerminationMeasures root_measures; ///< of all trays as one
  stats::GerminationMeasures leaf_measures;
  LeafWait wait;
};

/// Do the waits of two crosses, by their places, differ?
struct WaitComparison {
  std::size_t a = 0;
  std::size_t b = 0;
  std::optional<stats::LogRank> test;
  std::optional<double> p_adjusted; ///< Holm, over all pairs with a test
};

struct RootAndLeafBook {
  Date as_of;
  double confidence = 0.95;
  std::vector<RootAndLeaf> crosses; ///< in the order of their names
  std::vector<WaitComparison> comparisons;
};

LeafWait leaf_wait(std::span<const ObservedTray* const> trays, double confidence);

/// Fails on a confidence outside 0 to 1.
Result<RootAndLeafBook> root_and_leaf(store::Reading& reading, Date as_of, double confidence);

} // namespace coneline::work
