// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of the registers outside their ranges: refused with what is wrong, and nothing is written.
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

#include <cmath>

namespace coneline::store {
namespace {

constexpr double no_number = std::numeric_limits<double>::quiet_NaN();

class RegisterRanges : public testing::Test {
 protected:
  RegisterRanges() : book_(tests::make_first_cone(scratch_.at("t.coneline"), first)) {
    rows = registers();
  }

  book::Registers registers() {
    return book_.read([](Reading& reading) { return reading.registers(); }).value();
  }
  /// How many rows all registers have together.
  std::size_t size() {
    const auto r = registers();
    return r.taxa.size() + r.places.size() + r.pots.size() + r.mixes.size() + r.routes.size() +
           r.plants.size() + r.pollen_lots.size() + r.cones.size() + r.purchases.size() +
           r.figures.size() + r.pollen_stores.size();
  }
  /// What was said of a row that was refused; "written" where it was not.
  template <class Row>
  std::string put(const Row& row) {
    const auto before = size();
    const auto done = book_.write([&](Writing& writing) { return writing.put(row); });
    if (done)
      return "written";
    EXPECT_EQ(size(), before);
    return done.error().what;
  }
  template <class Row, class Change>
  std::string changed(Row row, Change change) {
    change(row);
    return put(row);
  }
  Code next(Kind kind) {
    return book_.write([&](Writing& writing) { return writing.next_code(kind); }).value();
  }

