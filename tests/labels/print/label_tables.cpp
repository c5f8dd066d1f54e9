// SPDX-License-Identifier: GPL-3.0-or-later
// Measures what comes out on paper: every label of every common stock, as a PDF for a printer of
// 203, 300 and 600 dots an inch, rasterised at those dots and read back; the page's box, the rulers
// of the test page; and a file of 5,000 labels. Prints tables; ends with 1 when something is not as
// it must be.
//
//   label_tables [--quick]     203 dots an inch only
#include "core/base/code.h"
#include "labels/print/print_labels.h"
#include "labels/print/test_page.h"
#include "labels/print/without_display.h"
#include "labels/read/read_codes.h"

#include <QFile>
#include <QImageReader>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <set>

namespace {

using namespace coneline;
using namespace coneline::labels;

std::vector<LabelText> labels_of(int count) {
  constexpr std::array kinds{Kind::tray,  Kind::pot_group, Kind::cone, Kind::batch,
                             Kind::plant, Kind::pollen,    Kind::place};
  std::vector<LabelText> made;
  for (int i = 0; i < count; ++i)
    made.push_back(
        {Code::of(kinds[static_cast<std::size_t>(i) % kinds.size()], 17, 1 + (i * 811LL) % 999'999)
             .value()
             .text(),
         i % 3 == 0 ? "Zamia integrifolia · Old Gate × Zamia furfuracea · Blue Twin"
                    : "Cycas revoluta",
         "cone C1712K", "sown 2026-03-09", "24 seeds", i % 4 == 0 ? "Poisonous: gloves" : ""});
  return made;
}

/// The first page in pixels.
QImage page_of(const QTemporaryDir& folder, const QString& file, int dpi) {
  const auto base = folder.filePath("page");
  QImageReader::setAllocationLimit(2048);
  if (QProcess::execute("pdftoppm", {"-r", QString::number(dpi), "-f", "1", "-l", "1", "-gray",
                                     "-singlefile", file, base}) != 0)
    return {};
  return QImage(base + ".pgm").convertToFormat(QImage::Format_Grayscale8);
}

/// Width and height of the page's box, in millimetres.
std::pair<double, double> box_of(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly))
    return {0, 0};
  const QRegularExpression box(R"(/MediaBox \[\s*([-0-9.]+) ([-0-9.]+) ([0-9.]+) ([0-9.]+)\s*\])");
  const auto match = box.match(QString::fromLatin1(file.readAll()));
  const auto number = [&](int at) { return match.captured(at).toDouble() * 25.4 / 72; };
  return {number(3) - number(1), number(4) - number(2)};
}

int read_back(const QImage& page, const std::vector<LabelText>& printed) {
  std::multiset<std::string> there;
  for (const auto& code :
       read_codes({page.constBits(), page.width(), page.height(), page.bytesPerLine()}))
    there.insert(code.text);
  int found = 0;
  for (const auto& label : printed)
    if (const auto one = there.find(label.code); one != there.end()) {
      there.erase(one);
      ++found;
    }
  return there.empty() ? found : -1; // something read that was not printed
}

/// Where the dark run nearest to `expected` begins, in pixels along a row or column; -1 for none
/// within two millimetres.
double dark_near(const QImage& page, double expected, int aside, bool across, double per_mm) {
  const auto dark = [&](int at) {
    const QPoint point = across ? QPoint(at, aside) : QPoint(aside, at);
    return page.valid(point) && qGray(page.pixel(point)) < 128;
  };
  double best = -1;
  for (int at = static_cast<int>(expected - 2 * per_mm); at <= expected + 2 * per_mm; ++at)
    if (dark(at) && !dark(at - 1) &&
        (best < 0 || std::abs(at - expected) < std::abs(best - expected)))
      best = at;
  return best;
}

