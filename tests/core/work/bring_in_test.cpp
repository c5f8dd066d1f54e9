// SPDX-License-Identifier: GPL-3.0-or-later
// What was there before the book began: nothing of a line is lost, nothing is made up, and a line
// at fault says which of its columns is.
#include "core/store/proof.h"
#include "core/work/bring_in.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

namespace coneline::work {
namespace {

using tests::day;

class AnOlderList : public testing::Test {
 protected:
  AnOlderList() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {}

  static BroughtIn line(Kind kind, std::int64_t count = 10) {
    BroughtIn line;
    line.kind = kind;
    line.taxon = "Zamia furfuracea";
    line.count = Count::sure(count);
    line.since = day("2025-05-01");
    if (kind == Kind::tray)
      line.pot = "seed tray";
    if (kind == Kind::pot_group)
      line.pot = "1 L deep";
    return line;
  }
  static BroughtIn plant(const std::string& name) {
    auto made = line(Kind::plant, 0);
    made.name = name;
    return made;
  }
  static BroughtIn cross(Kind kind, const std::string& female, const std::string& male) {
    auto made = line(kind);
    made.seed_parent = female;
    made.pollen_parent = male;
    made.pollinated = day("2024-03-01");
    made.harvested = day("2025-03-01");
    return made;
  }

