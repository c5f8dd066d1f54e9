// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How often the interval for a whole sorted batch holds the true number of filled seed. Nothing is
// drawn: the probability of every outcome of both cut tests is summed, so the figures are exact.

#include <cstdint>
#include <vector>

namespace coneline::stats {

/// How a batch was sorted and opened.
struct SortedHow {
  std::int64_t sank = 0;
  std::int64_t opened_sank = 0;
  std::int64_t floated = 0;
  std::int64_t opened_floated = 0;
};

struct SortingCoverage {
  SortedHow how;
  double least = 1;          ///< smallest coverage over the grid of true shares
  double mean = 0;           ///< over the grid
  double width = 0;          ///< mean width of the interval, in seeds
  double width_of_parts = 0; ///< that of the parts' intervals added up
};

/// Over the grid of true shares 0, 1/`steps`, …, 1 of filled seed in each part. Each part has seeds
/// and was opened; `steps` is 1 or more; `confidence` lies between 0 and 1.
SortingCoverage sorting_coverage(const SortedHow& how, int steps, double confidence);

} // namespace coneline::stats
