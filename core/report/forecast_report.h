// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A forecast written out: every value with its 10, 50 and 90 % points and its mean.

#include "core/book/title.h"
#include "core/plan/forecast.h"

#include <nlohmann/json.hpp>

#include <string>

namespace coneline::report {

/// "plants into", "plants standing", "mix", "part", "bench", "load", "place", "place load", "bench
/// without a place", "ready"; and the unit it is counted in.
std::string_view word_of(plan::Shown shown);
std::string_view unit_of(plan::Shown shown);
/// Reads such a word; fails naming those there are.
Result<plan::Shown> read_shown(std::string_view word);

/// A place or light class, and how likely it is over full, by month.
struct Crowding {
  plan::Shown shown = plan::Shown::square_metres;
  std::string name;
  double offered = 0;                     ///< m²
  std::vector<double> over;               ///< probability by month
  std::optional<std::size_t> likely_full; ///< the first month in which it is more likely than not
};
std::vector<Crowding> crowding(const plan::Forecast& forecast, const book::Registers& registers);

/// One row a value: month,what,name,low,middle,high,mean,unit,invented.
std::string forecast_csv(const plan::Forecast& forecast, const book::Title& title);
nlohmann::ordered_json forecast_json(const plan::Forecast& forecast,
                                     const plan::ForecastInput& input, std::uint64_t seed);

/// The lots that a plan leaves out: "Left out: T1742Q (40): its taxon has no route".
std::vector<std::string> left_out_told(const std::vector<plan::LeftOut>& lots);
nlohmann::ordered_json left_out_json(const std::vector<plan::LeftOut>& lots);

/// What a reader has to know, a sentence each; with what is assumed.
std::vector<std::string> forecast_rules(const plan::ForecastInput& input);

} // namespace coneline::report
