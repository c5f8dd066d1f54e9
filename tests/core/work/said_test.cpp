// SPDX-License-Identifier: GPL-3.0-or-later
// What work tells is said in the language of who reads it: a language that marks every text it is
// asked for shows what was never asked.
#include "core/work/float_history.h"
#include "core/work/harvest.h"
#include "core/work/inspect.h"
#include "core/work/leave.h"
#include "core/work/pollen.h"
#include "core/work/pollinate.h"
#include "core/work/recount.h"
#include "core/work/round.h"
#include "core/work/seen_there.h"
#include "core/work/sort.h"
#include "core/work/sow.h"
#include "core/work/tell.h"
#include "core/work/tell_label.h"
#include "core/work/trays_done.h"
#include "core/work/why.h"
#include "tests/core/store/first_cone.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

#include <set>

namespace coneline::work {
namespace {

using tests::day;

class Marking : public Language {
 public:
  [[nodiscard]] std::string text(std::string_view english) const override {
    asked_.emplace(english);
    return fmt::format("⟦{}⟧", english);
  }
  [[nodiscard]] std::string counted(std::int64_t count, std::string_view one,
                                    std::string_view many) const override {
    return text(Language::counted(count, one, many));
  }
  [[nodiscard]] bool was_asked(const std::string& english) const {
    return asked_.contains(english);
  }

 private:
  mutable std::set<std::string> asked_;
};

class Said : public testing::Test {
 protected:
  Said() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {}
  ~Said() override { speak(nullptr); }
  Said(const Said&) = delete;
  Said& operator=(const Said&) = delete;

  template <class Ask>
  auto ask(Ask asked) {
    return book.read([&](store::Reading& reading) { return asked(reading, reading.registers()); })
        .value();
  }
  static Noted on(std::string_view iso) { return {day(iso), "", ""}; }
  static Count n(std::int64_t count) { return Count::sure(count); }

