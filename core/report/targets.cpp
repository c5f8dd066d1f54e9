// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/targets.h"

#include "core/base/phrase.h"
#include "core/plan/fit.h"
#include "core/plan/offered.h"
#include "core/work/cone_course.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace coneline::report {

namespace {

/// m² that the plants of a target take in its pot, beyond those that the line brings.
double room_of(const TargetTold& told, const book::Registers& registers) {
  const auto& target = told.plan.target;
  const auto& pot = registers.pot(target.pot);
  const double more = std::max(0.0, static_cast<double>(target.plants) - told.plan.here.middle);
  return more / pot.cells * pot.square_metres();
}

std::optional<book::Light> light_of(const plan::Target& target, const book::Registers& registers) {
  const auto* route = registers.route(target.taxon);
  if (route == nullptr)
    return std::nullopt;
  const auto step = std::ranges::find(route->steps, target.pot, &book::RouteStep::pot);
  return step == route->steps.end() ? std::nullopt : std::optional(step->light);
}

std::vector<TargetConflict> over_seed(const std::vector<TargetTold>& targets) {
  std::map<std::pair<std::string, book::TaxonId>, TargetConflict> by_cross;
  for (std::size_t at = 0; at < targets.size(); ++at) {
    const auto& [plan, seed, cone] = targets[at];
    if (!seed || seed->seeds == 0)
      continue;
    auto& one = by_cross[{plan.target.cross, plan.target.taxon}];
    one.name = plan.target.cross;
    one.wanted += static_cast<double>(seed->seeds);
    one.there = static_cast<double>(seed->at_hand);
    one.targets.push_back(at);
  }
  std::vector<TargetConflict> found;
  for (auto& [cross, one] : by_cross) {
    if (one.wanted <= one.there)
      continue;
    one.told =
        phrase_n(static_cast<std::int64_t>(one.targets.size()),
                 "{} target of '{}' wants {:.0f} seeds; {:.0f} are at hand, {:.0f} are lacking.",
                 "{} targets of '{}' want {:.0f} seeds; {:.0f} are at hand, {:.0f} are lacking.",
                 one.name, one.wanted, one.there, one.wanted - one.there);
    found.push_back(std::move(one));
  }
  return found;
}

std::vector<TargetConflict> over_room(const std::vector<TargetTold>& targets,
                                      const plan::Forecast& forecast,
                                      const book::Registers& registers) {
  const auto offered = plan::offered_square_metres(registers.places);
  std::map<std::pair<Date, book::Light>, TargetConflict> by_month;
  for (std::size_t at = 0; at < targets.size(); ++at) {
    const auto& target = targets[at].plan.target;
    const auto light = light_of(target, registers);
    const double wanted = room_of(targets[at], registers);
    if (!light || wanted <= 0)
      continue;
    auto& one = by_month[{target.by.first_of_month(), *light}];
    one.of = Scarce::room;
    one.name = std::string(book::word(*light));
    one.wanted += wanted;
    one.month = target.by.first_of_month();
    one.targets.push_back(at);
    const auto found = offered.find(*light);
    one.there = found == offered.end() ? 0 : found->second;
  }
  std::vector<TargetConflict> found;
  for (auto& [key, one] : by_month) {
    const auto month = std::ranges::find(forecast.months(), key.first);
    if (month == forecast.months().end())
      continue;
    const auto at = static_cast<std::size_t>(month - forecast.months().begin());
    const auto series = forecast.find({plan::Shown::square_metres, one.name});
    const double stands = series ? forecast.range(*series, at).middle : 0;
    one.wanted += stands;
    if (one.wanted <= one.there)
      continue;
    one.told =
        phrase("{} in {}: what stands and the targets of that month take {} of {}; {} are missing.",
               book::said(key.second), plan::month_name(key.first),
               measured(Quantity::square_metres, one.wanted, 2),
               measured(Quantity::square_metres, one.there, 2),
               measured(Quantity::square_metres, one.wanted - one.there, 2));
    found.push_back(std::move(one));
  }
  return found;
}

} // namespace

ConeGives cone_gives(store::Reading& reading, const book::Registers& registers, book::TaxonId taxon,
                     Date today) {
  ConeGives gives;
  double logarithms = 0;
  int cones = 0;
  for (const auto& course : work::cone_courses(reading, registers)) {
    const auto& line = course.line;
    if (line.harvested <= 0 || *line.harvested_on > today ||
        registers.plant(line.cone.plant).taxon != taxon)
      continue;
    logarithms += std::log(static_cast<double>(line.harvested));
    ++cones;
  }
  if (cones == 0)
    return gives;
  gives.seeds = std::exp(logarithms / cones);
  gives.source = phrase_n(cones, "the mean of {} earlier cone of {}",
                          "the mean of {} earlier cones of {}", registers.taxon(taxon).name);
  return gives;
}

Result<TargetTold> told_of(const plan::ForecastInput& input, const plan::Target& target,
                           const std::map<std::pair<std::string, book::TaxonId>, SeedAtHand>& held,
                           const ConeGives& cone, const plan::ForecastRuns& runs) {
  auto plan = plan::plan_target(input, target, runs);
  if (!plan)
    return refuse(plan.error());
  TargetTold told{*std::move(plan), std::nullopt, cone};
  if (!told.plan.latest)
    return told;
  SeedNeeded seed;
  seed.seeds = told.plan.sowings[*told.plan.latest].seeds.value();
  if (const auto found = held.find({target.cross, target.taxon}); found != held.end())
    seed.at_hand = found->second.judged_filled + found->second.unsorted;
  seed.lacking = std::max<std::int64_t>(0, seed.seeds - seed.at_hand);
  if (cone.seeds > 0) {
    const auto cones = plan::cones_for(seed.lacking, cone.seeds, cone.succeeds, target.assurance);
    if (!cones)
      return refuse(cones.error());
    seed.cones = *cones;
  }
  told.seed = seed;
  return told;
}

std::vector<TargetConflict> conflicts(const std::vector<TargetTold>& targets,
                                      const plan::Forecast& forecast,
                                      const book::Registers& registers) {
  auto all = over_seed(targets);
  auto room = over_room(targets, forecast, registers);
  all.insert(all.end(), std::make_move_iterator(room.begin()), std::make_move_iterator(room.end()));
  return all;
}

} // namespace coneline::report
