// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/turnbull.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <limits>

namespace coneline::stats {

namespace {

constexpr double never = std::numeric_limits<double>::infinity();
constexpr double least_mass = 1e-9;

/// Seeds whose time lies in cells first ... last of the innermost intervals.
struct Observed {
  std::size_t first = 0;
  std::size_t last = 0;
  double seeds = 0;
};

/// The only intervals that can hold mass: those from a begin to the next end with neither between
/// them. The last may be "later, or never", which ends at infinity.
struct Problem {
  std::vector<Step> cells;
  std::vector<Observed> observed;
  double seeds = 0;
};

struct Span {
  double from;
  double to;
  double seeds;
};

/// A removed seed never germinates, which lies beyond every look.
std::vector<Span> spans_of(const IntervalCounts& counts) {
  std::vector<Span> spans;
  for (const auto& cell : counts.seen)
    spans.push_back({counts.bounds[cell.from], counts.bounds[cell.to], cell.seeds});
  for (const auto& cell : counts.waiting)
    spans.push_back({counts.bounds[cell.since], never, cell.seeds});
  if (counts.removed > 0)
    spans.push_back({std::numeric_limits<double>::max(), never, counts.removed});
  return spans;
}

Problem problem_of(const IntervalCounts& counts) {
  const auto spans = spans_of(counts);
  std::vector<std::pair<double, bool>> ends; // an end sorts before a begin on the same day: (a, b]
  for (const auto& span : spans) {
    ends.emplace_back(span.from, true);
    ends.emplace_back(span.to, false);
  }
  std::ranges::sort(ends);
  Problem problem;
  for (std::size_t i = 0; i + 1 < ends.size(); ++i)
    if (ends[i].second && !ends[i + 1].second)
      problem.cells.push_back({ends[i].first, ends[i + 1].first, 0});
  for (const auto& span : spans) {
    const auto first = std::ranges::lower_bound(problem.cells, span.from, {}, &Step::from);
    const auto past = std::ranges::upper_bound(problem.cells, span.to, {}, &Step::to);
    problem.observed.push_back({static_cast<std::size_t>(first - problem.cells.begin()),
                                static_cast<std::size_t>(past - problem.cells.begin()) - 1,
                                span.seeds});
    problem.seeds += span.seeds;
  }
  return problem;
}

/// The search for the masses. Two moves take turns: the self-consistent one, which never loses
/// ground, and one by weighted isotonic regression on the summed masses (iterative convex
/// minorant), which moves mass over long stretches at once (Wellner & Zhan 1997, JASA 92:945-959).
class Masses {
 public:
  explicit Masses(const Problem& problem)
      : problem_(problem),
        mass_(problem.cells.size(), 1.0 / static_cast<double>(problem.cells.size())) {}

  void find() {
    constexpr int most_rounds = 20'000;
    constexpr double close_enough = 1e-11;
    for (int round = 0; round < most_rounds; ++round) {
      share_out();
      if (short_of_best_ <= close_enough * problem_.seeds)
        break;
      move_by_minorant();
      if (round % 8 == 7)
        polish();
    }
    share_out();
  }

  [[nodiscard]] const std::vector<double>& mass() const { return mass_; }
  [[nodiscard]] double log_likelihood() const { return value(mass_); }
  [[nodiscard]] double short_of_best() const { return short_of_best_; }

 private:
  static std::vector<double> summed(const std::vector<double>& mass) {
    std::vector<double> sums(mass.size() + 1, 0);
    for (std::size_t i = 0; i < mass.size(); ++i)
      sums[i + 1] = sums[i] + mass[i];
    return sums;
  }

  [[nodiscard]] double value(const std::vector<double>& mass) const {
    const auto sums = summed(mass);
    double value = 0;
    for (const auto& cell : problem_.observed) {
      const double share = sums[cell.last + 1] - sums[cell.first];
      if (!(share > 0))
        return -never;
      value += cell.seeds * std::log(share);
    }
    return value;
  }

  /// Slope of the log-likelihood by each mass. At the best masses it is the number of seeds where
  /// there is mass and no more elsewhere; the largest excess bounds what can still be gained.
  [[nodiscard]] std::vector<double> slopes() const {
    const auto sums = summed(mass_);
    std::vector<double> change(mass_.size() + 1, 0);
    for (const auto& cell : problem_.observed) {
      const double part = cell.seeds / (sums[cell.last + 1] - sums[cell.first]);
      change[cell.first] += part;
      change[cell.last + 1] -= part;
    }
    for (std::size_t i = 1; i < change.size(); ++i)
      change[i] += change[i - 1];
    change.pop_back();
    return change;
  }

  /// Turnbull's self-consistent step.
  void share_out() {
    const auto slope = slopes();
    short_of_best_ = std::max(0.0, *std::ranges::max_element(slope) - problem_.seeds);
    double total = 0;
    for (std::size_t i = 0; i < mass_.size(); ++i) {
      mass_[i] *= slope[i] / problem_.seeds;
      total += mass_[i];
    }
    for (auto& mass : mass_)
      mass /= total;
  }

