// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/coming_json.h"

#include <cmath>

namespace coneline::commands {

namespace {

Json json_of(const stats::CountRange& seeds) {
  return {
      {"median", seeds.median}, {"low", seeds.low}, {"high", seeds.high}, {"expected", seeds.mean}};
}

Json date_of(const std::optional<double>& days, Date as_of) {
  return days ? Json(as_of.plus_days(static_cast<int>(std::ceil(*days))).iso()) : Json(nullptr);
}

Json json_of(const std::optional<stats::DayRange>& range, Date as_of) {
  if (!range)
    return nullptr;
  return {{"median", date_of(range->median, as_of)},
          {"low", date_of(range->low, as_of)},
          {"high", date_of(range->high, as_of)}};
}

Json json_of(const stats::BeliefRange& range) {
  return {{"median", range.median}, {"low", range.low}, {"high", range.high}};
}

} // namespace

Json json_of(const stats::Coming& coming, Date as_of) {
  Json json{{"waiting", coming.waiting},
            {"seeds", json_of(coming.seeds)},
            {"chance_of_one_more", coming.chance_of_one},
            {"within", Json::array()},
            {"half_by", json_of(coming.half, as_of)},
            {"nine_tenths_by", json_of(coming.nine_tenths, as_of)}};
  for (const auto& within : coming.within) {
    auto one = json_of(within.seeds);
    one["days"] = within.days;
    one["by"] = date_of(within.days, as_of);
    one["chance_of_one"] = within.chance_of_one;
    json["within"].push_back(one);
  }
  return json;
}

Json json_of(const stats::GerminationPrior& prior, double confidence) {
  return {{"crosses", prior.crosses},
          {"germinable", json_of(stats::share_range(prior.share, confidence))},
          {"days_to_half", json_of(stats::exponential_range(prior.half, confidence))},
          {"steepness", json_of(stats::exponential_range(prior.steepness, confidence))},
          {"rho", json_of(stats::rho_range(prior.spread, confidence))}};
}

} // namespace coneline::commands
