// SPDX-License-Identifier: GPL-3.0-or-later
// What 'why' says where conditions cannot be told apart, are known of few trays, or set no limit;
// and how a book's less usual histories are read for it.
#include "core/work/why.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::work {
namespace {

using tests::day;

constexpr auto place(Condition condition) {
  return static_cast<std::size_t>(condition);
}

ExplainedTray tray(std::int64_t cone, std::int64_t germinated) {
  ExplainedTray made;
  made.seen.lot.origin = book::ConeId{cone};
  made.seen.sown = 50;
  made.germinated = germinated;
  return made;
}
void set(ExplainedTray& tray, Condition condition, const std::string& text, double number = 0) {
  tray.values[place(condition)] = ConditionValue{text, number};
}

const WhyCondition& of(const Why& why, Condition condition) {
  return *std::ranges::find(why.conditions, condition, &WhyCondition::condition);
}

Why asked(std::vector<ExplainedTray> trays, std::set<Condition> conditions) {
  WhyAsked wanted;
  wanted.as_of = day("2026-01-01");
  wanted.conditions = std::move(conditions);
  return why(std::move(trays), wanted).value();
}

/// Twelve cones of which `germinated` tells how many of 50 came up, by its number from 0.
template <class Germinated>
std::vector<ExplainedTray> twelve(Germinated germinated) {
  std::vector<ExplainedTray> trays;
  for (int i = 0; i < 12; ++i)
    trays.push_back(tray(i + 1, germinated(i)));
  return trays;
}

TEST(WhyMore, RefusesWhatIsNoConfidenceAndNoDay) {
  for (const double confidence : {0.0, 1.0, -0.5, std::nan("")}) {
    WhyAsked wanted;
    wanted.confidence = confidence;
    EXPECT_FALSE(why(std::vector<ExplainedTray>{}, wanted)) << confidence;
  }
  for (const double by_day : {0.0, -3.0}) {
    WhyAsked wanted;
    wanted.by_day = by_day;
    EXPECT_FALSE(why(std::vector<ExplainedTray>{}, wanted)) << by_day;
  }
}

// Measured conditions have a slope each; 2 of 50 more for each step is 0.04.
TEST(WhyMore, SaysTheSlopeOfEveryMeasuredConditionByItsUnit) {
  auto trays = twelve([](int i) { return 14 + 2 * (i % 6) + (i > 5 ? 1 : 0); });
  for (int i = 0; i < 12; ++i)
    for (const auto condition : {Condition::pollen_age, Condition::pollen_test,
                                 Condition::after_ripening, Condition::temperature})
      set(trays[static_cast<std::size_t>(i)], condition, "", i % 6);
  const auto found = asked(trays, {Condition::pollen_age, Condition::pollen_test,
                                   Condition::after_ripening, Condition::temperature});
  for (const auto& [condition, each] : {std::pair(Condition::pollen_age, "each day older"),
                                        std::pair(Condition::pollen_test, "each % more"),
                                        std::pair(Condition::after_ripening, "each month more"),
                                        std::pair(Condition::temperature, "each °C more")}) {
    const auto& slope = of(found, condition).slope;
    ASSERT_TRUE(slope) << each;
    EXPECT_EQ(slope->each, each);
    ASSERT_TRUE(slope->alone);
    EXPECT_NEAR(slope->alone->difference, 0.04, 0.004);
    EXPECT_FALSE(slope->together); // all four are the same numbers
  }
}

TEST(WhyMore, NoSlopeIsDrawnThroughNothingOrEverything) {
  for (const std::int64_t up : {0, 50}) {
    auto trays = twelve([up](int) { return up; });
    for (int i = 0; i < 12; ++i)
      set(trays[static_cast<std::size_t>(i)], Condition::after_ripening, "", i);
    const auto found = asked(trays, {Condition::after_ripening});
    const auto& months = of(found, Condition::after_ripening);
    ASSERT_TRUE(months.slope) << up;
    EXPECT_FALSE(months.slope->alone) << up;
  }
  auto two = std::vector{tray(1, 10), tray(2, 20)};
  set(two[0], Condition::after_ripening, "", 1);
  set(two[1], Condition::after_ripening, "", 2);
  const auto found = asked(two, {Condition::after_ripening});
  EXPECT_FALSE(of(found, Condition::after_ripening).slope->alone); // fewer than three cones
}

TEST(WhyMore, LooksAtTwoConditionsTogetherAndHoldsOneAgainstTheOther) {
  // Filled and mix cross evenly: 10 more for filled, 5 more for grit.
  auto trays = twelve([](int i) { return 15 + (i % 2 == 0 ? 10 : 0) + (i % 4 < 2 ? 5 : 0); });
  for (int i = 0; i < 12; ++i) {
    auto& each = trays[static_cast<std::size_t>(i)];
    set(each, Condition::judged, i % 2 == 0 ? "filled" : "empty");
    set(each, Condition::medium, i % 4 < 2 ? "grit" : "peat");
  }
  const auto found = asked(trays, {Condition::judged, Condition::medium});
  EXPECT_EQ(found.trays_together, 12U);
  ASSERT_TRUE(found.rho);
  for (const auto& [condition, expected] :
       {std::pair(Condition::judged, 0.2), std::pair(Condition::medium, 0.1)}) {
    const auto& levels = of(found, condition).levels;
    ASSERT_EQ(levels.size(), 2U);
    ASSERT_TRUE(levels[1].together);
    EXPECT_NEAR(std::abs(levels[1].together->difference), expected, 0.01);
  }
}

TEST(WhyMore, SaysWhatIsKnownOfTooFewTrays) {
  auto trays = twelve([](int i) { return 15 + i; });
  for (int i = 0; i < 12; ++i) {
    auto& each = trays[static_cast<std::size_t>(i)];
    set(each, Condition::judged, i % 2 == 0 ? "filled" : "empty");
    if (i < 6) // half of them is not most
      set(each, Condition::medium, i % 3 == 0 ? "grit" : "peat");
  }
  const auto found = asked(trays, {Condition::judged, Condition::medium});
  EXPECT_NE(of(found, Condition::medium).told.find("known of 6 in 12 trays"), std::string::npos)
      << of(found, Condition::medium).told;
  EXPECT_EQ(of(found, Condition::medium).trays_known, 6U);
  EXPECT_FALSE(found.rho); // one condition alone is nothing to look at together
}

TEST(WhyMore, SaysWhereThereAreTooFewConesForSoManyLevels) {
  auto trays = twelve([](int i) { return 15 + i; });
  for (int i = 0; i < 12; ++i) {
    auto& each = trays[static_cast<std::size_t>(i)];
    set(each, Condition::judged, i % 2 == 0 ? "filled" : "empty");
    set(each, Condition::seed_parent, std::string(1, static_cast<char>('A' + i / 2)));
  }
  const auto found = asked(trays, {Condition::judged, Condition::seed_parent});
  EXPECT_NE(of(found, Condition::seed_parent).told.find("too few cones and trays"),
            std::string::npos)
      << of(found, Condition::seed_parent).told;
}

// Bought seed is all "not judged" and all of one seed parent: its trays stay out, the rest is told.
TEST(WhyMore, KeepsOutTheTraysThatCannotBeToldApart) {
  std::vector<ExplainedTray> trays;
  for (int i = 0; i < 20; ++i) {
    auto each = tray(i + 1, 15 + (i % 2 == 0 ? 10 : 0) + i % 3);
    set(each, Condition::judged, i % 2 == 0 ? "filled" : "empty");
    set(each, Condition::seed_parent, i % 4 < 2 ? "Ada" : "Bess");
    trays.push_back(each);
  }
  for (int i = 0; i < 3; ++i) {
    auto each = tray(30 + i, 8 + i);
    set(each, Condition::judged, "not judged");
    set(each, Condition::seed_parent, "Kiln");
    trays.push_back(each);
  }
  const auto found = asked(trays, {Condition::judged, Condition::seed_parent});
  EXPECT_EQ(found.trays_together, 20U);
  EXPECT_NE(of(found, Condition::seed_parent).told.find("3 trays stay out"), std::string::npos)
      << of(found, Condition::seed_parent).told;
  ASSERT_FALSE(of(found, Condition::seed_parent).levels.empty());
  for (const auto& level : of(found, Condition::seed_parent).levels)
    EXPECT_EQ(level.together.has_value(), !level.reference && level.level != "Kiln") << level.level;
}

class WhyOfABook : public testing::Test {
 protected:
  std::vector<ExplainedTray> read(std::optional<double> by_day = {},
                                  std::optional<book::TaxonId> taxon = {}) {
    WhyAsked wanted;
    wanted.as_of = day("2026-01-01");
    wanted.by_day = by_day;
    wanted.taxon = taxon;
    return nursery.ask([&](store::Reading& reading) { return explained_trays(reading, wanted); });
  }
  book::LotId looked_at(const book::Origin& origin) {
    const auto batch = nursery.harvest(origin, "2025-02-01", 60);
    const auto sown = nursery.sow(batch, "2025-05-01", 40);
    nursery.inspect(sown, "2025-06-01", 8);
    return sown;
  }
  /// A pass over this cone with these lots.
  void pass(book::ConeId cone, const std::vector<book::PollenUsed>& used) {
    book::Entry entry;
    entry.verb = book::Verb::pollinate;
    entry.date = day("2024-06-05");
    entry.cone = cone;
    entry.detail = book::Pollination{book::PollinationMethod::dry, used};
    nursery.enter(entry);
  }
  book::ConeId cone_without_pass(book::PlantId of) {
    return nursery.write([&](store::Writing& writing) {
      return writing.put(book::Cone{{}, writing.next_code(Kind::cone).value(), of, {}, ""}).value();
    });
  }

