// SPDX-License-Identifier: GPL-3.0-or-later
// What offers, goods, targets, places and label papers may say, at both ends of each range.
#include "core/book/label.h"
#include "core/book/plan_records.h"
#include "core/book/sourced.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

namespace coneline::book {
namespace {

constexpr double no_number = std::numeric_limits<double>::quiet_NaN();

/// What is said of a sound one after one change; "sound" where nothing is.
template <class Row>
std::string said(Row row, const std::function<void(Row&)>& change) {
  change(row);
  const auto sound = is_sound(row);
  return sound ? "sound" : sound.error().what;
}

using OfferChange = std::function<void(Offer&)>;
std::string of_offer(const OfferChange& change) {
  return said<Offer>({{}, "bark", "the mill", Form::bag, 70, 1, 900, 0, 7, 1, 25.5}, change);
}

TEST(Sound, AnOfferWithinItsRanges) {
  for (const OfferChange& change :
       {OfferChange([](Offer&) {}), OfferChange([](Offer& o) { o.litres = 1e7; }),
        OfferChange([](Offer& o) { o.expansion = 100; }),
        OfferChange([](Offer& o) { o.cents = o.delivery_cents = 0; }),
        OfferChange([](Offer& o) { o.lead_days = 0; }),
        OfferChange([](Offer& o) { o.lead_days = 3650; }),
        OfferChange([](Offer& o) { o.kilograms.reset(); }),
        OfferChange([](Offer& o) { o.kilograms = 1e6; })})
    EXPECT_EQ(of_offer(change), "sound");
}

TEST(Sound, AnOfferBesideItsRangesIsRefusedByWhatIsWrong) {
  EXPECT_EQ(of_offer([](Offer& o) { o.good.clear(); }), "an offer without a good");
  EXPECT_EQ(of_offer([](Offer& o) { o.supplier.clear(); }), "an offer without a supplier");
  const std::string of = "the offer of 'bark' by 'the mill' has ";
  EXPECT_EQ(of_offer([](Offer& o) { o.litres = 0; }), of + "0 litres in a pack");
  EXPECT_EQ(of_offer([](Offer& o) { o.litres = no_number; }), of + "nan litres in a pack");
  EXPECT_EQ(of_offer([](Offer& o) { o.litres = 2e7; }), of + "2e+07 litres in a pack");
  for (const double expansion : {0.5, -1.0, 101.0, no_number})
    EXPECT_NE(of_offer([&](Offer& o) { o.expansion = expansion; }).find("from one that is pressed"),
              std::string::npos)
        << expansion;
  EXPECT_EQ(of_offer([](Offer& o) { o.cents = -1; }), of + "a price below 0");
  EXPECT_EQ(of_offer([](Offer& o) { o.delivery_cents = -1; }), of + "a price below 0");
  EXPECT_EQ(of_offer([](Offer& o) { o.lead_days = -1; }), of + "-1 days of waiting");
  EXPECT_EQ(of_offer([](Offer& o) { o.lead_days = 3651; }), of + "3651 days of waiting");
  EXPECT_EQ(of_offer([](Offer& o) { o.least = 0; }), of + "0 packs as its least order");
  for (const double weight : {0.0, -2.0, 2e6, no_number})
    EXPECT_NE(of_offer([&](Offer& o) { o.kilograms = weight; }).find("a pack of"),
              std::string::npos)
        << weight;
}

using GoodChange = std::function<void(Good&)>;
std::string of_good(const GoodChange& change) {
  Good good;
  good.name = "bark";
  good.on_hand = 40;
  return said<Good>(good, change);
}

TEST(Sound, AGoodWithinAndBesideItsRanges) {
  EXPECT_EQ(of_good([](Good&) {}), "sound");
  EXPECT_EQ(of_good([](Good& g) { g.name.clear(); }), "a good without a name");
  EXPECT_EQ(of_good([](Good& g) { g.on_hand = -1; }), "'bark': -1 litres on hand");
  EXPECT_EQ(of_good([](Good& g) { g.room = 0; }), "sound");
  EXPECT_EQ(of_good([](Good& g) { g.room = -3; }), "'bark': room for -3 litres");
  EXPECT_EQ(of_good([](Good& g) { g.keeps = 1; }), "sound");
  EXPECT_EQ(of_good([](Good& g) { g.keeps = 1200; }), "sound");
  EXPECT_EQ(of_good([](Good& g) { g.keeps = 0; }), "'bark': keeps for 0 months");
  EXPECT_EQ(of_good([](Good& g) { g.keeps = 1201; }), "'bark': keeps for 1201 months");
  EXPECT_EQ(of_good([](Good& g) { g.cents_a_litre_and_month = -0.5; }),
            "'bark': -0.5 cents a litre and month");
}

TEST(Sound, ATargetNeedsACrossPlantsAndAnAssurance) {
  const auto of_target = [](std::string cross, std::int64_t plants, double assurance) {
    Target target;
    target.cross = std::move(cross);
    target.plants = plants;
    target.assurance = assurance;
    return said<Target>(target, [](Target&) {});
  };
  EXPECT_EQ(of_target("A × B", 1, 0.9), "sound");
  EXPECT_EQ(of_target("A × B", 1'000'000, 0.01), "sound");
  EXPECT_EQ(of_target("", 1, 0.9), "a target without a cross");
  EXPECT_EQ(of_target("A × B", 0, 0.9), "a target of 0 plants of 'A × B'");
  EXPECT_EQ(of_target("A × B", 1'000'001, 0.9), "a target of 1000001 plants of 'A × B'");
  EXPECT_EQ(of_target("A × B", 1, 0), "an assurance of 0");
  EXPECT_EQ(of_target("A × B", 1, 1), "an assurance of 1");
  EXPECT_EQ(of_target("A × B", 1, no_number), "an assurance of nan");
}

TEST(Sound, APlaceBearsALoadOrNoneIsSaid) {
  const auto of_place = [](std::optional<double> load) {
    PlaceLimits limits;
    limits.kilograms_a_square_metre = load;
    return said<PlaceLimits>(limits, [](PlaceLimits&) {});
  };
  EXPECT_EQ(of_place({}), "sound");
  EXPECT_EQ(of_place(1e5), "sound");
  EXPECT_EQ(of_place(0), "a place that bears 0 kg a square metre");
  EXPECT_EQ(of_place(-1), "a place that bears -1 kg a square metre");
  EXPECT_EQ(of_place(2e5), "a place that bears 200000 kg a square metre");
}

using StockChange = std::function<void(LabelStock&)>;
std::string of_stock(const StockChange& change) {
  LabelStock stock{{}, "sheet", 210, 297, 7.5, 10, 60, 35, 62.5, 36, 3, 7, 0};
  change(stock);
  const auto fits = fits_its_page(stock);
  return fits ? "fits" : fits.error().what;
}

// Across 7.5 + 2 × 62.5 + 60 = 192.5 of 210 mm; down 10 + 6 × 36 + 35 = 261 of 297 mm.
TEST(Sound, LabelsFitTheirPageToTheHundredth) {
  EXPECT_EQ(of_stock([](LabelStock&) {}), "fits");
  EXPECT_EQ(of_stock([](LabelStock& s) { s.left = 25; }), "fits");
  EXPECT_EQ(of_stock([](LabelStock& s) { s.left = 25.5; }),
            "'sheet': the labels are 0.50 mm wider than the page: 210.50 of 210.00 mm");
  EXPECT_EQ(of_stock([](LabelStock& s) { s.top = 48; }),
            "'sheet': the labels are 2.00 mm higher than the page: 299.00 of 297.00 mm");
  EXPECT_EQ(of_stock([](LabelStock& s) { s.column_pitch = 59; }),
            "'sheet': columns overlap by 1.00 mm: one every 59.00 mm, each 60.00 mm");
  EXPECT_EQ(of_stock([](LabelStock& s) { s.row_pitch = 34.5; }),
            "'sheet': rows overlap by 0.50 mm: one every 34.50 mm, each 35.00 mm");
  // In a single column or row the pitch is of no matter.
  EXPECT_EQ(of_stock([](LabelStock& s) {
              s.columns = s.rows = 1;
              s.column_pitch = s.row_pitch = 0;
            }),
            "fits");
}

TEST(Sound, LengthsThatAreNoneAreRefusedByName) {
  for (const double wrong : {0.0, -1.0, 2000.5, no_number}) {
    EXPECT_NE(of_stock([&](LabelStock& s) { s.page_width = wrong; }).find("a page width of"),
              std::string::npos);
    EXPECT_NE(of_stock([&](LabelStock& s) { s.label_height = wrong; }).find("a label height of"),
              std::string::npos);
  }
  for (const double wrong : {-1.0, 2000.5, no_number})
    EXPECT_NE(of_stock([&](LabelStock& s) { s.in_soil = wrong; }).find("a part in the soil of"),
              std::string::npos);
  const auto many = [](int columns, int rows) {
    return of_stock([&](LabelStock& s) {
      s.columns = columns;
      s.rows = rows;
    });
  };
  EXPECT_EQ(many(0, 7), "'sheet': 0 columns and 7 rows");
  EXPECT_EQ(many(3, 0), "'sheet': 3 columns and 0 rows");
  EXPECT_EQ(many(201, 7), "'sheet': 201 columns and 7 rows");
  EXPECT_EQ(many(3, 201), "'sheet': 3 columns and 201 rows");
}

TEST(Sound, ARangeGoesUpFromZero) {
  EXPECT_EQ(Range::of(0, 0).value(), (Range{0, 0}));
  EXPECT_EQ(Range::of(3, 1).error().what, "a range from 3 down to 1");
  for (const auto& [low, high] :
       {std::pair{-1.0, 1.0}, {no_number, 1.0}, {0.0, no_number}, {0.0, HUGE_VAL}})
    EXPECT_FALSE(Range::of(low, high)) << low << " " << high;
}

} // namespace
} // namespace coneline::book
