// SPDX-License-Identifier: GPL-3.0-or-later
// What was supposed and is accepted stands in the book, or nothing of it does.
#include "core/plan/supposed_records.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

namespace coneline::plan {
namespace {

class SupposedInABook : public testing::Test {
 protected:
  SupposedInABook() : book_(tests::make_first_cone(scratch_.at("t.coneline"), first)) {
    present.standing.today = tests::day("2026-03-01");
    present.standing.months = 24;
    present.standing.registers = registers();
  }
  book::Registers registers() {
    return book_.read([](store::Reading& reading) { return reading.registers(); }).value();
  }
  std::string accepted(const Supposition& supposition) {
    const auto done = accept(book_, present, supposition);
    return done ? fmt::format("{}", fmt::join(done->told, " ")) : done.error().what;
  }

  tests::Scratch scratch_;
  tests::FirstCone first;
  store::Book book_;
  ForecastInput present;
};

TEST_F(SupposedInABook, ARouteAMixAPlaceAndFiguresAreWritten) {
  std::array<bool, 12> spring{};
  spring.at(2) = spring.at(3) = true;
  const auto said = accepted({OtherSurvival{"Cycas revoluta", 1, 0.8},
                              OtherRecipe{"stony", {{"pumice", 3}, {"bark", 1}}, 0.1},
                              OtherStepMix{"Cycas revoluta", 2, "stony"},
                              PlaceMore{"Bench 2", book::Light::sun, 2000, 1000},
                              OtherPotting{spring}, SoldAfter{6}});
  EXPECT_EQ(said.find("Of Cycas revoluta in 'seed tray' (step 1) 80 % live instead of 90 %."), 0U)
      << said;
  const auto r = registers();
  const auto& route = r.routes.at(0);
  EXPECT_EQ(route.steps.at(0).survival, 0.8);
  EXPECT_EQ(route.steps.at(0).source, "survival 0.8 since 2026-03-01, own plan");
  EXPECT_EQ(r.mix(route.steps.at(0).mix).name, "gritty");
  const auto& stony = r.mix(route.steps.at(1).mix);
  EXPECT_EQ(stony.name, "stony");
  EXPECT_EQ(stony.shrink, 0.1);
  EXPECT_EQ(stony.parts.size(), 2U);
  const auto* bench = book::named(r.places, "Bench 2");
  ASSERT_NE(bench, nullptr);
  EXPECT_EQ(bench->code.kind(), Kind::place);
  EXPECT_EQ(bench->length_mm, 2000);
  ASSERT_EQ(r.figures.size(), 2U); // the months in which one potters, and how long plants stand
}

TEST_F(SupposedInABook, AMixOfOtherPartsIsChangedWhereItStands) {
  EXPECT_EQ(accepted({OtherRecipe{"gritty", {{"perlite", 4}, {"peat", 3}, {"sand", 2}}, {}}}),
            "'gritty' is made of perlite 4, peat 3, sand 2 instead of perlite 4, peat 3, sand 3.");
  const auto r = registers();
  ASSERT_EQ(r.mixes.size(), 1U);
  EXPECT_EQ(r.mixes[0].parts.at(2).share, 2);
  EXPECT_EQ(r.mixes[0].shrink, 0.15) << "it was not said";
  EXPECT_EQ(r.mixes[0].loss, 0.02);
}

TEST_F(SupposedInABook, AMixThatIsTheSameIsNoRecord) {
  present.standing.registers = registers();
  const std::vector<book::MixPart> parts{{"perlite", 4}, {"peat", 3}, {"sand", 3}};
  const auto records = [&](const std::vector<book::MixPart>& of, std::optional<double> shrink) {
    return changes_of(present, {OtherRecipe{"gritty", of, shrink}})->mixes.size();
  };
  EXPECT_EQ(records(parts, {}), 0U);
  EXPECT_EQ(records(parts, 0.2), 1U);
  EXPECT_EQ(records({{"perlite", 4}, {"peat", 3}}, {}), 1U);
  EXPECT_EQ(records({{"perlite", 4}, {"peat", 3}, {"grit", 3}}, {}), 1U);
}

TEST_F(SupposedInABook, WhatIsNoRecordIsSaidWithItsReason) {
  const auto nothing = [&](const Supposition& supposition) {
    const auto done = accept(book_, present, supposition);
    EXPECT_FALSE(done);
    EXPECT_EQ(done.error().what, "nothing of this can be written");
    return done.error().remedy;
  };
  EXPECT_EQ(nothing({}), "Suppose something first.");
  EXPECT_EQ(nothing({SoldAfter{}}),
            "That ready plants stay is not written: it holds where the book says nothing.");
  EXPECT_EQ(nothing({PlaceLess{"Bench"}}),
            "That 'Bench' is gone is not written: move what stands there, then set its measures to "
            "0.");
  EXPECT_TRUE(registers().figures.empty());
}

TEST_F(SupposedInABook, WhatCannotBeSupposedLeavesTheBookAsItWas) {
  EXPECT_EQ(accepted({PlaceMore{"Bench 2", book::Light::sun, 2000, 1000},
                      OtherSurvival{"Cycas nobody", 1, 0.8}}),
            "the book has no taxon 'Cycas nobody'");
  EXPECT_EQ(registers().places.size(), 2U);
}

TEST_F(SupposedInABook, ARowThatTheBookRefusesTakesTheOthersBack) {
  const auto before = registers();
  const auto written = [&](const std::function<void(SupposedRecords&)>& spoil) {
    auto records = changes_of(present, {PlaceMore{"Bench 2", book::Light::sun, 2000, 1000},
                                        OtherRecipe{"stony", {{"pumice", 1}}, {}},
                                        OtherSurvival{"Cycas revoluta", 1, 0.8}, SoldAfter{6}})
                       .value();
    spoil(records);
    const auto done = book_.write([&](store::Writing& writing) { return write(writing, records); });
    return done ? std::string("written") : done.error().what;
  };
  EXPECT_EQ(written([](auto& r) { r.mixes.at(0).parts.at(0).share = 0; }),
            "a share of 'pumice' of 0");
  EXPECT_EQ(written([](auto& r) { r.routes.at(0).steps.clear(); }), "a route without steps");
  EXPECT_EQ(written([](auto& r) { r.places.at(0).name = "Bench"; }),
            "there is a place 'Bench' already");
  EXPECT_EQ(written([](auto& r) { r.figures.at(0).name.clear(); }), "the figure '' of 6");
  const auto after = registers();
  EXPECT_EQ(after.mixes.size(), before.mixes.size());
  EXPECT_EQ(after.places.size(), before.places.size());
  EXPECT_EQ(after.routes.at(0).steps.at(0).survival, 0.9);
  EXPECT_EQ(written([](auto&) {}), "written");
}

} // namespace
} // namespace coneline::plan
