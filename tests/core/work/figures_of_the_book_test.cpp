// SPDX-License-Identifier: GPL-3.0-or-later
// Figures that a book gives of itself: seed set by the age of pollen, seed to come from cones,
// stores held side by side, roots and leaves.
#include "core/work/cone_seed.h"
#include "core/work/pollen.h"
#include "core/work/reverse.h"
#include "core/work/root_and_leaf.h"
#include "core/work/stores.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::work {
namespace {

using book::State;
using tests::day;

class Figures : public testing::Test {
 protected:
  template <class Ask>
  auto with_registers(Ask ask) {
    return nursery.ask([&](store::Reading& reading) { return ask(reading, reading.registers()); });
  }
  book::PollenLotId pollen(std::string_view collected, const std::string& store,
                           std::optional<double> millilitres = {}) {
    return nursery.write([&](store::Writing& writing) {
      return writing
          .put(book::PollenLot{{},
                               writing.next_code(Kind::pollen).value(),
                               writing.registers().pollen_lots.front().plant,
                               day(collected),
                               millilitres,
                               store,
                               ""})
          .value();
    });
  }
  book::ConeId bare_cone() {
    return nursery.write([&](store::Writing& writing) {
      return writing.put(book::Cone{{}, writing.next_code(Kind::cone).value(), mother, {}, ""})
          .value();
    });
  }
  void pass(book::ConeId cone, std::string_view on, const std::vector<book::PollenUsed>& used) {
    book::Entry entry;
    entry.verb = book::Verb::pollinate;
    entry.date = day(on);
    entry.cone = cone;
    entry.detail = book::Pollination{{}, used};
    nursery.enter(entry);
  }
  void scales(book::ConeId cone, std::int64_t fertile) {
    book::Entry entry;
    entry.verb = book::Verb::check_scales;
    entry.date = day("2024-06-01");
    entry.cone = cone;
    entry.detail = book::ConeLook{book::Scales::loose, fertile};
    nursery.enter(entry);
  }
  void keep(book::LotId batch, std::string_view on, const std::string& store) {
    book::Entry entry;
    entry.verb = book::Verb::store;
    entry.date = day(on);
    entry.lot = batch;
    entry.detail = book::Keeping{store, {}, {}, {}};
    nursery.enter(entry);
  }
  void judge(book::LotId batch, std::string_view on, std::int64_t filled, std::int64_t empty) {
    book::Entry entry;
    entry.verb = book::Verb::sort;
    entry.date = day(on);
    entry.lot = batch;
    entry.detail = book::Sorting{book::SeedTest::floating};
    for (const auto& [state, count] :
         {std::pair(State::judged_filled, filled), std::pair(State::judged_empty, empty)})
      if (count > 0)
        entry.movements.push_back({{batch, State::unsorted}, {batch, state}, Count::sure(count)});
    nursery.enter(entry);
  }

