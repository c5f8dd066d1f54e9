// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// All curves and spreads that fit the counts of a cross, each weighted by how well it fits and by
// the prior; the model is that of still_expected.h. Families of curve are weighed against each
// other by the same likelihood, since the prior describes them by values that mean the same in
// each.

#include "core/stats/curve.h"
#include "core/stats/germination_data.h"
#include "core/stats/germination_prior.h"

#include <span>
#include <vector>

namespace coneline::stats {

struct PosteriorPoint {
  Curve curve;
  double rho = 0;
  double weight = 0; ///< sums to 1
};

struct GerminationPosterior {
  std::vector<PosteriorPoint> points; ///< some thousand
  /// Mean and standard deviation of the four values of germination_prior.h.
  Belief share;
  Belief half;
  Belief steepness;
  Belief spread;

  /// So many points of equal weight that stand for all.
  [[nodiscard]] std::vector<PosteriorPoint> thinned(std::size_t points) const;
};

/// From the trays of one cross; trays that hold no seed do not matter. Same counts, same answer.
GerminationPosterior germination_posterior(std::span<const Tray> trays,
                                           const GerminationPrior& prior);

/// What the counts of a cross say without the prior, as `prior_from` takes it; `weak` is the prior
/// that `posterior` was made with.
EarlierCross as_earlier_cross(const GerminationPosterior& posterior, const GerminationPrior& weak);

} // namespace coneline::stats