  tests::SmallNursery nursery;
  book::PlantId mother = nursery.plant("Old Sentinel", book::Sex::female);
};

TEST_F(WhyOfABook, NamesEveryFatherAndTheUnknownOne) {
  const auto cone = nursery.cone(mother);
  const auto second = nursery.plant("Grey Monk", book::Sex::male);
  const auto lot = nursery.write([&](store::Writing& writing) {
    return writing
        .put(book::PollenLot{
            {}, writing.next_code(Kind::pollen).value(), second, day("2024-06-03"), {}, "", ""})
        .value();
  });
  pass(cone, {{lot, {}}, {std::nullopt, {}}});
  looked_at(cone);
  const auto trays = read();
  ASSERT_EQ(trays.size(), 1U);
  EXPECT_EQ(trays[0].value(Condition::pollen_parents)->text, "Blue Twin + Grey Monk + unknown");
  // 31 days (2024-05-01 to 06-01) and 2 (06-03 to 06-05); of the unknown pollen nobody knows.
  EXPECT_DOUBLE_EQ(trays[0].value(Condition::pollen_age)->number, 16.5);
}

TEST_F(WhyOfABook, LeavesOpenWhatNobodyKnowsOfThePollen) {
  const auto unknown = cone_without_pass(mother);
  pass(unknown, {{std::nullopt, {}}});
  looked_at(unknown);
  const auto never = cone_without_pass(mother);
  looked_at(never);
  const auto trays = read();
  ASSERT_EQ(trays.size(), 2U);
  EXPECT_EQ(trays[0].value(Condition::pollen_parents)->text, "unknown");
  EXPECT_FALSE(trays[0].value(Condition::pollen_age));
  EXPECT_FALSE(trays[0].value(Condition::pollen_test));
  EXPECT_FALSE(trays[1].value(Condition::pollen_parents));
}

TEST_F(WhyOfABook, NamesThePurchaseOfBoughtSeedAndTheJudgementWithItsTest) {
  const auto purchase = nursery.write([&](store::Writing& writing) {
    return writing
        .put(book::Purchase{{},
                            writing.next_code(Kind::purchase).value(),
                            nursery.taxon(),
                            "Kiln",
                            day("2025-02-01"),
                            ""})
        .value();
  });
  const auto batch = nursery.harvest(purchase, "2025-02-01", 60);
  const auto tray = nursery.write([&](store::Writing& writing) {
    book::Lot lot;
    lot.code = writing.next_code(Kind::tray).value();
    lot.origin = purchase;
    lot.judged = book::Judged::filled;
    lot.judged_by = book::SeedTest::floating;
    lot.pot = nursery.tray_pot();
    lot.mix = nursery.mix();
    return writing.add(lot).value();
  });
  nursery.enter(book::Verb::sow, "2025-05-01", tray,
                {{batch, book::State::unsorted, tray, book::State::sown, 40}});
  nursery.inspect(tray, "2025-06-01", 8);
  const auto trays = read();
  ASSERT_EQ(trays.size(), 1U);
  EXPECT_NE(trays[0].value(Condition::seed_parent)->text.find("Kiln"), std::string::npos);
  EXPECT_EQ(trays[0].value(Condition::judged)->text, "filled (float)");
  EXPECT_EQ(trays[0].value(Condition::medium)->text, "cycad mix");
  EXPECT_FALSE(trays[0].value(Condition::pollen_parents));
  EXPECT_FALSE(trays[0].value(Condition::store)); // put by nowhere
  EXPECT_TRUE(read(40).empty());                  // no look on day 40 or later
  EXPECT_TRUE(read({}, book::TaxonId{99}).empty());
}

TEST_F(WhyOfABook, TakesTheLastStoreBeforeSowing) {
  const auto cone = nursery.cone(mother);
  const auto batch = nursery.harvest(cone, "2025-02-01", 60);
  for (const auto& [on, store] :
       {std::pair("2025-02-05", "refrigerator"), std::pair("2025-03-05", "box of perlite"),
        std::pair("2025-04-05", ""), std::pair("2025-07-01", "cellar")}) {
    book::Entry keep;
    keep.verb = book::Verb::store;
    keep.date = day(on);
    keep.lot = batch;
    keep.detail = book::Keeping{store, {}, {}, {}};
    nursery.enter(keep);
  }
  const auto sown = nursery.sow(batch, "2025-05-01", 40);
  EXPECT_TRUE(read().empty()); // nobody has looked at it
  nursery.inspect(sown, "2025-06-01", 8);
  EXPECT_EQ(read().at(0).value(Condition::store)->text, "box of perlite");
}

} // namespace
} // namespace coneline::work
