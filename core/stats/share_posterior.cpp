// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/share_posterior.h"

#include <boost/math/distributions/normal.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>

namespace coneline::stats {

namespace {

constexpr double right_angle = std::numbers::pi / 2;
constexpr std::size_t number_of_nodes = 16;

/// 0, and from 0.002 to 0.8 in equal steps of the logarithm. Each stands for what lies between the
/// middles to its neighbours, of an exponential distribution of this mean.
std::array<RhoNode, number_of_nodes> made_nodes(double mean) {
  constexpr double lowest = 0.002;
  constexpr double highest = 0.8;
  std::array<RhoNode, number_of_nodes> nodes{};
  for (std::size_t i = 1; i < nodes.size(); ++i)
    nodes[i].rho =
        lowest * std::pow(highest / lowest, static_cast<double>(i - 1) / (number_of_nodes - 2));
  const auto below = [mean](double rho) { return 1 - std::exp(-rho / mean); };
  double from = 0;
  for (std::size_t i = 0; i < nodes.size(); ++i) {
    const double to =
        i + 1 < nodes.size() ? below((nodes[i].rho + nodes[i + 1].rho) / 2) : below(1);
    nodes[i].weight = (to - from) / below(1);
    from = to;
  }
  return nodes;
}

/// Log-likelihood at evenly spaced angles; Jeffreys' prior is even in the angle.
std::vector<double> log_density(const Outcomes& outcomes, double rho,
                                const std::vector<double>& angles) {
  std::vector<double> values;
  for (const double angle : angles) {
    const double root = std::sin(angle);
    values.push_back(outcomes.log_likelihood(root * root, rho));
  }
  return values;
}

std::vector<double> evenly(double from, double to, std::size_t points) {
  std::vector<double> angles;
  for (std::size_t i = 0; i < points; ++i)
    angles.push_back(from + (to - from) * static_cast<double>(i) / static_cast<double>(points - 1));
  return angles;
}

/// Angles that hold the likelihood at this rho: the spread of the angle is known beforehand.
struct Reach {
  double from = 0;
  double to = right_angle;
};

Reach reach(double share, double trials, double usual_size, double rho) {
  constexpr double spreads = 8;
  const double spread = std::sqrt((1 + (usual_size - 1) * rho) / trials) / 2;
  // Near 0 and 1 the likelihood is no bell around the share seen; one seed more or less is allowed.
  const double low = std::asin(std::sqrt(std::max(0.0, share - 1 / trials)));
  const double high = std::asin(std::sqrt(std::min(1.0, share + 1 / trials)));
  return {std::max(0.0, low - spreads * spread), std::min(right_angle, high + spreads * spread)};
}

double sum_of(const std::vector<double>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0);
}

std::vector<double> exponentials(std::vector<double> logs, double highest) {
  for (auto& value : logs)
    value = std::exp(value - highest);
  return logs;
}

} // namespace

std::span<const RhoNode> rho_nodes() {
  static const auto nodes = made_nodes(mean_rho);
  return nodes;
}

ShareDistribution::ShareDistribution(std::vector<double> angles, const std::vector<double>& density)
    : angles_(std::move(angles)), z_(angles_.size()) {
  const auto points = angles_.size();
  std::vector<double> below(points, 0);
  std::vector<double> above(points, 0);
  for (std::size_t i = 1; i < points; ++i)
    below[i] = below[i - 1] + density[i - 1] + density[i];
  for (std::size_t i = points - 1; i-- > 0;)
    above[i] = above[i + 1] + density[i] + density[i + 1];
  constexpr double far = 38;
  const boost::math::normal normal;
  for (std::size_t i = 0; i < points; ++i) {
    const bool low = below[i] < above[i];
    const double tail = (low ? below[i] : above[i]) / (below[i] + above[i]);
    const double z = tail > 1e-300 ? std::max(-far, quantile(normal, tail)) : -far;
    z_[i] = low ? z : -z;
  }
  // Where the angles begin or end short of all there is, the tail goes on as it went.
  if (angles_.front() > 0)
    z_.front() = std::max(-far, 2 * z_[1] - z_[2]);
  if (angles_.back() < right_angle)
    z_.back() = std::min(far, 2 * z_[points - 2] - z_[points - 3]);
}

