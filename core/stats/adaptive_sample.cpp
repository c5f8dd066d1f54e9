// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/adaptive_sample.h"

#include <boost/math/distributions/normal.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>

namespace coneline::stats {

namespace {

constexpr double nowhere = -std::numeric_limits<double>::infinity();

/// The heavier tails: a mixture of three bells of one middle.
struct Width {
  double share;
  double factor;
};
constexpr std::array widths{Width{0.6, 1.0}, Width{0.3, 1.7}, Width{0.1, 3.5}};

class Bell {
 public:
  explicit Bell(const Proposal& proposal)
      : middle_(proposal.middle), root_(proposal.covariance.llt().matrixL()) {
    log_volume_ = root_.diagonal().array().log().sum() + 2 * std::log(2 * std::numbers::pi);
  }

  [[nodiscard]] Point point(const Point& normal, double factor) const {
    return middle_ + factor * (root_ * normal);
  }

  [[nodiscard]] double density(const Point& at) const {
    const double distance = root_.triangularView<Eigen::Lower>().solve(at - middle_).squaredNorm();
    double sum = 0;
    for (const auto& width : widths)
      sum += width.share / std::pow(width.factor, 4) *
             std::exp(-distance / (2 * width.factor * width.factor));
    return sum * std::exp(-log_volume_);
  }

 private:
  Point middle_;
  Eigen::Matrix4d root_;
  double log_volume_ = 0;
};

/// Evenly spread points of the unit cube in five dimensions: an additive recurrence on the powers
/// of the root of x^6 = x + 1.
class Lattice {
 public:
  std::array<double, 5> next() {
    constexpr double root = 1.1347241384015194;
    double step = 1;
    for (auto& value : at_) {
      step /= root;
      value += step;
      value -= std::floor(value);
    }
    return at_;
  }

 private:
  std::array<double, 5> at_{0.5, 0.5, 0.5, 0.5, 0.5};
};

class Sampler {
 public:
  explicit Sampler(const std::function<Weighed(const Point&)>& density) : density_(density) {}

  void round(const Proposal& proposal, std::size_t points) {
    bells_.emplace_back(proposal);
    sizes_.push_back(static_cast<double>(points));
    const auto& bell = bells_.back();
    const boost::math::normal normal;
    const auto earlier = at_.size();
    for (std::size_t i = 0; i < points; ++i) {
      const auto even = lattice_.next();
      Point deviate;
      for (int axis = 0; axis < 4; ++axis)
        deviate[axis] =
            quantile(normal, std::clamp(even[static_cast<std::size_t>(axis)], 1e-12, 1 - 1e-12));
      double left = even[4];
      double factor = widths.back().factor;
      for (const auto& width : widths) {
        if (left < width.share) {
          factor = width.factor;
          break;
        }
        left -= width.share;
      }
      at_.push_back(bell.point(deviate, factor));
      found_.push_back(density_(at_.back()));
      proposed_.push_back(0);
    }
    // What each point was proposed with, over all rounds together.
    for (std::size_t i = 0; i < at_.size(); ++i)
      for (std::size_t b = i < earlier ? bells_.size() - 1 : 0; b < bells_.size(); ++b)
        proposed_[i] += sizes_[b] * bells_[b].density(at_[i]);
  }

  [[nodiscard]] std::vector<double> log_weights() const {
    std::vector<double> logs;
    for (std::size_t i = 0; i < at_.size(); ++i)
      logs.push_back(proposed_[i] > 0 ? found_[i].log_density - std::log(proposed_[i]) : nowhere);
    return logs;
  }

  /// A bell around what was found. With few points that count, their weights are evened out first.
  [[nodiscard]] std::optional<Proposal> learned() const {
    const auto logs = log_weights();
    const double highest = *std::ranges::max_element(logs);
    if (highest == nowhere)
      return std::nullopt;
    for (double power = 1;; power *= 0.7) {
      std::vector<double> weights;
      double sum = 0;
      double squares = 0;
      for (const double value : logs) {
        weights.push_back(std::exp(power * (value - highest)));
        sum += weights.back();
        squares += weights.back() * weights.back();
      }
      constexpr double enough = 40;
      if (sum * sum / squares >= enough || power < 0.02)
        return around(weights, sum);
    }
  }

  [[nodiscard]] Sample sample() const {
    Sample result;
    const auto logs = log_weights();
    const double highest = *std::ranges::max_element(logs);
    if (highest == nowhere)
      return {{}, nowhere, 0};
    double sum = 0;
    for (const double value : logs)
      sum += std::exp(value - highest);
    double squares = 0;
    for (std::size_t i = 0; i < logs.size(); ++i)
      if (const double weight = std::exp(logs[i] - highest) / sum; weight > 0) {
        result.points.push_back({at_[i], found_[i], weight});
        squares += weight * weight;
      }
    result.log_evidence = highest + std::log(sum);
    result.effective_size = 1 / squares;
    return result;
  }

 private:
  [[nodiscard]] Proposal around(const std::vector<double>& weights, double sum) const {
    Proposal made{Point::Zero(), Eigen::Matrix4d::Zero()};
    for (std::size_t i = 0; i < at_.size(); ++i)
      if (weights[i] > 0)
        made.middle += weights[i] / sum * at_[i];
    for (std::size_t i = 0; i < at_.size(); ++i)
      if (weights[i] > 0) {
        const Point apart = at_[i] - made.middle;
        made.covariance += weights[i] / sum * apart * apart.transpose();
      }
    made.covariance += 1e-6 * Eigen::Matrix4d::Identity();
    return made;
  }

  const std::function<Weighed(const Point&)>& density_;
  Lattice lattice_;
  std::vector<Bell> bells_;
  std::vector<double> sizes_;
  std::vector<Point> at_;
  std::vector<Weighed> found_;
  std::vector<double> proposed_;
};

} // namespace

Sample adaptive_sample(const std::function<Weighed(const Point&)>& density,
                       std::span<const Proposal> proposals, std::size_t points) {
  constexpr std::size_t learning_rounds = 4;
  const auto share = points / (proposals.size() + learning_rounds + 1);
  Sampler sampler(density);
  for (const auto& proposal : proposals)
    sampler.round(proposal, share);
  for (std::size_t i = 1; i <= learning_rounds; ++i)
    if (const auto proposal = sampler.learned())
      sampler.round(*proposal, i == learning_rounds ? 2 * share : share);
  return sampler.sample();
}

} // namespace coneline::stats
