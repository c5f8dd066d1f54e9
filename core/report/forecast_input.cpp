// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/forecast_input.h"

#include "core/plan/forecast_sprouting.h"
#include "core/report/needs_input.h"
#include "core/work/germination.h"
#include "core/work/line_back.h"

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

std::vector<plan::CrossSprouting> sprouting(const plan::ForecastInput& input,
                                            const std::vector<work::ObservedTray>& seen) {
  std::map<Code, const plan::TrayStanding*> standing;
  for (const auto& tray : input.standing.trays)
    standing[tray.code] = &tray;
  std::map<std::pair<book::TaxonId, std::string>, std::vector<plan::SproutingTray>> crosses;
  for (const auto& tray : seen) {
    std::int64_t removed = 0;
    std::int64_t germinated = 0;
    for (const auto& look : tray.looks) {
      removed += look.removed;
      germinated += look.germinated;
    }
    const auto found = standing.find(tray.lot.code);
    // A tray that stands no more still tells what its cross is worth.
    const auto row = found != standing.end() ? *found->second
                                             : plan::TrayStanding{tray.lot.code,
                                                                  tray.origin.name,
                                                                  tray.origin.taxon_id,
                                                                  tray.lot.pot.value(),
                                                                  tray.sown_on,
                                                                  tray.sown,
                                                                  germinated,
                                                                  0,
                                                                  0};
    crosses[{row.taxon, row.cross}].push_back(
        {row, removed, tray.looks.empty() ? tray.sown_on : tray.looks.back().date});
  }
  std::vector<plan::CrossSprouting> all;
  for (const auto& [of, trays] : crosses)
    if (const auto* route = input.standing.registers.route(of.first))
      all.push_back(plan::route_sprouting(*route, trays, input.standing.today,
                                          input.standing.months, input.assumed.germination_weight));
  return all;
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
  const auto& registers = input.standing.registers;
  if (months >= 1)
    input.sprouting = sprouting(input, work::observed_trays(reading, registers, today));
  input.history = survival_history(reading, registers, today, assumed.season_weight);
  std::unordered_map<book::LotId, Code> codes;
  for (const auto& lot : reading.lots())
    codes.emplace(lot.id, lot.code);
  for (const auto& [lot, place] : reading.places(today))
    input.places.emplace(codes.at(lot), place);
  return input;
}

} // namespace coneline::report
