// SPDX-License-Identifier: GPL-3.0-or-later
// Edges of several verbs: what a scanner sends besides a code, advice on floaters by taxon, weights
// that are left out, dates that a book's own seed tells, pots that are not there, and a first cone
// whose second half is refused.
#include "core/store/proof.h"
#include "core/work/cautions.h"
#include "core/work/coming.h"
#include "core/work/first_cone.h"
#include "core/work/harvest.h"
#include "core/work/inspect.h"
#include "core/work/keep.h"
#include "core/work/pot.h"
#include "core/work/relocate.h"
#include "core/work/scan_text.h"
#include "core/work/sort.h"
#include "core/work/sow.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

namespace coneline::work {
namespace {

using book::State;
using tests::day;

class Edges : public testing::Test {
 protected:
  Edges() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {}

  static Noted on(std::string_view iso = "2026-03-10") { return {day(iso), "", ""}; }
  static Count n(std::int64_t count) { return Count::sure(count); }
  template <class Given>
  static void refused(const Result<Given>& result, std::string_view why) {
    ASSERT_FALSE(result) << why;
    EXPECT_NE(result.error().text().find(why), std::string::npos) << result.error().text();
  }
  book::Registers registers() {
    return book.read([](store::Reading& reading) { return reading.registers(); }).value();
  }
  void taxon_has(const std::function<void(book::Taxon&)>& change) {
    auto taxon = registers().taxa.front();
    change(taxon);
    ASSERT_TRUE(book.write([&](store::Writing& writing) { return writing.put(taxon); }));
  }
  Result<Done> keep_in(const std::string& store, std::optional<Date> from = {},
                       std::optional<Date> to = {}) {
    return keep(book, {first.batch, store, {}, from, to, {}, on()});
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
};

TEST(ScanEdges, OfNothingOrOfWhatIsNoCodeStayAsTheyAre) {
  EXPECT_EQ(scan_text("").text, "");
  EXPECT_EQ(scan_text("   \r\n").text, "");
  EXPECT_EQ(scan_text("]Q1").text, "]Q1"); // too short to be a symbol's identifier and a code
  const auto code = Code::of(Kind::tray, 17, 42).value().text();
  EXPECT_EQ(scan_text("  " + code + "  ").text, code);
  EXPECT_EQ(scan_text(code, "~").text, code); // the prefix may be missing
  EXPECT_EQ(scan_text(code).note, "");
  std::string shifted;
  for (const char c : code)
    shifted += c >= '0' && c <= '9' ? ")!@#$%^&*("[c - '0'] : static_cast<char>(std::tolower(c));
  const auto heard = scan_text(shifted);
  EXPECT_EQ(heard.text, code) << shifted;
  EXPECT_NE(heard.note.find("shift key"), std::string::npos) << heard.note;
}

TEST_F(Edges, AdviceOnFloatersIsThatOfTheTaxonAndOfTheFloatTestAlone) {
  const auto advice = [&](book::SeedTest test) {
    const auto done = sort(book, {first.batch, State::unsorted, test, n(1), n(1), on()});
    EXPECT_TRUE(done) << done.error().text();
    // Before what goes with all sorting.
    return done->cautions.size() == cautions_of(book::Verb::sort).size() ? std::string()
                                                                         : done->cautions.front();
  };
  EXPECT_NE(advice(book::SeedTest::floating).find("is not known"), std::string::npos);
  taxon_has([](auto& taxon) { taxon.float_test = {book::FloatTest::unreliable, "test"}; });
  EXPECT_NE(advice(book::SeedTest::floating).find("floats too"), std::string::npos);
  taxon_has([](auto& taxon) { taxon.float_test = {book::FloatTest::reliable, "test"}; });
  EXPECT_EQ(advice(book::SeedTest::floating), "");
  EXPECT_EQ(advice(book::SeedTest::eye), "");
  refused(sort(book, {first.batch, State::unsorted, book::SeedTest::cutting, n(1), {}, on()}),
          "use 'open'");
  refused(sort(book, {first.batch, State::unsorted, book::SeedTest::eye, {}, {}, on()}),
          "nothing was judged");
}

// Fourteen weighings of 20 g and two of 30: mean 21.25, deviation 3.42; the two lie more than twice
// that away and are left out, so that 400 g are 400 / 20 × 100 seeds.
TEST_F(Edges, WeighingsFarFromTheRestAreLeftOutAndSaid) {
  book::Weighing weighing{std::vector<double>(14, 20.0), 400};
  weighing.hundreds.insert(weighing.hundreds.end(), {30, 30});
  const auto done = harvest(book, {first.cone, {}, on(), weighing});
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_EQ(done->told.find("2000 seeds"), 0U) << done->told;
  EXPECT_NE(done->told.find("; 2 weighings left out"), std::string::npos);
}

TEST_F(Edges, SeedIsKeptUntilTheTaxonOrTheGrowerSays) {
  // Six months after ripening at most, from the harvest of 2026-02-01; not before the day itself.
  EXPECT_NE(keep_in("box")->told.find("to look at from 2026-03-10"), std::string::npos);
  EXPECT_NE(keep_in("box", day("2026-07-01"))->told.find("from 2026-07-01"), std::string::npos);
  EXPECT_EQ(keep_in("box", {}, day("2026-09-01"))->told.find("to look at"), std::string::npos);
  taxon_has([](auto& taxon) { taxon.after_ripening = {}; });
  EXPECT_EQ(keep_in("box")->told.find("to look at"), std::string::npos);
  const auto bought = buy_in(book, {"Cycas revoluta", "Kiln", n(9), {}, {}, on()});
  taxon_has([](auto& taxon) { taxon.after_ripening = {book::Range{1, 2}, "test"}; });
  const auto told = keep(book, {bought->made[0], "box", {}, {}, {}, {}, on()});
  EXPECT_EQ(told->told.find("to look at"), std::string::npos); // nobody knows when it was ripe
}

TEST_F(Edges, PottingRefusesWhatIsNotThere) {
  const auto tray =
      sow(book, {first.batch, {}, n(20), 1, "seed tray", "gritty", {}, on()})->made[0];
  ASSERT_TRUE(inspect(book, {tray, n(8), {}, {}, on("2026-04-10")}));
  const auto potted = [&](PotUp wanted) {
    wanted.from = tray;
    wanted.noted = on("2026-05-10");
    return pot_up(book, wanted);
  };
  PotUp wanted;
  wanted.pot = "bath";
  refused(potted(wanted), "no pot or tray called 'bath'");
  wanted.pot = "1 L deep";
  wanted.mix = "mud";
  refused(potted(wanted), "no mix called 'mud'");
  wanted.mix.reset();
  wanted.place = Code::of(Kind::place, 17, 99).value();
  refused(potted(wanted), "there is no place");
  wanted.place.reset();
  wanted.into = tray;
  refused(potted(wanted), "is a tray, not a pot group");
  wanted.into.reset();
  wanted.count = n(9);
  refused(potted(wanted), "1 too many");
  wanted.count = Count{};
  refused(potted(wanted), "has nothing to pot");
  wanted.count = n(3);
  EXPECT_TRUE(potted(wanted));
}

TEST_F(Edges, AFirstConeIsRefusedWholeWhereItsPollenIs) {
  const auto before = store::prove(book).value().entries;
  FirstCone wanted{"Old Sentinel", "Cycas revoluta", "", day("2026-01-01"), {},
                   std::nullopt,   day("2026-03-10")};
  wanted.pass = FirstCone::Pass{"Mother", day("2025-02-01"), day("2026-03-01"), {}};
  refused(first_cone(book, wanted), "is a female plant");
  wanted.pass->male = first.father.text();
  wanted.pass->male.back() = wanted.pass->male.back() == 'A' ? 'B' : 'A'; // mistyped
  refused(first_cone(book, wanted), first.father.text());
  EXPECT_EQ(store::prove(book).value().entries, before);
  EXPECT_EQ(book::named(registers().plants, "Old Sentinel"), nullptr);
  EXPECT_EQ(registers().cones.size(), 1U);
}

TEST_F(Edges, MovingSeveralLotsMovesAllOrNone) {
  const auto two = sow(book, {first.batch, {}, n(20), 2, "seed tray", {}, {}, on()})->made;
  const auto before = store::prove(book).value().entries;
  refused(relocate(book, Relocate{{two[0], Code::of(Kind::tray, 17, 99).value()},
                                  first.bench,
                                  on("2026-03-11")}),
          "there is no");
  EXPECT_EQ(store::prove(book).value().entries, before);
  EXPECT_TRUE(relocate(book, Relocate{two, first.bench, on("2026-03-11")}));
}

TEST(UsualDay, IsTheMiddleOfTheRoutesMonthsElseHalfAYear) {
  EXPECT_EQ(usual_day(nullptr), 182);
  book::Route route;
  EXPECT_EQ(usual_day(&route), 182); // it says nothing of months
  route.germination_months = {2, 4};
  EXPECT_NEAR(usual_day(&route), 3 * 30.44, 1e-9);
}

} // namespace
} // namespace coneline::work
