// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/forecast_report.h"

#include "core/base/csv.h"
#include "core/base/month.h"
#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/plan/offered.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace coneline::report {

namespace {

using Json = nlohmann::ordered_json;
using plan::Shown;

struct Spelt {
  Shown shown;
  std::string_view word;
  std::string_view unit;
};
constexpr std::array<Spelt, 10> spelt{
    {{Shown::into, to_phrase("plants into"), to_phrase("plants")},
     {Shown::standing, to_phrase("plants standing"), to_phrase("plants")},
     {Shown::mix, to_phrase("mix"), to_phrase("litres")},
     {Shown::part, to_phrase("part"), to_phrase("litres")},
     {Shown::square_metres, to_phrase("bench"), to_phrase("square metres")},
     {Shown::load, to_phrase("load"), to_phrase("kg a square metre")},
     {Shown::place_metres, to_phrase("place"), to_phrase("square metres")},
     {Shown::place_load, to_phrase("place load"), to_phrase("kg a square metre")},
     {Shown::unplaced_metres, to_phrase("bench without a place"), to_phrase("square metres")},
     {Shown::ready, to_phrase("ready"), to_phrase("plants")}}};

const Spelt& spelt_of(Shown shown) {
  return *std::ranges::find(spelt, shown, &Spelt::shown);
}

Json number(double value) {
  return std::isfinite(value) ? Json(value) : Json(nullptr);
}

Json assumed_json(const plan::Assumptions& assumed) {
  Json months = Json::array();
  for (std::size_t month = 0; month < 12; ++month)
    if (assumed.potting.at(month))
      months.push_back(month + 1);
  return {{"potting_months", months},
          {"survival_weight", number(assumed.survival_weight)},
          {"season_weight", number(assumed.season_weight)},
          {"sold_after_months", assumed.sold_after ? Json(*assumed.sold_after) : Json(nullptr)},
          {"settling", assumed.settling},
          {"wet_kilograms_a_litre", assumed.wet_kilograms_a_litre}};
}

} // namespace

std::string_view word_of(Shown shown) {
  return spelt_of(shown).word;
}
std::string_view unit_of(Shown shown) {
  return spelt_of(shown).unit;
}

Result<Shown> read_shown(std::string_view word) {
  const auto found = std::ranges::find(spelt, word, &Spelt::word);
  if (found != spelt.end())
    return found->shown;
  std::string words;
  for (const auto& known : spelt)
    words += phrase("{}'{}'", words.empty() ? "" : ", ", known.word);
  return refuse(usage_fault(phrase("a forecast has no '{}'", word), "It has " + words + "."));
}

std::vector<Crowding> crowding(const plan::Forecast& forecast, const book::Registers& registers) {
  std::vector<Crowding> all;
  const auto look = [&](Shown shown, const std::string& name, double offered) {
    const auto at = forecast.find({shown, name});
    if (!at)
      return;
    constexpr double hair = 1e-4; // runs are kept in single precision
    Crowding one{shown, name, offered, {}, {}};
    for (std::size_t month = 0; month < forecast.months().size(); ++month) {
      one.over.push_back(forecast.share_above(*at, month, offered + hair));
      if (one.over.back() > 0.5 && !one.likely_full)
        one.likely_full = month;
    }
    all.push_back(std::move(one));
  };
  const auto offered = plan::offered_square_metres(registers.places);
  for (const auto& [light, word] : book::Words<book::Light>::all) {
    const auto found = offered.find(light);
    look(Shown::square_metres, std::string(word), found == offered.end() ? 0 : found->second);
  }
  for (const auto& place : registers.places)
    look(Shown::place_metres, place.name, place.square_metres());
  return all;
}

std::vector<std::string> left_out_told(const std::vector<plan::LeftOut>& lots) {
  std::vector<std::string> told;
  for (const auto& lot : lots)
    told.push_back(phrase("Left out: {} ({}): {}", lot.code.text(), lot.count, lot.why));
  return told;
}

Json left_out_json(const std::vector<plan::LeftOut>& lots) {
  Json json = Json::array();
  for (const auto& lot : lots)
    json.push_back({{"code", lot.code.text()}, {"count", lot.count}, {"why", lot.why}});
  return json;
}

