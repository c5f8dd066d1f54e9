// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_input.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace coneline::plan {

namespace {

/// What stands in the book can be put right only there.
Result<void> of_the_book(Result<void> sound) {
  return sound.map_error([](Fault fault) {
    fault.blame = Blame::book;
    return fault;
  });
}

Result<void> mixes_end(const book::Registers& registers) {
  for (const auto& mix : registers.mixes)
    if (auto can = of_the_book(book::can_be_mixed(mix, registers.mixes)); !can)
      return can;
  return {};
}

Result<void> routes_end(const book::Registers& registers) {
  for (const auto& route : registers.routes)
    if (auto ends = of_the_book(book::leads_to_an_end(route, registers.taxon(route.taxon).name));
        !ends)
      return ends;
  return {};
}

Result<void> assumptions_hold(const Assumptions& assumed) {
  if (std::ranges::none_of(assumed.potting, [](bool potted) { return potted; }))
    return refuse(usage_fault("no month of the year is a potting month",
                              "Name at least one month in which you pot."));
  for (const double weight :
       {assumed.survival_weight, assumed.season_weight, assumed.germination_weight})
    if (!(weight > 0))
      return refuse(usage_fault(phrase("a weight of {} cannot be", weight),
                                "A weight is a number of plants above 0."));
  if (assumed.sold_after && (*assumed.sold_after < 0 || *assumed.sold_after > 1200))
    return refuse(usage_fault(phrase("sold after {} months", *assumed.sold_after),
                              "Give 0 to 1200 months, or leave it out."));
  if (!(assumed.settling >= 0 && assumed.settling < 1))
    return refuse(usage_fault(phrase("a settling of {}", assumed.settling),
                              "Give a share from 0 to below 1."));
  if (!(assumed.wet_kilograms_a_litre > 0 && assumed.wet_kilograms_a_litre < 10))
    return refuse(
        usage_fault(phrase("{} kg for a litre of wet mix", assumed.wet_kilograms_a_litre),
                    "Weigh a watered pot and divide by its litres; it is above 0 and below 10."));
  return {};
}

Result<void> draws_are_chances(const CrossSprouting& cross) {
  const auto months = static_cast<std::size_t>(std::max(cross.months, 0));
  for (const auto& draw : cross.draws) {
    if (draw.size() != cross.trays.size() * months)
      return refuse(program_fault("a draw of germination does not cover its trays"));
    for (std::size_t tray = 0; tray < cross.trays.size(); ++tray) {
      const auto* from = draw.data() + tray * months;
      const bool below = std::any_of(from, from + months, [](double p) { return !(p >= 0); });
      if (below || std::accumulate(from, from + months, 0.0) > 1 + 1e-9)
        return refuse(program_fault("a draw of germination is no probability"));
    }
  }
  return {};
}

Result<void> can_be_sown(const Sowing& sowing) {
  constexpr std::int64_t most = 1'000'000;
  if (sowing.draws.empty())
    return refuse(program_fault("a sowing without a number of seeds"));
  for (const auto& draw : sowing.draws)
    if (draw.seeds < 0 || draw.seeds > most)
      return refuse(usage_fault(phrase("a sowing of {} seeds of {}", draw.seeds, sowing.cross),
                                "Give 0 to 1 000 000 seeds."));
  if (!(sowing.pace > 0 && sowing.pace <= 100))
    return refuse(usage_fault(
        phrase("seed of {} that takes {} times as long to come up", sowing.cross, sowing.pace),
        "Give a factor above 0, at most 100."));
  return {};
}

} // namespace

double Sowing::mean_seeds() const {
  double sum = 0;
  for (const auto& draw : draws)
    sum += static_cast<double>(draw.seeds);
  return draws.empty() ? 0 : sum / static_cast<double>(draws.size());
}

StepHistory equivalent(std::int64_t alive, std::int64_t died, double season_weight) {
  const auto plants = static_cast<double>(alive + died);
  if (plants <= 0)
    return {};
  const double each =
      std::isfinite(season_weight) ? 1 / (1 + (plants - 1) / (season_weight + 1)) : 1;
  return {static_cast<double>(alive) * each, static_cast<double>(died) * each};
}

Result<void> are_months_to_plan(int months) {
  if (months < 1 || months > 120)
    return refuse(
        usage_fault(phrase("a forecast of {} months", months), "Ask for 1 to 120 months."));
  return {};
}

Result<void> can_be_planned(const ForecastInput& input) {
  if (auto are = are_months_to_plan(input.standing.months); !are)
    return are;
  if (auto hold = assumptions_hold(input.assumed); !hold)
    return hold;
  if (auto end = routes_end(input.standing.registers); !end)
    return end;
  if (auto end = mixes_end(input.standing.registers); !end)
    return end;
  for (const auto& cross : input.sprouting)
    if (auto are = draws_are_chances(cross); !are)
      return are;
  for (const auto& sowing : input.sowings)
    if (auto can = can_be_sown(sowing); !can)
      return can;
  return {};
}

} // namespace coneline::plan
