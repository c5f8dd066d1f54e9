// SPDX-License-Identifier: GPL-3.0-or-later
// Plants to pot on. They stand in containers and can be moved at any time.
#include "core/base/phrase.h"
#include "core/work/due/list.h"
#include "core/work/origin_said.h"

#include <fmt/format.h>

namespace coneline::work {

void pots_due(const DueGround& ground, DueList& list) {
  for (const LotLine& line : ground.lots) {
    const auto* route = ground.registers.route(line.origin.taxon_id);
    if (line.lot.code.kind() != Kind::pot_group || route == nullptr || !line.since)
      continue;
    const auto step = std::ranges::find_if(
        route->steps, [&](const auto& each) { return each.pot == line.lot.pot; });
    if (step == route->steps.end() || std::next(step) == route->steps.end())
      continue;
    list.add(
        {DueKind::pot_on, line.lot.code, 0, line.since->plus_part_months(step->months.low),
         line.since->plus_part_months(step->months.high),
         phrase_n(line.total(), "{} plant of {} into '{}'", "{} plants of {} into '{}'",
                  origin_said(line.origin.name), ground.registers.pot(std::next(step)->pot).name),
         line.place});
  }
}

} // namespace coneline::work
