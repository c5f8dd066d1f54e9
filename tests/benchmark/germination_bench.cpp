// SPDX-License-Identifier: GPL-3.0-or-later
// All figures of `coneline germination`, the whole report and the report from the book's file, each
// beside the curve fits alone; and those beside a plain pass that only sums the counts of all
// trays.
//
//   bench_germination [--trays=2000]
#include "core/report/germination_report.h"
#include "core/stats/curve_fit.h"
#include "tests/benchmark/large_book.h"
#include "tests/benchmark/large_book_file.h"
#include "tests/benchmark/ratio.h"
#include "tests/core/store/scratch.h"

#include <fmt/format.h>

#include <cstdio>
#include <cstdlib>
#include <cstring>

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
  const tests::Scratch scratch;
  auto file = make_large_book(scratch.at("large.coneline"), trays);
  const auto body = [](auto act, const auto& of) {
    return [act, &of](benchmark::State& state) { act(state, of); };
  };
  const auto fits = body(curves, counts);
  const auto named = [trays](const char* what) {
    return fmt::format("{} of {} trays", what, trays);
  };
  measure_and_write({
      {named("germination: all figures"), body(all_figures, counts), fits, 0, 3},
      {named("germination: whole report"), body(whole_report, book), fits, 0, 3},
      {named("germination: report from the book's file"),
       [&file](benchmark::State& state) { from_the_book(state, file); }, fits, 0, 3},
      {named("germination: the curves alone, beside a plain sum"), fits, body(sums, counts), 0, 3},
  });
  std::puts(fmt::format("{} trays, {} looks each, {} seeds up", trays, looks_of_a_tray,
                        plain_pass(counts))
                .c_str());
  return 0;
}

} // namespace
} // namespace coneline::tests

int main(int count, char** arguments) {
  return coneline::tests::run(count, arguments);
}
