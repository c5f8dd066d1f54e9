// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/line_back.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::work {
namespace {

using book::State;
using tests::day;
using tests::SmallNursery;

LineBack back_of(SmallNursery& nursery, book::LotId lot) {
  return nursery.ask([&](store::Reading& reading) {
    return line_back(reading, reading.registers(), reading.lot(lot));
  });
}

void add_up(const LineBack& back) {
  for (const auto& step : back.steps) {
    auto sum = step.on_hand + step.passed_on;
    for (const auto& [end, count] : step.ended)
      sum += count;
    EXPECT_EQ(step.in, sum) << step.code.text();
    EXPECT_LE(step.to_this_line, step.passed_on) << step.code.text();
  }
}

class Line : public testing::Test {
 protected:
  SmallNursery nursery;
  book::ConeId cone = nursery.cone(nursery.plant("Old Sentinel", book::Sex::female));
  book::LotId batch = nursery.harvest(cone, "2025-02-01", 200);
  book::LotId tray = nursery.sow(batch, "2025-03-01", 40);
  book::LotId other_tray = nursery.sow(batch, "2025-03-05", 60);
};

TEST_F(Line, LeadsFromAPotGroupBackToItsCone) {
  nursery.enter(book::Verb::clean, "2025-02-10", batch,
                {{batch, State::unsorted, batch, State::lost_in_cleaning, 12}});
  nursery.inspect(tray, "2025-05-01", 30, 25, 4);
  const auto group = nursery.lot(Kind::pot_group, cone);
  nursery.enter(book::Verb::pot, "2025-08-01", group,
                {{tray, State::leaf, group, State::plant, 22}});
  nursery.enter(book::Verb::sell, "2025-12-01", group,
                {{group, State::plant, group, State::sold, 5}});

  const auto back = back_of(nursery, group);
  EXPECT_EQ(back.origin, "Old Sentinel × Blue Twin");
  EXPECT_EQ(back.taxon, "Cycas revoluta");
  ASSERT_TRUE(back.cross);
  ASSERT_EQ(back.steps.size(), 4U);
  add_up(back);

  EXPECT_EQ(back.steps[0].what, "harvested");
  EXPECT_EQ(back.steps[0].code.kind(), Kind::cone);
  EXPECT_FALSE(back.steps[0].lot.stored());
  EXPECT_EQ(back.steps[0].in, 200);
  EXPECT_EQ(back.steps[0].first, day("2025-02-01"));

  EXPECT_EQ(back.steps[1].passed_on, 100); // 40 and 60 into two trays
  EXPECT_EQ(back.steps[1].to_this_line, 40);
  EXPECT_EQ(back.steps[1].on_hand, 88);
  EXPECT_EQ(back.steps[1].ended.at(State::lost_in_cleaning), 12);

  EXPECT_EQ(back.steps[2].what, "sown");
  EXPECT_EQ(back.steps[2].on_hand, 14); // 40 sown, 22 potted, 4 dead
  EXPECT_EQ(back.steps[3].what, "potted");
  EXPECT_EQ(back.steps[3].in, 22);
  EXPECT_EQ(back.steps[3].ended.at(State::sold), 5);
  EXPECT_EQ(back.steps[3].on_hand, 17);
}

TEST_F(Line, WhatWasReversedIsNotOnTheLine) {
  const auto group = nursery.lot(Kind::pot_group, cone);
  nursery.inspect(other_tray, "2025-05-01", 30);
  nursery.inspect(tray, "2025-05-01", 30);
  nursery.reverse(nursery.enter(book::Verb::pot, "2025-08-01", group,
                                {{other_tray, State::root, group, State::plant, 9}}));
  nursery.enter(book::Verb::pot, "2025-08-02", group,
                {{tray, State::root, group, State::plant, 8}});
  const auto back = back_of(nursery, group);
  ASSERT_EQ(back.steps.size(), 4U);
  add_up(back);
  EXPECT_EQ(back.steps[2].lot, tray);
  EXPECT_EQ(back.steps[3].in, 8);
  EXPECT_EQ(back.steps[3].first, day("2025-08-02"));
}

TEST_F(Line, AGroupOfTwoTraysHasBothOnItsLine) {
  // The group is older than the second tray potted into it; a tray still comes before it.
  const auto group = nursery.lot(Kind::pot_group, cone);
  nursery.inspect(tray, "2025-05-01", 30);
  nursery.enter(book::Verb::pot, "2025-08-01", group,
                {{tray, State::root, group, State::plant, 20}});
  const auto third = nursery.sow(batch, "2025-09-01", 10);
  nursery.inspect(third, "2025-11-01", 5);
  nursery.enter(book::Verb::pot, "2025-12-01", group,
                {{third, State::root, group, State::plant, 4}});
  const auto back = back_of(nursery, group);
  ASSERT_EQ(back.steps.size(), 5U);
  add_up(back);
  EXPECT_EQ(back.steps.back().lot, group);
  EXPECT_EQ(back.steps.back().in, 24);
  EXPECT_EQ(back.steps[1].to_this_line, 50); // into the two trays of this line
  EXPECT_EQ(back.steps[1].passed_on, 110);
}

TEST_F(Line, APlantFoundAtARecountIsNegativeInTheUnexplained) {
  nursery.enter(book::Verb::recount, "2025-04-01", tray,
                {{tray, State::unexplained, tray, State::sown, 2}});
  const auto back = back_of(nursery, tray);
  add_up(back);
  EXPECT_EQ(back.steps.back().ended.at(State::unexplained), -2);
  EXPECT_EQ(back.steps.back().on_hand, 42);
}

TEST_F(Line, PlantsPottedOnSayFromWhere) {
  const auto first = nursery.lot(Kind::pot_group, cone);
  const auto second = nursery.lot(Kind::pot_group, cone);
  nursery.inspect(tray, "2025-05-01", 30);
  nursery.enter(book::Verb::pot, "2025-08-01", first,
                {{tray, State::root, first, State::plant, 20}});
  nursery.enter(book::Verb::pot_on, "2026-08-01", second,
                {{first, State::plant, second, State::plant, 15}});
  const auto back = back_of(nursery, second);
  ASSERT_EQ(back.steps.size(), 5U);
  add_up(back);
  EXPECT_EQ(back.steps[4].what, "potted on");
  EXPECT_EQ(back.steps[3].to_this_line, 15);
}

TEST_F(Line, OfAPurchaseStartsThere) {
  const auto purchase = nursery.write([&](store::Writing& writing) {
    return writing
        .put(book::Purchase{{},
                            writing.next_code(Kind::purchase).value(),
                            nursery.taxon(),
                            "Green Lane",
                            day("2025-01-10"),
                            ""})
        .value();
  });
  const auto seed = nursery.harvest(purchase, "2025-01-10", 30);
  const auto back = back_of(nursery, nursery.sow(seed, "2025-02-01", 30));
  ASSERT_EQ(back.steps.size(), 3U);
  add_up(back);
  EXPECT_FALSE(back.cross);
  EXPECT_EQ(back.steps[0].code.kind(), Kind::purchase);
  EXPECT_EQ(back.steps[0].what, "bought in");
  EXPECT_NE(back.origin.find("from Green Lane"), std::string::npos);
}

TEST_F(Line, TwoCrossesOfOneNameAreToldApartByTheirCodes) {
  const auto names = [&] {
    return nursery.ask(
        [&](store::Reading& reading) { return origin_names(reading, reading.registers()); });
  };
  const auto later = nursery.cone(
      nursery.ask([&](store::Reading& reading) { return reading.registers().cone(cone).plant; }),
      "2025-06-01");
  EXPECT_EQ(names().at(cone).name, names().at(later).name); // one cross, two seasons
  EXPECT_EQ(names().at(cone).name, "Old Sentinel × Blue Twin");
  const auto namesake = nursery.cone(nursery.plant("Old Sentinel", book::Sex::female));
  EXPECT_NE(names().at(cone).name, names().at(namesake).name);
  EXPECT_EQ(names().at(cone).name, names().at(later).name);
}

} // namespace
} // namespace coneline::work
