// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the months to come may bring, drawn many times over from what stands today. The rules are in
// forecast_input.h; a run is one possible future of the whole nursery, so that runs also answer
// questions about months and pots together. A run's draws depend on seed and run alone, not on how
// many threads there are.
//
//   const auto forecast = forecast_of(input, {.runs = 4000, .seed = 1});
//   forecast->range(series, month)   -> 10, 50 and 90 % points

#include "core/plan/forecast_ways.h"

#include <functional>

namespace coneline::plan {

struct ForecastRuns {
  int runs = 4000;
  std::uint64_t seed = 1;
  int threads = 0; ///< 0: as many as the computer has
  /// Called now and then by the thread that asked, with the runs done; false stops the forecast.
  std::function<bool(int done)> go_on;
};

struct Likely {
  double low = 0;    ///< one future in ten has less
  double middle = 0; ///< half have less
  double high = 0;   ///< one in ten has more
};

class Forecast {
 public:
  Forecast(Ways ways, Date today, int runs);

  [[nodiscard]] const std::vector<Date>& months() const { return months_; } ///< first days
  [[nodiscard]] int runs() const { return runs_; }
  [[nodiscard]] const std::vector<SeriesName>& series() const { return ways_.series; }
  [[nodiscard]] std::optional<std::size_t> find(const SeriesName& name) const;
  [[nodiscard]] const Ways& ways() const { return ways_; }

  /// A run's value; months at their end for what stands, within them for what happens.
  [[nodiscard]] float value(std::size_t series, int run, std::size_t month) const {
    return values_[at(series, run) + month];
  }
  /// The values of a run's months, to be filled in.
  [[nodiscard]] float* values(std::size_t series, int run) { return &values_[at(series, run)]; }

  [[nodiscard]] double mean(std::size_t series, std::size_t month) const;
  [[nodiscard]] Likely range(std::size_t series, std::size_t month) const;
  /// Of the sum of the months from `first` to before `last`: for a season's litres.
  [[nodiscard]] Likely range_of_sum(std::size_t series, std::size_t first, std::size_t last) const;
  /// The share of runs above a value in a month: how likely a place runs full.
  [[nodiscard]] double share_above(std::size_t series, std::size_t month, double value) const;

 private:
  [[nodiscard]] std::size_t at(std::size_t series, int run) const {
    return (series * static_cast<std::size_t>(runs_) + static_cast<std::size_t>(run)) *
           months_.size();
  }

  Ways ways_;
  std::vector<Date> months_;
  int runs_ = 0;
  std::vector<float> values_; ///< by series, run, month
};

/// The points of sorted or unsorted values, which are changed: the smallest value with at least
/// that share of the values at or below it.
Likely likely(std::vector<float>& values);

/// Fails where can_be_planned does, on fewer than 1 or more than 1 000 000 runs, and when stopped.
Result<Forecast> forecast_of(const ForecastInput& input, const ForecastRuns& runs);

} // namespace coneline::plan
