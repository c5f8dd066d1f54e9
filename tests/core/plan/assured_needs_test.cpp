// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/assured_needs.h"
#include "tests/core/plan/invented_lots.h"

namespace coneline::plan {
namespace {

using namespace coneline::tests;

/// The share of other futures in which nothing runs short of what was bought.
double held_in(const Forecast& forecast, const std::vector<std::size_t>& goods,
               const std::vector<ByMonth>& litres) {
  int held = 0;
  for (int run = 0; run < forecast.runs(); ++run) {
    bool enough = true;
    for (std::size_t good = 0; good < goods.size(); ++good) {
      double stock = 0;
      for (std::size_t month = 0; month < forecast.months().size(); ++month) {
        stock += litres[good][month] - static_cast<double>(forecast.value(goods[good], run, month));
        enough = enough && stock > -1e-3;
      }
    }
    held += enough ? 1 : 0;
  }
  return static_cast<double>(held) / forecast.runs();
}

TEST(AssuredNeeds, LetRunShortNoMoreSeasonsThanChosen) {
  const auto input = invented_lots(40, 12);
  const auto drawn = [&](std::uint64_t seed) {
    return forecast_of(input, {.runs = 2000, .seed = seed, .threads = 0, .go_on = {}}).value();
  };
  const auto forecast = drawn(1);
  const auto others = drawn(2);
  const std::vector<std::size_t> goods{forecast.find({Shown::part, "bark"}).value(),
                                       forecast.find({Shown::part, "sand"}).value()};
  double before = 0;
  for (const double assurance : {0.5, 0.9, 0.99}) {
    const auto needs = assured_needs(forecast, goods, assurance).value();
    EXPECT_GE(needs.held, assurance);
    EXPECT_LT(needs.held, assurance + 0.02); // and no more than it takes
    EXPECT_NEAR(held_in(forecast, goods, needs.litres), needs.held,
                2e-3); // ties in single precision
    EXPECT_NEAR(held_in(others, goods, needs.litres), assurance, 0.04);
    const double all = sum(needs.litres[0]);
    EXPECT_GT(all, before);
    before = all;
  }
  EXPECT_FALSE(assured_needs(forecast, goods, 0));
  EXPECT_FALSE(assured_needs(forecast, goods, 1));
}

} // namespace
} // namespace coneline::plan
