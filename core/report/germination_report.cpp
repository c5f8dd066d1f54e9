// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/germination_report.h"

#include "core/plan/route_walk.h"
#include "core/stats/share_posterior.h"

#include <fmt/format.h>

#include <algorithm>
#include <deque>

namespace coneline::report {

namespace {

stats::Tray counts_of(const work::ObservedTray& seen) {
  stats::Tray tray{seen.origin.name, seen.lot.code.text(), seen.sown, {}};
  for (const auto& look : seen.looks)
    tray.looks.push_back({look.day, look.germinated, look.removed});
  return tray;
}

/// All trays as one, looks of one day after sowing taken together.
stats::Tray together(std::span<const stats::Tray> trays) {
  stats::Tray all;
  std::map<double, stats::Look> by_day;
  for (const auto& tray : trays) {
    all.sown += tray.sown;
    for (const auto& look : tray.looks) {
      auto& day = by_day[look.day];
      day.day = look.day;
      day.germinated += look.germinated;
      day.removed += look.removed;
    }
  }
  for (const auto& [day, look] : by_day)
    all.looks.push_back(look);
  return all;
}

std::vector<CurvePoint> curve_of(const stats::Tray& tray) {
  std::vector<CurvePoint> points{{0, 0}};
  std::int64_t up = 0;
  for (const auto& look : tray.looks) {
    up += look.germinated;
    points.push_back({look.day, static_cast<double>(up) / static_cast<double>(tray.sown)});
  }
  return points;
}

/// Days from root to leaf of each leaf whose root was seen, the earliest root first.
struct Waits {
  std::int64_t roots = 0;
  std::vector<double> days;

  void add(const work::ObservedTray& tray) {
    std::deque<std::pair<double, std::int64_t>> leafless;
    for (const auto& look : tray.looks) {
      const auto rooted = look.germinated - look.straight_to_leaf;
      roots += rooted;
      leafless.emplace_back(look.day, rooted);
      for (auto left = look.leaves - look.straight_to_leaf; left > 0 && !leafless.empty();) {
        auto& [day, count] = leafless.front();
        const auto taken = std::min(left, count);
        days.insert(days.end(), static_cast<std::size_t>(taken), look.day - day);
        left -= taken;
        count -= taken;
        if (count == 0)
          leafless.pop_front();
      }
    }
  }

