// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/needs_input.h"

#include "core/work/germination.h"
#include "core/work/line_back.h"

#include <numeric>

namespace coneline::report {

namespace {

using OnHand = std::map<book::LotId, std::map<book::State, std::int64_t>>;

OnHand on_hand(store::Reading& reading, Date today) {
  OnHand held;
  for (const auto& [account, count] : reading.balances(today))
    if (book::standing(account.state) == book::Standing::on_hand)
      held[account.lot][account.state] = count;
  return held;
}

std::map<book::LotId, Date> first_days(store::Reading& reading) {
  std::map<book::LotId, Date> first;
  for (const auto& arrival : reading.arrivals())
    if (const auto [at, fresh] = first.try_emplace(arrival.lot, arrival.date); !fresh)
      at->second = std::min(at->second, arrival.date);
  return first;
}

plan::TrayStanding tray_of(const work::ObservedTray& seen,
                           std::map<book::State, std::int64_t> held) {
  plan::TrayStanding tray{seen.lot.code,
                          seen.origin.name,
                          seen.origin.taxon_id,
                          seen.lot.pot.value(),
                          seen.sown_on,
                          seen.sown,
                          0,
                          held[book::State::sown],
                          held[book::State::root] + held[book::State::leaf]};
  for (const auto& look : seen.looks)
    tray.germinated += look.germinated;
  return tray;
}

} // namespace

plan::NeedsInput needs_input(store::Reading& reading, Date today, int months) {
  plan::NeedsInput input{today, months, reading.registers(), {}, {}, 0};
  const auto held = on_hand(reading, today);
  const auto first = first_days(reading);
  const auto origins = work::origin_names(reading, input.registers);
  for (const auto& seen : work::observed_trays(reading, input.registers, today))
    if (const auto found = held.find(seen.lot.id); found != held.end())
      input.trays.push_back(tray_of(seen, found->second));
  for (const auto& lot : reading.lots()) {
    const auto found = held.find(lot.id);
    if (found == held.end())
      continue;
    const auto count =
        std::accumulate(found->second.begin(), found->second.end(), std::int64_t{0},
                        [](std::int64_t sum, const auto& in) { return sum + in.second; });
    const auto& origin = origins.at(lot.origin);
    if (lot.code.kind() == Kind::batch)
      input.seeds_not_sown += count;
    // Plants that a recount alone brought in have no earlier day.
    const auto since = first.find(lot.id);
    if (lot.code.kind() == Kind::pot_group)
      input.groups.push_back({lot.code, origin.name, origin.taxon_id, lot.pot.value(),
                              since == first.end() ? today : since->second, count});
  }
  return input;
}

} // namespace coneline::report
