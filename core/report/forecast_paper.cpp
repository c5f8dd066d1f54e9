// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/forecast_paper.h"

#include "core/base/heading.h"
#include "core/base/month.h"
#include "core/base/phrase.h"
#include "core/plan/fit.h"
#include "core/plan/shown_units.h"
#include "core/report/forecast_report.h"
#include "core/work/cautions.h"
#include "core/work/origin_said.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace coneline::report {

namespace {

using plan::Shown;

constexpr std::array<Shown, 10> in_order{
    Shown::into, Shown::standing, Shown::mix,          Shown::part,       Shown::square_metres,
    Shown::load, Shown::ready,    Shown::place_metres, Shown::place_load, Shown::unplaced_metres};

std::vector<std::size_t> series_of(const plan::Forecast& forecast, Shown shown) {
  std::vector<std::size_t> places;
  for (std::size_t at = 0; at < forecast.series().size(); ++at)
    if (forecast.series()[at].shown == shown)
      places.push_back(at);
  return places;
}

double rounded(double value, int decimals) {
  const double scale = std::pow(10.0, decimals);
  return std::round(value * scale) / scale;
}

Name name_of(const plan::SeriesName& series) {
  return {series.name, name_said(series, work::Days::iso)};
}

/// Months down, one column a series; months in which nothing happens are left out.
PlanTable ranges(const plan::Forecast& forecast, Shown shown,
                 std::span<const std::size_t> columns) {
  PlanTable table{heading_of(shown), {Word{"month"}}, {}};
  const auto number = [shown, decimals = decimals_of(shown)](double value) {
    return decimal_said(plan::in_readers_units(shown, value), decimals);
  };
  for (const auto at : columns)
    table.header.emplace_back(name_of(forecast.series()[at]));
  for (std::size_t month = 0; month < forecast.months().size(); ++month) {
    std::vector<Cell> row{iso_month(forecast.months()[month])};
    bool some = false;
    for (const auto at : columns) {
      const auto range = forecast.range(at, month);
      some = some || range.high > 0;
      row.emplace_back(range.high <= 0 ? std::string("–")
                                       : fmt::format("{} – {} – {}", number(range.low),
                                                     number(range.middle), number(range.high)));
    }
    if (some)
      table.rows.push_back(std::move(row));
  }
  return table;
}

PlanTable numbers(const plan::Forecast& forecast, Shown shown) {
  PlanTable table{as_heading(word_of(shown)),
                  {Word{"month"}, Word{"name"}, std::string("10 %"), std::string("50 %"),
                   std::string("90 %"), Word{"mean"}, Word{"unit"}},
                  {}};
  const auto number = [shown, decimals = decimals_of(shown) + 2](double value) {
    return rounded(plan::in_readers_units(shown, value), decimals);
  };
  const auto unit = unit_heading(unit_of(shown), plan::readers_unit(shown));
  for (const auto at : series_of(forecast, shown))
    for (std::size_t month = 0; month < forecast.months().size(); ++month) {
      const auto range = forecast.range(at, month);
      table.rows.push_back({iso_month(forecast.months()[month]), name_of(forecast.series()[at]),
                            number(range.low), number(range.middle), number(range.high),
                            number(forecast.mean(at, month)), unit});
    }
  return table;
}

PlanPaper with_words(const plan::Forecast& forecast, const plan::ForecastInput& input) {
  const auto& registers = input.standing.registers;
  PlanPaper paper{
      phrase("Season plan"), foot_of(registers.title, input.standing.today), {}, {}, {}};
  paper.sentences.push_back(phrase("{} months from {}, drawn {} times over. Ranges are 10 – 50 "
                                   "– 90 %.",
                                   forecast.months().size(), input.standing.today.iso(),
                                   forecast.runs()));
  for (const auto& told : crowding_told(forecast, registers))
    paper.sentences.push_back(told);
  for (auto& told : left_out_told(forecast.ways().left_out))
    paper.sentences.push_back(std::move(told));
  for (const auto& remark : forecast.ways().remarks)
    paper.sentences.push_back(remark);
  for (const auto& rule : forecast_rules(input))
    paper.sentences.push_back(rule);
  paper.cautions = {phrase_of(work::caution::dust),
                    phrase("Watered pots are heavy: mind the load a bench bears, and your back.")};
  return paper;
}

} // namespace

