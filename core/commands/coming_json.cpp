// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/coming_json.h"

#include <boost/math/distributions/normal.hpp>
#include <fmt/format.h>

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

double z_of(double confidence) {
  return quantile(boost::math::normal(), (1 + confidence) / 2);
}

double share_of(double logit) {
  return 1 / (1 + std::exp(-logit));
}

double rho_of(double shifted) {
  return std::max(0.0, std::exp(shifted) - 0.01);
}

template <class Scale>
Json on_scale(const stats::Belief& belief, double z, Scale scale) {
  return {{"median", scale(belief.middle)},
          {"low", scale(belief.middle - z * belief.spread)},
          {"high", scale(belief.middle + z * belief.spread)}};
}

double exponential(double value) {
  return std::exp(value);
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
  const double z = z_of(confidence);
  return {{"crosses", prior.crosses},
          {"germinable", on_scale(prior.share, z, share_of)},
          {"days_to_half", on_scale(prior.half, z, exponential)},
          {"steepness", on_scale(prior.steepness, z, exponential)},
          {"rho", on_scale(prior.spread, z, rho_of)}};
}

std::string told(const stats::GerminationPrior& prior, double confidence) {
  const double z = z_of(confidence);
  const auto share = [&](double side) {
    return 100 * share_of(prior.share.middle + side * z * prior.share.spread);
  };
  const auto days = [&](double side) {
    return std::exp(prior.half.middle + side * z * prior.half.spread);
  };
  const auto known = prior.crosses == 0 ? std::string("no other cross of the taxon")
                     : prior.crosses == 1
                         ? std::string("1 other cross of the taxon")
                         : fmt::format("{} other crosses of the taxon", prior.crosses);
  return fmt::format("{}: {:.0f}–{:.0f} % germinable, half of it up by day {:.0f}–{:.0f}", known,
                     share(-1), share(1), days(-1), days(1));
}

} // namespace coneline::commands
