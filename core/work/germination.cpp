// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/germination.h"

namespace coneline::work {

std::vector<ObservedTray> observed_trays(store::Reading& reading, const book::Registers& registers,
                                         Date as_of) {
  std::map<book::LotId, store::TraySown> sown;
  for (const auto& tray : reading.trays_sown(as_of))
    sown[tray.tray] = tray;
  const auto origins = origin_names(reading, registers);
  std::map<book::LotId, ObservedTray> trays;
  for (const auto& lot : reading.lots())
    if (const auto found = sown.find(lot.id); found != sown.end())
      trays[lot.id] = {lot, origins.at(lot.origin), found->second.date, found->second.seeds, {}};
  for (const auto& look : reading.tray_looks(as_of)) {
    const auto found = trays.find(look.tray);
    // A look before there was seed in the tray is left over from a sowing that was reversed.
    if (found == trays.end() || look.date < found->second.sown_on)
      continue;
    const auto day = days_between(found->second.sown_on, look.date);
    found->second.looks.push_back({look.date, static_cast<double>(day), look.germinated,
                                   look.leaves, look.straight_to_leaf, look.removed});
  }
  std::vector<ObservedTray> in_order;
  for (auto& [id, tray] : trays)
    in_order.push_back(std::move(tray));
  std::ranges::sort(in_order, {}, [](const ObservedTray& tray) { return tray.lot.code; });
  return in_order;
}

stats::Tray counts_of(const ObservedTray& seen) {
  stats::Tray tray{seen.origin.name, seen.lot.code.text(), seen.sown, {}};
  for (const auto& look : seen.looks)
    tray.looks.push_back({look.day, look.germinated, look.removed});
  return tray;
}

} // namespace coneline::work