double ShareDistribution::quantile_at(double z) const {
  const auto found = std::ranges::upper_bound(z_, z) - z_.begin();
  const auto i = std::clamp<std::ptrdiff_t>(found, 1, std::ssize(z_) - 1);
  const auto at = [&](const std::vector<double>& values, std::ptrdiff_t place) {
    return values[static_cast<std::size_t>(place)];
  };
  const double width = at(z_, i) - at(z_, i - 1);
  const double part = width > 0 ? (z - at(z_, i - 1)) / width : 0;
  const double angle = at(angles_, i - 1) + part * (at(angles_, i) - at(angles_, i - 1));
  const double root = std::sin(std::clamp(angle, 0.0, right_angle));
  return root * root;
}

GroupShare::GroupShare(std::span<const Outcome> outcomes) {
  std::vector<Outcome> held;
  std::ranges::copy_if(outcomes, std::back_inserter(held),
                       [](const Outcome& o) { return o.trials > 0; });
  const Outcomes all(held);
  trays_ = all.trays();
  seeds_ = all.trials();
  share_ = all.successes() / seeds_;
  double squares = 0;
  for (const auto& outcome : held)
    squares += static_cast<double>(outcome.trials) * static_cast<double>(outcome.trials);
  const double usual_size = squares / all.trials();
  constexpr std::size_t coarse = 24;
  constexpr std::size_t fine = 96;
  for (const auto& node : rho_nodes()) {
    const auto range = reach(share_, all.trials(), usual_size, node.rho);
    const auto logs = log_density(all, node.rho, evenly(range.from, range.to, coarse));
    const double highest = *std::ranges::max_element(logs);
    evidence_.push_back(highest +
                        std::log(sum_of(exponentials(logs, highest)) * (range.to - range.from)));
  }
  const double best = *std::ranges::max_element(evidence_);
  double widest = 0;
  for (std::size_t i = 0; i < evidence_.size(); ++i)
    if (evidence_[i] > best - 23) // e^-23 is 1e-10
      widest = rho_nodes()[i].rho;
  const auto range = reach(share_, all.trials(), usual_size, widest);
  angles_ = evenly(range.from, range.to, fine);
  for (const auto& node : rho_nodes()) {
    const auto logs = log_density(all, node.rho, angles_);
    auto density = exponentials(logs, *std::ranges::max_element(logs));
    const double sum = sum_of(density);
    for (auto& value : density)
      value /= sum;
    density_.push_back(std::move(density));
  }
}

ShareDistribution GroupShare::distribution(std::span<const double> weights) const {
  std::vector<double> density(angles_.size(), 0);
  for (std::size_t node = 0; node < density_.size(); ++node)
    if (weights[node] > 1e-9)
      for (std::size_t i = 0; i < density.size(); ++i)
        density[i] += weights[node] * density_[node][i];
  return {angles_, density};
}

std::vector<double> rho_weights(std::span<const GroupShare* const> groups, double mean) {
  const auto nodes = made_nodes(mean);
  std::vector<double> logs;
  for (std::size_t i = 0; i < nodes.size(); ++i) {
    double value = std::log(nodes[i].weight);
    for (const auto* group : groups)
      value += group->evidence()[i];
    logs.push_back(value);
  }
  auto weights = exponentials(logs, *std::ranges::max_element(logs));
  const double sum = sum_of(weights);
  for (auto& weight : weights)
    weight /= sum;
  return weights;
}

Interval share_range(const GroupShare& group, double confidence, double dilution) {
  constexpr double least = 0.001; // a spread that does not matter
  const std::array groups{&group};
  const auto shares =
      group.distribution(rho_weights(groups, mean_rho * std::clamp(dilution, least, 1.0)));
  const double z = -quantile(boost::math::normal(), (1 - confidence) / 2);
  const double low = group.share() == 0 ? 0 : shares.quantile_at(-z);
  const double high = group.share() == 1 ? 1 : shares.quantile_at(z);
  return {std::min(low, group.share()), std::max(high, group.share())};
}

} // namespace coneline::stats
