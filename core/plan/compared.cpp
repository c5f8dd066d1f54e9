// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/compared.h"

#include "core/base/phrase.h"
#include "core/plan/fit.h"
#include "core/plan/offered.h"
#include "core/plan/shown_units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace coneline::plan {

namespace {

constexpr std::size_t a_year = 12;

/// A series of one plan, or nothing but zeros.
class Line {
 public:
  Line(const Forecast& forecast, const SeriesName& name)
      : forecast_(forecast), at_(forecast.find(name)) {}
  [[nodiscard]] double sum(int run, std::size_t first, std::size_t last) const {
    double sum = 0;
    for (auto month = first; at_ && month < last; ++month)
      sum += static_cast<double>(forecast_.value(*at_, run, month));
    return sum;
  }

 private:
  const Forecast& forecast_;
  std::optional<std::size_t> at_;
};

Between between(const Line& present, const Line& supposed, int runs, std::size_t first,
                std::size_t last) {
  Between found;
  std::vector<float> before;
  std::vector<float> after;
  std::vector<float> change;
  for (int run = 0; run < runs; ++run) {
    const double a = present.sum(run, first, last);
    const double b = supposed.sum(run, first, last);
    before.push_back(static_cast<float>(a));
    after.push_back(static_cast<float>(b));
    change.push_back(static_cast<float>(b - a));
    found.mean_present += a;
    found.mean_supposed += b;
  }
  found.mean_present /= runs;
  found.mean_supposed /= runs;
  found.present = likely(before);
  found.supposed = likely(after);
  found.difference = likely(change);
  return found;
}

std::vector<SeriesCompared> all_series(const Forecast& present, const Forecast& supposed) {
  auto names = present.series();
  for (const auto& name : supposed.series())
    if (!present.find(name))
      names.push_back(name);
  const auto months = present.months().size();
  std::vector<SeriesCompared> all;
  for (const auto& name : names) {
    const Line before(present, name);
    const Line after(supposed, name);
    SeriesCompared one{name, {}, {}};
    for (std::size_t month = 0; month < months; ++month)
      one.months.push_back(between(before, after, present.runs(), month, month + 1));
    for (std::size_t first = 0; happens(name.shown) && first < months; first += a_year)
      one.years.push_back(
          between(before, after, present.runs(), first, std::min(months, first + a_year)));
    all.push_back(std::move(one));
  }
  return all;
}

/// Probabilities by month that more room is taken than offered.
std::vector<double> over_full(const Forecast& forecast, const std::string& light, double offered) {
  constexpr double hair = 1e-4; // runs are kept in single precision
  std::vector<double> over(forecast.months().size(), 0.0);
  if (const auto at = forecast.find({Shown::square_metres, light}))
    for (std::size_t month = 0; month < over.size(); ++month)
      over[month] = forecast.share_above(*at, month, offered + hair);
  return over;
}

std::vector<FullCompared> fullness(const Forecast& present, const Forecast& supposed,
                                   const book::Registers& before, const book::Registers& after) {
  const auto room_before = offered_square_metres(before.places);
  const auto room_after = offered_square_metres(after.places);
  const auto room = [](const std::map<book::Light, double>& offered, book::Light light) {
    const auto found = offered.find(light);
    return found == offered.end() ? 0.0 : found->second;
  };
  std::vector<FullCompared> all;
  for (const auto& [light, word] : book::Words<book::Light>::all) {
    const SeriesName name{Shown::square_metres, std::string(word)};
    if (!present.find(name) && !supposed.find(name))
      continue;
    FullCompared one{name.name, room(room_before, light), room(room_after, light), {}, {}, 0, 0};
    one.over_present = over_full(present, name.name, one.offered_present);
    one.over_supposed = over_full(supposed, name.name, one.offered_supposed);
    const auto worst = [](const std::vector<double>& over) {
      return static_cast<std::size_t>(std::ranges::max_element(over) - over.begin());
    };
    one.worst_present = worst(one.over_present);
    one.worst_supposed = worst(one.over_supposed);
    all.push_back(std::move(one));
  }
  return all;
}

struct Told {
  double size = 0; ///< of the change, as a share of all there is of its kind
  std::string text;
};

std::string what_of(const SeriesName& name) {
  switch (name.shown) {
  case Shown::into:
    return phrase("Plants into '{}'", name.name);
  case Shown::mix:
    return phrase("Mix '{}', {}", name.name, readers_unit(name.shown));
  case Shown::ready:
    return phrase("Plants of {} ready", name.name);
  default:
    return name.name;
  }
}

std::string change_told(const SeriesName& name, const Between& year, Date first, Date last) {
  const auto said = [&](double value) { return in_readers_units(name.shown, value); };
  const auto range = [&](const Likely& likely) {
    return phrase("{:.0f} – {:.0f} – {:.0f}", said(likely.low), said(likely.middle),
                  said(likely.high));
  };
  const double more = said(year.mean_difference());
  return phrase("{}, {} to {}: {} instead of {}, {}{:.0f} on average.", what_of(name),
                month_name(first), month_name(last), range(year.supposed), range(year.present),
                more < 0 ? "−" : "+", std::abs(more));
}

/// Sums of years and the worst months. Parts go with their mixes and are left out.
std::vector<std::string> what_changes_most(const Comparison& found) {
  constexpr double worth_telling = 0.005;
  constexpr std::size_t most = 6;
  std::map<Shown, double> all;
  for (const auto& series : found.series)
    for (const auto& year : series.years)
      all[series.name.shown] += std::max(year.mean_present, year.mean_supposed);
  std::vector<Told> told;
  const auto& months = found.present.months();
  for (const auto& series : found.series)
    for (std::size_t year = 0; year < series.years.size() && series.name.shown != Shown::part;
         ++year) {
      const double whole = all[series.name.shown];
      const double size = whole > 0 ? std::abs(series.years[year].mean_difference()) / whole : 0;
      const auto first = year * a_year;
      told.push_back({size, change_told(series.name, series.years[year], months[first],
                                        months[std::min(months.size(), first + a_year) - 1])});
    }
  for (const auto& light : found.full) {
    const double before = light.over_present[light.worst_present];
    const double after = light.over_supposed[light.worst_supposed];
    told.push_back(
        {std::abs(after - before),
         phrase("'{}' is over full with {:.0f} % at worst ({}) instead of {:.0f} % "
                "({}).",
                phrase_of(light.name), 100 * after, month_name(months[light.worst_supposed]),
                100 * before, month_name(months[light.worst_present]))});
  }
  std::ranges::stable_sort(told, [](const Told& a, const Told& b) { return a.size > b.size; });
  std::vector<std::string> texts;
  for (const auto& one : told)
    if (one.size >= worth_telling && texts.size() < most)
      texts.push_back(one.text);
  return texts;
}

} // namespace

bool happens(Shown shown) {
  return shown == Shown::into || shown == Shown::mix || shown == Shown::part ||
         shown == Shown::ready;
}

Result<Comparison> compare(const ForecastInput& present, const ForecastInput& supposed,
                           const ForecastRuns& asked) {
  if (present.standing.today != supposed.standing.today ||
      present.standing.months != supposed.standing.months)
    return refuse(program_fault("two plans of different months cannot be compared"));
  auto runs = asked;
  const auto half_done = [&asked](int half) {
    return [&asked, half](int done) { return asked.go_on((half * asked.runs + done) / 2); };
  };
  if (asked.go_on)
    runs.go_on = half_done(0);
  auto first = forecast_of(present, runs);
  if (!first)
    return refuse(first.error());
  if (asked.go_on)
    runs.go_on = half_done(1);
  auto second = forecast_of(supposed, runs);
  if (!second)
    return refuse(second.error());
  Comparison found{std::move(*first), std::move(*second), {}, {}, {}};
  found.series = all_series(found.present, found.supposed);
  found.full = fullness(found.present, found.supposed, present.standing.registers,
                        supposed.standing.registers);
  found.most = what_changes_most(found);
  return found;
}

} // namespace coneline::plan
