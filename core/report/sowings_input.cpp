// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/sowings_input.h"

#include "core/base/phrase.h"
#include "core/work/cone_seed.h"
#include "core/work/harvest_table.h"

#include <fmt/format.h>

namespace coneline::report {

namespace {

void add_seed(plan::ForecastInput& input, store::Reading& reading) {
  const auto& registers = input.standing.registers;
  const auto today = input.standing.today;
  const auto origins = work::origin_names(reading, registers);
  std::map<book::LotId, std::int64_t> filled;
  for (const auto& [account, count] : reading.balances(today))
    if (account.state == book::State::judged_filled && count > 0)
      filled[account.lot] += count;
  for (const auto& lot : reading.lots()) {
    const auto found = filled.find(lot.id);
    if (lot.code.kind() != Kind::batch || found == filled.end())
      continue;
    const auto& origin = origins.at(lot.origin);
    const auto table = work::harvest_table(reading, lot, origin, today);
    const auto& taxon = registers.taxon(origin.taxon_id);
    const auto ripens_on = taxon.after_ripening.value.value_or(book::Range{});
    const auto ready = table.harvested.value_or(today).plus_part_months(ripens_on.middle());
    input.sowings.push_back({plan::SeedFrom::at_hand,
                             lot.code,
                             origin.name,
                             origin.taxon_id,
                             {{std::max(today, ready), found->second}},
                             1,
                             phrase_n(found->second, "{} seed judged filled in {}",
                                      "{} seeds judged filled in {}", lot.code.text())});
  }
}

void add_cones(plan::ForecastInput& input, store::Reading& reading) {
  const auto come = work::cones_to_come(reading, input.standing.registers, input.standing.today);
  std::size_t usual = 0;
  for (const auto& cone : come.cones) {
    plan::Sowing sowing{plan::SeedFrom::cone,
                        cone.cone.code,
                        cone.origin.name,
                        cone.origin.taxon_id,
                        {},
                        1,
                        cone.basis};
    for (const auto& draw : cone.draws)
      sowing.draws.push_back({draw.sown_on, draw.seeds});
    usual += cone.usual_alone ? 1 : 0;
    input.sowings.push_back(std::move(sowing));
  }
  if (usual > 0)
    input.remarks.push_back(phrase(
        "How much seed {} of {} ripening cones bring rests on common practice alone, no source: "
        "the book has no sorted cone of their taxon.",
        usual, come.cones.size()));
  input.remarks.insert(input.remarks.end(), come.left_out.begin(), come.left_out.end());
}

} // namespace

void add_sowings(plan::ForecastInput& input, store::Reading& reading, const SowingsWanted& wanted) {
  if (wanted.seed)
    add_seed(input, reading);
  if (wanted.cones)
    add_cones(input, reading);
}

} // namespace coneline::report
