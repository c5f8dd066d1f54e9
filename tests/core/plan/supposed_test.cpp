// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/compared.h"
#include "core/plan/forecast_expected.h"
#include "core/plan/forecast_pace.h"
#include "core/plan/posterior_sprouting.h"
#include "core/plan/supposed.h"
#include "core/plan/supposed_records.h"
#include "tests/core/plan/invented_lots.h"

#include <rapidcheck/gtest.h>

#include <cmath>

namespace coneline::plan {
namespace {

using namespace coneline::tests;

ForecastInput lots_and_sowings(int lots = 24, int months = 30) {
  auto input = invented_lots(lots, months);
  add_sowings(input);
  return input;
}

ForecastRuns runs(int number) {
  return {.runs = number, .seed = 6, .threads = 1, .go_on = {}};
}

/// Of a series over the months of the expectation.
double all_of(const ForecastInput& input, Shown shown, const std::string& name) {
  const auto ways = ways_of(input);
  const auto found = std::ranges::find(ways.series, SeriesName{shown, name});
  return found == ways.series.end()
             ? 0
             : sum(expected(ways, input)[static_cast<std::size_t>(found - ways.series.begin())]);
}

ForecastInput supposed(const ForecastInput& present, const Change& change) {
  return suppose(present, {change}).value().input;
}

std::string why_not(const ForecastInput& present, const Change& change) {
  const auto made = suppose(present, {change});
  EXPECT_FALSE(made) << (made ? made->told.front() : "");
  return made ? "" : made.error().what + ": " + made.error().remedy;
}

RC_GTEST_PROP(Supposed, NothingChangesNothingBitByBit, ()) {
  auto present = invented_lots(*rc::gen::inRange(1, 12), *rc::gen::inRange(1, 20),
                               *rc::gen::arbitrary<unsigned>());
  if (*rc::gen::arbitrary<bool>())
    add_sowings(present);
  const auto same = suppose(present, {});
  RC_ASSERT(same.has_value());
  const auto compared = compare(present, same->input, runs(20));
  RC_ASSERT(compared.has_value());
  for (std::size_t at = 0; at < compared->present.series().size(); ++at)
    for (int run = 0; run < 20; ++run)
      for (std::size_t month = 0; month < compared->present.months().size(); ++month)
        RC_ASSERT(compared->present.value(at, run, month) ==
                  compared->supposed.value(at, run, month));
  RC_ASSERT(compared->most.empty());
}

RC_GTEST_PROP(Supposed, HigherSurvivalNeverLowersTheMean, ()) {
  auto present = lots_and_sowings(12, 24);
  const int step = *rc::gen::inRange(1, 4);
  const double low = *rc::gen::inRange(10, 90) / 100.0;
  const double high = low + *rc::gen::inRange(1, 10) / 100.0;
  const auto worse = supposed(present, OtherSurvival{"Cycas media", step, low});
  const auto better = supposed(present, OtherSurvival{"Cycas media", step, high});
  const auto ways = ways_of(worse);
  const auto a = expected(ways, worse);
  const auto b = expected(ways_of(better), better);
  for (std::size_t at = 0; at < a.size(); ++at) {
    if (ways.series[at].shown == Shown::load)
      continue; // a quotient
    for (std::size_t month = 0; month < a[at].size(); ++month)
      RC_ASSERT(b[at][month] >= a[at][month] - 1e-9);
  }
}

TEST(Supposed, BeyondAnythingElseLotsDrawTheSame) {
  // What the change does not touch is the same in every single run.
  const auto present = lots_and_sowings();
  const auto compared =
      compare(present, supposed(present, OtherSurvival{"Cycas revoluta", 2, 0.5}), runs(60));
  ASSERT_TRUE(compared);
  int touched = 0;
  for (const auto& series : compared->series)
    if (series.name.shown == Shown::ready) {
      const bool other = series.name.name.starts_with("cross 1");
      for (const auto& year : series.years) {
        touched += other && year.mean_difference() < 0 ? 1 : 0;
        if (!other) {
          EXPECT_EQ(year.mean_difference(), 0) << series.name.name;
        }
        EXPECT_LE(year.mean_difference(), 0);
      }
    }
  EXPECT_GT(touched, 2);
}

TEST(Supposed, TheDifferenceIsNotTheNoiseOfTwoForecasts) {
  const auto present = lots_and_sowings(60, 36);
  const auto other = supposed(present, OtherSurvival{"Cycas revoluta", 2, 0.95});
  const auto together = compare(present, other, runs(400));
  const auto apart = forecast_of(other, {.runs = 400, .seed = 77, .threads = 1, .go_on = {}});
  ASSERT_TRUE(together && apart);
  const auto at = together->present.find({Shown::into, "3 L"}).value();
  const auto spread = [&](const Forecast& against) {
    double sum = 0;
    double squares = 0;
    for (int run = 0; run < 400; ++run) {
      double change = 0;
      for (std::size_t month = 12; month < 24; ++month)
        change += static_cast<double>(against.value(at, run, month)) -
                  static_cast<double>(together->present.value(at, run, month));
      sum += change / 400;
      squares += change * change / 400;
    }
    return std::sqrt(squares - sum * sum);
  };
  const double common = spread(together->supposed);
  const double noise = spread(*apart);
  fmt::print("  spread of the year's difference: {:.1f} plants, with streams of their own {:.1f}\n",
             common, noise);
  EXPECT_LT(common, noise / 3);
}

TEST(Supposed, SaysItselfInASentence) {
  auto present = lots_and_sowings();
  present.history[{cycas, 1}] = {40, 10};
  const auto told =
      suppose(present, {OtherSurvival{"Cycas revoluta", 2, 0.95}, OtherPace{"Cycas revoluta", 0.7},
                        PlaceMore{"bench C", book::Light::sun, 6000, 1500}, PlaceLess{"bench A"},
                        OtherRecipe{"gritty mix", {{"pumice", 3}, {"bark", 1}}, {}},
                        OtherMix{"3 L", "gritty mix"}, OtherPotting{{false, false, true, true}},
                        NoCones{}, SoldAfter{4}})
          .value()
          .told;
  ASSERT_EQ(told.size(), 9U);
  EXPECT_EQ(told[0],
            "Of Cycas revoluta in '1 L' (step 2) 95 % live instead of 90 %. The book's own "
            "history weighs in: the plan reckons with 84.3 % instead of 82.9 %.");
  EXPECT_NE(told[1].find("0.7 times as long"), std::string::npos);
  EXPECT_EQ(told[2], "A place more: 'bench C', sun, 6000 × 1500 mm, 9.00 m².");
  EXPECT_NE(told[3].find("Without 'bench A' (2.00 m²)"), std::string::npos);
  EXPECT_EQ(told[4], "A mix more: 'gritty mix' is made of pumice 3, bark 1.");
  EXPECT_EQ(told[5], "'3 L' is filled with 'gritty mix' instead of 'cycad mix', in 3 steps of "
                     "routes.");
  EXPECT_EQ(told[6], "Potting in March to April instead of every month of the year.");
  EXPECT_NE(told[7].find("of 1 cone are not sown"), std::string::npos);
  EXPECT_NE(told[8].find("leave 4 months after"), std::string::npos);
}

TEST(Supposed, RefusesWhatCannotBeAndSaysWhatToChange) {
  const auto present = lots_and_sowings();
  EXPECT_NE(why_not(present, OtherSurvival{"Cycas nobody", 2, 0.9}).find("no taxon"),
            std::string::npos);
  EXPECT_NE(why_not(present, OtherSurvival{"Cycas revoluta", 4, 0.9}).find("1 (the tray) to 3"),
            std::string::npos);
  EXPECT_NE(why_not(present, OtherSurvival{"Cycas revoluta", 2, 0}).find("above 0"),
            std::string::npos);
  EXPECT_NE(why_not(present, OtherSurvival{"Cycas revoluta", 2, std::nan("")}).find("above 0"),
            std::string::npos);
  EXPECT_NE(why_not(present, OtherPace{"Cycas revoluta", 0}).find("above 0"), std::string::npos);
  EXPECT_NE(why_not(present, OtherPace{"nowhere", 0.7}).find("neither"), std::string::npos);
  EXPECT_NE(why_not(present, PlaceMore{"bench A", book::Light::sun, 1, 1}).find("already"),
            std::string::npos);
  EXPECT_NE(why_not(present, PlaceMore{"bench C", book::Light::sun, 0, 1}).find("millimetres"),
            std::string::npos);
  EXPECT_NE(why_not(present, PlaceLess{"bench C"}).find("'bench A'"), std::string::npos);
  EXPECT_NE(why_not(present, OtherMix{"10 L", "cycad mix"}).find("no route comes"),
            std::string::npos);
  EXPECT_NE(why_not(present, OtherMix{"3 L", "no mix"}).find("'cycad mix'"), std::string::npos);
  EXPECT_NE(why_not(present, OtherRecipe{"cycad mix", {{"bark", 0}}, {}}).find("above 0"),
            std::string::npos);
  EXPECT_NE(why_not(present, OtherRecipe{"cycad mix", {{"cycad mix", 1}}, {}}).find("itself"),
            std::string::npos);
  EXPECT_NE(why_not(invented_lots(6, 12), NoCones{}).find("no cones"), std::string::npos);
  EXPECT_NE(why_not(present, MoreSeed{"nobody's", 20, day("2027-05-01")}).find("no cross"),
            std::string::npos);
  EXPECT_NE(why_not(present, MoreSeed{"cross 1/0", 0, day("2027-05-01")}).find("1 000 000"),
            std::string::npos);
  EXPECT_NE(why_not(present, MoreSeed{"cross 1/0", 5, day("2036-05-01")}).find("It runs from"),
            std::string::npos);
  EXPECT_NE(why_not(present, OtherPotting{}).find("at least one"), std::string::npos);
  EXPECT_NE(why_not(present, SoldAfter{-1}).find("0 to 1200"), std::string::npos);
}

TEST(Supposed, SowingsTakeTraysComeUpAndArePotted) {
  // 75 seeds in trays of 50, of a taxon of which nothing is known: half of them come up by the
  // route and 0.8 of those reach 1 L.
  ForecastInput present;
  present.standing = small_plan("2026-01-01", 36);
  present.assumed.germination_weight = std::numeric_limits<double>::infinity();
  const auto more = supposed(present, MoreSeed{"Cycas revoluta", 75, day("2026-05-01")});
  const auto ways = ways_of(more);
  const auto means = expected(ways, more);
  const auto of_series = [&](Shown shown, const std::string& name) {
    return means[static_cast<std::size_t>(std::ranges::find(ways.series, SeriesName{shown, name}) -
                                          ways.series.begin())];
  };
  EXPECT_NEAR(sum(of_series(Shown::into, "1 L")), 75 * 0.5 * 0.8, 1e-9);
  const auto room = of_series(Shown::square_metres, "part shade");
  EXPECT_DOUBLE_EQ(room[3], 0);
  EXPECT_DOUBLE_EQ(room[4], 2 * 0.2);                  // two trays from May on
  EXPECT_EQ(of_series(Shown::standing, "tray")[4], 0); // nothing is up in the first month
  EXPECT_GT(of_series(Shown::standing, "tray")[7], 0);
}

TEST(Supposed, NoConesAreThePlanWithoutThem) {
  const auto present = lots_and_sowings();
  auto without = present;
  std::erase_if(without.sowings, [](const auto& one) { return one.from == SeedFrom::cone; });
  const auto none = supposed(present, NoCones{});
  EXPECT_LT(all_of(none, Shown::into, "1 L"), all_of(present, Shown::into, "1 L"));
  EXPECT_DOUBLE_EQ(all_of(none, Shown::into, "1 L"), all_of(without, Shown::into, "1 L"));
}

TEST(Supposed, APlaceMoreOffersRoomAndAPlaceLessLeavesItsLotsWithoutOne) {
  auto present = lots_and_sowings();
  const auto more =
      compare(present, supposed(present, PlaceMore{"C", book::Light::sun, 9000, 9000}), runs(40));
  ASSERT_TRUE(more);
  const auto sun = std::ranges::find(more->full, std::string("sun"), &FullCompared::name);
  EXPECT_DOUBLE_EQ(sun->offered_supposed, sun->offered_present + 81);
  EXPECT_EQ(sun->over_supposed[sun->worst_supposed], 0);
  const auto less = supposed(present, PlaceLess{"bench B"});
  EXPECT_GT(all_of(less, Shown::unplaced_metres, "sun"),
            all_of(present, Shown::unplaced_metres, "sun"));
  EXPECT_EQ(all_of(less, Shown::place_metres, "bench B"), 0);
}

TEST(Supposed, AnotherMixTakesItsOwnParts) {
  const auto present = lots_and_sowings();
  const auto other = suppose(present, {OtherRecipe{"grit", {{"pumice", 1}}, {}},
                                       OtherStepMix{"Cycas revoluta", 3, "grit"}})
                         .value()
                         .input;
  const double grit = all_of(other, Shown::mix, "grit");
  EXPECT_GT(grit, 0);
  EXPECT_NEAR(all_of(other, Shown::part, "pumice"), grit, 1e-9);
  // The old mix loses a tenth, the new one nothing.
  EXPECT_NEAR(all_of(other, Shown::mix, "cycad mix") + 1.1 * grit,
              all_of(present, Shown::mix, "cycad mix"), 1e-6);
}

TEST(Pace, OfAHotBenchBringsTheSameSeedSooner) {
  // A curve known for certain, sown today: at 0.7 of the time each day's progress is that of day /
  // 0.7, months beyond the plan included.
  const auto today = day("2026-01-01");
  stats::PosteriorPoint point;
  point.curve = {stats::Family::log_logistic, 0.8, 4, 200};
  const CountedTray sown{Code::of(Kind::tray, 17, 1).value(), today, {"", "", 50, {}}};
  auto cross = posterior_sprouting(std::vector{point}, {sown}, today, 10);
  take_pace(cross, 0, today, Calendar(today, 10, Assumptions{}.potting), 0.7);
  double up = 0;
  for (int month = 0; month < 10; ++month) {
    up += cross.draws[0][static_cast<std::size_t>(month)];
    const double days = days_between(today, today.plus_months(month + 1));
    EXPECT_NEAR(up, point.curve.germinated_by(days / 0.7), 0.012) << "month " << month;
  }
  auto same = posterior_sprouting(std::vector{point}, {sown}, today, 10);
  const auto before = same.draws[0];
  take_pace(same, 0, today, Calendar(today, 10, Assumptions{}.potting), 1);
  for (std::size_t month = 0; month < 10; ++month)
    EXPECT_NEAR(same.draws[0][month], before[month], 1e-12);
}

TEST(Pace, OfATaxonMovesPottingsForward) {
  const auto present = lots_and_sowings();
  const auto sooner = supposed(present, OtherPace{"Cycas revoluta", 0.5});
  EXPECT_TRUE(can_be_planned(sooner));
  const auto early = [](const ForecastInput& input) {
    const auto ways = ways_of(input);
    const auto at = static_cast<std::size_t>(
        std::ranges::find(ways.series, SeriesName{Shown::standing, "tray"}) - ways.series.begin());
    return expected(ways, input)[at][2];
  };
  EXPECT_GT(early(sooner), early(present));
}

TEST(SupposedRecords, AreWhatWasSupposedAndSayWhatCannotBeWritten) {
  const auto present = lots_and_sowings();
  const auto records = changes_of(present, {OtherSurvival{"Cycas revoluta", 2, 0.95}, NoCones{},
                                            OtherPace{"Cycas revoluta", 0.7}, PlaceLess{"bench A"},
                                            MoreSeed{"cross 1/0", 20, day("2027-05-01")},
                                            PlaceMore{"bench C", book::Light::sun, 6000, 1500},
                                            OtherPotting{{false, false, true, true, false, true}}})
                           .value();
  EXPECT_EQ(records.not_written.size(), 4U);
  EXPECT_EQ(records.told.size(), 3U);
  ASSERT_EQ(records.routes.size(), 1U);
  EXPECT_EQ(records.routes[0].steps[1].survival, 0.95);
  EXPECT_EQ(records.routes[0].steps[0].survival,
            present.standing.registers.routes[0].steps[0].survival);
  EXPECT_NE(records.routes[0].steps[1].source.find("2026-11-01"), std::string::npos);
  ASSERT_EQ(records.places.size(), 1U);
  EXPECT_TRUE(records.mixes.empty());
  ASSERT_EQ(records.figures.size(), 1U);
  EXPECT_EQ(records.figures[0].value, 4 + 8 + 32);
  EXPECT_FALSE(changes_of(present, {NoCones{}}));
  EXPECT_FALSE(changes_of(present, {}));
}

TEST(PottingWords, NameRunsOfMonths) {
  std::array<bool, 12> months{};
  months[10] = months[11] = months[0] = true;
  EXPECT_EQ(potting_words(months), "November to January");
  months[4] = true;
  EXPECT_EQ(potting_words(months), "May and November to January");
  months.fill(true);
  EXPECT_EQ(potting_words(months), "every month of the year");
}

} // namespace
} // namespace coneline::plan