  BroughtAll in(const std::vector<BroughtIn>& lines,
                const std::function<bool(std::size_t)>& go_on = {}) {
    BroughtAll all;
    static_cast<void>(book.write([&](store::Writing& writing) -> Result<void> {
      all = bring_in(writing, lines, day("2026-03-10"), go_on);
      for (const auto& one : all.lines)
        if (!one)
          return refuse(one.error());
      return {};
    }));
    return all;
  }
  /// The one line is refused for this column and in these words, and nothing is made of it.
  void refused(const BroughtIn& wrong, std::string_view column, std::string_view why) {
    const auto before = store::prove(book).value().entries;
    const auto all = in({wrong});
    ASSERT_EQ(all.lines.size(), 1U);
    ASSERT_FALSE(all.lines[0]) << all.lines[0]->told;
    const auto& fault = all.lines[0].error();
    EXPECT_NE(fault.text().find(why), std::string::npos) << fault.text();
    EXPECT_NE(fault.text().find(column), std::string::npos) << fault.text();
    EXPECT_EQ(store::prove(book).value().entries, before);
    EXPECT_EQ(registers().plants.size(), 2U);
    EXPECT_EQ(registers().taxa.size(), 1U);
  }
  book::Registers registers() {
    return book.read([](store::Reading& reading) { return reading.registers(); }).value();
  }
  std::vector<book::Entry> entries_of(const Code& lot) {
    return book
        .read([&](store::Reading& reading) {
          return reading.entries_of(reading.lot(lot).value().id);
        })
        .value();
  }
  Code made(const BroughtAll& all, std::size_t at) {
    EXPECT_TRUE(all.lines.at(at)) << all.lines.at(at).error().text();
    return all.lines.at(at)->made.at(0);
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
};

TEST_F(AnOlderList, RefusesAPlantThatIsNotNamedOrIsThere) {
  refused(plant(""), "name", "without a name");
  refused(plant("Mother"), "name", "'Mother' is there already");
  auto late = plant("Late");
  late.since = day("2026-03-11");
  refused(late, "since", "2026-03-11");
  auto nothing = plant("Nothing");
  nothing.taxon.clear();
  refused(nothing, "taxon", "no taxon");
  auto lost = plant("Lost");
  lost.place = "H1711"; // written like a code, and none
  refused(lost, "place", "H1711");
}

TEST_F(AnOlderList, RefusesCountsAndDaysThatCannotBe) {
  refused(line(Kind::tray, 0), "count", "a count of 0");
  auto up = line(Kind::tray);
  up.seedlings = Count::sure(12);
  refused(up, "seedlings", "2 too many");
  auto cells = line(Kind::tray, 41); // the tray has 40 cells
  refused(cells, "count", "41 seeds in a 'seed tray' of 40 cells");
  for (const auto kind : {Kind::tray, Kind::pot_group, Kind::batch}) {
    auto undated = line(kind);
    undated.since.reset();
    refused(undated, "since", kind == Kind::tray ? "when it was sown" : "since when it is there");
  }
  auto before = cross(Kind::batch, "Mother", "Father");
  before.harvested = day("2024-02-20"); // 10 days before it was pollinated: 2024 is a leap year
  refused(before, "harvested", "10 days before");
}

TEST_F(AnOlderList, RefusesParentsThatCannotBe) {
  auto motherless = line(Kind::batch);
  motherless.pollen_parent = "Father";
  motherless.pollinated = day("2024-03-01");
  refused(motherless, "seed parent", "without a seed parent");
  auto undated = cross(Kind::batch, "Mother", "Father");
  undated.pollinated.reset();
  refused(undated, "pollinated", "without the day");
  refused(cross(Kind::batch, "Father", "Father"), "seed parent", "is a male plant");
  refused(cross(Kind::batch, "Mother", "Mother"), "pollen parent", "is a female plant");
  auto code = first.mother.text();
  code.back() = code.back() == 'A' ? 'B' : 'A'; // its check character is wrong
  refused(cross(Kind::batch, code, "Father"), "seed parent", first.mother.text());
  auto unsaid = cross(Kind::batch, "Somebody", "Father");
  unsaid.taxon.clear();
  refused(unsaid, "seed parent", "its taxon is not said");
}

TEST_F(AnOlderList, RefusesPotsThatNobodyDescribed) {
  for (const auto kind : {Kind::tray, Kind::pot_group}) {
    auto unnamed = line(kind);
    unnamed.pot.clear();
    refused(unnamed, "pot", "no tray or pot");
    auto strange = line(kind);
    strange.pot = "grandfather's";
    refused(strange, "pot", "called 'grandfather's'");
    strange.litres = 2; // the width is still not said
    refused(strange, "pot", "its width in mm");
    strange.width_mm = 0;
    refused(strange, "pot", "a length in mm of 0");
    auto lost = line(kind);
    lost.place = "h1234x";
    refused(lost, "place", "h1234x");
    auto untold = line(kind);
    untold.taxon.clear();
    refused(untold, "taxon", "no taxon");
  }
}

TEST_F(AnOlderList, TakesACrossWithItsConePollenAndLook) {
  auto tray = cross(Kind::tray, first.mother.text(), first.father.text());
  tray.taxon = "Cycas revoluta";
  tray.count = Count::sure(30);
  tray.seedlings = Count::sure(12);
  tray.seen = day("2025-09-01");
  tray.supplier = "Old Kiln";
  auto seed = tray;
  seed.kind = Kind::batch;
  seed.pot = "paper bag";
  seed.place = first.bench.text();
  const auto all = in({tray, seed});
  EXPECT_NE(all.lines.at(0)->told.find("12 up"), std::string::npos);
  const auto looks = entries_of(made(all, 0));
  ASSERT_EQ(looks.size(), 2U);
  EXPECT_EQ(looks[0].note, "from: Old Kiln");
  EXPECT_EQ(looks[1].date, day("2025-09-01"));
  EXPECT_EQ(looks[1].movements.at(0).count.value(), 12);
  // The batch: 60 harvested together, 30 of them sown; its own line's words are in its note.
  const auto harvest = entries_of(made(all, 1)).at(0);
  EXPECT_EQ(harvest.verb, book::Verb::harvest);
  EXPECT_EQ(harvest.date, day("2025-03-01"));
  EXPECT_EQ(harvest.movements.at(0).count.value(), 60);
  EXPECT_EQ(harvest.note, "from an earlier list; from: Old Kiln; seedlings: 12; seen: 2025-09-01; "
                          "pot: paper bag");
  const auto moved = entries_of(made(all, 1)).back(); // seed stands where it was since that day
  EXPECT_EQ(moved.verb, book::Verb::move);
  EXPECT_EQ(moved.date, day("2025-05-01"));
  EXPECT_TRUE(all.taxa.empty());
  EXPECT_TRUE(all.plants.empty());
  const auto now = registers();
  EXPECT_EQ(now.cones.size(), 2U); // the first cone, and the one of both lines
  ASSERT_EQ(now.pollen_lots.size(), 2U);
  EXPECT_EQ(now.pollen_lots.back().collected, day("2024-03-01"));
}

TEST_F(AnOlderList, KeepsWhatAKindHasNoPlaceForInItsNote) {
  auto parent = plant("Old Pillar");
  parent.sex = book::Sex::female;
  parent.seed_parent = "A";
  parent.cone = "cone 3";
  parent.pollinated = day("2001-01-02");
  parent.harvested = day("2002-01-02");
  parent.count = Count::sure(2);
  parent.seedlings = Count::sure(1);
  parent.seen = day("2025-06-01");
  parent.pot = "tub";
  parent.note = "by the gate";
  auto fatherly = plant("Young Pillar");
  fatherly.pollen_parent = "B";
  auto pots = line(Kind::pot_group, 1);
  pots.name = "the blue ones";
  pots.sex = book::Sex::male;
  pots.seed_parent = "A";
  pots.pollen_parent = "B";
  const auto all = in({parent, fatherly, pots});
  EXPECT_NE(all.lines[1]->told.find("sex not known"), std::string::npos);
  EXPECT_NE(all.lines[2]->told.find("1 plant of A × B, in '1 L deep'"), std::string::npos)
      << all.lines[2]->told;
  const auto now = registers();
  EXPECT_EQ(book::named(now.plants, "Old Pillar")->note,
            "by the gate; parents: A × not known; cone: cone 3; pollinated: 2001-01-02; "
            "harvested: 2002-01-02; count: 2; seedlings: 1; seen: 2025-06-01; pot: tub");
  EXPECT_EQ(book::named(now.plants, "Young Pillar")->note, "parents: not known × B");
  EXPECT_EQ(now.purchases.back().note, "A × B");
  EXPECT_EQ(entries_of(made(all, 2)).at(0).note, "name: the blue ones; sex: male");
}

TEST_F(AnOlderList, MakesWhatTheBookLacksOnce) {
  auto one = cross(Kind::tray, "Grey Widow", "Grey Monk");
  one.place = "Cold frame";
  one.pot = "crate";
  one.litres = 4;
  one.width_mm = 250;
  auto other = one;
  other.pollinated = day("2024-03-04"); // another cone, the same parents and crate
  other.seen = day("2026-01-01");       // seen, and nothing up
  auto fatherless = one;
  fatherless.pollen_parent.clear();
  fatherless.seed_parent = "Mother"; // of another taxon than the line says
  const auto all = in({one, other, fatherless});
  for (std::size_t i = 0; i < 3; ++i)
    ASSERT_TRUE(all.lines.at(i)) << all.lines[i].error().text();
  EXPECT_NE(all.lines[0]->told.find(", Cold frame"), std::string::npos) << all.lines[0]->told;
  EXPECT_EQ(all.plants, (std::vector<std::string>{"Grey Widow", "Grey Monk"}));
  EXPECT_EQ(all.places, std::vector<std::string>{"Cold frame"});
  EXPECT_EQ(all.pots, std::vector<std::string>{"crate"});
  const auto now = registers();
  EXPECT_EQ(book::named(now.pots, "crate")->shape, book::Shape::rectangular);
  EXPECT_EQ(book::named(now.plants, "Grey Monk")->taxon_certainty, book::Certainty::unsure);
  EXPECT_EQ(now.cones.back().note, "from an earlier list; taxon: Zamia furfuracea");
  EXPECT_EQ(entries_of(made(all, 1)).at(1).date, day("2026-01-01"));
  EXPECT_TRUE(entries_of(made(all, 1)).at(1).movements.empty());
}

TEST_F(AnOlderList, SaysWhichDayWasTakenForAHarvestThatNobodyDated) {
  auto tray = line(Kind::tray);
  tray.cone = "bag 7";
  auto later = tray;
  later.kind = Kind::batch;
  later.since = day("2025-06-01");
  auto seed = line(Kind::batch);
  const auto all = in({tray, later, seed});
  const auto sown_first = entries_of(made(all, 1)).at(0);
  EXPECT_EQ(sown_first.date, day("2025-05-01")); // of the earlier line of the bag
  EXPECT_NE(sown_first.note.find("from an earlier list: bag 7"), std::string::npos);
  EXPECT_NE(sown_first.note.find("the day is that of the first sowing"), std::string::npos);
  EXPECT_NE(entries_of(made(all, 2)).at(0).note.find("since which seed was there"),
            std::string::npos);
}

TEST_F(AnOlderList, StopsWhenItIsTold) {
  const std::vector<BroughtIn> lines(3, line(Kind::batch));
  const auto two = in(lines, [](std::size_t brought) { return brought < 2; });
  EXPECT_EQ(two.lines.size(), 2U);
  EXPECT_TRUE(two.stopped);
  const auto all = in(lines, [](std::size_t) { return true; });
  EXPECT_EQ(all.lines.size(), 3U);
  EXPECT_FALSE(all.stopped);
}

TEST_F(AnOlderList, AsksForACodeWhereSeveralPlantsShareAName) {
  ASSERT_TRUE(in({plant("Twin")}).lines[0]);
  ASSERT_TRUE(book.write([&](store::Writing& writing) -> Result<void> {
    auto twin = *book::named(writing.registers().plants, "Twin");
    twin.id = {};
    twin.code = writing.next_code(Kind::plant).value();
    static_cast<void>(writing.put(twin).value());
    return {};
  }));
  const auto all = in({cross(Kind::batch, "Twin", "Father")});
  ASSERT_FALSE(all.lines[0]);
  EXPECT_NE(all.lines[0].error().text().find("several are called 'Twin'"), std::string::npos);
  // A plant of unknown sex that bore a cone is female from now on.
  const auto code = book::named(registers().plants, "Twin")->code.text();
  ASSERT_TRUE(in({cross(Kind::batch, code, "Father")}).lines[0]);
  EXPECT_EQ(book::named(registers().plants, "Twin")->sex, book::Sex::female);
}

} // namespace
} // namespace coneline::work
