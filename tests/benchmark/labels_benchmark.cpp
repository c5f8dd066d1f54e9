// SPDX-License-Identifier: GPL-3.0-or-later
// Labels beside the bare work: 5,000 of them to PDF beside the drawing of the same rectangles and
// words, and reading a bench picture of 12 megapixels beside one plain pass of the library over it.
//
//   benchmark_labels [--labels=5000] [--pictures=8]
#include "core/base/code.h"
#include "labels/print/fonts.h"
#include "labels/print/paint_label.h"
#include "labels/print/print_labels.h"
#include "labels/print/without_display.h"
#include "labels/read/read_codes.h"
#include "tests/benchmark/ratio.h"
#include "tests/core/store/scratch.h"
#include "tests/labels/read/blots.h"
#include "tests/labels/read/families.h"

#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <fmt/format.h>

#include <array>
#include <cstdlib>
#include <stdexcept>
#include <string_view>

namespace coneline::labels {
namespace {

using tests::Pair;

std::vector<LabelText> texts_of(int count) {
  constexpr std::array crosses{"Zamia integrifolia × Zamia furfuracea", "Cycas revoluta",
                               "Dioon edule", "Cycas revoluta · Old Gate × Blue Twin"};
  std::vector<LabelText> texts;
  for (int i = 0; i < count; ++i)
    texts.push_back({Code::of(Kind::tray, 17, i + 1).value().text(),
                     crosses[static_cast<std::size_t>(i) % crosses.size()],
                     fmt::format("cone {}", Code::of(Kind::cone, 17, i / 16 + 1).value().text()),
                     fmt::format("sown {}", Date::of(2024, 1, 1).value().plus_days(i % 700).iso()),
                     fmt::format("{} seeds", 20 + i % 80), "Poisonous: gloves"});
  return texts;
}

/// What is left of a label when everything about it has been reckoned.
struct Drawn {
  QVector<QRect> rectangles;
  struct Words {
    QPointF start;
    QFont font;
    QString text;
  };
  std::vector<Words> words;
};

std::vector<Drawn> reckoned(const std::vector<LabelText>& texts, const Stock& stock, int dpi) {
  const auto measure = font_measure();
  const double dots = dpi / 25.4;
  std::vector<Drawn> all;
  for (std::size_t i = 0; i < texts.size(); ++i) {
    const auto layout = lay_out(texts[i], stock, dpi, measure).value();
    const int position = static_cast<int>(i) % stock.per_page();
    const double x = stock.x_of(position);
    const double y = stock.y_of(position);
    Drawn one;
    one.rectangles =
        symbol_rectangles(symbol_of(texts[i].code).value(), layout, x, y, {dots, dots});
    for (const auto& placed : layout.texts)
      one.words.push_back({{(x + placed.box.x) * dots, (y + placed.baseline) * dots},
                           font_of(placed.face, placed.size),
                           QString::fromStdString(placed.text)});
    all.push_back(std::move(one));
  }
  return all;
}

void draw(const std::vector<Drawn>& labels, const Stock& stock, int dpi, const QString& path) {
  QPdfWriter writer(path);
  writer.setResolution(dpi);
  writer.setPageSize(QPageSize(QSizeF(stock.page_width, stock.page_height), QPageSize::Millimeter,
                               QString(), QPageSize::ExactMatch));
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));
  QPainter painter(&writer);
  const auto a_page = static_cast<std::size_t>(stock.per_page());
  for (std::size_t i = 0; i < labels.size(); ++i) {
    if (i > 0 && i % a_page == 0)
      writer.newPage();
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::black);
    painter.drawRects(labels[i].rectangles);
    painter.setPen(Qt::black);
    for (const auto& [start, font, text] : labels[i].words) {
      painter.setFont(font);
      painter.drawText(start, text);
    }
  }
}

Pair printing(int count) {
  static const tests::Scratch scratch;
  constexpr int dpi = 600;
  const auto stock = common_stocks().front();
  const auto texts = texts_of(count);
  const auto labels = reckoned(texts, stock, dpi);
  const auto file = scratch.at("labels.pdf").string();
  return {fmt::format("{} labels to PDF", count),
          [=](benchmark::State& state) {
            for (auto round : state)
              benchmark::DoNotOptimize(print_pdf(file, texts, stock, {dpi, 1, {}}).value());
          },
          [=](benchmark::State& state) {
            for (auto round : state)
              draw(labels, stock, dpi, QString::fromStdString(file));
          },
          3, 5};
}

Pair reading(int count) {
  SceneWish bench;
  for (const auto& family : corpus_families())
    if (family.name == "clean, 12 megapixels")
      bench = family.wish;
  std::vector<Scene> scenes;
  for (int seed = 1; seed <= count; ++seed)
    scenes.push_back(make_scene(bench, static_cast<std::uint64_t>(seed)));
  return {fmt::format("{} bench pictures of {} megapixels", count,
                      bench.width * bench.height / 1'000'000),
          [=](benchmark::State& state) {
            for (auto round : state)
              for (const auto& [picture, labels] : scenes)
                if (read_codes({picture.constBits(), picture.width(), picture.height(),
                                picture.bytesPerLine()})
                        .size() != labels.size())
                  throw std::runtime_error("a label was not read");
          },
          [=](benchmark::State& state) {
            for (auto round : state)
              for (const auto& scene : scenes)
                benchmark::DoNotOptimize(plain_pass(scene.picture, 255));
          },
          1, 7};
}

int run(int count, char** words) {
  int labels = 5000;
  int pictures = 8;
  for (int i = 1; i < count; ++i) {
    const std::string_view word = words[i];
    if (word.starts_with("--labels="))
      labels = std::atoi(words[i] + 9);
    else if (word.starts_with("--pictures="))
      pictures = std::atoi(words[i] + 11);
  }
  const WithoutDisplay application;
  if (pictures > 0)
    tests::measure_and_write({reading(pictures)});
  if (labels > 0)
    tests::measure_and_write({printing(labels)});
  return 0;
}

} // namespace
} // namespace coneline::labels

int main(int count, char** words) {
  return coneline::labels::run(count, words);
}