std::string name_said(const plan::SeriesName& series, work::Days days) {
  switch (series.shown) {
  case Shown::square_metres:
  case Shown::load:
  case Shown::unplaced_metres:
    return phrase_of(series.name);
  case Shown::ready:
    return work::origin_said(series.name, days);
  default:
    return series.name;
  }
}

std::string heading_of(Shown shown) {
  const auto unit = plan::readers_unit(shown);
  switch (shown) {
  case Shown::into:
    return phrase("Plants into each pot");
  case Shown::standing:
    return phrase("Plants standing at the month's end");
  case Shown::mix:
    return phrase("Finished mix, {}", unit);
  case Shown::part:
    return phrase("Parts of the mixes, {}", unit);
  case Shown::square_metres:
    return phrase("Bench room by light class, {}", unit);
  case Shown::load:
    return phrase("Load by light class, {}", unit);
  case Shown::place_metres:
    return phrase("Room taken in each place, {}", unit);
  case Shown::place_load:
    return phrase("Load in each place, {}", unit);
  case Shown::unplaced_metres:
    return phrase("Without a place yet, {}", unit);
  case Shown::ready:
    return phrase("Plants becoming ready, by cross");
  }
  return "";
}

int decimals_of(Shown shown) {
  switch (shown) {
  case Shown::into:
  case Shown::standing:
  case Shown::ready:
    return 0;
  case Shown::square_metres:
  case Shown::place_metres:
  case Shown::unplaced_metres:
    return 2;
  case Shown::mix:
  case Shown::part:
  case Shown::load:
  case Shown::place_load:
    return 1;
  }
  return 1;
}

std::vector<std::string> crowding_told(const plan::Forecast& forecast,
                                       const book::Registers& registers) {
  constexpr double per_cent = 100;
  std::vector<std::string> told;
  for (const auto& one : crowding(forecast, registers)) {
    const auto worst = std::ranges::max_element(one.over);
    if (worst == one.over.end() || *worst <= 0)
      continue;
    const auto at = static_cast<std::size_t>(worst - one.over.begin());
    told.push_back(
        phrase("'{}' has {}. Over full with {:.0f} % in {}{}.", name_said({one.shown, one.name}),
               measured(Quantity::square_metres, one.offered, 2), per_cent * *worst,
               plan::month_name(forecast.months()[at]),
               one.likely_full ? phrase("; more likely than not from {}",
                                        plan::month_name(forecast.months()[*one.likely_full]))
                               : ""));
  }
  if (told.empty())
    told.push_back(phrase("Everything finds room in every future drawn."));
  return told;
}

PlanPaper forecast_paper(const plan::Forecast& forecast, const plan::ForecastInput& input) {
  constexpr std::size_t across = 3; // ranges that stand beside each other on the page
  auto paper = with_words(forecast, input);
  for (const auto shown : in_order) {
    const auto places = series_of(forecast, shown);
    for (std::size_t from = 0; from < places.size(); from += across) {
      auto table = ranges(forecast, shown,
                          std::span(places).subspan(from, std::min(across, places.size() - from)));
      if (!table.rows.empty())
        paper.tables.push_back(std::move(table));
    }
  }
  return paper;
}

PlanPaper forecast_sheets(const plan::Forecast& forecast, const plan::ForecastInput& input) {
  auto paper = with_words(forecast, input);
  for (const auto shown : in_order)
    if (auto table = numbers(forecast, shown); !table.rows.empty())
      paper.tables.push_back(std::move(table));
  return paper;
}

} // namespace coneline::report