  tests::SmallNursery nursery;
  book::PlantId mother = nursery.plant("Old Sentinel", book::Sex::female);
};

TEST_F(Figures, SeedSetByStoreAndAgeOfThePollen) {
  const auto fresh = pollen("2024-05-20", "refrigerator");
  const auto old = pollen("2022-05-20", "refrigerator");
  const auto one = bare_cone();
  pass(one, "2024-06-01", {{fresh, {}}});
  pass(one, "2024-06-03", {{fresh, {}}});
  scales(one, 50);
  const auto tray = nursery.sow(nursery.harvest(one, "2025-06-01", 60), "2025-07-01", 40);
  nursery.inspect(tray, "2025-08-01", 10);
  const auto two = bare_cone();
  pass(two, "2024-06-01", {{old, {}}});
  nursery.harvest(two, "2025-06-01", 20); // scales not counted, nothing sown
  const auto mixed = bare_cone();
  pass(mixed, "2024-06-01", {{fresh, {}}, {old, {}}});
  nursery.harvest(mixed, "2025-06-01", 99);
  const auto unknown = bare_cone();
  pass(unknown, "2024-06-01", {{std::nullopt, {}}});
  nursery.harvest(unknown, "2025-06-01", 99);
  pass(bare_cone(), "2024-06-01", {{fresh, {}}}); // still on the plant
  nursery.harvest(bare_cone(), "2025-06-01", 99); // nobody pollinated it
  const auto rows = with_registers(
      [](auto& reading, const auto& registers) { return pollen_by_age(reading, registers); });
  ASSERT_EQ(rows.size(), 2U);
  EXPECT_EQ(rows[0].years, 0);
  EXPECT_EQ(rows[0].cones, 1);
  EXPECT_EQ(rows[0].seeds, 60);
  EXPECT_EQ(rows[0].ceiling, 100); // two a scale
  EXPECT_EQ(rows[0].sown, 40);
  EXPECT_EQ(rows[0].germinated, 10);
  ASSERT_TRUE(rows[0].set && rows[0].germination);
  EXPECT_LT(rows[0].set->low, 0.6);
  EXPECT_GT(rows[0].set->high, 0.6);
  EXPECT_EQ(rows[1].years, 2);
  EXPECT_EQ(rows[1].seeds, 20);
  EXPECT_FALSE(rows[1].set);
  EXPECT_FALSE(rows[1].germination);
}

TEST_F(Figures, PollenLeftGoneAndOld) {
  nursery.write([](store::Writing& writing) {
    for (const auto& [name, low] : {std::pair("fridge", 1.0), std::pair("fridge, dry", 2.0)})
      static_cast<void>(
          writing.put(book::PollenStore{{}, name, {book::Range{low, low + 1}, "test"}}).value());
    return true;
  });
  const auto dry = pollen("2024-05-20", "fridge, dry, in glass", 3);
  const auto wet = pollen("2024-05-21", "fridge", 0.3);
  const auto bench = pollen("2024-05-22", "bench");
  const auto lines = [&] {
    return with_registers([](auto& reading, const auto& registers) {
      std::map<book::PollenLotId, PollenLine> by_lot;
      for (auto& line : pollen_lines(reading, registers))
        by_lot.emplace(line.lot.id, line);
      return by_lot;
    });
  };
  EXPECT_EQ(lines().at(dry).old_from, day("2026-05-20")); // the longer name of a store holds
  EXPECT_EQ(lines().at(wet).old_from, day("2025-05-21"));
  EXPECT_FALSE(lines().at(bench).old_from);
  EXPECT_FALSE(lines().at(bench).left);
  pass(bare_cone(), "2024-06-01", {{wet, 0.1}, {bench, {}}});
  pass(bare_cone(), "2024-06-02", {{wet, 0.2}});
  EXPECT_EQ(lines().at(wet).left, 0); // 0.1 and 0.2 of 0.3
  EXPECT_FALSE(lines().at(wet).there());
  EXPECT_EQ(lines().at(bench).passes_unmeasured, 1);
  EXPECT_TRUE(lines().at(bench).there());
  const auto code = with_registers(
      [&](auto&, const auto& registers) { return registers.pollen_lot(bench).code; });
  ASSERT_TRUE(discard_pollen(nursery.book(), {code, {}, {day("2024-06-10"), "", ""}}));
  EXPECT_EQ(lines().at(bench).gone, day("2024-06-10"));
  EXPECT_FALSE(lines().at(bench).there());
}

TEST_F(Figures, PollenWhoseCollectionWasTakenBackIsGone) {
  const auto male = with_registers([](auto&, const auto& registers) {
    return registers.plant(registers.pollen_lots.front().plant).code;
  });
  const auto made =
      collect_pollen(nursery.book(), {male, 2, "fridge", {day("2024-06-01"), "", ""}}).value();
  ASSERT_TRUE(collect_pollen(nursery.book(), {made.made[0], 1, "", {day("2024-06-02"), "", ""}}));
  ASSERT_TRUE(reverse(nursery.book(), {made.entries[0], "", ""}));
  const auto again =
      collect_pollen(nursery.book(), {made.made[0], 1, "", {day("2024-06-03"), "", ""}});
  ASSERT_FALSE(again);
  EXPECT_NE(again.error().text().find("was taken back"), std::string::npos);
  const auto gone = with_registers([&](auto& reading, const auto& registers) {
    for (const auto& line : pollen_lines(reading, registers))
      if (line.lot.code == made.made[0])
        return line.gone;
    return std::optional<Date>();
  });
  EXPECT_EQ(gone, day("2024-06-01"));
}

// A cone of unsorted seed tells nothing of what gets sown; one of sorted seed does.
TEST_F(Figures, SeedToComeRestsOnThePlantsConesElseTheTaxonsElseOnPractice) {
  const auto come = [&](std::string_view today) {
    return with_registers([&](auto& reading, const auto& registers) {
      return cones_to_come(reading, registers, day(today));
    });
  };
  const auto coming = nursery.cone(mother, "2025-06-01");
  auto told = come("2025-07-01");
  ASSERT_EQ(told.cones.size(), 1U);
  EXPECT_TRUE(told.cones[0].usual_alone);
  EXPECT_EQ(told.cones[0].draws.size(), ConeHabits{}.draws);
  const auto first = nursery.harvest(nursery.cone(mother), "2025-06-01", 100);
  EXPECT_TRUE(come("2025-07-01").cones[0].usual_alone); // unsorted as it is
  judge(first, "2025-06-02", 60, 40);
  told = come("2025-07-01");
  EXPECT_FALSE(told.cones[0].usual_alone);
  EXPECT_EQ(told.cones[0].basis, "1 earlier cone of Cycas revoluta");
  judge(nursery.harvest(nursery.cone(mother), "2025-06-01", 80), "2025-06-02", 0, 80); // none
  EXPECT_EQ(come("2025-07-01").cones[0].basis, "2 earlier cones of the plant");
  // Two seeds a fertile scale are the most that any draw brings.
  scales(coming, 10);
  told = come("2025-07-01");
  for (const auto& draw : told.cones[0].draws) {
    EXPECT_LE(draw.seeds, 20);
    EXPECT_GE(draw.sown_on, day("2025-07-01"));
  }
  bare_cone();
  const auto left = come("2025-07-01").left_out;
  ASSERT_EQ(left.size(), 1U);
  EXPECT_NE(left[0].find("took no pollen"), std::string::npos);
  // About twelve months, half a year overdue at the most.
  const auto late = come("2027-06-01");
  EXPECT_TRUE(late.cones.empty());
  EXPECT_NE(late.left_out[0].find("was to be ripe by"), std::string::npos);
  nursery.harvest(coming, "2026-06-01", 30);
  EXPECT_TRUE(come("2026-06-02").cones.empty());
  EXPECT_EQ(come("2026-05-01").cones.size(), 1U); // it stood then
}

TEST_F(Figures, StoresAreComparedByWhatWasSownFromThem) {
  std::vector<book::LotId> batches;
  for (int i = 0; i < 3; ++i) {
    const auto batch = nursery.harvest(nursery.cone(mother), "2025-01-01", 60);
    keep(batch, "2025-01-05", "box");
    const auto tray = nursery.sow(batch, i == 2 ? "2025-05-01" : "2025-03-01", 30);
    nursery.inspect(tray, "2025-08-01", 10 * (i + 1), 0, 0);
    batches.push_back(batch);
  }
  const auto waits = nursery.harvest(nursery.cone(mother), "2025-01-01", 60);
  keep(waits, "2025-01-05", "cellar");
  nursery.sow(waits, "2025-03-01", 30); // nothing seen of it yet
  nursery.sow(nursery.harvest(nursery.cone(mother), "2025-01-01", 60), "2025-03-01", 30); // unkept
  const auto kept = with_registers([](auto& reading, const auto& registers) {
    return kept_batches(reading, registers, day("2025-12-01"));
  });
  ASSERT_EQ(kept.size(), 4U);
  const auto stores = with_registers(
      [&](auto&, const auto& registers) { return compare_stores(kept, registers, 0.95); });
  ASSERT_EQ(stores.size(), 1U); // nothing was tried yet from the cellar
  EXPECT_EQ(stores[0].store, "box");
  EXPECT_EQ(stores[0].tried, 60);
  EXPECT_EQ(stores[0].came_up, 60);
  EXPECT_EQ(stores[0].waiting, 30);
  EXPECT_NEAR(stores[0].months_high, 3.94, 0.01); // 120 days
  const auto months = own_after_ripening(kept, nursery.taxon());
  ASSERT_TRUE(months); // half of all that came up came from the last one
  EXPECT_NEAR(months->low, 1.94, 0.01);
  EXPECT_NEAR(months->high, 3.94, 0.01);
  EXPECT_FALSE(own_after_ripening(std::span(kept).first(2), nursery.taxon()));
  EXPECT_FALSE(own_after_ripening(kept, book::TaxonId{99}));
  const auto before = with_registers([](auto& reading, const auto& registers) {
    return kept_batches(reading, registers, day("2025-01-03"));
  });
  EXPECT_TRUE(before.empty());
}

TEST_F(Figures, RootsAndLeavesOfTwoCrossesAreHeldAgainstEachOther) {
  const auto other = nursery.plant("Grey Widow", book::Sex::female);
  for (const auto& [female, last] : {std::pair(mother, "2025-05-01"), {other, "2025-08-01"}}) {
    const auto tray =
        nursery.sow(nursery.harvest(nursery.cone(female), "2025-01-01", 60), "2025-03-01", 40);
    nursery.inspect(tray, "2025-04-01", 20);
    nursery.inspect(tray, last, 0, 15);
  }
  nursery.sow(nursery.harvest(nursery.cone(mother), "2025-01-01", 60), "2025-03-01", 40);
  const auto ask = [&](double confidence) {
    return nursery.book().read([&](store::Reading& reading) {
      return root_and_leaf(reading, day("2025-12-01"), confidence);
    });
  };
  const auto book = ask(0.95).value();
  ASSERT_EQ(book.crosses.size(), 2U);
  const auto& grey = book.crosses[0];
  EXPECT_EQ(grey.wait.roots, 20U);
  EXPECT_EQ(grey.wait.leafed, 15U);
  EXPECT_DOUBLE_EQ(*grey.wait.half, 122);           // 2025-04-01 to 08-01
  EXPECT_DOUBLE_EQ(*book.crosses[1].wait.half, 30); // to 05-01
  EXPECT_EQ(book.crosses[1].trays, 2U);
  ASSERT_EQ(book.comparisons.size(), 1U);
  ASSERT_TRUE(book.comparisons[0].p_adjusted);
  EXPECT_LT(*book.comparisons[0].p_adjusted, 0.001);
  for (const double confidence : {0.0, 1.0})
    EXPECT_FALSE(ask(confidence)) << confidence;
}

} // namespace
} // namespace coneline::work