  [[nodiscard]] std::optional<double> median() const {
    const auto leafed = static_cast<std::int64_t>(days.size());
    if (leafed == 0 || 2 * leafed < roots)
      return std::nullopt;
    auto sorted = days;
    std::ranges::sort(sorted);
    const auto middle = sorted.size() / 2;
    return sorted.size() % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
};

LeafFigures leaves_of(std::span<const work::ObservedTray* const> trays, double confidence) {
  LeafFigures figures;
  Waits waits;
  std::vector<stats::Outcome> outcomes;
  for (const auto* tray : trays) {
    waits.add(*tray);
    std::int64_t leaves = 0;
    for (const auto& look : tray->looks)
      leaves += look.leaves;
    figures.leaves += leaves;
    // Roots that a recount found may leaf beyond what was sown; a share is at most all.
    outcomes.push_back({tray->sown, std::min(leaves, tray->sown)});
  }
  figures.share = stats::share_of_cross(stats::GroupShare(outcomes), confidence);
  figures.days_from_root = waits.median();
  return figures;
}

Sprouting sprouting_of(const TrayReport& tray, Date as_of) {
  if (tray.seen.looks.empty())
    return Sprouting::not_looked_at;
  if (tray.waiting <= 0)
    return Sprouting::over;
  if (!tray.sprouts_until)
    return Sprouting::not_known;
  return *tray.sprouts_until > as_of ? Sprouting::still : Sprouting::past;
}

std::string told(const TrayReport& tray) {
  const std::string nothing = tray.germinated == 0 ? "nothing came up; " : "";
  switch (tray.sprouting) {
  case Sprouting::not_looked_at:
    return "not looked at yet";
  case Sprouting::over:
    return tray.germinated == 0 ? "nothing came up; no seed left in it" : "done";
  case Sprouting::still:
    return nothing + fmt::format("still sprouting: {} waiting, until {} by its route", tray.waiting,
                                 tray.sprouts_until->iso());
  case Sprouting::past:
    return nothing + fmt::format("{} waiting, past {}, the end by its route", tray.waiting,
                                 tray.sprouts_until->iso());
  case Sprouting::not_known:
    return nothing + fmt::format("{} waiting; no route says for how long", tray.waiting);
  }
  return {};
}

std::string told(const CrossReport& cross) {
  std::string text = cross.figures.germinated == 0 ? "Nothing came up. " : "";
  const auto not_looked_at =
      std::ranges::count(cross.trays, Sprouting::not_looked_at, &TrayReport::sprouting);
  if (not_looked_at == std::ssize(cross.trays))
    return "Not looked at yet.";
  if (cross.trays_sprouting > 0)
    text += fmt::format("{} of {} trays can still sprout, {} seeds waiting: the share can rise.",
                        cross.trays_sprouting, cross.trays.size(), cross.waiting);
  else if (cross.waiting > 0)
    text += fmt::format("{} seeds wait past their route's months.", cross.waiting);
  else
    text += "No seed is left in the trays.";
  return text;
}

TrayReport tray_of(const work::ObservedTray& seen, const book::Registers& registers, Date as_of,
                   double confidence) {
  TrayReport tray;
  tray.seen = seen;
  const auto counts = counts_of(seen);
  tray.germinated = counts.germinated();
  tray.removed = counts.removed();
  tray.waiting = counts.waiting();
  const auto* const one = &seen;
  tray.leaf = leaves_of(std::span(&one, 1), confidence);
  if (const auto* route = registers.route(seen.origin.taxon_id))
    tray.sprouts_until = plan::after_months(seen.sown_on, route->germination_months.high);
  tray.sprouting = sprouting_of(tray, as_of);
  tray.told = told(tray);
  return tray;
}

CrossReport cross_of(std::span<const work::ObservedTray* const> seen,
                     const book::Registers& registers, Date as_of, double confidence) {
  CrossReport cross;
  cross.name = seen.front()->origin.name;
  cross.taxon = seen.front()->origin.taxon;
  std::vector<stats::Tray> counts;
  for (const auto* tray : seen) {
    counts.push_back(counts_of(*tray));
    cross.trays.push_back(tray_of(*tray, registers, as_of, confidence));
  }
  const auto figures = stats::germination_figures(counts, {{}, confidence}).value();
  cross.figures = figures.groups.front();
  for (const auto& tray : figures.trays)
    cross.trays[tray.tray].figures = tray;
  const auto all = together(counts);
  cross.together = stats::germination_measures(all);
  cross.curve = curve_of(all);
  cross.leaf = leaves_of(seen, confidence);
  for (const auto& tray : cross.trays) {
    cross.waiting += tray.waiting;
    cross.trays_sprouting += tray.waiting > 0 && tray.sprouting != Sprouting::past ? 1 : 0;
  }
  cross.told = told(cross);
  return cross;
}

} // namespace

Result<GerminationReport> germination_report(std::span<const work::ObservedTray> trays,
                                             const book::Registers& registers, Date as_of,
                                             double confidence) {
  if (!(confidence > 0 && confidence < 1))
    return refuse(usage_fault(fmt::format("a confidence of {}", confidence),
                              "Write a share between 0 and 1, such as 0.95."));
  GerminationReport report{registers.title, as_of, confidence, {}, {}};
  std::map<std::pair<std::string, std::string>, std::vector<const work::ObservedTray*>> crosses;
  for (const auto& tray : trays) {
    const auto faults = stats::faults_of(counts_of(tray));
    if (faults.empty() && tray.sown > 0)
      crosses[{tray.origin.name, tray.origin.taxon}].push_back(&tray);
    else
      report.left_out.push_back(
          {tray.lot.code, faults.empty() ? "nothing is sown in it" : faults.front().what});
  }
  for (const auto& [name, seen] : crosses)
    report.crosses.push_back(cross_of(seen, registers, as_of, confidence));
  return report;
}

Result<GerminationReport> germination_report(store::Reading& reading, Date as_of,
                                             double confidence) {
  const auto registers = reading.registers();
  const auto trays = work::observed_trays(reading, registers, as_of);
  return germination_report(trays, registers, as_of, confidence);
}

} // namespace coneline::report
