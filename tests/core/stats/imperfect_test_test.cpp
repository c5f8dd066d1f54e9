// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/imperfect_test.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace coneline::stats {
namespace {

// Rogan & Gladen 1978, American Journal of Epidemiology 107:71-76: 5.1 per 100 (read); more digits
// and the standard error recomputed.
TEST(ImperfectTest, RoganGladen) {
  const auto found = rogan_gladen(23, 150, {0.96, 0.89}).value();
  EXPECT_NEAR(found.share, .0509804, 5e-8);
  EXPECT_NEAR(found.standard_error, .0346107, 5e-8);
}

// Method: Tenenbein 1970, Journal of the American Statistical Association 65:1350-1361; the case is
// own, its standard error equal to that of a numerical maximum-likelihood fit.
TEST(ImperfectTest, Tenenbein) {
  const auto found = tenenbein({60, 4, 6, 30, 280, 120}).value();
  EXPECT_NEAR(found.share, .6653262, 5e-8);
  EXPECT_NEAR(found.standard_error, .0340040, 5e-8);
}

TEST(ImperfectTest, ATestThatSaysNothingIsRefused) {
  for (const auto& quality : {TestQuality{0.5, 0.5}, {0.7, 0.3}, {0.1, 0.9}, {0.2, 0.3}}) {
    const auto why = rogan_gladen(23, 150, quality).error();
    EXPECT_NE(why.what.find("not above 1"), std::string::npos);
  }
  EXPECT_FALSE(rogan_gladen(23, 150, {1.2, 0.9}));
  EXPECT_FALSE(rogan_gladen(23, 150, {0.9, std::nan("")}));
  EXPECT_FALSE(rogan_gladen(151, 150, {0.9, 0.9}));
  EXPECT_FALSE(rogan_gladen(0, 0, {0.9, 0.9}));
}

TEST(ImperfectTest, BothGroupsMustBeCut) {
  EXPECT_FALSE(tenenbein({0, 4, 0, 30, 280, 120}));
  EXPECT_FALSE(tenenbein({60, 0, 6, 0, 280, 120}));
  EXPECT_FALSE(tenenbein({60, 4, 6, -1, 280, 120}));
}

RC_GTEST_PROP(ImperfectTest, AFlawlessTestChangesNothing, ()) {
  const auto tested = *rc::gen::inRange<std::int64_t>(1, 1000);
  const auto filled = *rc::gen::inRange<std::int64_t>(0, tested + 1);
  const double share = static_cast<double>(filled) / static_cast<double>(tested);
  RC_ASSERT(std::abs(rogan_gladen(filled, tested, {1, 1})->share - share) < 1e-12);
}

RC_GTEST_PROP(ImperfectTest, WithNothingLeftUncutTheCutTestDecides, ()) {
  const auto count = [] { return *rc::gen::inRange<std::int64_t>(1, 200); };
  const DoubleSample s{count(), count(), count(), count(), 0, 0};
  const double filled = static_cast<double>(s.cut_filled_called_filled + s.cut_filled_called_empty);
  const double all =
      filled + static_cast<double>(s.cut_empty_called_filled + s.cut_empty_called_empty);
  const auto found = tenenbein(s).value();
  RC_ASSERT(std::abs(found.share - filled / all) < 1e-12);
  const double binomial = std::sqrt(filled / all * (1 - filled / all) / all);
  RC_ASSERT(std::abs(found.standard_error - binomial) < 1e-12);
}

} // namespace
} // namespace coneline::stats