  Code sown_of(const Code& batch, std::int64_t seeds) {
    return sow(book, {batch, book::State::unsorted, n(seeds), 1, "seed tray", "gritty", first.bench,
                      on("2026-02-10")})
        .value()
        .made.at(0);
  }
  /// A tray of seed that nobody knows whom it was bought from.
  Code bought_tray() {
    const auto batch =
        buy_in(book, {"Cycas revoluta", "", n(100), {}, {}, on("2026-02-01")}).value().made;
    for (const auto& code : batch)
      if (code.kind() == Kind::batch)
        return sown_of(code, 40);
    throw std::runtime_error("nothing was bought in");
  }
  std::string bought_origin() {
    const auto purchase =
        ask([](auto&, const auto& registers) { return registers.purchases.at(0).code.text(); });
    return fmt::format("⟦{} of 2026-02-01, from ⟦an unnamed supplier⟧⟧", purchase);
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
  Marking marking;
};

TEST_F(Said, WhomSeedWasBoughtFromOnARoundAndInPictures) {
  const auto tray = bought_tray();
  const auto round = begin_round(book, {first.bench, on("2026-03-10")}).value();
  speak(&marking);
  const auto view = ask([&](auto& reading, const auto& registers) {
    return view_round(reading, registers, round_of(reading, round).value());
  });
  ASSERT_EQ(view.trays.size(), 1U);
  EXPECT_EQ(view.trays[0].origin, bought_origin());
  const auto seen = [&](const std::vector<ReadLabel>& labels) {
    return ask([&](auto& reading, const auto& registers) {
      return seen_in_pictures(reading, registers, first.bench, labels);
    });
  };
  EXPECT_EQ(seen({{tray.text(), "a.jpg", day("2026-03-05")}}).seen.at(0).origin, bought_origin());
  EXPECT_EQ(seen({}).not_seen.at(0).origin, bought_origin());
}

TEST_F(Said, WhomSeedWasBoughtFromOnALabelAndBesideItsResult) {
  const auto tray = bought_tray();
  ASSERT_TRUE(inspect(book, {tray, n(3), {}, {}, on("2026-07-01")}));
  speak(&marking);
  const auto told = ask([&](auto& reading, const auto& registers) {
    return tell_label(reading, registers, tray, day("2026-03-10"));
  });
  EXPECT_EQ(told.title, bought_origin());
  EXPECT_EQ(told.bought, "⟦bought 2026-02-01 from ⟦an unnamed supplier⟧⟧");
  const auto trays = ask([](auto& reading, const auto&) {
    WhyAsked asked;
    asked.as_of = day("2026-08-01");
    return explained_trays(reading, asked);
  });
  ASSERT_EQ(trays.size(), 1U);
  EXPECT_EQ(trays[0].value(Condition::seed_parent)->text, bought_origin());
}

TEST_F(Said, HowManyARecountMisses) {
  const auto tray = sown_of(first.batch, 40);
  const auto counted = [&](std::int64_t seeds) {
    return recount(book, {tray, {}, n(seeds), on("2026-03-10")}).value().told;
  };
  const auto code = tray.text();
  EXPECT_EQ(counted(37), code + ": 37 counted, the book had 40; 3 missing, noted as unexplained");
  EXPECT_EQ(counted(38), code + ": 38 counted, the book had 37; 1 more, noted as unexplained");
  EXPECT_EQ(counted(38), code + ": 38 counted, as the book says");
  speak(&marking);
  EXPECT_EQ(counted(37),
            "⟦" + code + ": 37 counted, the book had 38; 1 missing, noted as unexplained⟧");
  EXPECT_TRUE(
      marking.was_asked("{}: {} counted, the book had {}; {} missing, noted as unexplained"));
}

TEST_F(Said, ThatPollenRanOutAndHowManyLotsAPassTook) {
  const auto pass = [&](std::optional<double> millilitres) {
    return pollinate(book, {first.cone,
                            book::PollinationMethod::dry,
                            {{first.pollen, millilitres}},
                            on("2025-02-01")});
  };
  const auto entry = pass(3.5).value().entries.at(0);
  speak(&marking);
  const auto none = pass(std::nullopt);
  ASSERT_FALSE(none);
  EXPECT_NE(none.error().what.find(" has 0 ml on 2025-02-01, ⟦it ran out⟧"), std::string::npos)
      << none.error().what;
  const auto told =
      ask([&](auto& reading, const auto&) { return tell(reading, reading.entry(entry).value()); });
  EXPECT_NE(told.find(" pollen, ⟦one lot⟧⟧"), std::string::npos) << told;
}

TEST_F(Said, ThatATrayIsDoneInOneSentence) {
  sown_of(first.batch, 40);
  speak(&marking);
  const auto told = [&](double done_below) {
    return ask([&](auto& reading, const auto&) {
             DoneHabits habits;
             habits.done_below = done_below;
             return trays_done(reading, day("2029-03-10"), habits);
           })
        .at(0);
  };
  const auto waiting = told(1e-9);
  EXPECT_FALSE(waiting.done);
  EXPECT_TRUE(waiting.told.starts_with("⟦Chance of even one more: ")) << waiting.told;
  const auto done = told(0.999999);
  ASSERT_TRUE(done.done);
  EXPECT_TRUE(done.told.starts_with("⟦Done. Chance of even one more: ")) << done.told;
  EXPECT_TRUE(marking.was_asked("Done. Chance of even one more: {}. Another month brings {}"));
}

TEST_F(Said, WhatFloatersTold) {
  const auto told = [&] {
    return ask([](auto& reading, const auto& registers) {
             return float_history(reading, registers, "Cycas revoluta", day("2026-04-01"));
           })
        .told;
  };
  ASSERT_TRUE(sort(book, {first.batch, book::State::unsorted, book::SeedTest::floating, n(300),
                          n(200), on("2026-02-20")}));
  EXPECT_TRUE(told().starts_with("No floater was cut open or sown to its end")) << told();
  ASSERT_TRUE(open(book, {first.batch, book::State::judged_empty, n(1), n(1), on("2026-02-21")}));
  EXPECT_TRUE(told().starts_with("Of 1 floater cut open 1 was filled")) << told();
  ASSERT_TRUE(open(book, {first.batch, book::State::judged_empty, n(15), n(1), on("2026-02-22")}));
  EXPECT_TRUE(told().starts_with("Of 16 floaters cut open 2 were filled")) << told();
  speak(&marking);
  EXPECT_NE(told().find("⟦Of 16 floaters cut open ⟦2 were filled⟧⟧"), std::string::npos) << told();
}

TEST_F(Said, WhichWayALotWentInASentenceOfItsOwn) {
  const auto gone = [&](WayOut way, std::int64_t count) {
    return leave(book,
                 {first.batch, way, book::State::unsorted, n(count), "", {}, on("2026-03-10")})
        .value()
        .told;
  };
  const auto code = first.batch.text();
  EXPECT_EQ(gone(WayOut::sold, 3), "3 of " + code + " sold");
  speak(&marking);
  EXPECT_EQ(gone(WayOut::sold, 3), "⟦3 of " + code + " sold⟧");
  EXPECT_EQ(gone(WayOut::dead, 1), "⟦1 of " + code + " dead⟧");
  EXPECT_EQ(gone(WayOut::discarded, 2), "⟦2 of " + code + " discarded⟧");
  EXPECT_TRUE(marking.was_asked("{} of {} discarded"));
}

TEST_F(Said, WhatIsWrongWithARowOfARegister) {
  speak(&marking);
  const auto registers =
      book.read([](store::Reading& reading) { return reading.registers(); }).value();
  const auto refused = [&](const auto& row) {
    const auto put = book.write([&](store::Writing& writing) { return writing.put(row); });
    EXPECT_FALSE(put);
    return put ? std::string("written") : put.error().text();
  };
  auto pot = registers.pots.at(0);
  pot.litres = 0;
  const auto flat = refused(pot);
  EXPECT_NE(flat.find("⟦litres⟧ of 0"), std::string::npos) << flat;
  EXPECT_NE(flat.find("⟦a number above 0⟧"), std::string::npos) << flat;
  pot.name = registers.pots.at(1).name;
  refused(pot);
  EXPECT_TRUE(marking.was_asked("there is a pot '{}' already"));
  auto plant = registers.plants.at(0);
  plant.id = {};
  plant.seed_parent = book::coded(registers.plants, first.father)->id;
  refused(plant);
  EXPECT_TRUE(marking.was_asked("{} is a male plant and cannot be the seed parent"));
}

// The limit of a refrigerator is of every new book; a grower's own words are nobody's to translate.
TEST_F(Said, WhyPollenGetsOldInTheReadersLanguageOrTheGrowersWords) {
  const auto source = [&] {
    const auto lines =
        ask([](auto& reading, const auto& registers) -> Result<std::vector<PollenLine>> {
          return pollen_lines(reading, registers);
        });
    return lines.at(0).years_source;
  };
  EXPECT_EQ(source(), "common practice, no source: not frozen, better fresh");
  speak(&marking);
  EXPECT_EQ(source(), "⟦common practice, no source: not frozen, better fresh⟧");
  ASSERT_TRUE(book.write([](store::Writing& writing) {
    return writing.put(book::PollenStore{{}, "refrigerator", {book::Range{1, 2}, "my own tests"}});
  }));
  EXPECT_EQ(source(), "my own tests");
}

} // namespace
} // namespace coneline::work
