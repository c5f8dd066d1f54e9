// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Weighted points that stand for a distribution in four dimensions of which only the density is
// known, up to a factor: adaptive multiple importance sampling (Cornuet, Marin, Mira & Robert 2012,
// Scandinavian J. Statistics 39:798-812). Points are laid out evenly, not at random, so the same
// density always gives the same points.

#include <Eigen/Dense>

#include <functional>
#include <span>
#include <vector>

namespace coneline::stats {

using Point = Eigen::Vector4d;

/// Where points are looked for: a bell with somewhat heavier tails than the normal one.
struct Proposal {
  Point middle;
  Eigen::Matrix4d covariance;
};

/// The density at a point (minus infinity where it is 0), and what the caller wants to know there:
/// a number of which mean and variance are known, and a share.
struct Weighed {
  double log_density = 0;
  double mean = 0;
  double variance = 0;
  double share = 0;
};

struct SamplePoint {
  Point at;
  Weighed found;
  double weight = 0; ///< sums to 1 over the sample
};

struct Sample {
  std::vector<SamplePoint> points; ///< those of weight above 0
  double log_evidence = 0;         ///< logarithm of the integral of the density
  double effective_size = 0;       ///< 1 / sum of squared weights
};

/// Begins with `proposals` and then makes its own from what it found. `points` is how many are
/// tried in all, about.
Sample adaptive_sample(const std::function<Weighed(const Point&)>& density,
                       std::span<const Proposal> proposals, std::size_t points);

} // namespace coneline::stats
