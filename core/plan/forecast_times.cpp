// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_times.h"

#include <algorithm>
#include <cmath>

namespace coneline::plan {

Calendar::Calendar(Date today, int months, const std::array<bool, 12>& potting)
    : today_(today), months_(months), now_(time(today)) {
  const auto first = today.first_of_month();
  for (int month = 0; month <= months; ++month)
    season_.push_back(first.plus_months(month).year() - first.year());
  potting_from_.assign(static_cast<std::size_t>(months) + 1, months);
  for (int month = months - 1; month >= 0; --month) {
    const auto at = static_cast<std::size_t>(month);
    potting_from_[at] =
        potting.at(first.plus_months(month).month() - 1) ? month : potting_from_[at + 1];
  }
}

double Calendar::time(Date day) const {
  const auto first = day.first_of_month();
  const double within = static_cast<double>(days_between(first, day)) /
                        static_cast<double>(days_between(first, first.plus_months(1)));
  return months_between(today_, day) + within;
}

LeaveMonths leave_months(const Calendar& calendar, const book::Range& months, double since,
                         double earliest, Leaving leaving) {
  const double low = std::max(since + months.low, earliest);
  const double high = std::max(since + months.high, low);
  const auto beyond = calendar.beyond();
  const auto month_of = [&](double time) {
    return std::clamp(static_cast<int>(std::floor(std::min(time, 1e6))), 0, beyond);
  };
  const auto moved = [&](int due) {
    return leaving == Leaving::by_potting ? calendar.potting_from(due) : due;
  };
  LeaveMonths leave{moved(month_of(low)), {}};
  const auto add = [&](int due, double chance) {
    const auto at = static_cast<std::size_t>(moved(due) - leave.first);
    if (leave.chance.size() <= at)
      leave.chance.resize(at + 1, 0);
    leave.chance[at] += chance;
  };
  if (high - low < 1e-9) {
    add(month_of(low), 1);
    return leave;
  }
  for (int due = month_of(low); due <= month_of(high); ++due) {
    const double from = std::max(low, static_cast<double>(due));
    const double until = due == beyond ? high : std::min(high, due + 1.0);
    if (until > from)
      add(due, (until - from) / (high - low));
  }
  return leave;
}

} // namespace coneline::plan
