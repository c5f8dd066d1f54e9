// SPDX-License-Identifier: GPL-3.0-or-later
// A forecast, a bench list, an order list and two plans as they are written: what runs full and
// when, what finds no room, what is to be ordered, and how far a list is from the best.
#include "core/plan/compared.h"
#include "core/report/compared_report.h"
#include "core/report/forecast_input.h"
#include "core/report/forecast_paper.h"
#include "core/report/forecast_report.h"
#include "core/report/ordering.h"
#include "core/report/placing_paper.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::report {
namespace {

using book::State;
using plan::Shown;
using tests::day;

class Written : public testing::Test {
 protected:
  Written() { nursery.put_route(); }
  void bench(double length) {
    nursery.write([&](store::Writing& writing) {
      return writing
          .put(book::Place{{},
                           writing.next_code(Kind::place).value(),
                           "Bench",
                           book::PlaceKind::bench,
                           {},
                           length,
                           1000,
                           book::Light::part_shade,
                           1})
          .value();
    });
  }
  void bench_is(double length) {
    nursery.write([&](store::Writing& writing) {
      auto place = writing.registers().places.front();
      place.length_mm = length;
      return writing.put(place).value();
    });
  }
  plan::ForecastInput input() {
    return nursery.ask(
        [](store::Reading& reading) { return forecast_input(reading, day("2025-12-01"), 12, {}); });
  }
  static plan::Forecast forecast(const plan::ForecastInput& input) {
    return plan::forecast_of(input, {50, 1, 1, {}}).value();
  }
  static bool any_has(const std::vector<std::string>& texts, std::string_view part) {
    return std::ranges::any_of(
        texts, [&](const auto& text) { return text.find(part) != std::string::npos; });
  }