/// The ruler's length in millimetres as it is on paper.
double measured(const QImage& page, double begin, double length, double aside, bool across,
                double dpi) {
  const double per_mm = dpi / 25.4;
  const int at = static_cast<int>(aside * per_mm);
  const double first = dark_near(page, begin * per_mm, at, across, per_mm);
  const double last = dark_near(page, (begin + length) * per_mm, at, across, per_mm);
  return first < 0 || last < 0 ? 0 : (last - first) / per_mm;
}

bool stock_table(const QTemporaryDir& folder, const std::vector<int>& dpis) {
  bool sound = true;
  std::printf(
      "| stock | dpi | labels | read back | page box, mm | off, mm | ruler across, mm | ruler "
      "down, mm |\n|---|---:|---:|---:|---|---:|---:|---:|\n");
  const auto file = folder.filePath("labels.pdf");
  for (const auto& stock : common_stocks())
    for (const int dpi : dpis) {
      const auto texts = labels_of(stock.per_page());
      const auto printed = print_pdf(file.toStdString(), texts, stock, {dpi, 1});
      if (!printed) {
        std::printf("| %s | %d | %s |\n", stock.name.c_str(), dpi, printed.error().text().c_str());
        sound = false;
        continue;
      }
      const auto [wide, high] = box_of(file);
      const double off =
          std::max(std::abs(wide - stock.page_width), std::abs(high - stock.page_height));
      const int found = read_back(page_of(folder, file, dpi), texts);
      const auto rulers = print_test_page(file.toStdString(), stock, {dpi, 1});
      constexpr int look = 600; // finer than most printers, to measure
      const auto page = page_of(folder, file, look);
      double across = 0;
      double down = 0;
      if (rulers && rulers->across >= 20)
        across = measured(page, (stock.page_width - rulers->across) / 2, rulers->across, 5 + 2.2,
                          true, look);
      if (rulers && rulers->down >= 20)
        down = measured(page, (stock.page_height - rulers->down) / 2, rulers->down, 5 + 2.2, false,
                        look);
      const auto wrong = [&](double length, int ruler) {
        return ruler >= 20 && std::abs(length - ruler) > 0.1;
      };
      const bool row_sound = found == stock.per_page() && off <= 0.1 && rulers &&
                             !wrong(across, rulers->across) && !wrong(down, rulers->down);
      sound = sound && row_sound;
      std::printf("| %s | %d | %d | %d | %.2f × %.2f | %.2f | %.2f of %d | %.2f of %d |%s\n",
                  stock.name.c_str(), dpi, stock.per_page(), found, wide, high, off, across,
                  rulers ? rulers->across : 0, down, rulers ? rulers->down : 0,
                  row_sound ? "" : " WRONG");
      std::fflush(stdout);
    }
  return sound;
}

bool many_labels(const QTemporaryDir& folder) {
  const auto file = folder.filePath("many.pdf").toStdString();
  const auto texts = labels_of(5000);
  std::printf("\n| 5,000 labels on | pages | bytes a label | seconds |\n|---|---:|---:|---:|\n");
  bool sound = true;
  for (const auto& stock : common_stocks()) {
    const auto begin = std::chrono::steady_clock::now();
    const auto printed = print_pdf(file, texts, stock);
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
    const double bytes = printed ? static_cast<double>(printed->bytes) / 5000 : 1e9;
    sound = sound && bytes <= 3072;
    std::printf("| %s | %d | %.0f | %.1f |\n", stock.name.c_str(), printed ? printed->pages : 0,
                bytes, took.count());
    std::fflush(stdout);
  }
  return sound;
}

} // namespace

int main(int count, char** words) {
  const bool quick = count > 1 && std::strcmp(words[1], "--quick") == 0;
  const WithoutDisplay application;
  const QTemporaryDir folder;
  const bool stocks =
      stock_table(folder, quick ? std::vector<int>{203} : std::vector<int>{203, 300, 600});
  const bool small = quick || many_labels(folder);
  return stocks && small ? 0 : 1;
}