  /// Moves towards `target` as far as that gains.
  bool move_towards(const std::vector<double>& target) {
    const double before = value(mass_);
    for (double part = 1; part > 1e-6; part /= 2) {
      auto moved = mass_;
      for (std::size_t i = 0; i < moved.size(); ++i)
        moved[i] = std::max(0.0, moved[i] + part * (target[i] - moved[i]));
      if (value(moved) > before) {
        mass_ = std::move(moved);
        return true;
      }
    }
    return false;
  }

  void move_by_minorant() {
    const auto cells = mass_.size();
    const auto sums = summed(mass_);
    std::vector<double> slope(cells + 1, 0);
    std::vector<double> weight(cells + 1, 0);
    for (const auto& cell : problem_.observed) {
      const double share = sums[cell.last + 1] - sums[cell.first];
      slope[cell.last + 1] += cell.seeds / share;
      slope[cell.first] -= cell.seeds / share;
      weight[cell.last + 1] += cell.seeds / (share * share);
      weight[cell.first] += cell.seeds / (share * share);
    }
    const auto level = isotonic(sums, slope, weight);
    std::vector<double> target(cells);
    for (std::size_t i = 0; i < cells; ++i)
      target[i] = level[i + 1] - level[i];
    move_towards(target);
  }

  /// Weighted least squares under the order 0 <= s1 <= s2 ... <= 1 (pool adjacent violators).
  static std::vector<double> isotonic(const std::vector<double>& sums,
                                      const std::vector<double>& slope,
                                      const std::vector<double>& weight) {
    struct Block {
      double value;
      double weight;
      std::size_t length;
    };
    std::vector<Block> blocks;
    for (std::size_t i = 1; i + 1 < sums.size(); ++i) {
      const double w = std::max(weight[i], 1e-300);
      blocks.push_back({sums[i] + slope[i] / w, w, 1});
      while (blocks.size() > 1 && blocks[blocks.size() - 2].value >= blocks.back().value) {
        const auto last = blocks.back();
        blocks.pop_back();
        auto& into = blocks.back();
        into.value =
            (into.value * into.weight + last.value * last.weight) / (into.weight + last.weight);
        into.weight += last.weight;
        into.length += last.length;
      }
    }
    std::vector<double> level{0};
    for (const auto& block : blocks)
      level.insert(level.end(), block.length, std::clamp(block.value, 0.0, 1.0));
    level.push_back(1);
    return level;
  }

  /// A Newton step on the masses that are not about to vanish, for the last digits.
  void polish() {
    constexpr std::size_t most_cells = 300;
    std::vector<std::size_t> kept;
    for (std::size_t i = 0; i < mass_.size(); ++i)
      if (mass_[i] > 1e-7)
        kept.push_back(i);
    if (kept.size() < 2 || kept.size() > most_cells)
      return;
    const auto target = newton_target(kept);
    if (std::ranges::all_of(kept, [&](std::size_t i) { return target[i] > 0; }))
      move_towards(target);
  }

  [[nodiscard]] std::vector<double> newton_target(const std::vector<std::size_t>& kept) const {
    const auto n = static_cast<Eigen::Index>(kept.size());
    const auto sums = summed(mass_);
    const auto slope = slopes();
    Eigen::MatrixXd system = Eigen::MatrixXd::Zero(n + 1, n + 1);
    Eigen::VectorXd right = Eigen::VectorXd::Zero(n + 1);
    for (const auto& cell : problem_.observed) {
      const double share = sums[cell.last + 1] - sums[cell.first];
      const auto first = std::ranges::lower_bound(kept, cell.first) - kept.begin();
      const auto past = std::ranges::upper_bound(kept, cell.last) - kept.begin();
      system.block(first, first, past - first, past - first).array() +=
          cell.seeds / (share * share);
    }
    double held = 0;
    for (Eigen::Index i = 0; i < n; ++i) {
      const auto place = kept[static_cast<std::size_t>(i)];
      system(i, n) = system(n, i) = 1;
      system(i, i) += 1e-9 * problem_.seeds;
      right[i] = slope[place];
      held += mass_[place];
    }
    right[n] = 1 - held;
    const Eigen::VectorXd step = system.partialPivLu().solve(right);
    std::vector<double> target(mass_.size(), 0);
    for (Eigen::Index i = 0; i < n; ++i)
      target[kept[static_cast<std::size_t>(i)]] =
          mass_[kept[static_cast<std::size_t>(i)]] + step[i];
    return target;
  }

  const Problem& problem_;
  std::vector<double> mass_;
  double short_of_best_ = never;
};

} // namespace

Stepwise stepwise(const IntervalCounts& counts) {
  const auto problem = problem_of(counts);
  Stepwise result;
  if (problem.observed.empty())
    return result;
  Masses masses(problem);
  masses.find();
  result.log_likelihood = masses.log_likelihood();
  result.short_of_best = masses.short_of_best();
  for (std::size_t i = 0; i < problem.cells.size(); ++i) {
    const double mass = masses.mass()[i];
    if (problem.cells[i].to == never)
      result.never_seen = mass;
    else if (mass > least_mass)
      result.steps.push_back({problem.cells[i].from, problem.cells[i].to, mass});
  }
  return result;
}

} // namespace coneline::stats