  tests::Scratch scratch_;
  tests::FirstCone first;
  Book book_;
  book::Registers rows;
};

TEST_F(RegisterRanges, APotHasMixRoomAndCells) {
  const auto tray = [&](auto change) { return changed(rows.pots[0], change); };
  using Pot = book::Pot;
  EXPECT_EQ(tray([](Pot&) {}), "written");
  EXPECT_EQ(tray([](Pot& p) { p.litres = 0; }), "litres of 0");
  EXPECT_EQ(tray([](Pot& p) { p.litres = no_number; }), "litres of nan");
  EXPECT_EQ(tray([](Pot& p) { p.length_mm = -1; }), "a length in mm of -1");
  EXPECT_EQ(tray([](Pot& p) { p.width_mm = HUGE_VAL; }), "a width in mm of inf");
  EXPECT_EQ(tray([](Pot& p) { p.cells = 0; }), "cells of 0");
  EXPECT_EQ(tray([](Pot& p) { p.cells = 1'000'000; }), "written");
  EXPECT_EQ(tray([](Pot& p) { p.cells = 1'000'001; }), "cells of 1000001");
  EXPECT_EQ(tray([](Pot& p) { p.shape = book::Shape::round; }), "a round pot of 400 × 300 mm");
  EXPECT_EQ(tray([](Pot& p) { p.name = "10 L"; }), "there is a pot '10 L' already");
  EXPECT_EQ(tray([](Pot& p) { p.name.clear(); }), "a pot without a name");
}

TEST_F(RegisterRanges, AMixHasPartsAndSharesOfVolume) {
  const auto mix = [&](auto change) { return changed(rows.mixes[0], change); };
  using Mix = book::Mix;
  EXPECT_EQ(mix([](Mix& m) { m.shrink = m.loss = 0; }), "written");
  EXPECT_EQ(mix([](Mix& m) { m.parts.clear(); }), "the mix 'gritty' has no parts");
  EXPECT_EQ(mix([](Mix& m) { m.parts[0].share = 0; }), "a share of 'perlite' of 0");
  EXPECT_EQ(mix([](Mix& m) { m.parts[1].name = "perlite"; }),
            "the part 'perlite' stands twice in the mix 'gritty'");
  for (const double wrong : {-0.1, 1.0, no_number})
    EXPECT_EQ(mix([&](Mix& m) { m.shrink = wrong; }).find("a shrink of"), 0U) << wrong;
  for (const double wrong : {-0.1, no_number})
    EXPECT_EQ(mix([&](Mix& m) { m.loss = wrong; }).find("a loss of"), 0U) << wrong;
  EXPECT_EQ(mix([](Mix& m) {
              m.parts = {{"sand", 1e308}, {"peat", 1e308}};
            }),
            "the parts of the mix 'gritty' sum to nothing");
  auto second = rows.mixes[0];
  second.id = {};
  EXPECT_EQ(put(second), "there is a mix 'gritty' already");
}

TEST_F(RegisterRanges, AMixDoesNotContainItselfByAnyWay) {
  const auto put_mix = [&](std::string name, std::vector<book::MixPart> parts) {
    return put(book::Mix{{}, std::move(name), 0, 0, "", std::move(parts)});
  };
  EXPECT_EQ(put_mix("loop", {{"sand", 1}, {"loop", 1}}), "the mix 'loop' contains itself");
  EXPECT_EQ(put_mix("top", {{"base", 1}, {"gritty", 1}}), "written") << "base is no mix yet";
  EXPECT_EQ(put_mix("base", {{"middle", 1}}), "written");
  EXPECT_EQ(put_mix("middle", {{"top", 1}}), "the mix 'middle' contains itself");
  EXPECT_EQ(put_mix("middle", {{"gritty", 1}, {"sand", 1}}), "written") << "gritty twice below top";
  EXPECT_EQ(changed(rows.mixes[0],
                    [](book::Mix& m) {
                      m.parts.push_back({"top", 1});
                    }),
            "the mix 'gritty' contains itself");
}

TEST_F(RegisterRanges, ARipeningEnds) {
  const auto taxon = [&](auto change) { return changed(rows.taxa[0], change); };
  using Taxon = book::Taxon;
  EXPECT_EQ(taxon([](Taxon& t) { t.ripening.value = book::Range{0, 1200}; }), "written");
  EXPECT_EQ(taxon([](Taxon& t) { t.ripening.value.reset(); }), "written");
  EXPECT_EQ(taxon([](Taxon& t) {
              t.ripening.value = book::Range{1e300, 1e301};
            }),
            "a ripening of 1e+300 to 1e+301 months");
  EXPECT_EQ(taxon([](Taxon& t) {
              t.after_ripening.value = book::Range{0, 1200.5};
            }),
            "an after-ripening of 0 to 1200.5 months");
  EXPECT_EQ(taxon([](Taxon& t) {
              t.ripening.value = book::Range{9, 6};
            }),
            "a range from 9 down to 6");
}

TEST_F(RegisterRanges, ARouteHasStepsAndSharesAndATaxonHasOne) {
  const auto route = [&](auto change) { return changed(rows.routes[0], change); };
  using Route = book::Route;
  EXPECT_EQ(route([](Route& r) { r.germination = 1; }), "written");
  EXPECT_EQ(route([](Route& r) { r.steps.clear(); }), "a route without steps");
  for (const double wrong : {0.0, 1.01, no_number}) {
    EXPECT_EQ(route([&](Route& r) { r.germination = wrong; }).find("a germination of"), 0U);
    EXPECT_EQ(route([&](Route& r) { r.steps[1].survival = wrong; }).find("a survival of"), 0U);
  }
  EXPECT_EQ(route([](Route& r) { r.id = {}; }), "this taxon has a route already");
  EXPECT_EQ(route([](Route& r) { r.steps[1].months = {6, 1200}; }), "written");
  EXPECT_EQ(route([](Route& r) {
              r.steps[1].months = {6, 1e9};
            }),
            "step 2 of the route of 'Cycas revoluta' lasts 6 to 1000000000 months: it has no end");
  EXPECT_EQ(route([](Route& r) {
              r.steps[0].months = {12, 6};
            }),
            "step 1 of the route of 'Cycas revoluta' lasts 12 to 6 months: it has no end");
  EXPECT_EQ(route([](Route& r) {
              r.germination_months = {1, 1201};
            }),
            "germination of 'Cycas revoluta' lasts 1 to 1201 months: it has no end");
}

TEST_F(RegisterRanges, APlaceHasANameACodeOfItsOwnAndMeasuresFromZero) {
  const auto bench = [&](auto change) { return changed(rows.places[1], change); };
  using Place = book::Place;
  EXPECT_EQ(bench([](Place& p) { p.length_mm = p.width_mm = 0; }), "written");
  EXPECT_EQ(bench([](Place& p) { p.name = "House"; }), "there is a place 'House' already");
  EXPECT_EQ(bench([](Place& p) { p.length_mm = -1; }), "a place of -1 × 1200 mm");
  EXPECT_EQ(bench([](Place& p) { p.width_mm = no_number; }), "a place of 3000 × nan mm");
  EXPECT_EQ(bench([](Place& p) { p.width_mm = HUGE_VAL; }), "a place of 3000 × inf mm");
  EXPECT_EQ(bench([](Place& p) { p.walk = -1'000'000; }), "written");
  EXPECT_EQ(bench([](Place& p) { p.walk = 1'000'001; }), "a turn of 1000001");
  EXPECT_EQ(bench([](Place& p) { p.within = p.id; }),
            "the place " + rows.places[1].code.text() + " would be within itself");
  EXPECT_EQ(changed(rows.places[0], [&](Place& p) { p.within = rows.places[1].id; }),
            "the place " + rows.places[0].code.text() + " would be within itself");
  EXPECT_NE(bench([&](Place& p) { p.code = rows.places[0].code; }).find("stands on another place"),
            std::string::npos);
  const auto elsewhere = Code::of(Kind::place, 18, 9).value();
  EXPECT_NE(bench([&](Place& p) { p.code = elsewhere; }).find(elsewhere.text()), std::string::npos);
}

TEST_F(RegisterRanges, ATitleHasASeriesOfTwoDigits) {
  EXPECT_EQ(changed(rows.title, [](book::Title& t) { t.series = 9; }), "a series of 9");
  EXPECT_EQ(changed(rows.title, [](book::Title& t) { t.series = 100; }), "a series of 100");
  EXPECT_EQ(changed(rows.title, [](book::Title& t) { t.name = "New name"; }), "written");
  EXPECT_EQ(registers().title.name, "New name");
}

TEST_F(RegisterRanges, ParentsAreOfASexThatCanBeOneAndNobodysOwnAncestor) {
  const auto& mother = rows.plants[0];
  const auto& father = rows.plants[1];
  const auto child = [&](auto change) {
    book::Plant plant;
    plant.code = next(Kind::plant);
    plant.taxon = mother.taxon;
    return changed(plant, change);
  };
  using Plant = book::Plant;
  EXPECT_EQ(child([&](Plant& p) { p.seed_parent = father.id; }),
            first.father.text() + " is a male plant and cannot be the seed parent");
  EXPECT_EQ(child([&](Plant& p) { p.pollen_parent = mother.id; }),
            first.mother.text() + " is a female plant and cannot be the pollen parent");
  EXPECT_EQ(child([&](Plant& p) {
              p.seed_parent = mother.id;
              p.pollen_parent = father.id;
            }),
            "written");
  const auto grown = registers().plants.back();
  EXPECT_EQ(grown.pollen_parent, father.id);
  // Both parents lead back to one grandmother, who is passed once.
  EXPECT_EQ(changed(father, [&](Plant& p) { p.seed_parent = mother.id; }), "written");
  EXPECT_EQ(changed(mother, [&](Plant& p) { p.seed_parent = grown.id; }),
            first.mother.text() + " would be its own ancestor: " + first.mother.text() +
                ", parent of " + grown.code.text() + ", parent of " + first.mother.text());
  EXPECT_EQ(child([&](Plant& p) { p.code = first.mother; }),
            "the code " + first.mother.text() + " stands on another plant already");
}

TEST_F(RegisterRanges, PollenConesAndPurchasesHaveCodesOfTheirOwn) {
  auto pollen = rows.pollen_lots[0];
  pollen.millilitres = 0;
  EXPECT_EQ(put(pollen), "an amount of pollen in ml of 0");
  pollen.millilitres.reset();
  EXPECT_EQ(put(pollen), "written");
  pollen.id = {};
  EXPECT_NE(put(pollen).find("stands on another pollen"), std::string::npos);
  auto cone = rows.cones[0];
  cone.id = {};
  EXPECT_NE(put(cone).find("stands on another cone"), std::string::npos);
  book::Purchase purchase{{}, next(Kind::purchase), rows.taxa[0].id, "a grower", {}, ""};
  EXPECT_EQ(put(purchase), "written");
  EXPECT_NE(put(purchase).find("stands on another purchase"), std::string::npos);
}

TEST_F(RegisterRanges, APollenStoreHasANameAndARangeOfYears) {
  const auto store = [&](std::string name, std::optional<book::Range> years) {
    book::PollenStore made;
    made.name = std::move(name);
    made.years = {years, "common practice, no source"};
    return put(made);
  };
  EXPECT_EQ(store("", {}), "a pollen store without a name");
  EXPECT_EQ(store("freezer", book::Range{3, 2}), "a range from 3 down to 2");
  EXPECT_EQ(store("freezer", book::Range{2, 101}), "pollen that lasts 2 to 101 years");
  EXPECT_EQ(store("freezer", book::Range{2, 100}), "written");
  EXPECT_EQ(store("freezer", book::Range{2, 3}), "written");
  const auto before = size();
  EXPECT_EQ(store("freezer", book::Range{2, 4}), "written"); // that one, brought up to date
  EXPECT_EQ(size(), before);
  EXPECT_EQ(registers().pollen_stores.back().years.value->high, 4);
}

TEST_F(RegisterRanges, AFigureHasANameAndANumber) {
  EXPECT_EQ(put(book::Figure{"", 1}), "the figure '' of 1");
  EXPECT_EQ(put(book::Figure{"worth", no_number}), "the figure 'worth' of nan");
  EXPECT_EQ(put(book::Figure{"worth", 18.5}), "written");
  EXPECT_EQ(put(book::Figure{"worth", 19}), "written");
  ASSERT_EQ(registers().figures.size(), 1U);
  EXPECT_EQ(registers().figures[0].value, 19);
  EXPECT_EQ(put(book::Figure{book::figure::plan_assurance, 5}),
            "the figure 'assurance of the season plan' of 5");
}

TEST_F(RegisterRanges, ALotIsABatchOrStandsInAPot) {
  const auto add = [&](const Code& code, std::optional<book::PotId> pot) {
    book::Lot lot;
    lot.code = code;
    lot.origin = rows.cones[0].id;
    lot.pot = pot;
    const auto done = book_.write([&](Writing& writing) { return writing.add(lot); });
    return done ? std::string("written") : done.error().what;
  };
  const auto tray = next(Kind::tray);
  EXPECT_EQ(add(first.cone, {}), first.cone.text() + " is the code of a cone, not of a lot");
  EXPECT_EQ(add(tray, {}), "a tray needs a pot or tray it stands in");
  EXPECT_EQ(add(next(Kind::batch), rows.pots[0].id), "a batch has not a pot or tray it stands in");
  EXPECT_NE(add(Code::of(Kind::tray, 18, 1).value(), rows.pots[0].id), "written");
  EXPECT_EQ(add(tray, rows.pots[0].id), "written");
  EXPECT_EQ(add(tray, rows.pots[0].id),
            "the code " + tray.text() + " stands on another tray already");
  EXPECT_EQ(add(next(Kind::pot_group), rows.pots[1].id), "written");
}

TEST(RowOf, ARowThatIsMissingIsAFaultOfTheProgram) {
  book::Registers registers;
  registers.taxa = {{{2}, "Dioon edule", {}, {}, {}, {}, {}, {}}};
  EXPECT_EQ(registers.taxon({2}).name, "Dioon edule");
  EXPECT_THROW(static_cast<void>(registers.taxon({1})), std::out_of_range);
  EXPECT_THROW(static_cast<void>(registers.taxon({3})), std::out_of_range);
  EXPECT_EQ(registers.route({2}), nullptr);
}

} // namespace
} // namespace coneline::store
