// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Everything that is worked out from germination counts, for trays of a file and of a book alike.

#include "core/stats/beta_binomial.h"
#include "core/stats/curve_fit.h"
#include "core/stats/germination_compare.h"
#include "core/stats/germination_data.h"
#include "core/stats/germination_measures.h"
#include "core/stats/share_interval.h"
#include "core/stats/share_posterior.h"
#include "core/stats/still_expected.h"
#include "core/stats/turnbull.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace coneline::stats {

/// A share of the seed sown with its range. No values where nothing was sown.
struct FinalShare {
  std::optional<double> share;
  std::optional<Interval> range;
  std::string method; ///< how the range was worked out
};

/// Of a cross that its trays are samples of: the range counts the spread between trays, also where
/// there is one tray alone and nothing is known of it but the prior. `dilution` as in
/// share_posterior.h.
FinalShare share_of_cross(const GroupShare& share, double confidence, double dilution = 1);

struct TrayFigures {
  std::size_t tray = 0; ///< place in the trays given
  FinalShare final;
  GerminationMeasures measures;
};

struct GroupFigures {
  TrayGroup group;
  std::int64_t sown = 0;
  std::int64_t germinated = 0;
  std::int64_t removed = 0;
  FinalShare final; ///< see share_of_cross
  std::optional<Spread> spread;
  std::optional<CurveFit> curve;
  Stepwise stepwise;
  StillExpected still_expected;
  std::vector<std::string> told; ///< what lies at an edge, see germination_boundary.h
};

/// Two groups by their places. Without values where one of them has nothing sown; without a curve
/// test where one has no curve.
struct GroupComparison {
  std::size_t a = 0;
  std::size_t b = 0;
  std::optional<Difference> difference;
  std::optional<double> p_adjusted; ///< Holm, over all pairs that have a difference
  std::optional<double> curve_p_value;
};

struct GerminationFigures {
  std::vector<TrayFigures> trays;           ///< in the order given
  std::vector<GroupFigures> groups;         ///< in the order of their first tray
  std::vector<GroupComparison> comparisons; ///< every pair, the earlier group as a
};

struct GerminationOptions {
  std::optional<Family> family; ///< none: the best of all, by AIC
  double confidence = 0.95;     ///< between 0 and 1
};

/// The figures of sound trays (see faults_of). Fails on a confidence outside 0 to 1.
Result<GerminationFigures> germination_figures(std::span<const Tray> trays,
                                               const GerminationOptions& options);

} // namespace coneline::stats
