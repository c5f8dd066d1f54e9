// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// In which month a step is left, as probabilities. Time runs in months from the beginning of month
// 0; months after the last one planned are all the same: `beyond`.

#include "core/plan/forecast_input.h"

namespace coneline::plan {

/// Probabilities of the months from `first` on; those of months before the plan's end and of
/// `beyond` sum to 1.
struct LeaveMonths {
  int first = 0;
  std::vector<double> chance;
};

/// The calendar of a plan: its months, and where a move that is due in one is made.
class Calendar {
 public:
  Calendar(Date today, int months, const std::array<bool, 12>& potting);

  [[nodiscard]] int months() const { return months_; }
  [[nodiscard]] int beyond() const { return months_; }
  /// Of a day: 0 at the beginning of month 0, 0.5 in its middle; below 0 in the past.
  [[nodiscard]] double time(Date day) const;
  [[nodiscard]] double now() const { return now_; }
  /// The first potting month from `month` on, at most `beyond`.
  [[nodiscard]] int potting_from(int month) const {
    return potting_from_[static_cast<std::size_t>(month)];
  }
  /// Calendar years from the first one planned; the season of what is left in this month.
  [[nodiscard]] int season(int month) const { return season_[static_cast<std::size_t>(month)]; }
  [[nodiscard]] int seasons() const { return season_.back() + 1; }

 private:
  Date today_;
  int months_;
  double now_;
  std::vector<int> potting_from_; ///< by month, `beyond` included
  std::vector<int> season_;       ///< by month, `beyond` included
};

enum class Leaving { by_potting, when_ready };

/// A step that was entered at `since`, is not left at `earliest`, and lasts anything between low
/// and high alike. Where even high is over by then it is due then.
LeaveMonths leave_months(const Calendar& calendar, const book::Range& months, double since,
                         double earliest, Leaving leaving);

} // namespace coneline::plan
