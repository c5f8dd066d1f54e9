// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/float_record.h"

#include "core/stats/log_gamma.h"
#include "core/stats/share_posterior.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

namespace coneline::stats {

namespace {

constexpr std::size_t steps = 60; ///< of s and f
constexpr std::size_t steps_of_v = 24;

/// Where a step begins. Steps are narrow near 0 and 1, where a share changes most in a few seeds.
double edge(std::size_t step, std::size_t all) {
  const double root =
      std::sin(std::numbers::pi / 2 * static_cast<double>(step) / static_cast<double>(all));
  return root * root;
}

double middle_of(std::size_t step, std::size_t all) {
  return (edge(step, all) + edge(step + 1, all)) / 2;
}

double log_width(std::size_t step, std::size_t all) {
  return std::log(edge(step + 1, all) - edge(step, all));
}

/// ln of (x)(x + d)...(x + (n-1)d), which with d = rho is the beta-binomial's rising product.
double rising(double from, double by, std::int64_t times) {
  if (by <= 0)
    return static_cast<double>(times) * std::log(from);
  return static_cast<double>(times) * std::log(by) +
         log_gamma(from / by + static_cast<double>(times)) - log_gamma(from / by);
}

/// ln of the beta-binomial likelihood without its coefficient; binomial at rho 0.
double log_likelihood(std::int64_t hits, std::int64_t trials, double share, double rho) {
  if (trials == 0)
    return 0;
  const double by = rho < 1e-6 ? 0 : rho / (1 - rho);
  return rising(share, by, hits) + rising(1 - share, by, trials - hits) - rising(1, by, trials);
}

double log_likelihood(const PartRecord& part, double filled, double comes_up, double rho) {
  return log_likelihood(part.opened_filled, part.opened, filled, rho) +
         log_likelihood(part.came_up, part.tried, filled * comes_up, rho);
}

/// Adds up weights given as logarithms without running out of doubles.
class Grid {
 public:
  Grid() : sank_(steps, 0), floated_(steps, 0), comes_up_(steps_of_v, 0) {}

  /// All of s and f at one v and rho; `sank` and `floated` are ln of their likelihoods.
  void add(std::size_t v, double log_weight, const std::vector<double>& sank,
           const std::vector<double>& floated) {
    const auto [sank_sum, sank_high] = summed(sank);
    const auto [floated_sum, floated_high] = summed(floated);
    const double log_total = log_weight + sank_high + floated_high;
    if (log_total > scale_) {
      const double shrink = std::exp(scale_ - log_total);
      for (auto* shares : {&sank_, &floated_, &comes_up_})
        for (auto& share : *shares)
          share *= shrink;
      scale_ = log_total;
    }
    const double weight = std::exp(log_total - scale_);
    for (std::size_t i = 0; i < steps; ++i) {
      sank_[i] += weight * floated_sum * std::exp(sank[i] - sank_high);
      floated_[i] += weight * sank_sum * std::exp(floated[i] - floated_high);
    }
    comes_up_[v] += weight * sank_sum * floated_sum;
  }

  [[nodiscard]] FloatLearned learned(double confidence) const {
    return {share_of(sank_, confidence), share_of(floated_, confidence),
            share_of(comes_up_, confidence)};
  }

 private:
  static std::pair<double, double> summed(const std::vector<double>& logs) {
    const double highest = *std::ranges::max_element(logs);
    double sum = 0;
    for (const double value : logs)
      sum += std::exp(value - highest);
    return {sum, highest};
  }

  static double at(const std::vector<double>& weights, double wanted) {
    double total = 0;
    for (const double weight : weights)
      total += weight;
    double below = 0;
    for (std::size_t i = 0; i < weights.size(); ++i) {
      const double here = weights[i] / total;
      if (below + here >= wanted)
        return edge(i, weights.size()) +
               (here > 0 ? (wanted - below) / here : 0) *
                   (edge(i + 1, weights.size()) - edge(i, weights.size()));
      below += here;
    }
    return 1;
  }

  static LearnedShare share_of(const std::vector<double>& weights, double confidence) {
    const double tail = (1 - confidence) / 2;
    return {at(weights, 0.5), {at(weights, tail), at(weights, 1 - tail)}};
  }

  std::vector<double> sank_;
  std::vector<double> floated_;
  std::vector<double> comes_up_;
  double scale_ = -std::numeric_limits<double>::infinity();
};

std::vector<double> log_likelihoods(std::span<const SeasonRecord> seasons,
                                    PartRecord SeasonRecord::*part, double comes_up, double rho) {
  std::vector<double> logs;
  for (std::size_t i = 0; i < steps; ++i) {
    double sum = log_width(i, steps);
    for (const auto& season : seasons)
      sum += log_likelihood(season.*part, middle_of(i, steps), comes_up, rho);
    logs.push_back(sum);
  }
  return logs;
}

} // namespace

FloatLearned learn_float(std::span<const SeasonRecord> seasons, double confidence) {
  Grid grid;
  for (const auto& node : rho_nodes())
    for (std::size_t v = 0; v < steps_of_v; ++v) {
      const double comes_up = middle_of(v, steps_of_v);
      grid.add(v, std::log(node.weight) + log_width(v, steps_of_v),
               log_likelihoods(seasons, &SeasonRecord::sank, comes_up, node.rho),
               log_likelihoods(seasons, &SeasonRecord::floated, comes_up, node.rho));
    }
  return grid.learned(confidence);
}

FloatVerdict verdict(const FloatLearned& learned) {
  const auto& range = learned.floated_filled.range;
  if (range.high <= most_filled_floaters)
    return FloatVerdict::trusted;
  return range.low > most_filled_floaters ? FloatVerdict::not_trusted : FloatVerdict::not_known;
}

} // namespace coneline::stats
