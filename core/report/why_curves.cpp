// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/why_curves.h"

#include <algorithm>

namespace coneline::report {

namespace {

using Trays = std::vector<const work::ExplainedTray*>;

std::vector<CurvePoint> curve_of(const Trays& trays) {
  std::map<double, std::int64_t> by_day;
  std::int64_t sown = 0;
  for (const auto* tray : trays) {
    sown += tray->seen.sown;
    for (const auto& look : tray->seen.looks)
      by_day[look.day] += look.germinated;
  }
  std::vector<CurvePoint> points{{0, 0}};
  std::int64_t up = 0;
  for (const auto& [day, germinated] : by_day) {
    up += germinated;
    points.push_back({day, static_cast<double>(up) / static_cast<double>(sown)});
  }
  return points;
}

} // namespace

std::vector<LevelCurve> why_curves(const work::Why& why, const work::WhyCondition& condition) {
  Trays known;
  for (const auto& tray : why.trays)
    if (tray.value(condition.condition))
      known.push_back(&tray);
  const auto value = [&](const work::ExplainedTray* tray) -> const work::ConditionValue& {
    return *tray->value(condition.condition);
  };
  // The classes of a measured condition are stretches of its values, in their order.
  const bool measured = work::measured(condition.condition);
  if (measured)
    std::ranges::stable_sort(known, {}, [&](const auto* tray) { return value(tray).number; });
  std::vector<LevelCurve> curves;
  auto next = known.begin();
  for (const auto& level : condition.levels) {
    Trays own;
    if (measured) {
      const auto end = next + std::min<std::ptrdiff_t>(static_cast<std::ptrdiff_t>(level.trays),
                                                       known.end() - next);
      own.assign(next, end);
      next = end;
    } else {
      std::ranges::copy_if(known, std::back_inserter(own),
                           [&](const auto* tray) { return value(tray).text == level.level; });
    }
    curves.push_back({level.level, curve_of(own)});
  }
  return curves;
}

} // namespace coneline::report
