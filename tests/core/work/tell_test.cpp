// SPDX-License-Identifier: GPL-3.0-or-later
// What an entry and a label say, in their own words.
#include "core/work/pollen.h"
#include "core/work/reverse.h"
#include "core/work/tell.h"
#include "core/work/tell_label.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

namespace coneline::work {
namespace {

using tests::day;

class Told : public testing::Test {
 protected:
  Told() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {}

  std::string said(book::Verb verb, const book::Detail& detail) {
    book::Entry entry;
    entry.verb = verb;
    entry.detail = detail;
    return book.read([&](store::Reading& reading) { return tell(reading, entry); }).value();
  }
  LabelTold label(const Code& code, std::string_view on = "2026-03-10") {
    return book
        .read([&](store::Reading& reading) {
          return tell_label(reading, reading.registers(), code, day(on));
        })
        .value();
  }
  book::Registers registers() {
    return book.read([](store::Reading& reading) { return reading.registers(); }).value();
  }
  template <class Row>
  void put(const Row& row) {
    ASSERT_TRUE(book.write([&](store::Writing& writing) -> Result<void> {
      return writing.put(row).map([](auto) {});
    }));
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
};

TEST_F(Told, WhatWentWithTheSeed) {
  using book::Verb;
  EXPECT_EQ(said(Verb::pollinate, book::Pollination{{}, {{}, {}}}),
            "pollinate: dry pollen, 2 lots");
  EXPECT_EQ(said(Verb::pollinate, book::Pollination{book::PollinationMethod::wet, {{}}}),
            "pollinate: wet pollen, one lot");
  EXPECT_EQ(said(Verb::clean, book::Cleaning{0}), "clean");
  EXPECT_EQ(said(Verb::clean, book::Cleaning{3}), "clean: soaked 3 days");
  EXPECT_EQ(said(Verb::harvest, book::Weighing{{}, 12.5}), "harvest: by weight, 12.5 g");
  EXPECT_EQ(said(Verb::store, book::Keeping{"refrigerator", {}, {}, {}}), "store: refrigerator");
  EXPECT_EQ(said(Verb::store, book::Keeping{"box", 4.5, day("2026-05-01"), {}}),
            "store: box at 4.5 °C, to look at from 2026-05-01");
  EXPECT_EQ(said(Verb::sell, book::Sale{"", {}}), "sell: to nobody named");
  EXPECT_EQ(said(Verb::sell, book::Sale{"A. Fern", 1205}), "sell: to A. Fern for 12.05");
  EXPECT_EQ(said(Verb::inspect, {}), "inspect: nothing new");
}

TEST_F(Told, WhatWasSeenOfConesPlantsAndPollen) {
  using book::Verb;
  EXPECT_EQ(said(Verb::check_scales, book::ConeLook{book::Scales::loose, {}}),
            "check scales: loose");
  EXPECT_EQ(said(Verb::check_scales, book::ConeLook{book::Scales::closed, 80}),
            "check scales: closed, 80 fertile scales");
  EXPECT_EQ(said(Verb::watch_male_cone, book::PlantNote{{}, book::MaleCone::shedding, {}}),
            "watch male cone: shedding");
  EXPECT_EQ(said(Verb::plan_move, book::PlantNote{{}, {}, {}}), "plan move: to another place");
  EXPECT_EQ(said(Verb::collect_pollen, book::PollenNote{{}, 2.5, {}, {}, ""}),
            "collect pollen: 2.5 ml");
  EXPECT_EQ(said(Verb::discard_pollen, book::PollenNote{{}, {}, {}, {}, ""}), "discard pollen");
  EXPECT_EQ(said(Verb::test_pollen, book::PollenNote{{}, {}, 100, 62, ""}),
            "test pollen: 62 of 100 grains germinated");
  EXPECT_EQ(said(Verb::test_pollen, book::PollenNote{{}, {}, 100, 62, "agar"}),
            "test pollen: 62 of 100 grains germinated, agar");
  EXPECT_EQ(said(Verb::test_pollen, book::PollenNote{{}, {}, {}, {}, "agar"}), "test pollen: agar");
  EXPECT_EQ(
      said(Verb::correct, book::Correction{{{{}, "name", "A", "B"}, {{}, "sex", "", "male"}}}),
      "correct: name was 'A', is 'B'; sex was '', is 'male'");
  EXPECT_EQ(said(Verb::dismiss, book::DueAnswer{"inspect T171", {}}), "dismiss: inspect T171");
  EXPECT_EQ(said(Verb::put_off, book::DueAnswer{"inspect T171", day("2026-04-01")}),
            "put off: inspect T171, until 2026-04-01");
}

TEST_F(Told, WhatAnEntryTakesBack) {
  const auto lot = collect_pollen(book, {first.father, 1.5, "", {day("2026-02-01"), "", ""}});
  const auto back = reverse(book, {lot->entries.at(0), "", ""});
  ASSERT_TRUE(back) << back.error().text();
  const auto text = book.read([&](store::Reading& reading) {
                          return tell(reading, reading.entry(back->entries.at(0)).value());
                        })
                        .value();
  EXPECT_NE(text.find(fmt::format("takes back entry {}", lot->entries[0].value)), std::string::npos)
      << text;
}

TEST_F(Told, ALabelOfEveryKindThatIsNotHere) {
  for (const auto kind : all_kinds) {
    const auto code = Code::of(kind, 17, 999).value();
    const auto told = book.read([&](store::Reading& reading) {
      return tell_label(reading, reading.registers(), code, day("2026-03-10"));
    });
    ASSERT_FALSE(told) << code.text();
    EXPECT_NE(told.error().text().find("there is no"), std::string::npos);
    EXPECT_NE(told.error().text().find(code.text()), std::string::npos);
  }
}

TEST_F(Told, TheLabelOfAPlantWithPapersAndParentsInWords) {
  auto plant = *book::coded(registers().plants, first.father);
  plant.taxon_certainty = book::Certainty::likely;
  plant.seed_parent_said = "a plant of the old park";
  plant.pollen_parent_said = "unknown male";
  plant.place = registers().places.back().id;
  plant.papers = {{"permit", "A 12", day("2019-05-01"), "the office", "one plant"}, {}};
  put(plant);
  const auto told = label(first.father);
  EXPECT_EQ(told.parents_said, "seed parent a plant of the old park, pollen parent unknown male");
  EXPECT_EQ(told.itself->certainty, "likely");
  EXPECT_EQ(told.place, "Bench, House");
  ASSERT_EQ(told.itself->papers.size(), 2U);
  EXPECT_EQ(work::told(told.itself->papers[0]), "permit, A 12, the office, 2019-05-01, one plant");
  EXPECT_EQ(work::told(told.itself->papers[1]), "");
}

TEST_F(Told, TheLabelOfAPlantWithParentsOfTheBook) {
  auto plant = *book::coded(registers().plants, first.mother);
  plant.id = {};
  plant.code = Code::of(Kind::plant, 17, 9).value();
  plant.sex = book::Sex::not_known;
  plant.seed_parent = book::coded(registers().plants, first.mother)->id;
  plant.pollen_parent = book::coded(registers().plants, first.father)->id;
  put(plant);
  const auto told = label(plant.code);
  EXPECT_EQ(told.what, "plant, not known");
  EXPECT_EQ(told.seed_parent->code, first.mother);
  ASSERT_EQ(told.pollen_parents.size(), 1U);
  EXPECT_EQ(told.pollen_parents[0].code, first.father);
}

TEST_F(Told, TheLabelsOfPollenPlacesAndPurchases) {
  auto pollen = label(first.pollen);
  EXPECT_EQ(pollen.title, "pollen of Father, collected 2025-01-20");
  EXPECT_EQ(pollen.place, "refrigerator");
  auto lot = registers().pollen_lots.front();
  lot.store.clear();
  put(lot);
  EXPECT_FALSE(label(first.pollen).place);
  EXPECT_EQ(label(first.bench).place, "House");
  const auto house = label(registers().places.front().code);
  EXPECT_FALSE(house.place);
  EXPECT_EQ(house.title, "House");
  const auto code = Code::of(Kind::purchase, 17, 1).value();
  put(book::Purchase{{}, code, registers().taxa.front().id, "", day("2025-05-05"), ""});
  EXPECT_EQ(label(code).bought, "bought 2025-05-05 from an unnamed supplier");
  const auto other = Code::of(Kind::purchase, 17, 2).value();
  put(book::Purchase{{}, other, registers().taxa.front().id, "Kiln", day("2025-05-05"), "A × B"});
  EXPECT_EQ(label(other).bought, "bought 2025-05-05 from Kiln: A × B");
}

TEST_F(Told, TheLabelOfAConeBeforeAndAfterItsHarvest) {
  EXPECT_EQ(label(first.cone).ended, "harvested 2026-02-01: 500 seeds");
  const auto young = Code::of(Kind::cone, 17, 7).value();
  put(book::Cone{{}, young, book::coded(registers().plants, first.mother)->id, {}, "low down"});
  const auto told = label(young);
  EXPECT_EQ(told.ended, "");
  EXPECT_EQ(told.note, "low down");
  EXPECT_TRUE(told.pollen_parents.empty());
  EXPECT_EQ(told.seed_parent->code, first.mother);
}

} // namespace
} // namespace coneline::work
