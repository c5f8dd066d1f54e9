// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_pace.h"

#include <algorithm>
#include <cmath>

namespace coneline::plan {

namespace {

/// Chance to have come up by a time, in months of the plan, for one tray and draw.
class ComingUp {
 public:
  ComingUp(const double* chances, int months, double now, const stats::Curve* curve, double sown)
      : now_(now), curve_(curve), sown_(sown) {
    for (int month = 0; month < months; ++month)
      by_.push_back(by_.back() + chances[month]);
    // The share that stands behind the chances, from the months that are whole: a month of the
    // curve's progress is worth so much of a chance.
    const double whole = progress(months) - progress(1);
    if (curve_ != nullptr && whole > 1e-9)
      worth_ = (by_.back() - by_[1]) / whole;
  }

  [[nodiscard]] double by(double time) const {
    const auto months = static_cast<double>(by_.size() - 1);
    if (time <= now_)
      return 0;
    if (time >= months)
      return std::min(1.0, by_.back() + worth_ * std::max(0.0, progress(time) - progress(months)));
    if (time < 1)
      return by_[1] * (time - now_) / (1 - now_); // this month's lies in what is left of it
    const auto month = static_cast<std::size_t>(time);
    const double part = time - static_cast<double>(month);
    return by_[month] + (by_[month + 1] - by_[month]) * part;
  }

 private:
  [[nodiscard]] double progress(double time) const {
    constexpr double days_a_month = 365.25 / 12;
    const double day = (time - sown_) * days_a_month;
    return curve_ != nullptr && day > 0 ? curve_->progress_by(day) : 0;
  }

  double now_;
  const stats::Curve* curve_;
  double sown_;
  double worth_ = 0;
  std::vector<double> by_{0.0};
};

} // namespace

void take_pace(CrossSprouting& cross, std::size_t tray, Date sown_on, const Calendar& calendar,
               double pace) {
  const double now = std::min(calendar.now(), 0.999);
  const double sown = calendar.time(sown_on);
  for (std::size_t draw = 0; draw < cross.draws.size(); ++draw) {
    auto* chances = cross.draws[draw].data() + tray * static_cast<std::size_t>(cross.months);
    const auto* curve = draw < cross.points.size() ? &cross.points[draw].curve : nullptr;
    const ComingUp before(chances, cross.months, now, curve, sown);
    double last = 0;
    for (int month = 0; month < cross.months; ++month) {
      const double by = std::max(last, before.by(now + (month + 1.0 - now) / pace));
      chances[month] = by - last;
      last = by;
    }
  }
}

} // namespace coneline::plan
