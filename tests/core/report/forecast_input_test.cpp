// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/forecast_input.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::report {
namespace {

using book::State;
using tests::day;

/// A tray whose 20 seedlings are gone: 15 potted, 4 dead, 1 not explained. Its pot group of 15: 2
/// dead, 3 sold, 10 stand.
class History : public testing::Test {
 protected:
  History() {
    nursery.write([&](store::Writing& writing) {
      const auto registers = writing.registers();
      book::Route route;
      route.taxon = registers.taxa.front().id;
      route.germination = 0.5;
      route.germination_months = {1, 6};
      const auto mix = registers.mixes.front().id;
      for (const auto& pot : registers.pots)
        route.steps.push_back({pot.id, mix, {3, 6}, 0.9, book::Light::part_shade, "test"});
      return writing.put(route).value();
    });
    nursery.inspect(tray, "2025-05-01", 20, 20, 20);
    nursery.enter(book::Verb::lose, "2025-06-01", tray,
                  {{tray, State::leaf, tray, State::dead, 4}});
    nursery.enter(book::Verb::recount, "2025-06-02", tray,
                  {{tray, State::leaf, tray, State::unexplained, 1}});
    nursery.enter(book::Verb::pot, "2025-08-01", group,
                  {{tray, State::leaf, group, State::plant, 15}});
    nursery.enter(book::Verb::lose, "2025-09-01", group,
                  {{group, State::plant, group, State::dead, 2}});
    nursery.enter(book::Verb::sell, "2025-10-01", group,
                  {{group, State::plant, group, State::sold, 3}});
  }
  auto history(std::string_view today, double season_weight) {
    return nursery.ask([&](store::Reading& reading) {
      return survival_history(reading, reading.registers(), day(today), season_weight);
    });
  }

  tests::SmallNursery nursery;
  book::ConeId cone = nursery.cone(nursery.plant("Old Sentinel", book::Sex::female));
  book::LotId batch = nursery.harvest(cone, "2025-02-01", 40);
  book::LotId tray = nursery.sow(batch, "2025-03-01", 40);
  book::LotId group = nursery.lot(Kind::pot_group, cone);
};

TEST_F(History, CountsLotsThatAreEmptied) {
  const double certain = std::numeric_limits<double>::infinity();
  const auto seen = history("2025-12-01", certain);
  ASSERT_EQ(seen.size(), 1U); // the pot group stands still
  const auto& [of, tray_step] = *seen.begin();
  EXPECT_EQ(of.second, 0U);
  EXPECT_EQ(tray_step.alive, 15);
  EXPECT_EQ(tray_step.died, 5);
  EXPECT_TRUE(history("2025-07-01", certain).empty()); // it stood then
  const auto one_season = history("2025-12-01", 19).begin()->second;
  EXPECT_NEAR(one_season.alive + one_season.died, 20 / (1 + 19.0 / 20), 1e-9);
}

TEST_F(History, GoesIntoTheForecastsInput) {
  const auto input = nursery.ask(
      [&](store::Reading& reading) { return forecast_input(reading, day("2025-12-01"), 12, {}); });
  EXPECT_TRUE(plan::can_be_planned(input));
  EXPECT_EQ(input.history.size(), 1U);
  ASSERT_EQ(input.sprouting.size(), 1U);
  EXPECT_EQ(input.standing.groups.size(), 1U);
}

} // namespace
} // namespace coneline::report
