// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_boundary.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::stats {

namespace {

/// Where all seed seen lies in one interval, or in intervals that one moment has in common.
std::string at_once(const IntervalCounts& counts) {
  const double from = counts.bounds[counts.latest_begin()];
  const double to = counts.bounds[counts.earliest_end()];
  const auto when =
      from == 0 ? phrase("by day {:g}", to) : phrase("between day {:g} and day {:g}", from, to);
  return phrase("all came up at once, {}: no curve can be told from it", when);
}

} // namespace

std::vector<std::string> boundaries_of(std::span<const Tray> trays, const IntervalCounts& counts,
                                       const std::optional<CurveFit>& fit) {
  if (std::ranges::all_of(trays, [](const Tray& tray) { return tray.sown == 0; }))
    return {"nothing was sown"};
  if (std::ranges::all_of(trays, [](const Tray& tray) { return tray.looks.empty(); }))
    return {"not looked at yet"};
  std::int64_t waiting = 0;
  double last_day = 0;
  for (const auto& tray : trays) {
    waiting += tray.waiting();
    last_day = std::max(last_day, tray.last_day());
  }
  if (counts.seen.empty())
    return {waiting > 0 ? phrase_n(waiting, "nothing came up by day {1:g}; {0} seed still waits",
                                   "nothing came up by day {1:g}; {0} seeds still wait", last_day)
                        : phrase("nothing came up, and no seed is left")};
  std::vector<std::string> told;
  if (!fit)
    told.push_back(at_once(counts));
  if (waiting == 0 && counts.removed == 0)
    told.emplace_back("every seed sown came up");
  if (!fit)
    return told;
  if (const double progress = fit->curve.progress_by(last_day);
      waiting > 0 && progress < end_in_sight)
    told.push_back(phrase("the end of the curve is not yet in sight: by day {:g} it had come "
                          "to {:.0f} % of its height, which is little known",
                          last_day, 100 * progress));
  if (fit->boundary && waiting > 0)
    told.emplace_back("the curve runs to all of the seed, which is a limit and no estimate");
  return told;
}

} // namespace coneline::stats
