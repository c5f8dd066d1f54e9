// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of the registers put right: what changes, what follows, what is kept of it, and what is
// refused without a trace.
#include "core/store/proof.h"
#include "core/work/amend.h"
#include "core/work/reverse.h"
#include "core/work/tell.h"
#include "tests/core/store/first_cone.h"
#include "tests/core/work/small_nursery.h"

#include <gtest/gtest.h>

namespace coneline::work {
namespace {

using tests::day;

class Amending : public testing::Test {
 protected:
  Amending() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {}

  static Noted on(std::string note = "") { return {day("2026-03-10"), "Ana", std::move(note)}; }
  book::Registers registers() {
    return book.read([](store::Reading& reading) { return reading.registers(); }).value();
  }
  std::vector<book::Entry> entries() {
    return book.read([](store::Reading& reading) { return reading.entries(); }).value();
  }
  template <class Row>
  Result<Done> amended(const std::string& which, std::function<void(Row&)> change,
                       const Noted& noted = on()) {
    return amend(book, Amend<Row>{which,
                                  [change](Row& row, const book::Registers&) -> Result<void> {
                                    change(row);
                                    return {};
                                  },
                                  noted});
  }
  /// Refused in these words, and the book has the entries and rows it had.
  template <class Row>
  void refused(std::string_view why, const std::string& which, std::function<void(Row&)> change) {
    const auto before = entries().size();
    const auto pots = registers().pots.size();
    const auto done = amended<Row>(which, change);
    ASSERT_FALSE(done) << why;
    EXPECT_NE(done.error().text().find(why), std::string::npos) << done.error().text();
    EXPECT_EQ(entries().size(), before) << why;
    EXPECT_EQ(registers().pots.size(), pots);
  }
  void put_place(const std::string& name, book::PlaceKind kind, const std::string& within) {
    book::Place place;
    place.name = name;
    place.kind = kind;
    place.within = book::named(registers().places, within)->id;
    ASSERT_TRUE(book.write([&](store::Writing& writing) {
      place.code = writing.next_code(Kind::place).value();
      return writing.put(place);
    }));
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
};

TEST_F(Amending, APotsLitresAndNothingElse) {
  const auto before = *book::named(registers().pots, "10 L");
  const auto done = amended<book::Pot>(
      "10 L", [](auto& pot) { pot.litres = 9.5; }, on("weighed with water"));
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_EQ(done->told, "litres of 10 L: '9.5' instead of '10'");
  const auto after = registers().pot(before.id);
  EXPECT_EQ(after.litres, 9.5);
  EXPECT_EQ(after.name, before.name);
  EXPECT_EQ(after.length_mm, before.length_mm);
  EXPECT_EQ(after.cells, before.cells);
  EXPECT_EQ(after.source, before.source);
}

TEST_F(Amending, WhatStoodBeforeIsKeptInAnEntry) {
  const auto done = amended<book::Pot>(
      "10 L",
      [](auto& pot) {
        pot.litres = 9.5;
        pot.cells = 2;
      },
      on("weighed with water"));
  ASSERT_TRUE(done) << done.error().text();
  ASSERT_EQ(done->entries.size(), 1U);
  const auto entry = entries().back();
  EXPECT_EQ(entry.id, done->entries[0]);
  EXPECT_EQ(entry.verb, book::Verb::correct);
  EXPECT_EQ(entry.who, "Ana");
  EXPECT_EQ(entry.date, day("2026-03-10"));
  EXPECT_EQ(entry.note,
            "pot '10 L': litres '9.5' instead of '10'; cells '2' instead of '1'. weighed with "
            "water");
  EXPECT_EQ(book.read([&](store::Reading& reading) { return tell(reading, entry); }).value(),
            "correct: " + entry.note);
  EXPECT_FALSE(can_be_reversed(entry));
  const auto others = entries().front().id;
  EXPECT_TRUE(book.read([&](auto& reading) { return can_be_reversed(reading, {others}); }).value());
  EXPECT_FALSE(book.read([&](auto& reading) {
                     return can_be_reversed(reading, {others, entry.id});
                   })
                   .value());
  const auto back = reverse(book, {entry.id, "Ana", ""});
  ASSERT_FALSE(back);
  EXPECT_NE(back.error().text().find("Correct it again"), std::string::npos) << back.error().text();
  const auto proof = store::prove(book);
  ASSERT_TRUE(proof);
  EXPECT_TRUE(proof->holds()) << proof->faults.front();
}

TEST_F(Amending, ANameIsSqueezedAndReadsLikeNoOther) {
  ASSERT_TRUE(amended<book::Pot>("1 L deep", [](auto& pot) { pot.name = " 1 L  Deep "; }));
  EXPECT_NE(book::named(registers().pots, "1 L Deep"), nullptr);
  refused<book::Pot>("there is a pot '10 L' already", "1 L Deep", [](auto& p) { p.name = "10 L"; });
  refused<book::Pot>("stands in the book as '10 L'", "1 L Deep", [](auto& p) { p.name = "10 l"; });
  refused<book::Pot>("a pot without a name", "1 L Deep", [](auto& p) { p.name = "  "; });
  refused<book::Pot>("nothing changes on 10 L", "10 L", [](auto& p) { p.name = " 10 L"; });
  refused<book::Pot>("litres of 0", "10 L", [](auto& p) { p.litres = 0; });
  refused<book::Pot>("The book has 'seed tray'", "seed tary", [](auto& p) { p.litres = 1; });
}

TEST_F(Amending, ATaxonKeepsItsPlantsAndItsRoute) {
  const auto done = amended<book::Taxon>("Cycas revoluta", [](auto& taxon) {
    taxon.name = "Cycas revoluta Thunb.";
    taxon.ripening = {book::Range{9, 12}, "own experience"};
    taxon.frost.value = book::Frost::light;
  });
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_NE(done->told.find("months of ripening of Cycas revoluta: '9-12' instead of '10-14'"),
            std::string::npos)
      << done->told;
  const auto all = registers();
  EXPECT_EQ(all.taxon(all.plants[0].taxon).name, "Cycas revoluta Thunb.");
  EXPECT_NE(all.route(all.taxa[0].id), nullptr);
  EXPECT_EQ(all.taxa[0].after_ripening.value->high, 6);
  refused<book::Taxon>("a ripening of 1 to 1201 months", "Cycas revoluta Thunb.", [](auto& taxon) {
    taxon.ripening.value = book::Range{1, 1201};
  });
}

TEST_F(Amending, AMixTakesItsNewNameIntoTheMixesItIsAPartOf) {
  ASSERT_TRUE(book.write([](store::Writing& writing) {
    return writing.put(book::Mix{{}, "grown-on", 0, 0, "own", {{"gritty", 3}, {"bark", 1}}});
  }));
  const auto done = amended<book::Mix>("gritty", [](auto& mix) {
    mix.name = "mineral";
    mix.parts = {{"perlite", 4}, {"pumice", 6}};
  });
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_NE(done->told.find("parts of gritty: 'perlite=4, pumice=6' instead of 'perlite=4, peat=3, "
                            "sand=3'"),
            std::string::npos)
      << done->told;
  EXPECT_NE(done->told.find("1 mix names it so as its part, too"), std::string::npos) << done->told;
  const auto all = registers();
  EXPECT_EQ(book::named(all.mixes, "grown-on")->parts[0].name, "mineral");
  EXPECT_EQ(all.route(all.taxa[0].id)->steps[0].mix, book::named(all.mixes, "mineral")->id);
  refused<book::Mix>("the mix 'mineral' contains itself", "mineral", [](auto& mix) {
    mix.parts.push_back({"grown-on", 1});
  });
  refused<book::Mix>("the mix 'mineral' contains itself", "mineral", [](auto& mix) {
    mix.parts.push_back({"mineral", 1});
  });
}

TEST_F(Amending, APlaceStaysWhatHoldsThePlacesWithinIt) {
  ASSERT_TRUE(amended<book::Place>(first.bench.text(), [](auto& place) { place.walk = 7; }));
  EXPECT_EQ(book::named(registers().places, "Bench")->walk, 7) << "found by its code";
  refused<book::Place>("'House' is a house with 1 place within it", "House",
                       [](auto& place) { place.kind = book::PlaceKind::bay; });
  put_place("Bay", book::PlaceKind::bay, "Bench");
  const auto bay = book::named(registers().places, "Bay")->id;
  const auto bench = book::named(registers().places, "Bench")->id;
  refused<book::Place>("would be within itself", "Bench", [&](auto& place) { place.within = bay; });
  refused<book::Place>("would be within itself", "Bench",
                       [&](auto& place) { place.within = bench; });
  ASSERT_TRUE(amended<book::Place>("Bay", [](auto& place) { place.kind = book::PlaceKind::bench; }))
      << "nothing stands within it";
  refused<book::Place>("a turn of 1000001", "Bay", [](auto& place) { place.walk = 1'000'001; });
}

TEST_F(Amending, APlaceKeepsASizeForWhatIsPinnedToIt) {
  const auto bench = book::named(registers().places, "Bench")->id;
  ASSERT_TRUE(book.write([&](store::Writing& writing) {
    return writing.put(book::Pin{first.batch_id, bench});
  }));
  refused<book::Place>("1 lot is pinned to 'Bench', which would have no size", "Bench",
                       [](auto& place) { place.length_mm = 0; });
  ASSERT_TRUE(amended<book::Place>("Bench", [](auto& place) { place.length_mm = 2500; }));
}

TEST_F(Amending, ARoutesStepsByTheNameOfItsTaxon) {
  const auto done = amended<book::Route>("Cycas revoluta", [](auto& route) {
    route.germination = 0.65;
    route.steps[1].survival = 0.8;
    route.steps.push_back(route.steps[1]);
  });
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_NE(done->told.find("germination of Cycas revoluta: '0.65' instead of '0.7'"),
            std::string::npos)
      << done->told;
  EXPECT_NE(done->told.find("step 2 of Cycas revoluta: '1 L deep:gritty:12-24:0.8:part shade' "
                            "instead of '1 L deep:gritty:12-24:0.9:part shade'"),
            std::string::npos)
      << done->told;
  EXPECT_NE(done->told.find("step 3 of Cycas revoluta"), std::string::npos) << done->told;
  const auto all = registers();
  ASSERT_EQ(all.routes.size(), 1U);
  EXPECT_EQ(all.routes[0].steps.size(), 3U);
  refused<book::Route>("step 3 of the route of 'Cycas revoluta' lasts 6 to 1201 months",
                       "Cycas revoluta", [](auto& route) {
                         route.steps[2].months = {6, 1201};
                       });
  ASSERT_TRUE(book.write([](store::Writing& writing) {
    book::Taxon taxon;
    taxon.name = "Dioon edule";
    return writing.put(taxon);
  }));
  refused<book::Route>("'Dioon edule' has no route yet", "Dioon edule", [](auto&) {});
}

TEST(AmendingAPot, SaysHowManyLotsGoByIt) {
  tests::SmallNursery nursery;
  const auto mother = nursery.plant("Grey Lady", book::Sex::female);
  const auto batch = nursery.harvest(nursery.cone(mother), "2025-05-01", 100);
  nursery.sow(batch, "2025-05-02", 40);
  const auto done = amend(
      nursery.book(), Amend<book::Pot>{"tray of 50",
                                       [](book::Pot& pot, const book::Registers&) -> Result<void> {
                                         pot.cells = 45;
                                         return {};
                                       },
                                       {day("2025-05-03"), "", ""}});
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_EQ(done->told,
            "cells of tray of 50: '45' instead of '50'; 1 lot that stands in it goes by this now");
}

} // namespace
} // namespace coneline::work
