// SPDX-License-Identifier: GPL-3.0-or-later
// A forecast of 2,000 lots, 36 months, 4,000 runs, against the bare cost of the binomial draws it
// makes, in the same run of the program and on one thread each; and on all threads.
//
//   build/release/tests/benchmark/benchmark_forecast
#include "core/plan/forecast.h"
#include "core/plan/forecast_run.h"
#include "tests/core/plan/invented_lots.h"

#include <benchmark/benchmark.h>

#include <iostream>

namespace coneline::plan {
namespace {

constexpr int lots = 2000;
constexpr int months = 36;
constexpr int runs = 4000;

const ForecastInput& nursery() {
  static const auto input = tests::invented_lots(lots, months);
  return input;
}

/// All draws of one run in a hundred: enough to stand for all, and few enough to keep.
const std::vector<Drawn>& draws() {
  static const auto kept = [] {
    std::vector<Drawn> drawn;
    const auto ways = ways_of(nursery());
    Run run(ways, nursery());
    for (std::uint64_t number = 0; number < runs / 100; ++number) {
      Stream stream(1, number);
      stream.keep(&drawn);
      run.walk(stream);
    }
    return drawn;
  }();
  return kept;
}

void bare_draws(benchmark::State& state) {
  for (auto _ : state) {
    Stream::Engine engine(1);
    std::int64_t sum = 0;
    for (int again = 0; again < 100; ++again)
      for (const auto& [plants, share] : draws())
        sum += boost::random::binomial_distribution<std::int64_t>(plants, share)(engine);
    benchmark::DoNotOptimize(sum);
  }
  state.counters["draws"] = static_cast<double>(draws().size()) * 100;
}

void forecast(benchmark::State& state) {
  for (auto _ : state) {
    auto found = forecast_of(
        nursery(),
        {.runs = runs, .seed = 1, .threads = static_cast<int>(state.range(0)), .go_on = {}});
    benchmark::DoNotOptimize(found);
  }
}

void forecast_and_ranges(benchmark::State& state) {
  for (auto _ : state) {
    const auto found = forecast_of(
        nursery(),
        {.runs = runs, .seed = 1, .threads = static_cast<int>(state.range(0)), .go_on = {}});
    for (std::size_t series = 0; series < found->series().size(); ++series)
      for (std::size_t month = 0; month < months; ++month)
        benchmark::DoNotOptimize(found->range(series, month));
  }
}

BENCHMARK(bare_draws)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();
BENCHMARK(forecast)
    ->Arg(1)
    ->Arg(2)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime()
    ->MeasureProcessCPUTime();
BENCHMARK(forecast_and_ranges)
    ->Arg(1)
    ->Arg(2)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime()
    ->MeasureProcessCPUTime();

/// The times of the runs, to say the ratio at the end.
class Ratio : public benchmark::ConsoleReporter {
 public:
  void ReportRuns(const std::vector<Run>& reports) override {
    ConsoleReporter::ReportRuns(reports);
    for (const auto& report : reports)
      cpu_[report.benchmark_name()] = report.GetAdjustedCPUTime();
  }
  void tell() const {
    const double bare = cpu_.at("bare_draws/process_time");
    std::cout << "\nTimes the bare cost of its draws, one thread, processor time\n";
    for (const auto& [name, time] : cpu_)
      std::cout << "  " << name << ": " << time / bare << "\n";
  }

 private:
  std::map<std::string, double> cpu_;
};

} // namespace
} // namespace coneline::plan

int main(int count, char** arguments) {
  benchmark::Initialize(&count, arguments);
  coneline::plan::Ratio ratio;
  benchmark::RunSpecifiedBenchmarks(&ratio);
  ratio.tell();
}
