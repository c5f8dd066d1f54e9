// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/germination_report.h"

#include "core/base/phrase.h"
#include "core/plan/route_walk.h"
#include "core/report/ranking.h"
#include "core/stats/share_posterior.h"
#include "core/work/coming.h"

#include <fmt/format.h>

#include <algorithm>
#include <deque>

namespace coneline::report {

namespace {

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
      const double on = days_between(tray.sown_on, look.date);
      roots += rooted;
      leafless.emplace_back(on, rooted);
      for (auto left = look.leaves - look.straight_to_leaf; left > 0 && !leafless.empty();) {
        auto& [day, count] = leafless.front();
        const auto taken = std::min(left, count);
        days.insert(days.end(), static_cast<std::size_t>(taken), on - day);
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
  const std::string nothing = tray.germinated == 0 ? phrase("nothing came up; ") : "";
  switch (tray.sprouting) {
  case Sprouting::not_looked_at:
    return phrase("not looked at yet");
  case Sprouting::over:
    return tray.germinated == 0 ? phrase("nothing came up; no seed left in it") : phrase("done");
  case Sprouting::still:
    return nothing + phrase("still sprouting: {} waiting, until {} by its route", tray.waiting,
                            tray.sprouts_until->said());
  case Sprouting::past:
    return nothing + phrase("{} waiting, past {}, the end by its route", tray.waiting,
                            tray.sprouts_until->said());
  case Sprouting::not_known:
    return nothing + phrase("{} waiting; no route says for how long", tray.waiting);
  }
  return {};
}

std::string told(const CrossReport& cross) {
  std::string text = cross.figures.germinated == 0 ? phrase("Nothing came up. ") : "";
  const auto not_looked_at =
      std::ranges::count(cross.trays, Sprouting::not_looked_at, &TrayReport::sprouting);
  if (not_looked_at == std::ssize(cross.trays))
    return phrase("Not looked at yet.");
  if (cross.trays_sprouting > 0)
    text += phrase_n(cross.waiting,
                     "{1} of {2} trays can still sprout, {0} seed waiting: the share can rise.",
                     "{1} of {2} trays can still sprout, {0} seeds waiting: the share can rise.",
                     cross.trays_sprouting, cross.trays.size());
  else if (cross.waiting > 0)
    text += phrase_n(cross.waiting, "{} seed waits past its route's months.",
                     "{} seeds wait past their route's months.");
  else
    text += phrase("No seed is left in the trays.");
  return text;
}

TrayReport tray_of(const work::ObservedTray& seen, const book::Registers& registers, Date as_of,
                   double confidence) {
  TrayReport tray;
  tray.seen = seen;
  const auto counts = work::counts_of(seen);
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

/// Trays that are taken together, in the order of what they are called.
struct GroupKey {
  std::string name;
  std::string taxon;
  std::string season;
  auto operator<=>(const GroupKey&) const = default;
};

GroupKey key_of(const work::ObservedTray& tray, const Asked& asked) {
  const auto season = season_of(tray.sown_on, asked.season_begins);
  switch (asked.by) {
  case By::cross:
    return {tray.origin.name, tray.origin.taxon, {}};
  case By::season:
    return {season, {}, season};
  case By::cross_and_season:
    return {tray.origin.name + ", " + season, tray.origin.taxon, season};
  }
  return {};
}

/// A tray with its times as they are asked for.
struct TimedTray {
  work::ObservedTray seen;
  int days = 0;
  int days_lacking = 0;
};

Result<TimedTray> timed(const work::ObservedTray& tray, const Asked& asked,
                        const work::Warmth* warmth) {
  if (!asked.degree_days)
    return TimedTray{tray};
  if (warmth == nullptr)
    return refuse(fault("no temperature is known"));
  return warmth->in_degree_days(tray).map([](work::TrayWarmth made) {
    return TimedTray{std::move(made.tray), made.days, made.lacking};
  });
}

using Grouped = std::map<GroupKey, std::vector<TimedTray>>;

Grouped grouped(std::span<const work::ObservedTray> trays, const Asked& asked,
                const work::Warmth* warmth, GerminationReport& report) {
  Grouped groups;
  for (const auto& tray : trays) {
    auto with_times = timed(tray, asked, warmth);
    if (!with_times) {
      report.left_out.push_back({tray.lot.code, with_times.error().what});
      continue;
    }
    const auto faults = stats::faults_of(work::counts_of(with_times->seen));
    if (faults.empty() && tray.sown > 0)
      groups[key_of(tray, asked)].push_back(std::move(*with_times));
    else
      report.left_out.push_back(
          {tray.lot.code, faults.empty() ? phrase("nothing is sown in it") : faults.front().what});
  }
  return groups;
}

std::optional<stats::CurveBand> band_of(const stats::GroupFigures& figures,
                                        std::span<const stats::Tray> trays, double confidence) {
  if (!figures.curve)
    return std::nullopt;
  std::vector<double> sown;
  for (const auto place : figures.group.trays)
    sown.push_back(static_cast<double>(trays[place].sown));
  const double effect = stats::design_effect(sown, figures.spread ? figures.spread->rho : 0);
  return stats::CurveBand::of(stats::interval_counts(trays, figures.group.trays), *figures.curve,
                              effect, confidence);
}

/// What is said of all trays of a cross as one, but for the figures.
void add_sums(CrossReport& cross, std::span<const stats::Tray> counts, double confidence) {
  const auto all = stats::as_one(counts);
  cross.together = stats::germination_measures(all);
  cross.curve = curve_of(all);
  std::vector<const work::ObservedTray*> seen;
  for (const auto& tray : cross.trays)
    seen.push_back(&tray.seen);
  cross.leaf = leaves_of(seen, confidence);
  for (const auto& tray : cross.trays) {
    cross.waiting += tray.waiting;
    cross.trays_sprouting += tray.waiting > 0 && tray.sprouting != Sprouting::past ? 1 : 0;
  }
  cross.told = told(cross);
}

CrossReport cross_of(const GroupKey& key, const std::vector<TimedTray>& trays,
                     const book::Registers& registers, const Asked& asked) {
  CrossReport cross;
  cross.name = key.name;
  cross.taxon = key.taxon;
  cross.season = asked.by == By::cross ? std::string() : key.season;
  for (const auto& tray : trays) {
    cross.trays.push_back(tray_of(tray.seen, registers, asked.as_of, asked.confidence));
    cross.trays.back().season = season_of(tray.seen.sown_on, asked.season_begins);
    cross.trays.back().days = tray.days;
    cross.trays.back().days_lacking = tray.days_lacking;
  }
  return cross;
}

/// The figures of all crosses in one go, shared out to them.
void add_figures(GerminationReport& report) {
  std::vector<stats::Tray> counts;
  std::vector<std::size_t> first;
  for (std::size_t place = 0; place < report.crosses.size(); ++place) {
    first.push_back(counts.size());
    for (const auto& tray : report.crosses[place].trays) {
      counts.push_back(work::counts_of(tray.seen));
      counts.back().group = std::to_string(place); // two crosses may have one name
    }
  }
  auto figures = stats::germination_figures(counts, {{}, report.confidence}).value();
  for (std::size_t place = 0; place < report.crosses.size(); ++place) {
    auto& cross = report.crosses[place];
    const std::span own(counts.data() + first[place], cross.trays.size());
    cross.band = band_of(figures.groups[place], counts, report.confidence);
    cross.figures = std::move(figures.groups[place]);
    for (std::size_t tray = 0; tray < cross.trays.size(); ++tray) {
      cross.figures.group.trays[tray] = tray;
      cross.trays[tray].figures = std::move(figures.trays[first[place] + tray]);
      cross.trays[tray].figures.tray = tray;
    }
    cross.figures.group.name = cross.name;
    add_sums(cross, own, report.confidence);
  }
  report.comparisons = std::move(figures.comparisons);
}

Result<void> sound(const Asked& asked) {
  if (!(asked.confidence > 0 && asked.confidence < 1))
    return refuse(usage_fault(phrase("a confidence of {}", asked.confidence),
                              "Write a share between 0 and 1, such as 0.95."));
  if (asked.season_begins < 1 || asked.season_begins > 12)
    return refuse(usage_fault(phrase("a season that begins in month {}", asked.season_begins),
                              "Write a month from 1 to 12."));
  return {};
}

} // namespace

std::string season_of(Date sown, int first_month) {
  const bool earlier = static_cast<int>(sown.month()) < first_month;
  const int year = sown.year() - (earlier ? 1 : 0);
  return first_month == 1 ? std::to_string(year) : fmt::format("{}/{:02}", year, (year + 1) % 100);
}

std::string_view by_word(By by) {
  switch (by) {
  case By::cross:
    return "cross";
  case By::season:
    return "season";
  case By::cross_and_season:
    return to_phrase("cross-season");
  }
  return "";
}

std::optional<By> by_named(std::string_view word) {
  for (const auto by : {By::cross, By::season, By::cross_and_season})
    if (by_word(by) == word)
      return by;
  return std::nullopt;
}

stats::CountRange CrossReport::expected() const {
  if (known)
    return known->seeds;
  const auto& own = figures.still_expected;
  return {own.median, own.low, own.high, 0};
}

std::string GerminationReport::time_unit() const {
  return degree_days ? fmt::format("degree-days above {:g} °C", degree_days->base) : "days";
}

std::string GerminationReport::time_unit_said() const {
  return degree_days ? phrase("degree-days above {:g} °C", degree_days->base) : phrase("days");
}

Result<GerminationReport> germination_report(std::span<const work::ObservedTray> trays,
                                             const book::Registers& registers, const Asked& asked,
                                             const work::Warmth* warmth) {
  if (auto is = sound(asked); !is)
    return refuse(is.error());
  GerminationReport report;
  report.title = registers.title;
  report.as_of = asked.as_of;
  report.confidence = asked.confidence;
  report.by = asked.by;
  report.degree_days = asked.degree_days;
  for (const auto& [key, seen] : grouped(trays, asked, warmth, report))
    report.crosses.push_back(cross_of(key, seen, registers, asked));
  add_figures(report);
  rank(report);
  return report;
}

namespace {

/// The counts of a cross are few while it sprouts: what the book knows of the taxon helps.
void add_known(GerminationReport& report, const work::ComingBook& book) {
  for (auto& cross : report.crosses)
    for (const auto& known : book.crosses)
      if (known.name == cross.name && known.taxon == cross.taxon)
        cross.known = KnownToCome{known.coming.seeds, work::told(known.prior, report.confidence)};
}

} // namespace

Result<GerminationReport> germination_report(store::Reading& reading, const Asked& asked) {
  const auto registers = reading.registers();
  const auto trays = work::observed_trays(reading, registers, asked.as_of);
  std::optional<work::Warmth> warmth;
  if (asked.degree_days)
    warmth.emplace(reading, registers, *asked.degree_days);
  auto report = germination_report(trays, registers, asked, warmth ? &*warmth : nullptr);
  if (!report || asked.by != By::cross || asked.degree_days)
    return report;
  const auto book = work::coming(reading, asked.as_of, {asked.confidence, {}});
  if (!book)
    return refuse(book.error());
  add_known(*report, *book);
  return report;
}

} // namespace coneline::report
