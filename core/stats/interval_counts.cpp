// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/interval_counts.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <utility>

namespace coneline::stats {

namespace {

/// The same with days in place of places in `bounds`.
struct ByDay {
  std::map<std::pair<double, double>, double> seen;
  std::map<double, double> waiting;
  double removed = 0;

  void add(const Tray& tray) {
    double before = 0;
    for (const auto& look : tray.looks) {
      if (look.germinated > 0)
        seen[{before, look.day}] += static_cast<double>(look.germinated);
      before = look.day;
    }
    if (tray.waiting() > 0)
      waiting[tray.last_day()] += static_cast<double>(tray.waiting());
    removed += static_cast<double>(tray.removed());
  }
};

IntervalCounts with_bounds(const ByDay& days) {
  IntervalCounts counts;
  counts.bounds.push_back(0);
  for (const auto& [interval, seeds] : days.seen) {
    counts.bounds.push_back(interval.first);
    counts.bounds.push_back(interval.second);
  }
  for (const auto& [day, seeds] : days.waiting)
    counts.bounds.push_back(day);
  std::ranges::sort(counts.bounds);
  const auto repeats = std::ranges::unique(counts.bounds);
  counts.bounds.erase(repeats.begin(), repeats.end());
  const auto place = [&](double day) {
    return static_cast<std::size_t>(std::ranges::lower_bound(counts.bounds, day) -
                                    counts.bounds.begin());
  };
  for (const auto& [interval, seeds] : days.seen)
    counts.seen.push_back({place(interval.first), place(interval.second), seeds});
  for (const auto& [day, seeds] : days.waiting)
    counts.waiting.push_back({place(day), seeds});
  counts.removed = days.removed;
  return counts;
}

} // namespace

double IntervalCounts::germinated() const {
  return std::accumulate(seen.begin(), seen.end(), 0.0,
                         [](double sum, const Seen& cell) { return sum + cell.seeds; });
}

double IntervalCounts::sown() const {
  return std::accumulate(waiting.begin(), waiting.end(), germinated() + removed,
                         [](double sum, const Waiting& cell) { return sum + cell.seeds; });
}

std::size_t IntervalCounts::latest_begin() const {
  return std::ranges::max(seen, {}, &Seen::from).from;
}

std::size_t IntervalCounts::earliest_end() const {
  return std::ranges::min(seen, {}, &Seen::to).to;
}

IntervalCounts interval_counts(std::span<const Tray> trays, std::span<const std::size_t> places) {
  ByDay days;
  for (const auto place : places)
    days.add(trays[place]);
  return with_bounds(days);
}

IntervalCounts interval_counts(std::span<const Tray> trays) {
  ByDay days;
  for (const auto& tray : trays)
    days.add(tray);
  return with_bounds(days);
}

} // namespace coneline::stats
