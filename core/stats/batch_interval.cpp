// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/batch_interval.h"

#include <cmath>
#include <limits>
#include <numeric>

namespace coneline::stats {

namespace {
using Index = std::int64_t;

/// Differences of log likelihoods below this are rounding.
constexpr double rounding = 1e-7;

std::size_t at(Index index) {
  return static_cast<std::size_t>(index);
}

/// The outcomes of one cut test, for every number M filled in the part.
class Part {
 public:
  explicit Part(const CutTest& test)
      : seeds(test.seeds), opened(test.opened), filled(test.filled),
        log_factorial_(at(seeds + 1), 0.0), chances_(at(seeds + 1)), likeliest_(at(opened + 1)) {
    for (Index i = 2; i <= seeds; ++i)
      log_factorial_[at(i)] = log_factorial_[at(i - 1)] + std::log(static_cast<double>(i));
    for (Index x = 0; x <= opened; ++x)
      // The hypergeometric likelihood is largest there, or at one less with the same value.
      likeliest_[at(x)] = std::min(seeds, (seeds + 1) * x / opened);
  }

  const Index seeds, opened, filled;

  /// The M that leave an outcome possible.
  [[nodiscard]] Index fewest(Index found) const { return found; }
  [[nodiscard]] Index most(Index found) const { return seeds - opened + found; }
  [[nodiscard]] Index likeliest(Index found) const { return likeliest_[at(found)]; }

  /// log P(X = found | m) but for what does not depend on m; m leaves `found` possible.
  [[nodiscard]] double log_likelihood(Index found, Index m) const {
    return log_factorial_[at(m)] - log_factorial_[at(m - found)] + log_factorial_[at(seeds - m)] -
           log_factorial_[at(seeds - m - opened + found)];
  }

  struct Chances {
    std::vector<double> exactly;  ///< P(X = x), x from 0 to opened
    std::vector<double> below;    ///< P(X < x), x from 0 to opened + 1
    std::vector<double> at_least; ///< P(X >= x), the same
  };
  const Chances& chances(Index m) {
    auto& known = chances_[at(m)];
    if (known.exactly.empty())
      known = chances_of(m);
    return known;
  }

 private:
  [[nodiscard]] double log_ways(Index from, Index chosen) const {
    return log_factorial_[at(from)] - log_factorial_[at(chosen)] -
           log_factorial_[at(from - chosen)];
  }

  [[nodiscard]] Chances chances_of(Index m) const {
    Chances c;
    c.exactly.assign(at(opened + 1), 0.0);
    for (Index x = std::max<Index>(0, opened + m - seeds); x <= std::min(opened, m); ++x)
      c.exactly[at(x)] =
          std::exp(log_ways(m, x) + log_ways(seeds - m, opened - x) - log_ways(seeds, opened));
    c.below.assign(at(opened + 2), 0.0);
    std::partial_sum(c.exactly.begin(), c.exactly.end(), c.below.begin() + 1);
    c.at_least.assign(at(opened + 2), 0.0);
    std::partial_sum(c.exactly.rbegin(), c.exactly.rend(), c.at_least.rbegin() + 1);
    return c;
  }

  std::vector<double> log_factorial_;
  std::vector<Chances> chances_; ///< by M, made when first asked for
  std::vector<Index> likeliest_;
};

/// The outcomes that speak at least as loudly against a sum as the one seen: for each number found
/// in part one, from so many on in part two upwards, and from so many on downwards.
struct Staircases {
  std::vector<Index> up;   ///< smallest number in part two, opened + 1 where none
  std::vector<Index> down; ///< largest number in part two plus 1, 0 where none
};

class BothParts {
 public:
  BothParts(const CutTest& one, const CutTest& other, double confidence)
      : one_(one), two_(other), error_((1 - confidence) * (1 - 1e-9)) {}

