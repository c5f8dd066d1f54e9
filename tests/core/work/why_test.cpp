// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/why.h"
#include "tests/core/stats/drawn_trays.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::work {
namespace {

using tests::day;

std::size_t place(Condition condition) {
  return static_cast<std::size_t>(condition);
}

/// A tray of a cone with a judgement and months of after-ripening.
ExplainedTray tray(std::int64_t cone, const std::string& judged, double months, std::int64_t sown,
                   std::int64_t germinated) {
  ExplainedTray made;
  made.seen.lot.origin = book::ConeId{cone};
  made.seen.sown = sown;
  made.germinated = germinated;
  made.values[place(Condition::judged)] = ConditionValue{judged, 0};
  made.values[place(Condition::after_ripening)] = ConditionValue{"", months};
  return made;
}

const WhyCondition& of(const Why& why, Condition condition) {
  return *std::ranges::find(why.conditions, condition, &WhyCondition::condition);
}

Why asked(std::vector<ExplainedTray> trays, double confidence = 0.95) {
  WhyAsked wanted;
  wanted.as_of = day("2026-01-01");
  wanted.confidence = confidence;
  wanted.conditions = {Condition::judged, Condition::after_ripening};
  return why(std::move(trays), wanted).value();
}

/// Judged filled against empty makes 0.3 of a difference, each month 0.02; cones differ.
std::vector<ExplainedTray> drawn(stats::Chance& draw) {
  std::vector<ExplainedTray> trays;
  for (int cone = 1; cone <= 24; ++cone) {
    const double months = draw.between(0, 12);
    for (const auto* judged : {"filled (float)", "empty (float)"}) {
      const double mean = 0.3 + (judged[0] == 'f' ? 0.3 : 0) + 0.02 * (months - 6);
      const double share = draw.share(mean, 0.03);
      for (int i = 0; i < 2; ++i)
        trays.push_back(tray(cone, judged, months, 50, draw.binomial(50, share)));
    }
  }
  return trays;
}

TEST(Why, FindsTheDifferencesThatWereDrawn) {
  stats::Chance draw(3);
  int judged_held = 0;
  int months_held = 0;
  constexpr int times = 40;
  for (int i = 0; i < times; ++i) {
    const auto found = asked(drawn(draw));
    const auto& judged = of(found, Condition::judged);
    ASSERT_EQ(judged.levels.size(), 2U);
    const auto& other = judged.levels.back();
    const auto& together = other.together.value();
    const double truth = other.level[0] == 'f' ? 0.3 : -0.3;
    judged_held += together.low <= truth && truth <= together.high ? 1 : 0;
    const auto& slope = of(found, Condition::after_ripening).slope.value();
    months_held += slope.together->low <= 0.02 && 0.02 <= slope.together->high ? 1 : 0;
    EXPECT_LT(together.p_value, 0.001);
    EXPECT_TRUE(found.rho);
  }
  // 95 in 100; three standard errors of 40 trials are 10 in 100.
  EXPECT_GE(judged_held, times * 0.85);
  EXPECT_GE(months_held, times * 0.85);
}

TEST(Why, WhatGoesHandInHandIsNotLookedAtTogether) {
  std::vector<ExplainedTray> trays;
  for (int cone = 1; cone <= 8; ++cone)
    trays.push_back(tray(cone, cone % 2 == 0 ? "filled (float)" : "empty (float)",
                         cone % 2 == 0 ? 6 : 1, 50, cone % 2 == 0 ? 30 : 10));
  const auto found = asked(trays);
  const auto& months = of(found, Condition::after_ripening);
  EXPECT_NE(months.told.find("goes hand in hand with float or other seed test"), std::string::npos)
      << months.told;
  EXPECT_FALSE(months.slope->together);
  EXPECT_TRUE(months.slope->alone);
  EXPECT_FALSE(found.rho);
}

TEST(Why, SaysWhenThereIsNothingToCompare) {
  const auto same = asked({tray(1, "not judged", 3, 50, 20), tray(2, "not judged", 3, 50, 25)});
  EXPECT_EQ(of(same, Condition::judged).told, "the same in every tray");
  EXPECT_FALSE(of(same, Condition::after_ripening).slope);
  EXPECT_NE(asked({}).told.find("No tray to compare"), std::string::npos);
}

TEST(Why, NothingUpOnOneSideGivesARangeAllTheSame) {
  std::vector<ExplainedTray> trays;
  for (int cone = 1; cone <= 6; ++cone)
    trays.push_back(
        tray(cone, cone <= 3 ? "filled (float)" : "empty (float)", cone, 50, cone <= 3 ? 25 : 0));
  const auto found = asked(trays);
  const auto& other = of(found, Condition::judged).levels.back();
  ASSERT_TRUE(other.alone);
  EXPECT_EQ(other.level,
            "filled (float)"); // as many seeds in both: the first by name is compared with
  EXPECT_GT(other.alone->low, 0.3);
  EXPECT_LT(other.alone->high, 0.7);
  EXPECT_FALSE(other.together && std::abs(other.together->difference) > 1);
}

TEST(Why, ReadsTheConditionsOfABook) {
  tests::SmallNursery nursery;
  const auto cone = nursery.cone(nursery.plant("Old Sentinel", book::Sex::female));
  const auto batch = nursery.harvest(cone, "2025-02-01", 100);
  book::Entry keep;
  keep.verb = book::Verb::store;
  keep.date = day("2025-02-05");
  keep.lot = batch;
  keep.detail = book::Keeping{"refrigerator", 5.0, {}, {}};
  nursery.enter(keep);
  const auto sown = nursery.sow(batch, "2025-05-03", 50);
  nursery.inspect(sown, "2025-06-02", 5);
  nursery.inspect(sown, "2025-07-02", 10);
  WhyAsked wanted;
  wanted.as_of = day("2025-12-31");
  wanted.celsius[sown] = 26.5;
  const auto read = [&] {
    return nursery.ask([&](store::Reading& reading) { return explained_trays(reading, wanted); });
  };
  const auto all = read();
  ASSERT_EQ(all.size(), 1U);
  const auto text = [&](Condition condition) { return all[0].value(condition)->text; };
  EXPECT_EQ(text(Condition::seed_parent), "Old Sentinel");
  EXPECT_EQ(text(Condition::pollen_parents), "Blue Twin");
  EXPECT_EQ(text(Condition::store), "refrigerator");
  EXPECT_EQ(text(Condition::sowing_month), "May");
  EXPECT_EQ(text(Condition::judged), "not judged");
  EXPECT_EQ(all[0].value(Condition::pollen_age)->number, 31); // 2024-05-01 to 2024-06-01
  EXPECT_NEAR(all[0].value(Condition::after_ripening)->number, 91 / 30.4375, 1e-9);
  EXPECT_EQ(all[0].value(Condition::temperature)->number, 26.5);
  EXPECT_FALSE(all[0].value(Condition::pollen_test)); // nobody tested it
  EXPECT_FALSE(all[0].value(Condition::medium));      // sown without a mix here
  EXPECT_EQ(all[0].germinated, 15);
  book::Entry test;
  test.verb = book::Verb::test_pollen;
  test.date = day("2024-05-20");
  test.detail = book::PollenNote{book::PollenLotId{1}, {}, 100, 62, ""};
  nursery.enter(test);
  test.date = day("2024-07-01"); // after the pass: says nothing of what was used
  test.detail = book::PollenNote{book::PollenLotId{1}, {}, 100, 10, ""};
  nursery.enter(test);
  ASSERT_TRUE(read()[0].value(Condition::pollen_test));
  EXPECT_EQ(read()[0].value(Condition::pollen_test)->number, 62);
  wanted.by_day = 40;
  EXPECT_EQ(read()[0].germinated, 5);
  wanted.by_day = 100; // no look so late
  EXPECT_TRUE(read().empty());
}

TEST(Why, WordsOfConditionsReadBack) {
  for (const auto condition : all_conditions)
    EXPECT_EQ(condition_named(condition_word(condition)), condition);
  EXPECT_FALSE(condition_named("luck"));
}

} // namespace
} // namespace coneline::work