std::vector<std::string> forecast_rules(const plan::ForecastInput& input) {
  const auto& assumed = input.assumed;
  std::vector<std::string> rules{
      phrase("Ranges leave one future in ten below and one in ten above."),
      phrase(
          "Months in a step are drawn evenly over the route's range; what is overdue is due this "
          "month."),
      phrase("Survival is drawn once a taxon, step and season, germination once a cross and tray, "
             "from "
             "all "
             "curves that fit its counts and the book's other crosses."),
      phrase("A tray is given up, and its room freed, once it is potted and one more seedling is "
             "unlikely."),
      phrase("Standing counts and room are those of the month's end, pots touching.")};
  rules.push_back(
      phrase("The route's survival weighs as {:g} plants against the book's own history, a "
             "season strays as {:g} plants would.",
             assumed.survival_weight, assumed.season_weight));
  rules.push_back(assumed.sold_after
                      ? phrase_n(*assumed.sold_after,
                                 "A ready plant is sold or planted out after {} month.",
                                 "A ready plant is sold or planted out after {} months.")
                      : phrase("Ready plants stay in their pots: no sale is foreseen."));
  if (input.sowings.empty())
    rules.push_back(phrase("What is not sown yet is not in them."));
  rules.push_back(phrase("A litre of watered pot weighs {:g} kg (common practice, no source: "
                         "weigh one of yours).",
                         assumed.wet_kilograms_a_litre));
  return rules;
}

std::string forecast_csv(const plan::Forecast& forecast, const book::Title& title) {
  auto text =
      csv_line({"month", "what", "name", "low", "middle", "high", "mean", "unit", "invented"});
  for (std::size_t at = 0; at < forecast.series().size(); ++at) {
    const auto& series = forecast.series()[at];
    for (std::size_t month = 0; month < forecast.months().size(); ++month) {
      const auto range = forecast.range(at, month);
      text +=
          csv_line({iso_month(forecast.months()[month]), std::string(word_of(series.shown)),
                    for_spreadsheet(series.name), write_real(range.low), write_real(range.middle),
                    write_real(range.high), write_real(forecast.mean(at, month)),
                    std::string(unit_of(series.shown)), title.invented ? "yes" : "no"});
    }
  }
  return text;
}

Json forecast_json(const plan::Forecast& forecast, const plan::ForecastInput& input,
                   std::uint64_t seed) {
  const auto& title = input.standing.registers.title;
  Json json{{"book", title.name},
            {"invented", title.invented},
            {"today", input.standing.today.iso()},
            {"runs", forecast.runs()},
            {"seed", seed},
            {"assumed", assumed_json(input.assumed)},
            {"months", Json::array()},
            {"series", Json::array()},
            {"crowding", Json::array()},
            {"left_out", left_out_json(forecast.ways().left_out)},
            {"remarks", forecast.ways().remarks},
            {"rules", forecast_rules(input)}};
  for (const auto month : forecast.months())
    json["months"].push_back(iso_month(month));
  for (std::size_t at = 0; at < forecast.series().size(); ++at) {
    const auto& series = forecast.series()[at];
    Json row{{"what", word_of(series.shown)}, {"name", series.name},
             {"unit", unit_of(series.shown)}, {"low", Json::array()},
             {"middle", Json::array()},       {"high", Json::array()},
             {"mean", Json::array()}};
    for (std::size_t month = 0; month < forecast.months().size(); ++month) {
      const auto range = forecast.range(at, month);
      row["low"].push_back(range.low);
      row["middle"].push_back(range.middle);
      row["high"].push_back(range.high);
      row["mean"].push_back(forecast.mean(at, month));
    }
    json["series"].push_back(std::move(row));
  }
  for (const auto& one : crowding(forecast, input.standing.registers))
    json["crowding"].push_back(
        {{"what", word_of(one.shown)},
         {"name", one.name},
         {"square_metres", one.offered},
         {"over_full", one.over},
         {"likely_full_from",
          one.likely_full ? Json(iso_month(forecast.months()[*one.likely_full])) : Json(nullptr)}});
  return json;
}

} // namespace coneline::report
