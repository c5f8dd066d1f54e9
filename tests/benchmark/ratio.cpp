// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/benchmark/ratio.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <fstream>

namespace coneline::tests {

namespace {

void write(const std::string& line) {
  std::puts(line.c_str());
  std::fflush(stdout);
  if (const char* path = std::getenv("CONELINE_TABLE"))
    std::ofstream(path, std::ios::app) << line << '\n';
}

double middle(std::vector<Took> all, double Took::*of) {
  std::ranges::sort(all, {}, of);
  return all.at(all.size() / 2).*of;
}

} // namespace

void Middles::ReportRuns(const std::vector<Run>& runs) {
  for (const auto& run : runs)
    if (run.run_type == Run::RT_Iteration) {
      const auto times = static_cast<double>(run.iterations);
      const Took took{run.cpu_accumulated_time / times, run.real_accumulated_time / times};
      all_[run.run_name.function_name].push_back(took);
      std::puts(fmt::format("  {:.6f} s of the processor, {:.6f} s by the clock: {}",
                            took.processor, took.clock, run.run_name.function_name)
                    .c_str());
    }
}

Took Middles::of(const std::string& name) const {
  const auto& all = all_.at(name);
  return {middle(all, &Took::processor), middle(all, &Took::clock)};
}

std::vector<Measured> measure(const std::vector<Pair>& pairs) {
  std::string program = "benchmark";
  std::string in_turn = "--benchmark_enable_random_interleaving=true";
  std::array<char*, 3> arguments{program.data(), in_turn.data(), nullptr};
  int count = 2;
  benchmark::Initialize(&count, arguments.data());
  for (const auto& pair : pairs)
    for (const auto& [end, act] : {std::pair(", bare", pair.bare), {"", pair.ours}})
      benchmark::RegisterBenchmark((pair.what + end).c_str(), act)
          ->Iterations(1)
          ->Repetitions(pair.times)
          ->Unit(benchmark::kMillisecond)
          ->MeasureProcessCPUTime();
  Middles middles;
  benchmark::RunSpecifiedBenchmarks(&middles);
  benchmark::ClearRegisteredBenchmarks();
  std::vector<Measured> all;
  for (const auto& pair : pairs)
    all.push_back({middles.of(pair.what), middles.of(pair.what + ", bare")});
  return all;
}

void measure_and_write(const std::vector<Pair>& pairs) {
  const auto all = measure(pairs);
  for (std::size_t i = 0; i < pairs.size(); ++i)
    write_line(pairs[i].what, all[i], pairs[i].goal);
}

void write_line(const std::string& what, const Measured& took, double goal) {
  write(fmt::format("ratio\t{}\t{:.6f}\t{:.6f}\t{:.6f}\t{:.6f}\t{}", what, took.ours.processor,
                    took.bare.processor, took.ours.clock, took.bare.clock, goal));
}

void write_amount(const std::string& what, double ours, double bare, double most,
                  const std::string& unit) {
  write(fmt::format("amount\t{}\t{:.1f}\t{:.1f}\t{}\t{}", what, ours, bare, most, unit));
}

void write_growth(const std::string& what, std::int64_t movements, const Measured& took) {
  write(fmt::format("growth\t{}\t{}\t{:.6f}\t{:.6f}", what, movements, took.ours.processor,
                    took.bare.processor));
}

} // namespace coneline::tests
