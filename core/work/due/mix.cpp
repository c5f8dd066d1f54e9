// SPDX-License-Identifier: GPL-3.0-or-later
// Mix to have ready for what is to be potted soon. The book keeps no stock of mix, so this says
// what is needed, not what is missing.
#include "core/base/phrase.h"
#include "core/work/due/list.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

struct Need {
  double litres = 0;
  std::int64_t pots = 0;
  Date from;
  Code code; ///< the lot that needs it first
};

/// The step a lot is to go into next; null where no route says.
const book::RouteStep* next_step(const DueGround& ground, const LotLine& line) {
  const auto* route = ground.registers.route(line.origin.taxon_id);
  if (route == nullptr)
    return nullptr;
  if (line.lot.code.kind() == Kind::tray)
    return route->steps.size() > 1 ? &route->steps[1] : nullptr;
  const auto step = std::ranges::find_if(
      route->steps, [&](const auto& each) { return each.pot == line.lot.pot; });
  return step == route->steps.end() || std::next(step) == route->steps.end() ? nullptr
                                                                             : &*std::next(step);
}

} // namespace

void mix_due(const DueGround& ground, DueList& list) {
  // The same sources say when: all pottings up to so many days ahead.
  auto ahead = ground;
  ahead.habits.days_ahead = ground.habits.days_ahead + ground.habits.days_of_mix;
  DueList pottings(ahead);
  seedlings_due(ahead, pottings);
  pots_due(ahead, pottings);
  std::map<book::MixId, Need> needs;
  std::unordered_map<std::string, const LotLine*> lots;
  const auto all = pottings.take();
  if (!all.empty())
    for (const LotLine& line : ground.lots)
      lots.emplace(line.lot.code.text(), &line);
  for (const auto& due : all) {
    const auto found_line = lots.find(due.code.text());
    const auto* line = found_line == lots.end() ? nullptr : found_line->second;
    const auto* step = line == nullptr ? nullptr : next_step(ground, *line);
    if (step == nullptr)
      continue;
    const auto plants =
        due.kind == DueKind::pot ? line->on_hand.at(book::State::leaf) : line->total();
    const auto& pot = ground.registers.pot(step->pot);
    const auto [found, is_new] = needs.try_emplace(step->mix, Need{0, 0, due.from, due.code});
    if (!is_new && due.from < found->second.from) {
      found->second.from = due.from;
      found->second.code = due.code;
    }
    found->second.pots += plants;
    found->second.litres += static_cast<double>(plants) * pot.litres / pot.cells;
  }
  for (const auto& [id, need] : needs) {
    const auto& mix = ground.registers.mix(id);
    const auto from = need.from.plus_days(-ground.habits.days_of_mix);
    list.add(Due{DueKind::have_mix_ready, need.code, from, std::max(from, need.from),
                 phrase("{} of '{}' for {} plants to be potted by {}; see what is "
                        "there, mix or order the rest",
                        measured(Quantity::litres, need.litres, 0), mix.name, need.pots,
                        ground.day.plus_days(ground.habits.days_of_mix).said()),
                 INT_MAX,
                 fmt::format("{} {} {}", book::word(DueKind::have_mix_ready), mix.name,
                             ground.day.first_of_month().iso())});
  }
}

} // namespace coneline::work
