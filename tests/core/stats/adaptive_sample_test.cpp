// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/adaptive_sample.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace coneline::stats {
namespace {

// A leaning bell of known integral, cut in half, begun from a poor guess.
TEST(AdaptiveSample, FindsIntegralAndMean) {
  const auto density = [](const Point& at) {
    if (at[1] < 0)
      return Weighed{-std::numeric_limits<double>::infinity(), 0, 0};
    const double lean = at[0] - 0.8 * at[1];
    return Weighed{-(lean * lean / 0.02 + at[1] * at[1] + at[2] * at[2] + at[3] * at[3]) / 2, at[1],
                   0};
  };
  const std::array begin{Proposal{Point{1, -1, 1, 0}, 3 * Eigen::Matrix4d::Identity()}};
  const auto sample = adaptive_sample(density, begin, 1400);
  double sum = 0;
  double mean = 0;
  for (const auto& point : sample.points) {
    sum += point.weight;
    mean += point.weight * point.found.mean;
  }
  EXPECT_NEAR(sum, 1, 1e-12);
  EXPECT_NEAR(mean, std::sqrt(2 / std::numbers::pi), 0.02);
  const double integral = std::pow(2 * std::numbers::pi, 2) * std::sqrt(0.02) / 2;
  EXPECT_NEAR(sample.log_evidence, std::log(integral), 0.04);
  EXPECT_GT(sample.effective_size, 300);
}

} // namespace
} // namespace coneline::stats
