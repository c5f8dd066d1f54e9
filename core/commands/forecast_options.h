// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Options that the commands of the season plan share: the book, the day, what is assumed, the runs.

#include "core/commands/book_options.h"
#include "core/plan/forecast.h"

namespace coneline::commands {

struct ForecastOptions {
  BookOption book;
  std::string as_of;
  int months = 36;
  std::int64_t runs = 4000;
  std::uint64_t seed = 1;
  std::optional<std::string> potting; ///< empty: as the book has it
  std::vector<std::string> survival;  ///< TAXON:STEP=SHARE
  std::optional<int> sold_after;
  std::optional<double> settling; ///< as the book has it
  std::optional<double> kilograms;
  double survival_weight = 20;
  double season_weight = 60;
  bool sow_seed = false;
  bool sow_cones = false;
  std::vector<std::string> sow; ///< CROSS:SEEDS:MONTH

  /// `months` as the command's default, with every other assumption.
  void add_to(Command& command, int default_months);
  /// Those alone that are no change of a plan: for a command that says its changes itself.
  void add_present_to(Command& command, int default_months);
  /// The book as it stands, with the assumptions in it.
  [[nodiscard]] Result<plan::ForecastInput> input() const;
  /// The runs, with progress told on `messages`.
  [[nodiscard]] plan::ForecastRuns wanted(std::ostream& messages) const;
};

/// Months of the year, as in 3-10 or 3,4,9-11 or 10-3 (over new year).
Result<std::array<bool, 12>> months_of_year(std::string_view text);

/// "A × B:200:2027-05" as cross, seeds and month.
struct SowingGiven {
  std::string cross;
  std::int64_t seeds = 0;
  Date month;
};
Result<SowingGiven> sowing_given(const std::string& text);

/// "Cycas revoluta:2=0.8" as taxon, step and the text after it.
struct StepGiven {
  std::string taxon;
  int step = 1;
  std::string value;
};
std::optional<StepGiven> step_given(const std::string& text);

/// A month as in 2027-05, of those that are planned.
Result<std::size_t> month_given(std::string_view text, const std::vector<Date>& months);

} // namespace coneline::commands
