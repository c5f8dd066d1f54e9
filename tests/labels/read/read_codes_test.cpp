// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/read_codes.h"
#include "tests/labels/read/families.h"
#include "tests/labels/read/other_symbols.h"

#include <QImage>
#include <QPainter>
#include <QTransform>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace coneline::labels {
namespace {

std::vector<FoundCode> read(const QImage& picture) {
  const auto grey = picture.convertToFormat(QImage::Format_Grayscale8);
  return read_codes({grey.constBits(), grey.width(), grey.height(), grey.bytesPerLine()});
}

Score score(const SceneWish& wish, std::uint64_t first_seed, int scenes) {
  Score sum;
  for (int i = 0; i < scenes; ++i) {
    const auto scene = make_scene(wish, first_seed + static_cast<std::uint64_t>(i));
    sum.add(score_of(scene, read(scene.picture)));
  }
  return sum;
}

TEST(ReadCodes, FindsTheLabelsOfABench) {
  const auto all = score({}, 100, 4);
  EXPECT_GE(all.found * 100, all.labels * 99) << all.found << " of " << all.labels;
  EXPECT_EQ(all.untrue, 0);
}

TEST(ReadCodes, FindsThemInHarderLight) {
  SceneWish wish;
  wish.width = 2400;
  wish.height = 1800;
  wish.labels = 12;
  wish.blur = 1.3;
  wish.shade = 0.7;
  wish.grain = 9;
  wish.jpeg_quality = 60;
  wish.tilt = 0.18;
  const auto all = score(wish, 200, 6);
  EXPECT_GE(all.found * 100, all.labels * 97) << all.found << " of " << all.labels;
  EXPECT_EQ(all.untrue, 0);
}

// In scenes like these the library's own search meets an assertion of its own.
TEST(ReadCodes, OutlivesTheLibrarysAssertions) {
  SceneWish wish;
  wish.blur = 1.5;
  wish.grain = 10;
  wish.shade = 0.75;
  wish.jpeg_quality = 60;
  wish.tilt = 0.15;
  const auto all = score(wish, 5000, 3);
  EXPECT_GE(all.found * 100, all.labels * 97) << all.found << " of " << all.labels;
  EXPECT_EQ(all.untrue, 0);
}

TEST(ReadCodes, FindsLargeAndSmallOnes) {
  SceneWish wish;
  wish.width = 2000;
  wish.height = 1500;
  wish.labels = 4;
  wish.least_module = 12;
  wish.most_module = 17;
  const auto large = score(wish, 300, 3);
  EXPECT_EQ(large.found, large.labels);
  wish.labels = 20;
  wish.least_module = 4;
  wish.most_module = 4.5;
  wish.blur = 0.5;
  const auto small = score(wish, 400, 3);
  EXPECT_GE(small.found * 100, small.labels * 97) << small.found << " of " << small.labels;
  EXPECT_EQ(large.untrue + small.untrue, 0);
}

TEST(ReadCodes, SeesNothingWhereNothingIs) {
  SceneWish wish;
  wish.labels = 0;
  wish.width = 2000;
  wish.height = 1500;
  EXPECT_EQ(score(wish, 500, 4).untrue, 0);
  QImage blank(600, 400, QImage::Format_Grayscale8);
  blank.fill(255);
  EXPECT_TRUE(read(blank).empty());
  EXPECT_TRUE(read(QImage(1, 1, QImage::Format_Grayscale8)).empty());
}

TEST(ReadCodes, ReadsAnyTextOfAnySize) {
  for (const auto& text :
       {std::string("https://example.org/a/rather/long/address?with=numbers&more=1234567890"),
        std::string("Grüße aus dem Gewächshaus"), std::string("0"), std::string(300, 'x')}) {
    const auto symbol = other_symbol(text, OtherSymbol::qr, 5);
    QImage picture(symbol.width() + 300, symbol.height() + 200, QImage::Format_Grayscale8);
    picture.fill(200);
    QPainter(&picture).drawImage(170, 90, symbol);
    const auto found = read(picture);
    ASSERT_EQ(found.size(), 1U) << text;
    EXPECT_EQ(found[0].text, text);
    EXPECT_EQ(found[0].format, "QRCode");
    EXPECT_NEAR(found[0].x, 170 + symbol.width() / 2.0, 4);
    EXPECT_NEAR(found[0].y, 90 + symbol.height() / 2.0, 4);
  }
}

TEST(ReadCodes, ListsTwoLabelsWithOneTextTwice) {
  const auto symbol = other_symbol("T1742Q", OtherSymbol::qr, 5);
  QImage picture(900, 400, QImage::Format_Grayscale8);
  picture.fill(180);
  {
    QPainter painter(&picture);
    for (const int x : {60, 230, 600})
      painter.drawImage(x, 100, symbol);
  }
  EXPECT_EQ(read(picture).size(), 3U);
}

TEST(ReadCodes, ListsALoneSymbolOfAnotherKind) {
  const auto matrix = read(other_symbol("DATA 42", OtherSymbol::data_matrix, 6));
  ASSERT_EQ(matrix.size(), 1U);
  EXPECT_EQ(matrix[0].text, "DATA 42");
  EXPECT_EQ(matrix[0].format, "DataMatrix");
  const auto bars = read(other_symbol("BARS-128", OtherSymbol::code_128, 3));
  ASSERT_EQ(bars.size(), 1U);
  EXPECT_EQ(bars[0].text, "BARS-128");
  EXPECT_EQ(bars[0].format, "Code128");
}

TEST(ReadCodes, GivesTheMiddleOfBarsAsHighAsTheyAre) {
  const auto bars = other_symbol("BARS-128", OtherSymbol::code_128, 3);
  for (const bool upright : {false, true}) {
    const auto turned = upright ? bars.transformed(QTransform().rotate(90)) : bars;
    for (const int y : {10, 200, 390}) {
      QImage picture(900, 1000, QImage::Format_Grayscale8);
      picture.fill(255);
      QPainter(&picture).drawImage(40, y, turned);
      const auto found = read(picture);
      ASSERT_EQ(found.size(), 1U) << upright << y;
      EXPECT_NEAR(found[0].x, 40 + turned.width() / 2.0, 3);
      EXPECT_NEAR(found[0].y, y + turned.height() / 2.0, 3);
    }
  }
}

TEST(ReadCodes, FindsALoneDataMatrixWhereverItLies) {
  const auto symbol = other_symbol("T1742Q", OtherSymbol::data_matrix, 6);
  const QSize size(900, 1100);
  for (const int x : {0, 300, size.width() - symbol.width()})
    for (const int y : {0, 130, 700, size.height() - symbol.height()}) {
      QImage picture(size, QImage::Format_Grayscale8);
      picture.fill(255);
      QPainter(&picture).drawImage(x, y, symbol);
      const auto found = read(picture);
      ASSERT_EQ(found.size(), 1U) << x << ", " << y;
      EXPECT_EQ(found[0].text, "T1742Q");
      EXPECT_NEAR(found[0].x, x + symbol.width() / 2.0, 4);
      EXPECT_NEAR(found[0].y, y + symbol.height() / 2.0, 4);
    }
}

TEST(ReadCodes, ReadsALinearCodeBesideLabels) {
  const auto label = other_symbol("T1742Q", OtherSymbol::qr, 5);
  const auto bars = other_symbol("BARS-128", OtherSymbol::code_128, 3);
  QImage picture(1200, 600, QImage::Format_Grayscale8);
  picture.fill(255);
  {
    QPainter painter(&picture);
    painter.drawImage(50, 50, label);
    painter.drawImage(500, 300, bars);
  }
  const auto found = read(picture);
  ASSERT_EQ(found.size(), 2U);
  EXPECT_EQ(found[0].text, "T1742Q");
  EXPECT_EQ(found[1].text, "BARS-128");
}

} // namespace
} // namespace coneline::labels
