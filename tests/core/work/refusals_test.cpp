// SPDX-License-Identifier: GPL-3.0-or-later
// What the verbs refuse: labels that nothing here has, days in the wrong order, counts that cannot
// be. A refusal writes nothing.
#include "core/store/proof.h"
#include "core/work/clean.h"
#include "core/work/cone_course.h"
#include "core/work/correct.h"
#include "core/work/harvest.h"
#include "core/work/keep.h"
#include "core/work/leave.h"
#include "core/work/pollen.h"
#include "core/work/pollinate.h"
#include "core/work/pot.h"
#include "core/work/recheck.h"
#include "core/work/recount.h"
#include "core/work/relocate.h"
#include "core/work/sort.h"
#include "core/work/sow.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

#include <cmath>

namespace coneline::work {
namespace {

using book::State;
using tests::day;

class Refusals : public testing::Test {
 protected:
  Refusals() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {}

  static Noted on(std::string_view iso = "2026-03-10") { return {day(iso), "", ""}; }
  static Count n(std::int64_t count) { return Count::sure(count); }
  static Code absent(Kind kind) { return Code::of(kind, 17, 999).value(); }
  std::int64_t entries() {
    const auto proof = store::prove(book).value();
    EXPECT_TRUE(proof.holds()) << proof.faults.front();
    return proof.entries;
  }
  /// Runs the verb: it refuses in these words, and the book has as many entries as before.
  template <class Run>
  void refused(std::string_view why, Run run) {
    const auto before = entries();
    const auto result = run();
    ASSERT_FALSE(result) << why;
    EXPECT_NE(result.error().text().find(why), std::string::npos)
        << "'" << why << "' in: " << result.error().text();
    EXPECT_EQ(entries(), before) << why;
  }
  book::Registers registers() {
    return book.read([](store::Reading& reading) { return reading.registers(); }).value();
  }
  book::Plant plant(const Code& code) { return *book::coded(registers().plants, code); }
  Code nameless(book::Sex sex) {
    return book
        .write([&](store::Writing& writing) -> Result<Code> {
          book::Plant plant;
          plant.code = writing.next_code(Kind::plant).value();
          plant.taxon = writing.registers().taxa.front().id;
          plant.sex = sex;
          return writing.put(plant).map([&](auto) { return plant.code; });
        })
        .value();
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
};

TEST_F(Refusals, OfABatchThatIsNotThere) {
  for (const auto& [code, why] : {std::pair(absent(Kind::batch), "there is no"),
                                  std::pair(first.cone, "is a cone, not a batch")}) {
    refused(why, [&] { return clean(book, {code, 0, n(1), on()}); });
    refused(why, [&] {
      return sort(book, {code, State::unsorted, book::SeedTest::floating, n(1), {}, on()});
    });
    refused(why, [&] { return open(book, {code, State::unsorted, n(1), n(1), on()}); });
    refused(why, [&] { return keep(book, {code, "box", {}, {}, {}, {}, on()}); });
    refused(why, [&] { return recheck(book, {code, {}, {}, {}, on()}); });
    refused(why, [&] { return sow(book, {code, {}, n(1), 1, "seed tray", {}, {}, on()}); });
  }
  const auto none = absent(Kind::tray);
  refused("there is no", [&] { return leave(book, {none, WayOut::dead, {}, n(1), "", {}, on()}); });
  refused("there is no", [&] { return recount(book, {none, {}, n(1), on()}); });
  refused("there is no", [&] { return relocate(book, Relocate{{none}, first.bench, on()}); });
  refused("there is no", [&] { return pot_up(book, {none, {}, {}, "10 L", {}, {}, {}, on()}); });
}

TEST_F(Refusals, OfPlacesPotsAndMixesThatAreNotThere) {
  const auto nowhere = absent(Kind::place);
  const auto foreign = Code::of(Kind::place, 18, 1).value();
  for (const auto& [place, why] :
       {std::pair(nowhere, "The book has: House, Bench."), std::pair(foreign, "another book")}) {
    refused(why, [&] { return keep(book, {first.batch, "box", {}, {}, {}, place, on()}); });
    refused(why, [&] { return relocate(book, Relocate{{first.batch}, place, on()}); });
    refused(why, [&] {
      return sow(book, {first.batch, {}, n(1), 1, "seed tray", {}, place, on()});
    });
    refused(why, [&] {
      return buy_in(book, {"Cycas revoluta", "Kiln", n(1), std::nullopt, place, on()});
    });
  }
  refused("called 'bath'", [&] {
    return buy_in(book, {"Cycas revoluta", "Kiln", n(1), "bath", {}, on()});
  });
  refused("called 'bath'", [&] {
    return sow(book, {first.batch, {}, n(1), 1, "bath", {}, {}, on()});
  });
  refused("no mix called 'mud'", [&] {
    return sow(book, {first.batch, {}, n(1), 1, "seed tray", "mud", {}, on()});
  });
  refused("nothing to move", [&] { return relocate(book, Relocate{{}, first.bench, on()}); });
  auto empty = store::Book::make(scratch.at("e.coneline"), {"New", 17, false, day("2026-01-01")});
  const auto said = relocate(*empty, Relocate{{first.batch}, nowhere, on()});
  ASSERT_FALSE(said);
  EXPECT_NE(said.error().text().find("The book has: none yet."), std::string::npos);
}

TEST_F(Refusals, OfStoresNowhereAndHotterThanSeedBears) {
  const auto kept = [&](const std::string& store, std::optional<double> celsius) {
    return keep(book, {first.batch, store, celsius, {}, {}, {}, on()});
  };
  for (const auto* nowhere : {"", "  "})
    refused("not said where", [&] { return kept(nowhere, {}); });
  refused("a store of 41 °C", [&] { return kept("refrigerator", 41); });
  refused("41 °F are 5.0 °C", [&] { return kept("refrigerator", 41); });
  refused("a store of -201 °C", [&] { return kept("nitrogen", -201); });
  refused("a store of nan °C", [&] { return kept("box", std::nan("")); });
  const auto asked = [&](double celsius) {
    const auto done = kept(" refrigerator ", celsius);
    EXPECT_TRUE(done) << celsius;
    std::string all;
    for (const auto& caution : done ? done->cautions : std::vector<std::string>{})
      all += caution;
    return all;
  };
  EXPECT_EQ(asked(5).find("°F"), std::string::npos);
  EXPECT_EQ(asked(32).find("°F"), std::string::npos);
  EXPECT_NE(asked(38).find("it is 3.3 °C"), std::string::npos) << asked(38);
  const auto entry = book.read([](store::Reading& r) { return r.entries().back(); }).value();
  EXPECT_EQ(std::get<book::Keeping>(entry.detail).store, "refrigerator");
}

TEST_F(Refusals, OfCountsAndDaysThatCannotBe) {
  refused("soak", [&] { return clean(book, {first.batch, -1, {}, on()}); });
  refused("reversed", [&]() -> Result<Done> {
    // An end before the beginning, and then the day itself before both.
    const auto is =
        keep(book, {first.batch, "box", {}, day("2026-05-01"), day("2026-04-01"), {}, on()});
    if (is || is.error().text().find("back to 2026-04-01") == std::string::npos)
      return is;
    return refuse(fault("reversed"));
  });
  refused("kept from 2026-03-10 until 2026-03-01, 9 days earlier", [&] {
    return keep(book, {first.batch, "box", {}, day("2026-03-01"), {}, {}, on()});
  });
  refused("has no seed on 2026-01-01", [&] {
    return keep(book, {first.batch, "box", {}, {}, {}, {}, on("2026-01-01")});
  });
  refused("leaves 1 of them empty", [&] {
    return sow(book, {first.batch, {}, n(1), 2, "seed tray", {}, {}, on()});
  });
  refused("by hand and by weight", [&] {
    return harvest(book, {first.cone, n(3), on(), book::Weighing{{20, 20, 20, 20, 20}, 400}});
  });
  refused("0 weighings are too few to compare", [&] {
    return harvest(book, {first.cone, {}, on(), book::Weighing{{}, 400}});
  });
  refused("there is no cone", [&] { return harvest(book, {absent(Kind::cone), n(3), on()}); });
  refused("there is no taxon", [&] {
    return buy_in(book, {"Zamia nowhere", "Kiln", n(1), std::nullopt, {}, on()});
  });
}

TEST_F(Refusals, OfLooksAtStoredSeed) {
  refused("is in no store", [&] { return recheck(book, {first.batch, {}, {}, {}, on()}); });
  ASSERT_TRUE(keep(book, {first.batch, "box", {}, day("2026-04-01"), day("2026-04-10"), {}, on()}));
  refused("this one is on 2026-03-20", [&] {
    return recheck(book, {first.batch, {}, {}, day("2026-03-20"), on("2026-03-20")});
  });
  ASSERT_TRUE(
      sort(book, {first.batch, State::unsorted, book::SeedTest::floating, n(100), n(50), on()}));
  refused("Say which is meant", [&] {
    return recheck(book, {first.batch, n(3), {}, {}, on("2026-03-20")});
  });
  // The day that was set stands while it is to come; one that has passed is a month on.
  const auto kept = recheck(book, {first.batch, n(3), State::unsorted, {}, on("2026-03-20")});
  ASSERT_TRUE(kept) << kept.error().text();
  EXPECT_NE(kept->told.find("3 dead, 497 left; the next look from 2026-04-01"), std::string::npos)
      << kept->told;
  const auto later = recheck(book, {first.batch, {}, {}, {}, on("2026-04-05")});
  EXPECT_NE(later->told.find("the next look from 2026-05-05"), std::string::npos) << later->told;
  const auto set = recheck(book, {first.batch, {}, {}, day("2026-06-01"), on("2026-05-06")});
  EXPECT_NE(set->told.find("the next look from 2026-06-01"), std::string::npos) << set->told;
}

TEST_F(Refusals, OfPollenAndCones) {
  refused("there is no cone", [&] { return pollinate(book, {absent(Kind::cone), {}, {}, on()}); });
  refused("there is no plant", [&] {
    return pollinate(book, {absent(Kind::plant), {}, {}, on()});
  });
  refused("has no cone to pollinate", [&] {
    return pollinate(book, {first.father, {}, {{}}, on()});
  });
  refused("there is no pollen lot", [&] {
    return pollinate(book, {first.mother, {}, {{absent(Kind::pollen), {}}}, on()});
  });
  refused("days after this pollination", [&] { // 2025-01-20 is 10 days after
    return pollinate(book, {first.mother, {}, {{first.pollen, {}}}, on("2025-01-10")});
  });
  refused("was harvested on 2026-02-01, before", [&] {
    return pollinate(book, {first.cone, {}, {{first.pollen, {}}}, on()});
  });
  refused("there is no cone", [&] {
    return check_scales(book, {absent(Kind::cone), {}, {}, on()});
  });
  refused("was harvested on 2026-02-01, before this look", [&] {
    return check_scales(book, {first.cone, book::Scales::loose, {}, on()});
  });
  const auto young = pollinate(book, {first.mother, {}, {{first.pollen, {}}}, on()})->made.at(0);
  ASSERT_TRUE(check_scales(book, {young, book::Scales::closed, 80, on("2026-03-20")}));
  refused("closed on 2026-03-20, before this look", [&] {
    return check_scales(book, {young, book::Scales::loose, {}, on("2026-03-21")});
  });
  refused("closed on 2026-03-20, 1 day before this pass", [&] {
    return pollinate(book, {young, {}, {{first.pollen, {}}}, on("2026-03-21")});
  });
  EXPECT_TRUE(check_scales(book, {young, book::Scales::loose, {}, on("2026-03-15")}));
  EXPECT_TRUE(check_scales(book, {young, book::Scales::closed, {}, on("2026-03-25")}));
}

TEST_F(Refusals, OfPollenLots) {
  const auto none = absent(Kind::pollen);
  refused("there is no plant", [&] {
    return watch_male_cone(book, {absent(Kind::plant), {}, on()});
  });
  refused("is a female plant", [&] { return watch_male_cone(book, {first.mother, {}, on()}); });
  refused("is a female plant", [&] { return collect_pollen(book, {first.mother, {}, "", on()}); });
  refused("there is no pollen lot", [&] { return collect_pollen(book, {none, 1, "", on()}); });
  refused("was begun on 2025-01-20", [&] {
    return collect_pollen(book, {first.pollen, 1, "", on("2025-01-19")});
  });
  refused("no amount collected", [&] {
    return collect_pollen(book, {first.pollen, {}, "", on()});
  });
  refused("an amount of pollen in ml of -1", [&] {
    return collect_pollen(book, {first.father, -1, "", on()});
  });
  refused("there is no pollen lot", [&] { return test_pollen(book, {none, 9, 1, "", on()}); });
  refused("was collected on 2025-01-20, after this test", [&] {
    return test_pollen(book, {first.pollen, 9, 1, "", on("2025-01-01")});
  });
  refused("10 germinated of 9", [&] { return test_pollen(book, {first.pollen, 9, 10, "", on()}); });
  refused("there is no pollen lot", [&] { return discard_pollen(book, {none, {}, on()}); });
  refused("0.5 ml less than wanted", [&] {
    return discard_pollen(book, {first.pollen, 4, on()});
  }); // there are 3.5
  const auto some = discard_pollen(book, {first.pollen, 1.5, on()});
  EXPECT_NE(some->told.find("1.5 ml of"), std::string::npos);
  EXPECT_NE(discard_pollen(book, {first.pollen, {}, on("2026-03-12")})->told.find("the rest of"),
            std::string::npos);
  refused("was thrown away on 2026-03-12", [&] {
    return pollinate(book, {first.mother, {}, {{first.pollen, {}}}, on("2026-03-13")});
  });
  refused("was thrown away on 2026-03-12", [&] {
    return collect_pollen(book, {first.pollen, 1, "", on("2026-03-13")});
  });
  refused("days after this", [&] {
    return discard_pollen(book, {first.pollen, {}, on("2025-01-01")});
  });
}

TEST_F(Refusals, OfASexThatConesAndPollenDeny) {
  // A plant of unknown sex shows what it is when it cones, once.
  const auto unknown = nameless(book::Sex::not_known);
  ASSERT_TRUE(watch_male_cone(book, {unknown, book::MaleCone::removed, on()}));
  EXPECT_EQ(plant(unknown).sex, book::Sex::male);
  const auto bearer = nameless(book::Sex::not_known);
  ASSERT_TRUE(pollinate(book, {bearer, {}, {{first.pollen, 0.1}}, on()}));
  EXPECT_EQ(plant(bearer).sex, book::Sex::female);
  const auto sexed = [&](const Code& code, book::Sex sex) {
    return correct(book, {code,
                          [sex](book::Plant& plant, const book::Registers&) -> Result<void> {
                            plant.sex = sex;
                            return {};
                          },
                          on()});
  };
  refused("cannot be male", [&] { return sexed(first.mother, book::Sex::male); });
  refused("cannot be female", [&] { return sexed(first.father, book::Sex::female); });
  refused("there is no plant", [&] { return sexed(absent(Kind::plant), book::Sex::male); });
  refused("nothing changes", [&] { return sexed(first.mother, book::Sex::female); });
  // One whose sex is taken back cannot become what its cones deny by the next cone either.
  ASSERT_TRUE(sexed(first.mother, book::Sex::not_known));
  refused("cannot be male", [&] { return watch_male_cone(book, {first.mother, {}, on()}); });
  ASSERT_TRUE(sexed(first.father, book::Sex::not_known));
  refused("cannot be female", [&] {
    return pollinate(book, {first.father, {}, {{first.pollen, {}}}, on()});
  });
}

} // namespace
} // namespace coneline::work