  tests::SmallNursery nursery;
  book::PlantId mother = nursery.plant("Old Sentinel", book::Sex::female);
};

// A tray takes 0.4 × 0.3 m = 0.12 m², the bench has 0.1 m².
TEST_F(Written, AForecastSaysWhatRunsFullAndFromWhen) {
  nursery.sow(nursery.harvest(nursery.cone(mother), "2025-02-01", 50), "2025-11-20", 40);
  bench(100);
  auto from = input();
  auto future = forecast(from);
  const auto full = crowding_told(future, from.standing.registers);
  ASSERT_FALSE(full.empty());
  EXPECT_TRUE(any_has(full, "'part shade' has 0.1")) << full[0];
  EXPECT_TRUE(any_has(full, "more likely than not from"));
  const auto json = forecast_json(future, from, 1);
  EXPECT_EQ(json["runs"], 50);
  EXPECT_EQ(json["months"].size(), future.months().size());
  EXPECT_EQ(json["crowding"][0]["likely_full_from"], "2025-12");
  EXPECT_EQ(json["crowding"][0]["over_full"][0], 1);
  bench_is(100'000);
  from = input();
  future = forecast(from);
  EXPECT_EQ(crowding_told(future, from.standing.registers),
            std::vector<std::string>{"Everything finds room in every future drawn."});
  EXPECT_TRUE(forecast_json(future, from, 1)["crowding"][0]["likely_full_from"].is_null());
}

TEST_F(Written, LotsOnNoRouteAreNamedInTheForecast) {
  const auto foreign = nursery.write([](store::Writing& writing) {
    const auto taxon =
        writing.put(book::Taxon{{}, "Zamia nowhere", {}, {}, {}, {}, {}, {}}).value();
    return writing
        .put(book::Purchase{
            {}, writing.next_code(Kind::purchase).value(), taxon, "", day("2025-01-01"), ""})
        .value();
  });
  const auto group = nursery.lot(Kind::pot_group, foreign);
  nursery.enter(book::Verb::buy_in, "2025-01-02", group,
                {{group, State::bought_in, group, State::plant, 12}});
  const auto from = input();
  const auto json = forecast_json(forecast(from), from, 1);
  ASSERT_EQ(json["left_out"].size(), 1U);
  EXPECT_EQ(json["left_out"][0]["code"], nursery.lot_of(group).code.text());
  EXPECT_EQ(json["left_out"][0]["count"], 12);
}

TEST_F(Written, EverythingShownHasAHeadingDecimalsAndAWordThatReadsBack) {
  std::set<std::string> headings;
  for (const auto shown :
       {Shown::into, Shown::standing, Shown::mix, Shown::part, Shown::square_metres, Shown::load,
        Shown::place_metres, Shown::place_load, Shown::unplaced_metres, Shown::ready}) {
    headings.insert(heading_of(shown));
    EXPECT_EQ(read_shown(word_of(shown)).value(), shown);
    const bool plants = shown == Shown::into || shown == Shown::standing || shown == Shown::ready;
    EXPECT_EQ(decimals_of(shown) == 0, plants) << word_of(shown);
    EXPECT_EQ(unit_of(shown) == "plants", plants) << word_of(shown);
  }
  EXPECT_EQ(headings.size(), 10U);
  EXPECT_FALSE(headings.contains(""));
  EXPECT_FALSE(read_shown("moonlight"));
  EXPECT_EQ(name_said({Shown::square_metres, "part shade"}), "part shade");
  EXPECT_EQ(name_said({Shown::ready, "Ada × unknown"}), "Ada × unknown");
  EXPECT_EQ(name_said({Shown::standing, "1 L"}), "1 L");
}

TEST_F(Written, ABenchListSaysWhatFindsNoRoomAndHowGoodItIs) {
  plan::PlacingInput in;
  in.today = day("2025-12-01");
  in.registers = input().standing.registers;
  in.pieces = {{Code::of(Kind::tray, 17, 1).value(), "Ada × Bo", nursery.taxon(),
                book::Light::part_shade, nursery.tray_pot(), std::nullopt, plan::ByMonth(1, 1)}};
  plan::Placing placing;
  placing.months = {day("2025-12-01")};
  placing.placed = {{0, {std::nullopt}}};
  placing.proven = false;
  placing.moved = 2;
  placing.moves_bound = 1;
  placing.cost = 8;
  placing.bound = 6;
  placing.remarks = {"Measure the bench."};
  placing.no_room = {{0, book::Light::part_shade, 0.12, {0, 0}}};
  EXPECT_EQ(proof_told(placing),
            "2 moves (at least 1); this placing costs 8.00, none costs less than 6.00 (a move "
            "costs 1, a lot without a place 5 a month and more).");
  const auto code = in.pieces[0].code.text();
  const auto told = no_room_told(in, placing);
  ASSERT_EQ(told.size(), 2U);
  EXPECT_NE(told[0].find("find no room in"), std::string::npos);
  EXPECT_NE(told[0].find(code + ", " + code), std::string::npos);
  EXPECT_EQ(told[1], "Measure the bench.");
  EXPECT_FALSE(any_has(placing_paper(in, placing).sentences, "Everything finds room."));
  const auto json = placing_json(in, placing);
  EXPECT_DOUBLE_EQ(json["gap"].get<double>(), 0.25); // 2 of 8
  EXPECT_EQ(json["no_room"][0]["light"], "part shade");
  EXPECT_TRUE(json["benches"][0]["places"][0].is_null());
  placing.proven = true;
  placing.cost = placing.bound;
  placing.no_room.clear();
  EXPECT_EQ(proof_told(placing), "2 moves; no placing is better.");
  EXPECT_TRUE(any_has(placing_paper(in, placing).sentences, "Everything finds room."));
  EXPECT_EQ(placing_json(in, placing)["gap"], 0);
  placing.proven = false;
  placing.moves_bound = 0;
  EXPECT_EQ(proof_told(placing).find("at least"), std::string::npos);
}

TEST_F(Written, AnOrderListSaysWhenNothingIsToBeOrdered) {
  const book::Title title{"Real nursery", 17, false, day("2026-01-01"), {}};
  const std::vector months{day("2027-03-01")};
  Ordered none;
  none.assurance = 0.9;
  none.held = 1;
  EXPECT_EQ(order_paper(none, title, months[0], months).sentences[0], "Nothing has to be ordered.");
  plan::OrderLine line;
  line.good = "peat";
  line.packs = 2;
  line.order_by = line.for_month = months[0];
  none.list.lines = {line};
  none.list.cents = 1250;
  EXPECT_EQ(order_paper(none, title, months[0], months).sentences[0], "12.50 in all.");
  EXPECT_TRUE(order_json(none)["orders"][0]["kilograms"].is_null()); // nobody weighed a pack
  none.list.lines[0].kilograms = 40;
  EXPECT_EQ(order_json(none)["orders"][0]["kilograms"], 40);
  // An assurance that is none refuses the whole list of them.
  const auto from = input();
  EXPECT_FALSE(ordered_with(forecast(from), {}, {}, months[0], {0.5, 1.5}));
  EXPECT_EQ(ordered_with(forecast(from), {}, {}, months[0], {0.5, 0.9})->size(), 2U);
}

// The supposed bench has 0.1 m², less than the one tray of 0.12 m² that stands there.
TEST_F(Written, TwoPlansSayWhichOfThemRunsFull) {
  nursery.sow(nursery.harvest(nursery.cone(mother), "2025-02-01", 50), "2025-11-20", 40);
  bench(100'000);
  const auto present = input();
  auto supposed = present;
  supposed.standing.registers.places.front().length_mm = 100;
  const auto compared = plan::compare(present, supposed, {50, 1, 1, {}});
  ASSERT_TRUE(compared) << compared.error().text();
  const auto json = compared_json(*compared);
  ASSERT_EQ(json["full"].size(), 1U);
  EXPECT_EQ(json["full"][0]["name"], "part shade");
  EXPECT_TRUE(json["full"][0]["present"]["worst_month"].is_null()) << json["full"].dump(1);
  EXPECT_EQ(json["full"][0]["supposed"]["worst_month"], "2025-12");
  const book::Title real{"Real nursery", 17, false, day("2026-01-01"), {}};
  const auto csv = compared_csv(*compared, real);
  EXPECT_NE(csv.find(",no\n"), std::string::npos);
  EXPECT_EQ(csv.find(",yes\n"), std::string::npos);
  EXPECT_NE(csv.find("2025-12 to 2026-11,"), std::string::npos); // a year of what happens
}

} // namespace
} // namespace coneline::report
