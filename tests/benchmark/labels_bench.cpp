// SPDX-License-Identifier: GPL-3.0-or-later
// 5,000 labels to one PDF, against the bare drawing: the same words by the painter's own drawText
// and the same modules as filled rectangles, at places known beforehand.
//
//   bench_labels [--benchmark_…]
#include "core/base/code.h"
#include "labels/print/fonts.h"
#include "labels/print/print_labels.h"
#include "labels/print/without_display.h"
#include "labels/sheet/layout.h"
#include "labels/symbol/symbol.h"

#include <QPainter>
#include <QPdfWriter>
#include <QTemporaryDir>
#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <cstdio>
#include <map>

namespace {

using namespace coneline;
using namespace coneline::labels;

constexpr int label_count = 5000;
constexpr int dpi = 600;

std::vector<LabelText> labels() {
  std::vector<LabelText> made;
  for (int i = 0; i < label_count; ++i)
    made.push_back({Code::of(Kind::tray, 17, i + 1)->text(),
                    "Zamia integrifolia · Old Gate × Zamia furfuracea · Blue Twin",
                    "cone C1712K",
                    "sown 2026-03-09",
                    fmt::format("{} seeds", 20 + i % 30),
                    {}});
  return made;
}

struct Drawn {
  std::vector<QRectF> modules;
  std::vector<std::pair<QPointF, QString>> words;
};

/// Where everything will be, in dots from the page's corner.
std::vector<Drawn> places(const std::vector<LabelText>& texts, const Stock& stock) {
  const auto measure = font_measure();
  const double dots = dpi / 25.4;
  std::vector<Drawn> all;
  for (std::size_t i = 0; i < texts.size(); ++i) {
    const auto layout = lay_out(texts[i], stock, dpi, measure).value();
    const int position = static_cast<int>(i) % stock.per_page();
    const double x = stock.x_of(position) * dots;
    const double y = stock.y_of(position) * dots;
    Drawn drawn;
    for (const auto& run : symbol_of(texts[i].code)->runs())
      drawn.modules.emplace_back(x + (layout.symbol.x + run.column * layout.module) * dots,
                                 y + (layout.symbol.y + run.row * layout.module) * dots,
                                 run.length * layout.module * dots, layout.module * dots);
    for (const auto& text : layout.texts)
      drawn.words.emplace_back(QPointF(x + text.box.x * dots, y + text.baseline * dots),
                               QString::fromStdString(text.text));
    all.push_back(std::move(drawn));
  }
  return all;
}

void bare(benchmark::State& state) {
  const QTemporaryDir folder;
  const auto stock = common_stocks().front();
  const auto drawn = places(labels(), stock);
  for (auto round : state) {
    QPdfWriter writer(folder.filePath("bare.pdf"));
    writer.setResolution(dpi);
    writer.setPageSize(
        QPageSize(QSizeF(stock.page_width, stock.page_height), QPageSize::Millimeter));
    QPainter painter(&writer);
    for (std::size_t i = 0; i < drawn.size(); ++i) {
      if (i > 0 && static_cast<int>(i) % stock.per_page() == 0)
        writer.newPage();
      for (const auto& module : drawn[i].modules)
        painter.fillRect(module, Qt::black);
      for (const auto& [at, words] : drawn[i].words)
        painter.drawText(at, words);
    }
  }
}

void printed(benchmark::State& state) {
  const QTemporaryDir folder;
  const auto texts = labels();
  for (auto round : state)
    benchmark::DoNotOptimize(print_pdf(folder.filePath("labels.pdf").toStdString(), texts,
                                       common_stocks().front(), {dpi, 1}));
}

class Times : public benchmark::ConsoleReporter {
 public:
  void ReportRuns(const std::vector<Run>& runs) override {
    ConsoleReporter::ReportRuns(runs);
    for (const auto& run : runs)
      seconds_[run.run_name.function_name] =
          run.cpu_accumulated_time / static_cast<double>(run.iterations);
  }
  [[nodiscard]] std::string text() const {
    const auto raw = seconds_.at("bare");
    const auto ours = seconds_.at("printed");
    return fmt::format("{:<30} {:>9} {:>10.4f} s {:>10.4f} s {:>6.2f} x   at most 3 x\n",
                       "labels to PDF", label_count, ours, raw, ours / raw);
  }

 private:
  std::map<std::string, double> seconds_;
};

} // namespace

int main(int count, char** arguments) {
  const WithoutDisplay application;
  benchmark::Initialize(&count, arguments);
  benchmark::RegisterBenchmark("printed", printed)->Unit(benchmark::kMillisecond);
  benchmark::RegisterBenchmark("bare", bare)->Unit(benchmark::kMillisecond);
  Times times;
  benchmark::RunSpecifiedBenchmarks(&times);
  std::fputs(("\n" + times.text()).c_str(), stdout);
  return 0;
}
