// SPDX-License-Identifier: GPL-3.0-or-later
// Times, in one run: a plain pass that only sums the counts of all trays, the curve fits alone, all
// figures of `coneline germination`, the whole report, and the report from the book's file; at the
// end their ratios.
//
//   bench_germination [--trays=2000] [--benchmark_…]
#include "core/report/germination_report.h"
#include "core/stats/curve_fit.h"
#include "tests/benchmark/large_book.h"
#include "tests/benchmark/large_book_file.h"
#include "tests/core/store/scratch.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <functional>

namespace coneline::tests {
namespace {

std::int64_t plain_pass(const std::vector<stats::Tray>& trays) {
  std::int64_t sum = 0;
  for (const auto& tray : trays)
    for (const auto& look : tray.looks)
      sum += look.germinated + look.removed;
  return sum;
}

void sums(benchmark::State& state, const std::vector<stats::Tray>& trays) {
  for (auto round : state)
    benchmark::DoNotOptimize(plain_pass(trays));
}

/// As survreg + survfit are asked for: one curve and one stepwise estimate a cross.
void curves(benchmark::State& state, const std::vector<stats::Tray>& trays) {
  const auto groups = stats::groups_of(trays);
  for (auto round : state)
    for (const auto& group : groups) {
      const auto counts = stats::interval_counts(trays, group.trays);
      benchmark::DoNotOptimize(stats::fit_curve(counts, stats::Family::log_logistic));
      benchmark::DoNotOptimize(stats::stepwise(counts));
    }
}

void all_figures(benchmark::State& state, const std::vector<stats::Tray>& trays) {
  for (auto round : state)
    benchmark::DoNotOptimize(stats::germination_figures(trays, {}));
}

void whole_report(benchmark::State& state, const std::vector<work::ObservedTray>& book) {
  const book::Registers registers;
  const report::Asked asked{Date::of(2026, 6, 1).value()};
  for (auto round : state)
    benchmark::DoNotOptimize(report::germination_report(book, registers, asked));
}

/// From the file: the book read and the report made.
void from_the_book(benchmark::State& state, store::Book& book) {
  const report::Asked asked{Date::of(2026, 6, 1).value()};
  for (auto round : state)
    benchmark::DoNotOptimize(book.read(
        [&](store::Reading& reading) { return report::germination_report(reading, asked); }));
}

/// Keeps the processor time of each benchmark for the ratios: other work on the machine does not
/// count.
class Ratios : public benchmark::ConsoleReporter {
 public:
  void ReportRuns(const std::vector<Run>& runs) override {
    ConsoleReporter::ReportRuns(runs);
    for (const auto& run : runs)
      seconds_.emplace_back(run.benchmark_name(),
                            run.cpu_accumulated_time / static_cast<double>(run.iterations));
  }
  [[nodiscard]] std::string text() const {
    std::string text;
    for (const auto& [name, seconds] : seconds_)
      text += fmt::format("{:<14} {:12.6f} s  {:12.0f} times the plain pass\n", name, seconds,
                          seconds / seconds_.front().second);
    return text;
  }

 private:
  std::vector<std::pair<std::string, double>> seconds_;
};

int run(int count, char** arguments) {
  int trays = 2000;
  constexpr const char* option = "--trays=";
  for (int i = 1; i < count; ++i)
    if (std::strncmp(arguments[i], option, std::strlen(option)) == 0) {
      trays = std::atoi(arguments[i] + std::strlen(option));
      std::swap(arguments[i], arguments[count - 1]);
      --count;
      break;
    }
  const auto counts = large_counts(trays);
  const auto book = large_book(trays);
  benchmark::Initialize(&count, arguments);
  benchmark::RegisterBenchmark("plain pass", sums, counts);
  benchmark::RegisterBenchmark("curves", curves, counts)->Unit(benchmark::kMillisecond);
  benchmark::RegisterBenchmark("all figures", all_figures, counts)->Unit(benchmark::kMillisecond);
  benchmark::RegisterBenchmark("whole report", whole_report, book)->Unit(benchmark::kMillisecond);
  const tests::Scratch scratch;
  auto file = make_large_book(scratch.at("large.coneline"), trays);
  benchmark::RegisterBenchmark("from the book", from_the_book, std::ref(file))
      ->Unit(benchmark::kMillisecond);
  Ratios ratios;
  benchmark::RunSpecifiedBenchmarks(&ratios);
  std::puts(fmt::format("\n{} trays, {} looks each, {} seeds up\n{}", trays, looks_of_a_tray,
                        plain_pass(counts), ratios.text())
                .c_str());
  return 0;
}

} // namespace
} // namespace coneline::tests

int main(int count, char** arguments) {
  return coneline::tests::run(count, arguments);
}
