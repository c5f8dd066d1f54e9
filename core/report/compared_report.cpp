// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/compared_report.h"

#include "core/base/csv.h"
#include "core/base/month.h"
#include "core/base/number.h"
#include "core/report/forecast_report.h"

#include <fmt/format.h>

namespace coneline::report {

namespace {

using Json = nlohmann::ordered_json;

/// The months that a year of the comparison sums.
std::string year_of(const plan::Comparison& compared, std::size_t year) {
  const auto& months = compared.present.months();
  const auto first = 12 * year;
  return fmt::format("{} to {}", iso_month(months[first]),
                     iso_month(months[std::min(months.size(), first + 12) - 1]));
}

Json likely_json(const plan::Likely& likely, double mean) {
  return {{"low", likely.low}, {"middle", likely.middle}, {"high", likely.high}, {"mean", mean}};
}

Json between_json(const std::string& period, const plan::Between& between) {
  return {{"period", period},
          {"present", likely_json(between.present, between.mean_present)},
          {"supposed", likely_json(between.supposed, between.mean_supposed)},
          {"difference", likely_json(between.difference, between.mean_difference())}};
}

} // namespace

std::string compared_csv(const plan::Comparison& compared, const book::Title& title) {
  auto text = csv_line({"period", "what", "name", "present_low", "present_middle", "present_high",
                        "present_mean", "supposed_low", "supposed_middle", "supposed_high",
                        "supposed_mean", "difference_low", "difference_middle", "difference_high",
                        "difference_mean", "unit", "invented"});
  for (const auto& series : compared.series) {
    const auto add = [&](const std::string& period, const plan::Between& row) {
      std::vector<std::string> cells{period, std::string(word_of(series.name.shown)),
                                     for_spreadsheet(series.name.name)};
      for (const auto& [likely, mean] :
           {std::pair(row.present, row.mean_present), std::pair(row.supposed, row.mean_supposed),
            std::pair(row.difference, row.mean_difference())})
        for (const double value : {likely.low, likely.middle, likely.high, mean})
          cells.push_back(write_real(value));
      cells.emplace_back(unit_of(series.name.shown));
      cells.emplace_back(title.invented ? "yes" : "no");
      text += csv_line(cells);
    };
    for (std::size_t month = 0; month < series.months.size(); ++month)
      add(iso_month(compared.present.months()[month]), series.months[month]);
    for (std::size_t year = 0; year < series.years.size(); ++year)
      add(year_of(compared, year), series.years[year]);
  }
  return text;
}

Json compared_json(const plan::Comparison& compared) {
  Json json{{"series", Json::array()}, {"full", Json::array()}, {"most", compared.most}};
  const auto& months = compared.present.months();
  for (const auto& series : compared.series) {
    Json row{{"what", word_of(series.name.shown)},
             {"name", series.name.name},
             {"unit", unit_of(series.name.shown)},
             {"months", Json::array()},
             {"years", Json::array()}};
    for (std::size_t month = 0; month < series.months.size(); ++month)
      row["months"].push_back(between_json(iso_month(months[month]), series.months[month]));
    for (std::size_t year = 0; year < series.years.size(); ++year)
      row["years"].push_back(between_json(year_of(compared, year), series.years[year]));
    json["series"].push_back(std::move(row));
  }
  for (const auto& light : compared.full) {
    const auto side = [&](double offered, const std::vector<double>& over, std::size_t worst) {
      return Json{
          {"square_metres", offered},
          {"over_full", over},
          {"worst_month", over[worst] > 0 ? Json(iso_month(months[worst])) : Json(nullptr)}};
    };
    json["full"].push_back(
        {{"name", light.name},
         {"present", side(light.offered_present, light.over_present, light.worst_present)},
         {"supposed", side(light.offered_supposed, light.over_supposed, light.worst_supposed)}});
  }
  return json;
}

} // namespace coneline::report
