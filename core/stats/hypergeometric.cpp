// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/hypergeometric.h"

#include "core/base/phrase.h"
#include "core/stats/as_written.h"
#include "core/stats/probability.h"

#include <boost/math/constants/constants.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <boost/math/special_functions/log1p.hpp>
#include <fmt/format.h>

#include <cmath>

namespace coneline::stats {

namespace {
using boost::multiprecision::cpp_int;

constexpr std::int64_t most_seeds = 1'000'000'000;
/// Doubles decide where they are further than this from the bound; their own error is far less.
constexpr double surely_apart = 1e-8;
/// Above so many draws whole numbers get too long, and a tie is not to be expected: one seed more
/// or less moves the tail by far more than the error of doubles.
constexpr std::int64_t most_exact_draws = 60'000;

double real(std::int64_t value) {
  return static_cast<double>(value);
}

std::int64_t least(const Draw& d) {
  return std::max<std::int64_t>(0, d.drawn + d.marked - d.population);
}
std::int64_t most(const Draw& d) {
  return std::min(d.drawn, d.marked);
}

/// How far Stirling's formula for log(n!) falls short; 0 <= n.
double stirling_error(double n) {
  if (n == 0)
    return 0;
  if (n < 16)
    return boost::math::lgamma(n + 1) - (n + 0.5) * std::log(n) + n -
           0.5 * std::log(2 * boost::math::constants::pi<double>());
  const double square = n * n;
  return (1.0 / 12 - (1.0 / 360 - (1.0 / 1260 - 1.0 / 1680 / square) / square) / square) / n;
}

/// seen * log(seen / expected) + expected - seen, keeping its digits where the two are near.
double deviance(double seen, double expected) {
  const double by = (seen - expected) / expected;
  return seen == 0 ? expected : expected * ((1 + by) * boost::math::log1pmx(by) + by * by);
}

/// log of C(size, chosen) p^chosen q^(size - chosen) by Loader's saddle point (Loader 2000, Fast
/// and accurate computation of binomial probabilities; from memory, checked against fractions):
/// differences of log factorials lose their digits in large batches. p and q come apart because
/// 1 - p would have lost some as well.
double log_binomial(std::int64_t size, std::int64_t chosen, double p, double q) {
  const double n = real(size);
  const double k = real(chosen);
  if (size == 0)
    return 0;
  const double spread = stirling_error(n) - stirling_error(k) - stirling_error(n - k);
  const double inside =
      chosen == 0 || chosen == size
          ? 0
          : 0.5 * std::log(n / (2 * boost::math::constants::pi<double>() * k * (n - k)));
  return spread + inside - deviance(k, n * p) - deviance(n - k, n * q);
}

/// P(X = count), as three binomial probabilities at one share, which cancels.
double exactly(const Draw& d, std::int64_t count) {
  if (d.drawn == 0 || d.drawn == d.population)
    return 1;
  const double p = real(d.drawn) / real(d.population);
  const double q = real(d.population - d.drawn) / real(d.population);
  return std::exp(log_binomial(d.marked, count, p, q) +
                  log_binomial(d.population - d.marked, d.drawn - count, p, q) -
                  log_binomial(d.population, d.drawn, p, q));
}

/// P(X = count) + P(X = count + step) + ... on the side where the terms fall.
double falling_sum(const Draw& d, std::int64_t count, int step) {
  double term = exactly(d, count);
  double sum = 0;
  for (auto i = count; term > sum * 1e-17; i += step) {
    sum += term;
    const double up = real(d.marked - i) * real(d.drawn - i);
    const double unmarked_left = real(d.population - d.marked - d.drawn + i);
    if (step > 0)
      term *= up / (real(i + 1) * (unmarked_left + 1));
    else
      term *= real(i) * unmarked_left / (real(d.marked - i + 1) * real(d.drawn - i + 1));
  }
  return sum;
}

/// The same question asked so that fewest are drawn: the roles of drawn and marked can be changed,
/// and either can be counted by what it leaves. Counting what is left turns "at most" round.
struct Question {
  Draw draw;
  std::int64_t count;
  bool turned = false;
};

Question with_fewest_drawn(Question q) {
  auto& [d, count, turned] = q;
  if (d.population - d.marked < d.marked) {
    d.marked = d.population - d.marked;
    count = d.drawn - count;
    turned = !turned;
  }
  if (d.population - d.drawn < d.drawn) {
    d.drawn = d.population - d.drawn;
    count = d.marked - count;
    turned = !turned;
  }
  if (d.marked < d.drawn)
    std::swap(d.marked, d.drawn);
  return q;
}

cpp_int ways(std::int64_t from, std::int64_t choose) {
  cpp_int product = 1;
  for (std::int64_t i = 1; i <= choose; ++i) {
    product *= from - choose + i;
    product /= i;
  }
  return product;
}

/// The number of draws with X from `first` to `last`.
cpp_int ways_between(const Draw& d, std::int64_t first, std::int64_t last) {
  if (first > last)
    return 0;
  cpp_int term = ways(d.marked, first) * ways(d.population - d.marked, d.drawn - first);
  cpp_int sum = 0;
  for (auto i = first; i <= last; ++i) {
    sum += term;
    term *= (d.marked - i) * (d.drawn - i);
    term /= (i + 1) * (d.population - d.marked - d.drawn + i + 1);
  }
  return sum;
}

std::strong_ordering compare_exactly(const Question& q, const Rational& bound) {
  const auto& d = q.draw;
  const cpp_int all = ways(d.population, d.drawn);
  const cpp_int tail = q.turned ? ways_between(d, std::max(q.count, least(d)), most(d))
                                : ways_between(d, least(d), std::min(q.count, most(d)));
  const cpp_int left = tail * denominator(bound);
  const cpp_int right = all * numerator(bound);
  return left < right   ? std::strong_ordering::less
         : left > right ? std::strong_ordering::greater
                        : std::strong_ordering::equal;
}

/// The first M in [low, high] that `holds`, it being false up to some M and true after; high + 1
/// where there is none.
template <class Condition>
std::int64_t first_that(std::int64_t low, std::int64_t high, Condition holds) {
  while (low <= high) {
    const auto middle = low + (high - low) / 2;
    if (holds(middle))
      high = middle - 1;
    else
      low = middle + 1;
  }
  return low;
}

} // namespace

Result<CutTest> checked(const CutTest& test) {
  const auto [seeds, opened, filled] = test;
  if (seeds < 0 || opened < 0 || filled < 0)
    return refuse(fault(
        phrase("a count cannot be below zero, and this is {}", std::min({seeds, opened, filled})),
        "Write how many there are."));
  if (seeds > most_seeds)
    return refuse(
        fault(phrase("{} seeds are more than any nursery counts", seeds), "Check the digits."));
  if (opened > seeds)
    return refuse(fault(phrase("{} opened of {} seeds: {} too many", opened, seeds, opened - seeds),
                        "Count the opened ones among the seeds."));
  if (filled > opened)
    return refuse(
        fault(phrase("{} filled of {} opened: {} too many", filled, opened, filled - opened),
              "Write opened:filled, such as 10:9."));
  return test;
}

double at_most(const Draw& draw, std::int64_t count) {
  if (count < least(draw))
    return 0;
  if (count >= most(draw))
    return 1;
  const double mean = real(draw.drawn) * (real(draw.marked) / real(draw.population));
  if (real(count) < mean)
    return falling_sum(draw, count, -1);
  return 1 - falling_sum(draw, count + 1, +1);
}

std::strong_ordering compare_at_most(const Draw& draw, std::int64_t count, double confidence,
                                     int divisor) {
  const double tail = at_most(draw, count);
  const double bound = (1 - confidence) / divisor;
  // The bound itself can have lost digits in 1 - confidence.
  const double blur = surely_apart * bound + 4e-16;
  const auto by_doubles = tail < bound ? std::strong_ordering::less : std::strong_ordering::greater;
  if (std::abs(tail - bound) > blur)
    return by_doubles;
  const auto asked = with_fewest_drawn({draw, count});
  if (asked.draw.drawn > most_exact_draws)
    return by_doubles;
  return compare_exactly(asked, (1 - as_written(confidence)) / divisor);
}

Result<CountInterval> filled_interval(const CutTest& test, double confidence) {
  const auto known = checked(test);
  if (!known)
    return refuse(known.error());
  if (const auto ok = inside_0_and_1(confidence, "the confidence"); !ok)
    return refuse(ok.error());
  const auto [seeds, opened, filled] = test;
  if (opened == 0)
    return CountInterval{0, seeds};
  const auto few_tail_above = [&](std::int64_t marked) {
    return compare_at_most({seeds, marked, opened}, filled, confidence, 2) > 0;
  };
  // P(X >= filled) among the filled is P(X <= empty) among the empty.
  const auto many_tail_above = [&](std::int64_t marked) {
    return compare_at_most({seeds, seeds - marked, opened}, opened - filled, confidence, 2) > 0;
  };
  const auto low = filled;
  const auto high = seeds - opened + filled;
  return CountInterval{
      first_that(low, high, many_tail_above),
      first_that(low, high, [&](std::int64_t marked) { return !few_tail_above(marked); }) - 1};
}

} // namespace coneline::stats
