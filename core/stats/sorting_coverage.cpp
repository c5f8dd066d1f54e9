// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/sorting_coverage.h"

#include "core/stats/sorting.h"

#include <boost/math/distributions/hypergeometric.hpp>

#include <algorithm>
#include <cmath>

namespace coneline::stats {

namespace {

/// The probability of each number of filled seed among the opened.
std::vector<double> outcomes(std::int64_t seeds, std::int64_t filled, std::int64_t opened) {
  std::vector<double> probability(static_cast<std::size_t>(opened) + 1, 0);
  const boost::math::hypergeometric distribution(static_cast<std::uint64_t>(filled),
                                                 static_cast<std::uint64_t>(opened),
                                                 static_cast<std::uint64_t>(seeds));
  const auto low = std::max<std::int64_t>(0, opened - (seeds - filled));
  const auto high = std::min(opened, filled);
  for (auto k = low; k <= high; ++k)
    probability[static_cast<std::size_t>(k)] = pdf(distribution, static_cast<std::uint64_t>(k));
  return probability;
}

struct Answer {
  std::int64_t low = 0;
  std::int64_t high = 0;
  double width_of_parts = 0;
};

/// What is answered to every outcome, the floated part's changing fastest.
std::vector<Answer> answers_to(const SortedHow& how, double confidence) {
  std::vector<Answer> answers;
  for (std::int64_t one = 0; one <= how.opened_sank; ++one)
    for (std::int64_t two = 0; two <= how.opened_floated; ++two) {
      const auto sorted = sort_by_water({how.sank, how.opened_sank, one},
                                        {how.floated, how.opened_floated, two}, confidence)
                              .value();
      answers.push_back({sorted.batch.low, sorted.batch.high,
                         static_cast<double>(sorted.sank.high - sorted.sank.low +
                                             sorted.floated.high - sorted.floated.low)});
    }
  return answers;
}

std::int64_t share_of(std::int64_t seeds, int step, int steps) {
  return std::llround(static_cast<double>(seeds) * step / steps);
}

} // namespace

SortingCoverage sorting_coverage(const SortedHow& how, int steps, double confidence) {
  const auto answers = answers_to(how, confidence);
  SortingCoverage found;
  found.how = how;
  const double pairs = (steps + 1.0) * (steps + 1.0);
  for (int i = 0; i <= steps; ++i)
    for (int j = 0; j <= steps; ++j) {
      const auto filled_sank = share_of(how.sank, i, steps);
      const auto filled_floated = share_of(how.floated, j, steps);
      const auto of_sank = outcomes(how.sank, filled_sank, how.opened_sank);
      const auto of_floated = outcomes(how.floated, filled_floated, how.opened_floated);
      double held = 0;
      auto answer = answers.begin();
      for (const double one : of_sank)
        for (const double two : of_floated) {
          const double probability = one * two;
          const auto filled = filled_sank + filled_floated;
          held += answer->low <= filled && filled <= answer->high ? probability : 0;
          found.width += probability * static_cast<double>(answer->high - answer->low) / pairs;
          found.width_of_parts += probability * answer->width_of_parts / pairs;
          ++answer;
        }
      found.least = std::min(found.least, held);
      found.mean += held / pairs;
    }
  return found;
}

} // namespace coneline::stats