  CountInterval interval() {
    Index low = one_.fewest(one_.filled) + two_.fewest(two_.filled);
    Index high = one_.most(one_.filled) + two_.most(two_.filled);
    while (!kept(low))
      ++low;
    while (high > low && !kept(high))
      --high;
    return {low, high};
  }

 private:
  /// The pairs (m, sum - m) that leave an outcome possible, by their m.
  [[nodiscard]] std::pair<Index, Index> pairs(Index x, Index y, Index sum) const {
    return {std::max(one_.fewest(x), sum - two_.most(y)),
            std::min(one_.most(x), sum - two_.fewest(y))};
  }

  /// L(sum) of an outcome with the sign of (estimate - sum).
  [[nodiscard]] double against(Index x, Index y, Index sum) const {
    const Index best_one = one_.likeliest(x);
    const Index best_two = two_.likeliest(y);
    const double sign = best_one + best_two < sum ? -1 : 1;
    auto [low, high] = pairs(x, y, sum);
    if (low > high)
      return sign * std::numeric_limits<double>::infinity();
    const auto likelihood = [&](Index m) {
      return one_.log_likelihood(x, m) + two_.log_likelihood(y, sum - m);
    };
    while (low < high) { // concave: climb
      const Index middle = low + (high - low) / 2;
      if (likelihood(middle + 1) > likelihood(middle))
        low = middle + 1;
      else
        high = middle;
    }
    const double best = one_.log_likelihood(x, best_one) + two_.log_likelihood(y, best_two);
    return sign * std::max(0.0, best - likelihood(low));
  }

  [[nodiscard]] Staircases staircases(double seen, Index sum) const {
    Staircases stairs;
    Index up = two_.opened + 1;
    Index down = two_.opened + 1;
    for (Index x = 0; x <= one_.opened; ++x) {
      while (up > 0 && against(x, up - 1, sum) >= seen)
        --up;
      while (down > 0 && against(x, down - 1, sum) > -seen)
        --down;
      stairs.up.push_back(up);
      stairs.down.push_back(down);
    }
    return stairs;
  }

  /// An upper bound of the p-values of the pairs with m from `low` to `high`; the p-value itself
  /// where the two are one.
  double bound(const Staircases& stairs, Index sum, Index low, Index high) {
    const auto& up_one = one_.chances(high).exactly;
    const auto& up_two = two_.chances(sum - low).at_least;
    const auto& down_one = one_.chances(low).exactly;
    const auto& down_two = two_.chances(sum - high).below;
    double p = 0;
    for (std::size_t x = 0; x < up_one.size(); ++x)
      p += up_one[x] * up_two[at(stairs.up[x])] + down_one[x] * down_two[at(stairs.down[x])];
    return p;
  }

  bool any_kept(const Staircases& stairs, Index sum, Index low, Index high) {
    if (bound(stairs, sum, low, high) <= error_)
      return false;
    if (low == high)
      return true;
    const Index middle = low + (high - low) / 2;
    return any_kept(stairs, sum, low, middle) || any_kept(stairs, sum, middle + 1, high);
  }

  bool kept(Index sum) {
    const double seen = std::abs(against(one_.filled, two_.filled, sum)) - rounding;
    if (seen <= 0)
      return true;
    const auto [low, high] = pairs(one_.filled, two_.filled, sum);
    return any_kept(staircases(seen, sum), sum, low, high);
  }

  Part one_;
  Part two_;
  double error_;
};

Index cells(const CutTest& test) {
  return (test.seeds + 1) * (test.opened + 1);
}

} // namespace

CountInterval batch_interval(const CutTest& one, const CutTest& other, double confidence) {
  if (cells(one) + cells(other) <= most_batch_cells)
    return BothParts(one, other, confidence).interval();
  const auto part = filled_interval(one, std::sqrt(confidence)).value();
  const auto rest = filled_interval(other, std::sqrt(confidence)).value();
  return {part.low + rest.low, part.high + rest.high};
}

} // namespace coneline::stats
