// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/float_record.h"
#include "core/stats/simulated_cross.h"

#include <gtest/gtest.h>

#include <cmath>

namespace coneline::stats {
namespace {

constexpr double confidence = 0.90;

TEST(FloatRecord, WithoutSeedAnythingIsPossible) {
  const auto learned = learn_float({}, confidence);
  EXPECT_NEAR(learned.floated_filled.middle, 0.5, 0.01);
  EXPECT_NEAR(learned.floated_filled.range.low, 0.05, 0.01);
  EXPECT_NEAR(learned.floated_filled.range.high, 0.95, 0.01);
  EXPECT_EQ(verdict(learned), FloatVerdict::not_known);
}

// Dehgan & Yuen 1983 (Botanical Gazette 144:412-418): the floaters of one group of species are
// dead, those of another are as alive as the rest. The counts are invented.
TEST(FloatRecord, DeadAndLiveFloatersLeadToDifferentVerdicts) {
  const std::vector<SeasonRecord> dead{{{20, 18, 150, 120}, {20, 0, 60, 1}},
                                       {{10, 9, 90, 70}, {10, 0, 58, 1}}};
  const std::vector<SeasonRecord> live{{{20, 18, 150, 120}, {20, 16, 60, 45}},
                                       {{10, 9, 90, 70}, {10, 9, 58, 44}}};
  EXPECT_EQ(verdict(learn_float(dead, confidence)), FloatVerdict::trusted);
  EXPECT_EQ(verdict(learn_float(live, confidence)), FloatVerdict::not_trusted);
  EXPECT_LT(learn_float(dead, confidence).floated_filled.range.high, 0.10);
  EXPECT_GT(learn_float(live, confidence).floated_filled.middle, 0.6);
}

TEST(FloatRecord, SeedThatStayedDownMayHaveBeenFilled) {
  // Sinkers, all filled, come up one time in five: floaters that never came up say little.
  const std::vector<SeasonRecord> poor{{{30, 29, 200, 40}, {0, 0, 10, 0}}};
  const std::vector<SeasonRecord> good{{{30, 29, 200, 190}, {0, 0, 10, 0}}};
  EXPECT_GT(learn_float(poor, confidence).floated_filled.range.high,
            learn_float(good, confidence).floated_filled.range.high + 0.1);
}

TEST(FloatRecord, OneSeasonSaysLessThanTheSameSeedInMany) {
  const std::vector<SeasonRecord> one{{{40, 36, 0, 0}, {80, 8, 0, 0}}};
  const std::vector<SeasonRecord> four(4, {{10, 9, 0, 0}, {20, 2, 0, 0}});
  const auto width = [](const FloatLearned& learned) {
    return learned.floated_filled.range.high - learned.floated_filled.range.low;
  };
  EXPECT_GT(width(learn_float(one, confidence)), width(learn_float(four, confidence)));
}

// Taxa drawn at random as the prior has it: 90 % ranges hold the truth 90 times in 100, within
// three standard errors of 300 taxa (0.9 +- 0.052) and a little for the steps.
TEST(FloatRecord, RangesHoldTheTruthAsOftenAsTheySay) {
  Chance draw(31);
  int held = 0;
  constexpr int taxa = 300;
  for (int taxon = 0; taxon < taxa; ++taxon) {
    const double sank = draw.even();
    const double floated = draw.even();
    const double comes_up = draw.even();
    const double rho = -0.065 * std::log(1 - draw.even());
    std::vector<SeasonRecord> seasons;
    const auto season = [&] {
      SeasonRecord record;
      record.sank = {10, draw.binomial(10, draw.share(sank, rho)), 40,
                     draw.binomial(40, draw.share(sank * comes_up, rho))};
      record.floated = {8, draw.binomial(8, draw.share(floated, rho)), 20,
                        draw.binomial(20, draw.share(floated * comes_up, rho))};
      return record;
    };
    for (int i = draw.whole(1, 3); i > 0; --i)
      seasons.push_back(season());
    const auto& range = learn_float(seasons, confidence).floated_filled.range;
    held += range.low <= floated && floated <= range.high ? 1 : 0;
  }
  EXPECT_NEAR(static_cast<double>(held) / taxa, 0.90, 0.055);
}

} // namespace
} // namespace coneline::stats
