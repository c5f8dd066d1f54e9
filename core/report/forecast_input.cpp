// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/forecast_input.h"

#include "core/base/phrase.h"
#include "core/plan/posterior_sprouting.h"
#include "core/report/needs_input.h"
#include "core/work/coming.h"
#include "core/work/line_back.h"
#include "core/work/trays_done.h"

#include <fmt/format.h>

#include <set>
#include <unordered_set>

namespace coneline::report {

namespace {

bool grows(book::State state) {
  return state == book::State::root || state == book::State::leaf || state == book::State::plant;
}

/// What left a lot growing, and when the last of it did.
struct Left {
  std::int64_t alive = 0;
  std::int64_t died = 0;
  Date last;
};

std::map<book::LotId, Left> left_by_lot(store::Reading& reading, Date today) {
  const auto entries = reading.entries();
  std::set<book::EntryId> undone;
  for (const auto& entry : entries)
    if (entry.reverses)
      undone.insert({entry.id, *entry.reverses});
  std::map<book::LotId, Left> left;
  for (const auto& entry : entries) {
    if (undone.contains(entry.id) || entry.date > today)
      continue;
    for (const auto& movement : entry.movements) {
      if (!grows(movement.from.state) ||
          (movement.from.lot == movement.to.lot && grows(movement.to.state)))
        continue;
      auto& lot = left[movement.from.lot];
      const bool lives = movement.from.lot != movement.to.lot ||
                         movement.to.state == book::State::sold ||
                         movement.to.state == book::State::planted_out;
      (lives ? lot.alive : lot.died) += movement.count.value();
      lot.last = std::max(lot.last, entry.date);
    }
  }
  return left;
}

/// Equally likely points that stand for a posterior.
constexpr std::size_t draws_a_cross = 199;

/// What may come up in every cross that was ever sown, trays without fault alone; a faulty tray is
/// named, and nothing more is expected of it.
void know_germination(plan::ForecastInput& input, store::Reading& reading) {
  const auto& standing = input.standing;
  const auto known = work::germination_known(reading, standing.registers, standing.today);
  for (const auto& cross : known.crosses) {
    std::vector<plan::CountedTray> trays;
    for (const auto& tray : cross.trays)
      trays.push_back({tray.lot.code, tray.sown_on, work::counts_of(tray)});
    input.sprouting.push_back(plan::posterior_sprouting(cross.posterior.thinned(draws_a_cross),
                                                        trays, standing.today, standing.months));
    input.sprouting.back().cross = cross.name;
    input.sprouting.back().taxon = cross.taxon;
  }
  const stats::Tray unseen{"", "", 1, {}};
  for (const auto& route : standing.registers.routes) {
    const auto found = known.next.find(route.taxon);
    const auto prior =
        found != known.next.end() ? found->second : stats::weak_prior(work::usual_day(&route));
    input.next_cross[route.taxon] =
        stats::germination_posterior(std::span(&unseen, 1), prior).thinned(draws_a_cross);
  }
  for (const auto& tray : known.left_out)
    input.remarks.push_back(
        phrase("{}: {}; nothing more is expected of it.", tray.code.text(), tray.why));
}

} // namespace

std::map<plan::StepOf, plan::StepHistory> survival_history(store::Reading& reading,
                                                           const book::Registers& registers,
                                                           Date today, double season_weight) {
  std::set<book::LotId> standing;
  for (const auto& [account, count] : reading.balances(today))
    if (book::standing(account.state) == book::Standing::on_hand && count > 0)
      standing.insert(account.lot);
  const auto left = left_by_lot(reading, today);
  const auto origins = work::origin_names(reading, registers);
  std::map<std::pair<plan::StepOf, int>, Left> seasons;
  for (const auto& lot : reading.lots()) {
    const auto found = left.find(lot.id);
    if (found == left.end() || standing.contains(lot.id) || !lot.pot)
      continue;
    const auto taxon = origins.at(lot.origin).taxon_id;
    const auto* route = registers.route(taxon);
    const auto step = route == nullptr ? std::nullopt
                      : lot.code.kind() == Kind::tray
                          ? std::optional<std::size_t>(0)
                          : plan::step_with(*route, registers, *lot.pot);
    if (!step)
      continue;
    auto& season = seasons[{{taxon, *step}, found->second.last.year()}];
    season.alive += found->second.alive;
    season.died += found->second.died;
  }
  std::map<plan::StepOf, plan::StepHistory> history;
  for (const auto& [of, season] : seasons) {
    const auto seen = plan::equivalent(season.alive, season.died, season_weight);
    history[of.first].alive += seen.alive;
    history[of.first].died += seen.died;
  }
  return history;
}

std::map<std::pair<std::string, book::TaxonId>, SeedAtHand>
seed_at_hand(store::Reading& reading, const book::Registers& registers, Date today) {
  const auto origins = work::origin_names(reading, registers);
  std::map<book::LotId, const work::OriginName*> batches;
  for (const auto& lot : reading.lots())
    if (lot.code.kind() == Kind::batch)
      batches[lot.id] = &origins.at(lot.origin);
  std::map<std::pair<std::string, book::TaxonId>, SeedAtHand> held;
  for (const auto& [account, count] : reading.balances(today)) {
    const auto found = batches.find(account.lot);
    if (found == batches.end())
      continue;
    auto& seed = held[{found->second->name, found->second->taxon_id}];
    if (account.state == book::State::judged_filled)
      seed.judged_filled += count;
    else if (account.state == book::State::unsorted)
      seed.unsorted += count;
    else if (account.state == book::State::judged_empty)
      seed.judged_empty += count;
  }
  return held;
}

plan::ForecastInput forecast_input(store::Reading& reading, Date today, int months,
                                   const plan::Assumptions& assumed) {
  plan::ForecastInput input;
  input.standing = needs_input(reading, today, months);
  input.assumed = assumed;
  input.assumed.tray_done_below = work::done_habits(input.standing.registers).done_below;
  const auto& registers = input.standing.registers;
  if (months >= 1)
    know_germination(input, reading);
  input.history = survival_history(reading, registers, today, assumed.season_weight);
  std::unordered_map<book::LotId, Code> codes;
  for (const auto& lot : reading.lots())
    codes.emplace(lot.id, lot.code);
  for (const auto& [lot, place] : reading.places(today))
    input.places.emplace(codes.at(lot), place);
  return input;
}

} // namespace coneline::report
