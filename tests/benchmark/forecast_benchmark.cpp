// SPDX-License-Identifier: GPL-3.0-or-later
// A forecast of 2,000 lots, 36 months, 4,000 runs, against the bare cost of the binomial draws it
// makes, in the same run of the program and on one thread each; and on two threads.
//
//   benchmark_forecast [RUNS]
#include "core/plan/forecast.h"
#include "core/plan/forecast_run.h"
#include "tests/benchmark/ratio.h"
#include "tests/core/plan/invented_lots.h"

#include <fmt/format.h>

#include <cstdlib>

namespace coneline::plan {
namespace {

constexpr int lots = 2000;
constexpr int months = 36;
int runs = 4000;

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
    for (std::uint64_t number = 0; number < static_cast<std::uint64_t>(runs / 100); ++number) {
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

/// Which forecast is made: its threads, and whether its ranges are asked for.
void forecast(benchmark::State& state, int threads, bool ranges) {
  for (auto _ : state) {
    const auto found =
        forecast_of(nursery(), {.runs = runs, .seed = 1, .threads = threads, .go_on = {}});
    benchmark::DoNotOptimize(found);
    for (std::size_t series = 0; ranges && series < found->series().size(); ++series)
      for (std::size_t month = 0; month < months; ++month)
        benchmark::DoNotOptimize(found->range(series, month));
  }
}

tests::Pair pair(const std::string& what, int threads, bool ranges, double goal) {
  return {what, [=](benchmark::State& state) { forecast(state, threads, ranges); }, bare_draws,
          goal, 3};
}

} // namespace
} // namespace coneline::plan

int main(int count, char** words) {
  using namespace coneline;
  if (count > 1)
    plan::runs = std::atoi(words[1]);
  static_cast<void>(plan::draws()); // made before anything is timed
  const auto what = fmt::format("36-month forecast of {} lots, {} runs", plan::lots, plan::runs);
  tests::measure_and_write({plan::pair(what, 1, false, 2),
                            plan::pair(what + ", ranges too", 1, true, 2),
                            plan::pair(what + ", on two threads", 2, false, 0)});
  return 0;
}
