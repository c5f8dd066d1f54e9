// SPDX-License-Identifier: GPL-3.0-or-later
// Suppositions at the ends of their ranges, and what a plan cannot start from.
#include "core/plan/supposed.h"
#include "core/plan/supposed_records.h"
#include "tests/core/plan/invented_lots.h"
#include "tests/core/store/scratch.h"

#include <cmath>

namespace coneline::plan {
namespace {

using namespace coneline::tests;
using book::Light;

ForecastInput lots() {
  auto input = invented_lots(12, 24);
  add_sowings(input);
  return input;
}

/// What a change says of itself, or why it cannot be.
std::string said(const Change& change, const ForecastInput& present = lots()) {
  const auto made = suppose(present, {change});
  return made ? made->told.front() : made.error().what;
}

TEST(SupposedRanges, AStepOfARouteThatIsThere) {
  EXPECT_EQ(said(OtherSurvival{"Cycas revoluta", 0, 0.9}),
            "the route of 'Cycas revoluta' has no step 0");
  EXPECT_EQ(said(OtherSurvival{"Cycas revoluta", 4, 0.9}),
            "the route of 'Cycas revoluta' has no step 4");
  auto input = lots();
  std::erase_if(input.standing.registers.routes,
                [](const book::Route& route) { return route.taxon == book::TaxonId{3}; });
  EXPECT_EQ(said(OtherSurvival{"Dioon edule", 1, 0.9}, input), "'Dioon edule' has no route");
  EXPECT_EQ(said(OtherSurvival{"Cycas revoluta", 3, 1.01}), "a survival of 1.01");
}

// The route's share weighs as many plants as is assumed: (30 × 0.5 + 40) / (30 + 40 + 10) = 68.75
// %.
TEST(SupposedRanges, TheBooksHistoryWeighsInUnlessTheRouteAloneCounts) {
  auto input = lots();
  input.history[{cycas, 1}] = {40, 10};
  input.assumed.survival_weight = 30;
  EXPECT_NE(said(OtherSurvival{"Cycas revoluta", 2, 0.5}, input).find("reckons with 68.8 %"),
            std::string::npos);
  EXPECT_EQ(said(OtherSurvival{"Cycas revoluta", 3, 0.5}, input).find("history"),
            std::string::npos);
  input.assumed.survival_weight = HUGE_VAL;
  EXPECT_EQ(said(OtherSurvival{"Cycas revoluta", 2, 0.5}, input).find("history"),
            std::string::npos);
}

TEST(SupposedRanges, ThePaceOfATaxonOrOfAPlaceWithAllThatIsWithinIt) {
  EXPECT_EQ(said(OtherPace{"Cycas revoluta", 0}), "0 times the time to come up");
  EXPECT_EQ(said(OtherPace{"Cycas revoluta", 10.5}), "10.5 times the time to come up");
  EXPECT_NE(said(OtherPace{"Cycas revoluta", 10}).find("takes 10 times as long"),
            std::string::npos);
  auto input = lots();
  EXPECT_EQ(said(OtherPace{"bench A", 0.7}, input), "no tray stands in 'bench A'");
  // A bench in a house: a tray on the bench stands in the house too.
  auto& places = input.standing.registers.places;
  auto house = places.front();
  house.id = {7};
  house.name = "house";
  places.push_back(house);
  places[1].within = house.id;
  const auto before = input.sprouting;
  input.places[input.standing.trays.at(0).code] = places[1].id;
  input.places[input.standing.trays.at(1).code] = places[0].id;
  EXPECT_NE(said(OtherPace{"house", 0.7}, input)
                .find("Seed in 'house' takes 0.7 times as long to "
                      "come up from now on: 1 trays"),
            std::string::npos);
  const auto same = suppose(input, {OtherPace{"house", 1}}).value();
  for (std::size_t at = 0; at < before.size(); ++at)
    EXPECT_EQ(same.input.sprouting[at].draws, before[at].draws) << "once as long changes nothing";
}

TEST(SupposedRanges, APlaceMoreHasANameAndSides) {
  EXPECT_EQ(said(PlaceMore{"", Light::sun, 10, 10}), "a place without a name");
  EXPECT_EQ(said(PlaceMore{"bench A", Light::sun, 10, 10}), "there is a place 'bench A' already");
  EXPECT_EQ(said(PlaceMore{"bench C", Light::sun, 10, 1.1e6}),
            "'bench C' with a side of 1100000 mm");
  EXPECT_EQ(said(PlaceMore{"bench C", Light::sun, std::nan(""), 10}),
            "'bench C' with a side of nan mm");
  auto input = lots();
  input.standing.registers.places.clear();
  input.places.clear();
  const auto first = suppose(input, {PlaceMore{"bench A", Light::sun, 2000, 1500}}).value();
  EXPECT_EQ(first.told.front(), "A place more: 'bench A', sun, 2000 × 1500 mm, 3.00 m².");
  EXPECT_EQ(first.input.standing.registers.places.at(0).id, book::PlaceId{1});
}

TEST(SupposedRanges, APlaceLessTakesWhatIsWithinItAlong) {
  auto input = lots();
  auto& places = input.standing.registers.places;
  places[1].within = places[0].id;
  const auto without = suppose(input, {PlaceLess{"bench A"}}).value();
  EXPECT_TRUE(without.input.standing.registers.places.empty());
  EXPECT_TRUE(without.input.places.empty());
  EXPECT_NE(without.told.front().find("Without 'bench A' (2.00 m², and 1 place within it)"),
            std::string::npos)
      << without.told.front();
  input.standing.registers.places.clear();
  EXPECT_NE(said(PlaceLess{"bench A"}, input).find("bench A"), std::string::npos);
  const auto none = suppose(input, {PlaceLess{"bench A"}});
  ASSERT_FALSE(none);
  EXPECT_NE(none.error().remedy.find("none"), std::string::npos) << none.error().text();
}

TEST(SupposedRanges, AMixIntoAPotOrAStepThatAreThere) {
  EXPECT_NE(said(OtherMix{"9 L", "cycad mix"}).find("'9 L'"), std::string::npos);
  EXPECT_NE(said(OtherMix{"3 L", "no mix"}).find("'no mix'"), std::string::npos);
  EXPECT_NE(said(OtherStepMix{"Cycas nobody", 2, "cycad mix"}).find("no taxon 'Cycas nobody'"),
            std::string::npos);
  EXPECT_NE(said(OtherStepMix{"Cycas revoluta", 2, "no mix"}).find("'no mix'"), std::string::npos);
  EXPECT_EQ(said(OtherStepMix{"Cycas revoluta", 2, "cycad mix"}),
            "Cycas revoluta is potted into '1 L' (step 2) with 'cycad mix' instead of 'cycad "
            "mix'.");
}

TEST(SupposedRanges, ARecipeHasANameAndEachPartOnce) {
  const std::string nothing = "a mix without a name or without parts";
  EXPECT_EQ(said(OtherRecipe{"", {{"bark", 1}}, {}}), nothing);
  EXPECT_EQ(said(OtherRecipe{"cycad mix", {}, {}}), nothing);
  EXPECT_EQ(said(OtherRecipe{"cycad mix", {{"bark", -1}}, {}}), "'cycad mix' with -1 of 'bark'");
  EXPECT_EQ(said(OtherRecipe{"cycad mix", {{"bark", HUGE_VAL}}, {}}),
            "'cycad mix' with inf of 'bark'");
  EXPECT_EQ(said(OtherRecipe{"cycad mix", {{"bark", 1}, {"bark", 2}}, {}}),
            "'cycad mix' with 1 of 'bark'");
  EXPECT_EQ(said(OtherRecipe{"cycad mix", {{"bark", 1}}, 1.0}), "a shrink of 1");
  EXPECT_EQ(said(OtherRecipe{"cycad mix", {{"bark", 1}}, -0.1}), "a shrink of -0.1");
  EXPECT_EQ(said(OtherRecipe{"cycad mix", {{"bark", 4}, {"sand", 1}}, 0.0}),
            "'cycad mix' is made of bark 4, sand 1 instead of bark 3, sand 1.");
  EXPECT_EQ(said(OtherRecipe{"stony", {{"pumice", 1}}, 0.3}),
            "A mix more: 'stony' is made of pumice 1.");
  const auto shrunk = suppose(lots(), {OtherRecipe{"cycad mix", {{"bark", 1}}, 0.3}}).value();
  EXPECT_EQ(shrunk.input.standing.registers.mixes.at(0).shrink, 0.3);
  const auto kept = suppose(lots(), {OtherRecipe{"cycad mix", {{"bark", 1}}, {}}}).value();
  EXPECT_EQ(kept.input.standing.registers.mixes.at(0).shrink, 0.2);
}

TEST(SupposedRanges, PlantsLeaveAfterMonthsThatCanBe) {
  EXPECT_EQ(said(SoldAfter{1201}), "sold after 1201 months");
  EXPECT_EQ(said(SoldAfter{-1}), "sold after -1 months");
  EXPECT_EQ(said(SoldAfter{0}), "Ready plants leave 0 months after they are ready (in the present "
                                "plan they stay in their pots).");
  EXPECT_EQ(said(SoldAfter{}),
            "Ready plants stay in their pots (in the present plan they stay in their pots).");
}

TEST(SupposedRanges, SeedIsSownOfACrossOrATaxonThatIsKnown) {
  const auto from = [](const ForecastInput& input, const std::string& cross) {
    const auto sowing = told_sowing(input, cross, 50, day("2027-05-01"));
    return sowing ? sowing->taxon.value : 0;
  };
  auto input = lots();
  EXPECT_EQ(from(input, "cross 1/0"), 1);
  EXPECT_EQ(from(input, "new cross"), 2) << "it is among the sowings";
  EXPECT_EQ(from(input, "Dioon edule"), 3) << "a taxon, for a cross that is not there yet";
  EXPECT_EQ(from(input, "nobody's"), 0);
  const auto cross = input.standing.trays.at(0);
  input.sprouting.clear();
  EXPECT_EQ(from(input, cross.cross), cross.taxon.value) << "it stands in a tray";
  input.standing.trays.clear();
  const auto& group = input.standing.groups.at(0);
  EXPECT_EQ(from(input, group.cross), group.taxon.value) << "it stands in pots";
  EXPECT_FALSE(told_sowing(input, "Dioon edule", 1'000'001, day("2027-05-01")));
  EXPECT_FALSE(told_sowing(input, "Dioon edule", 5, day("2026-10-01"))) << "that month has been";
}

TEST(PottingWordsOfAYear, RunOverItsEndAndStandAlone) {
  std::array<bool, 12> months{};
  EXPECT_EQ(potting_words(months), "");
  months.at(10) = months.at(11) = months.at(0) = true;
  EXPECT_EQ(potting_words(months), "November to January");
  months.at(4) = true;
  EXPECT_EQ(potting_words(months), "May and November to January");
  months.at(2) = true;
  EXPECT_EQ(potting_words(months), "March, May and November to January");
}

} // namespace
} // namespace coneline::plan
