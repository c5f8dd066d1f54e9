// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/code.h"
#include "labels/print/fonts.h"
#include "labels/print/print_labels.h"
#include "labels/print/without_display.h"
#include "labels/read/read_codes.h"
#include "labels/sheet/layout.h"
#include "labels/symbol/symbol.h"

#include <QFile>
#include <QFontInfo>
#include <QImageReader>
#include <QProcess>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace coneline::labels {
namespace {

class Application : public testing::Environment {
 public:
  void SetUp() override { application_ = std::make_unique<WithoutDisplay>(); }
  void TearDown() override { application_.reset(); }

 private:
  std::unique_ptr<WithoutDisplay> application_;
};
const auto* const application = testing::AddGlobalTestEnvironment(new Application);

std::vector<LabelText> labels(int count) {
  std::vector<LabelText> made;
  for (int i = 0; i < count; ++i)
    made.push_back(
        {Code::of(i % 2 == 0 ? Kind::tray : Kind::pot_group, 17, 1 + i * 811).value().text(),
         i % 3 == 0 ? "Zamia integrifolia × Zamia furfuracea" : "Cycas revoluta", "cone C1712K",
         "sown 2026-03-09", "24 seeds", i % 4 == 0 ? "Poisonous seed: gloves" : ""});
  return made;
}

std::multiset<std::string> codes_of(const std::vector<LabelText>& labels) {
  std::multiset<std::string> codes;
  for (const auto& label : labels)
    codes.insert(label.code);
  return codes;
}

std::vector<FoundCode> read(const QImage& picture) {
  const auto grey = picture.convertToFormat(QImage::Format_Grayscale8);
  return read_codes({grey.constBits(), grey.width(), grey.height(), grey.bytesPerLine()});
}

std::multiset<std::string> texts_of(const std::vector<FoundCode>& found) {
  std::multiset<std::string> texts;
  for (const auto& code : found)
    texts.insert(code.text);
  return texts;
}

/// A page of a PDF file in pixels, or a null picture.
QImage page_of(const QTemporaryDir& folder, const QString& file, int page, int dpi) {
  const auto base = folder.filePath("page");
  const auto number = QString::number(page);
  QImageReader::setAllocationLimit(512); // MB; a page at 600 dots an inch has 140
  if (QProcess::execute("pdftoppm", {"-r", QString::number(dpi), "-f", number, "-l", number,
                                     "-gray", "-singlefile", file, base}) != 0)
    return {};
  return QImage(base + ".pgm");
}

TEST(PrintLabels, EveryLabelOfEveryStockReadsBackAsItIsPrinted) {
  for (const auto& stock : common_stocks())
    for (const int dpi : {203, 300, 600}) {
      const auto printed = labels(stock.per_page());
      const auto page = preview(printed, stock, {dpi, 1}, 0, Edges::hidden);
      ASSERT_TRUE(page) << page.error().text();
      EXPECT_EQ(texts_of(read(*page)), codes_of(printed)) << stock.name << " at " << dpi;
    }
}

TEST(PrintLabels, ThePdfReadsBackAndIsTrueToTheMillimetre) {
  const QTemporaryDir folder;
  const auto file = folder.filePath("labels.pdf");
  const auto stock = common_stocks().front();
  const auto printed = labels(30);
  constexpr int dpi = 300;
  const auto done = print_pdf(file.toStdString(), printed, stock, {dpi, 1});
  ASSERT_TRUE(done) << done.error().text();
  EXPECT_EQ(done->pages, 2);
  constexpr int look = 600; // finer than printed, to measure
  const auto first = page_of(folder, file, 1, look);
  ASSERT_FALSE(first.isNull());
  EXPECT_EQ(texts_of(read(first)), codes_of({printed.begin(), printed.begin() + 24}));
  EXPECT_EQ(texts_of(read(page_of(folder, file, 2, dpi))),
            codes_of({printed.begin() + 24, printed.end()}));

  // The symbol of the fifth label: its outermost dark pixels.
  const auto layout = lay_out(printed[4], stock, dpi, font_measure()).value();
  const double per_mm = look / 25.4;
  const double left = stock.x_of(4) + layout.symbol.x;
  const double top = stock.y_of(4) + layout.symbol.y;
  QRect dark;
  for (int y = static_cast<int>(top * per_mm); y < (top + layout.symbol.height) * per_mm; ++y)
    for (int x = static_cast<int>(left * per_mm); x < (left + layout.symbol.width) * per_mm; ++x)
      if (qGray(first.pixel(x, y)) < 128)
        dark |= QRect(x, y, 1, 1);
  EXPECT_NEAR(dark.width() / per_mm, layout.module * symbol_modules, 0.1);
  EXPECT_NEAR(dark.height() / per_mm, layout.module * symbol_modules, 0.1);
  EXPECT_NEAR(dark.left() / per_mm, left + quiet_modules * layout.module, 0.25);
  EXPECT_NEAR(dark.top() / per_mm, top + quiet_modules * layout.module, 0.25);
}

TEST(PrintLabels, AThousandLabelsStaySmall) {
  const QTemporaryDir folder;
  for (const auto& stock : {common_stocks().front(), roll("one a page", 57, 32)}) {
    const auto file = folder.filePath("many.pdf").toStdString();
    const auto done = print_pdf(file, labels(1000), stock);
    ASSERT_TRUE(done) << done.error().text();
    EXPECT_EQ(done->labels, 1000);
    EXPECT_LT(done->bytes / 1000, 3072) << stock.name;
    EXPECT_EQ(done->bytes, QFile(QString::fromStdString(file)).size());
  }
}

TEST(PrintLabels, StartsWhereASheetWasBegun) {
  const auto stock = common_stocks().front();
  const auto page = preview(labels(2), stock, {203, 6}, 0, Edges::hidden).value();
  const auto found = read(page);
  ASSERT_EQ(found.size(), 2U);
  const double per_mm = 203 / 25.4;
  EXPECT_GT(found[0].x / per_mm, stock.x_of(5));
  EXPECT_GT(found[0].y / per_mm, stock.y_of(5));
  EXPECT_LT(found[1].x / per_mm, stock.x_of(6) + stock.label_width);
  EXPECT_GT(found[1].y / per_mm, stock.y_of(6));
}

TEST(PrintLabels, LeavesAnOlderFileWhenItFails) {
  const QTemporaryDir folder;
  const auto file = folder.filePath("labels.pdf");
  ASSERT_TRUE(print_pdf(file.toStdString(), labels(1), common_stocks().front()));
  const auto before = QFile(file).size();
  auto bad = labels(3);
  bad[2].code = "NO SUCH CODE";
  EXPECT_FALSE(print_pdf(file.toStdString(), bad, common_stocks().front()));
  EXPECT_FALSE(print_pdf(file.toStdString(), {}, common_stocks().front()));
  EXPECT_FALSE(print_pdf(file.toStdString(), labels(1), common_stocks().front(), {300, 25}));
  EXPECT_EQ(QFile(file).size(), before);
  const auto nowhere = print_pdf(folder.filePath("no/such/folder.pdf").toStdString(), labels(1),
                                 common_stocks().front());
  ASSERT_FALSE(nowhere);
  EXPECT_NE(nowhere.error().what.find("cannot be written"), std::string::npos);
}

TEST(Fonts, AreTheOnesMeantAndMeasuredAsDrawn) {
  EXPECT_EQ(QFontInfo(font_of(Face::plain, 3)).family(), "Noto Sans");
  EXPECT_EQ(QFontInfo(font_of(Face::code, 3)).family(), "Noto Sans Mono");
  const auto measure = font_measure();
  const double measured = measure("T1742Q", Face::code);
  EXPECT_NEAR(measured, 6 * 0.6, 0.01);
  EXPECT_NEAR(outlines("HHHH", Face::bold, 10).boundingRect().width(),
              10 * measure("HHHH", Face::bold), 2);
}

} // namespace
} // namespace coneline::labels
