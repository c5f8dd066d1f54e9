// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_prior.h"

#include <boost/math/distributions/normal.hpp>

#include <array>
#include <cmath>

namespace coneline::stats {

namespace {

// With m, s and t put together these are the weak priors of still_expected.h: the share as good as
// even, steepness that of shape 4 with a factor of e, spread around 0.05.
constexpr WeakBelief weak_share{0, 1.5, 0.8};
constexpr WeakBelief weak_steepness{0.6, 0.9, 0.45};
constexpr WeakBelief weak_spread{-2.8, 0.9, 0.45};

WeakBelief weak_half(double usual_day) {
  return {std::log(usual_day), 1.1, 0.5};
}

std::vector<Belief> of_all(std::span<const EarlierCross> earlier,
                           std::optional<Belief> EarlierCross::*value) {
  std::vector<Belief> seen;
  for (const auto& cross : earlier)
    if (const auto& belief = cross.*value)
      seen.push_back(*belief);
  return seen;
}

/// Given tau, how likely what was seen is, and mean and variance of a further theta.
struct GivenScatter {
  double log_weight = 0;
  double mean = 0;
  double variance = 0;
};

GivenScatter given_scatter(std::span<const Belief> seen, const WeakBelief& weak, double tau) {
  double precision = 1 / (weak.spread * weak.spread);
  double sum = weak.middle * precision;
  double squares = weak.middle * weak.middle * precision;
  double log_weight = std::log(precision) / 2 - tau * tau / (2 * weak.scatter * weak.scatter);
  for (const auto& cross : seen) {
    const double here = 1 / (cross.spread * cross.spread + tau * tau);
    precision += here;
    sum += cross.middle * here;
    squares += cross.middle * cross.middle * here;
    log_weight += std::log(here) / 2;
  }
  const double mean = sum / precision;
  log_weight += -std::log(precision) / 2 - (squares - mean * sum) / 2;
  return {log_weight, mean, 1 / precision + tau * tau};
}

} // namespace

Belief WeakBelief::alone() const {
  return {middle, std::sqrt(spread * spread + scatter * scatter)};
}

Belief belief_of_next(std::span<const Belief> seen, const WeakBelief& weak) {
  constexpr std::size_t steps = 200;
  constexpr double widest = 5; // half-normal spreads: what lies beyond does not count
  std::array<GivenScatter, steps> all;
  double highest = -HUGE_VAL;
  for (std::size_t i = 0; i < steps; ++i) {
    const double tau = weak.scatter * widest * (static_cast<double>(i) + 0.5) / steps;
    all[i] = given_scatter(seen, weak, tau);
    highest = std::max(highest, all[i].log_weight);
  }
  double total = 0;
  double mean = 0;
  double square = 0;
  for (const auto& given : all) {
    const double weight = std::exp(given.log_weight - highest);
    total += weight;
    mean += weight * given.mean;
    square += weight * (given.variance + given.mean * given.mean);
  }
  mean /= total;
  return {mean, std::sqrt(square / total - mean * mean)};
}

std::optional<Belief> without_prior(const Belief& both, const Belief& prior) {
  constexpr double least_narrowing = 0.95;
  if (!(both.spread < least_narrowing * prior.spread))
    return std::nullopt;
  const double precision_of_both = 1 / (both.spread * both.spread);
  const double precision_of_prior = 1 / (prior.spread * prior.spread);
  const double precision = precision_of_both - precision_of_prior;
  return Belief{(both.middle * precision_of_both - prior.middle * precision_of_prior) / precision,
                1 / std::sqrt(precision)};
}

GerminationPrior weak_prior(double usual_day) {
  return {weak_share.alone(), weak_half(usual_day).alone(), weak_steepness.alone(),
          weak_spread.alone(), 0};
}

GerminationPrior prior_from(std::span<const EarlierCross> earlier, double usual_day) {
  return {belief_of_next(of_all(earlier, &EarlierCross::share), weak_share),
          belief_of_next(of_all(earlier, &EarlierCross::half), weak_half(usual_day)),
          belief_of_next(of_all(earlier, &EarlierCross::steepness), weak_steepness),
          belief_of_next(of_all(earlier, &EarlierCross::spread), weak_spread), earlier.size()};
}

namespace {
template <class Scale>
BeliefRange read_back(const Belief& belief, double confidence, Scale scale) {
  const double z = quantile(boost::math::normal(), (1 + confidence) / 2);
  return {scale(belief.middle), scale(belief.middle - z * belief.spread),
          scale(belief.middle + z * belief.spread)};
}
} // namespace

BeliefRange share_range(const Belief& share, double confidence) {
  return read_back(share, confidence, [](double logit) { return 1 / (1 + std::exp(-logit)); });
}

BeliefRange exponential_range(const Belief& ln, double confidence) {
  return read_back(ln, confidence, [](double value) { return std::exp(value); });
}

BeliefRange rho_range(const Belief& spread, double confidence) {
  return read_back(spread, confidence,
                   [](double shifted) { return std::max(0.0, std::exp(shifted) - 0.01); });
}

} // namespace coneline::stats
