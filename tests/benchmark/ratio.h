// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// One line of the table of `tests/benchmark/run`: what the program takes beside what the bare work
// takes in the same run. Both are measured several times in turn, and the middle one counts.

#include <benchmark/benchmark.h>

#include <functional>
#include <map>
#include <string>
#include <vector>

namespace coneline::tests {

/// Seconds.
struct Took {
  double processor = 0; ///< of all threads of the process
  double clock = 0;
};

struct Pair {
  std::string what;
  std::function<void(benchmark::State&)> ours; ///< the body of one measurement; may pause its clock
  std::function<void(benchmark::State&)> bare;
  double goal = 0; ///< at most so many times the bare work; 0 sets none
  int times = 5;
};

/// What both sides of a pair took.
struct Measured {
  Took ours;
  Took bare;
};

/// Measures pairs, an iteration a time, in random order; in the order of the pairs.
std::vector<Measured> measure(const std::vector<Pair>& pairs);
/// The same, writing a line for each pair.
void measure_and_write(const std::vector<Pair>& pairs);

/// Keeps the middle of what each benchmark took.
class Middles : public benchmark::BenchmarkReporter {
 public:
  bool ReportContext(const Context& /*context*/) override { return true; }
  void ReportRuns(const std::vector<Run>& runs) override;
  [[nodiscard]] Took of(const std::string& name) const;

 private:
  std::map<std::string, std::vector<Took>> all_;
};

/// Writes a line of the table: on the screen, and to the file that CONELINE_TABLE names.
void write_line(const std::string& what, const Measured& took, double goal);
/// The same of something that is no time, such as memory.
void write_amount(const std::string& what, double ours, double bare, double most,
                  const std::string& unit);
/// How a thing grows: processor seconds at so many movements.
void write_growth(const std::string& what, std::int64_t movements, const Measured& took);

} // namespace coneline::tests
