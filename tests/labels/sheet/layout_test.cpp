// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/sheet/layout.h"
#include "labels/symbol/symbol.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace coneline::labels {
namespace {

/// A font of sorts: capitals wider than small letters, code letters all alike.
double measure(std::string_view text, Face face) {
  double width = 0;
  for (const char c : text)
    if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U)
      width += face == Face::code ? 0.6 : (c >= 'A' && c <= 'Z') ? 0.7 : 0.55;
  return width;
}

LabelText usual() {
  return {"T99999999Q",  "Zamia integrifolia × Zamia furfuracea",
          "cone C1712K", "sown 2026-03-09",
          "24 seeds",    "Poisonous seed: gloves"};
}

bool overlap(const Box& a, const Box& b) {
  constexpr double touch = 1e-6;
  return a.x < b.right() - touch && b.x < a.right() - touch && a.y < b.bottom() - touch &&
         b.y < a.bottom() - touch;
}

/// What must hold of every layout, whatever the words.
std::string what_is_wrong(const LabelLayout& layout, const LabelText& text, const Stock& stock,
                          int dpi) {
  const Box paper{0, 0, stock.usable_width() + 1e-6, stock.usable_height() + 1e-6};
  const auto inside = [&](const Box& box) {
    return box.x >= -1e-6 && box.y >= -1e-6 && box.right() <= paper.width &&
           box.bottom() <= paper.height;
  };
  if (!inside(layout.symbol))
    return "the symbol leaves the label";
  if (std::abs(layout.module - layout.dots_per_module * 25.4 / dpi) > 1e-9)
    return "a module is no whole number of dots";
  if (layout.module < least_module - 1e-9)
    return "a module is too small";
  if (std::abs(layout.symbol.width - layout.module * (symbol_modules + 2 * quiet_modules)) > 1e-9)
    return "the quiet zone is not four modules";
  bool code = false;
  for (std::size_t i = 0; i < layout.texts.size(); ++i) {
    const auto& placed = layout.texts[i];
    code = code || (placed.face == Face::code && placed.text == text.code);
    if (!inside(placed.box))
      return "'" + placed.text + "' leaves the label";
    if (overlap(placed.box, layout.symbol))
      return "'" + placed.text + "' runs into the symbol";
    if (placed.baseline < placed.box.y || placed.baseline > placed.box.bottom())
      return "'" + placed.text + "' stands outside its line";
    for (std::size_t k = 0; k < i; ++k)
      if (overlap(placed.box, layout.texts[k].box))
        return "'" + placed.text + "' overlaps '" + layout.texts[k].text + "'";
  }
  return code ? "" : "the code in letters is missing";
}

TEST(Layout, HoldsOnEveryStockAndPrinter) {
  for (const auto& stock : common_stocks())
    for (const int dpi : {203, 300, 600}) {
      const auto layout = lay_out(usual(), stock, dpi, measure);
      ASSERT_TRUE(layout) << layout.error().text();
      EXPECT_EQ(what_is_wrong(*layout, usual(), stock, dpi), "") << stock.name << " " << dpi;
    }
}

TEST(Layout, ShrinksThenWrapsThenElides) {
  const auto stock = common_stocks().front();
  const auto cross_lines = [&](const std::string& cross) {
    auto text = usual();
    text.cross = cross;
    const auto layout = lay_out(text, stock, 300, measure).value();
    std::vector<PlacedText> lines;
    for (const auto& placed : layout.texts)
      if (placed.face == Face::bold && placed.text != text.caution)
        lines.push_back(placed);
    return std::pair(lines, layout.shortened);
  };
  const auto [brief, brief_cut] = cross_lines("Cycas");
  const auto [longer, longer_cut] = cross_lines("Cycas taitungensis, female");
  const auto [wraps, wraps_cut] = cross_lines("Encephalartos horridus × Encephalartos lehmannii");
  const auto [cut, cut_cut] = cross_lines(std::string(60, 'a') + " " + std::string(200, 'b'));
  EXPECT_EQ(brief.size(), 1U);
  EXPECT_EQ(longer.size(), 1U);
  EXPECT_LT(longer.front().size, brief.front().size);
  EXPECT_GT(wraps.size(), 1U);
  EXPECT_FALSE(brief_cut || longer_cut || wraps_cut);
  EXPECT_TRUE(cut_cut);
  EXPECT_TRUE(cut.back().text.ends_with("…"));
}

TEST(Layout, PrintsNothingThatGoesIntoTheSoil) {
  int tags = 0;
  for (const auto& stock : common_stocks())
    if (stock.in_soil > 0) {
      ++tags;
      const auto layout = lay_out(usual(), stock, 300, measure).value();
      for (const auto& placed : layout.texts) {
        EXPECT_LE(placed.box.right(), stock.usable_width() + 1e-6) << stock.name;
        EXPECT_LE(placed.box.bottom(), stock.usable_height() + 1e-6) << stock.name;
      }
    }
  EXPECT_GT(tags, 0);
}

TEST(Layout, RefusesWhatCannotBe) {
  const auto stock = common_stocks().front();
  auto overlong = usual();
  overlong.code = "T123456789Q";
  EXPECT_FALSE(lay_out(overlong, stock, 300, measure));
  EXPECT_FALSE(lay_out(usual(), stock, 10, measure));
  EXPECT_FALSE(lay_out(usual(), roll("tiny", 12, 12), 300, measure));
  // 0.4 mm is 3.2 dots here, so a module takes 4 dots and the code 14.5 mm.
  const auto coarse = lay_out(usual(), roll("flat", 60, 13), 203, measure);
  ASSERT_FALSE(coarse);
  EXPECT_NE(coarse.error().what.find("1.5 mm more"), std::string::npos) << coarse.error().what;
}

RC_GTEST_PROP(Layout, NothingOverlapsWhateverTheWords, ()) {
  const auto words = [](int most) {
    return *rc::gen::resize(most, rc::gen::container<std::string>(
                                      rc::gen::elementOf(std::string("abcdefgh  WMX×-éÅ"))));
  };
  auto text = usual();
  text.cross = words(300);
  text.cone = words(60);
  text.count = words(40);
  text.caution = words(120);
  const auto stocks = common_stocks();
  auto stock = stocks[*rc::gen::inRange<std::size_t>(0, stocks.size())];
  if (*rc::gen::arbitrary<bool>())
    stock = roll("any", *rc::gen::inRange(22, 160), *rc::gen::inRange(15, 120));
  const int dpi = *rc::gen::element(203, 300, 600);
  const auto layout = lay_out(text, stock, dpi, measure);
  if (layout)
    RC_ASSERT(what_is_wrong(*layout, text, stock, dpi) == "");
  else
    RC_ASSERT(std::min(stock.label_width, stock.label_height) < 32);
}

} // namespace
} // namespace coneline::labels
