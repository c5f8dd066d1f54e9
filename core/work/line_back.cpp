// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/line_back.h"

#include "core/base/phrase.h"
#include "core/work/one_reading.h"
#include "core/work/origin_said.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <set>

namespace coneline::work {

namespace {

using Flows = std::vector<store::Flow>;

/// The parents by their codes, for crosses whose names would be the same.
std::string codes_of(const book::Registers& registers, const book::Cross& cross) {
  std::string codes = registers.plant(cross.seed_parent).code.text();
  for (const auto& parent : cross.pollen_parents)
    codes += ", " + registers.plant(parent).code.text();
  return codes;
}

OriginName name_of(const book::Registers& registers, const book::Purchase& purchase) {
  return {purchase_name(purchase), registers.taxon(purchase.taxon).name, purchase.taxon,
          purchase.code};
}

bool begins(const store::Flow& flow) {
  return book::standing(flow.from.state) == book::Standing::beginning;
}

/// Comes into the lot from its cone or purchase, or from another lot.
bool arrives(const store::Flow& flow, book::LotId lot) {
  return flow.to.lot == lot && (flow.from.lot != lot || begins(flow));
}

/// The lot and all it came from, each after those it came from.
std::vector<book::LotId> line_to(book::LotId lot, const Flows& flows) {
  std::vector<book::LotId> line;
  std::set<book::LotId> seen;
  const std::function<void(book::LotId)> visit = [&](book::LotId at) {
    if (!seen.insert(at).second)
      return;
    for (const auto& flow : flows)
      if (flow.to.lot == at && flow.from.lot != at)
        visit(flow.from.lot);
    line.push_back(at);
  };
  visit(lot);
  return line;
}

std::string what_happened(Kind kind, const Flows& flows, book::LotId lot) {
  const auto came =
      std::ranges::find_if(flows, [&](const store::Flow& flow) { return arrives(flow, lot); });
  if (came == flows.end())
    return phrase("taken back");
  if (came->from.state == book::State::bought_in)
    return phrase("bought in");
  if (kind == Kind::tray)
    return phrase("sown");
  if (kind == Kind::pot_group)
    return came->from.state == book::State::plant ? phrase("potted on") : phrase("potted");
  return came->from.state == book::State::cone ? phrase("counted") : phrase("split off");
}

LineStep step_of(const book::Lot& lot, const Flows& flows, const std::set<book::LotId>& line) {
  LineStep step;
  step.code = lot.code;
  step.lot = lot.id;
  step.what = what_happened(lot.code.kind(), flows, lot.id);
  for (const auto& flow : flows) {
    if (arrives(flow, lot.id)) {
      step.in += flow.count;
      step.first = step.first ? std::min(*step.first, flow.first) : flow.first;
    }
    const bool from_here = flow.from.lot == lot.id && !begins(flow);
    if (from_here && flow.to.lot != lot.id) {
      step.passed_on += flow.count;
      step.to_this_line += line.contains(flow.to.lot) ? flow.count : 0;
    }
    for (const auto& [account, by] : {std::pair(flow.from, -flow.count), {flow.to, flow.count}}) {
      if (account.lot != lot.id)
        continue;
      if (book::standing(account.state) == book::Standing::on_hand)
        step.on_hand += by;
      else if (book::standing(account.state) == book::Standing::end)
        step.ended[account.state] += by;
    }
  }
  std::erase_if(step.ended, [](const auto& ended) { return ended.second == 0; });
  return step;
}

/// The cone or purchase itself: all it gave, and what of it went into the lots of this line.
LineStep beginning(const Code& code, const Flows& flows, const std::set<book::LotId>& line) {
  LineStep step;
  step.code = code;
  step.what = code.kind() == Kind::cone ? phrase("harvested") : phrase("bought in");
  for (const auto& flow : flows) {
    if (!begins(flow))
      continue;
    step.in += flow.count;
    step.to_this_line += line.contains(flow.to.lot) ? flow.count : 0;
    step.first = step.first ? std::min(*step.first, flow.first) : flow.first;
  }
  step.passed_on = step.in;
  return step;
}

std::optional<book::Cross> cross_of_origin(OneReading& once, const book::Origin& origin) {
  const auto* cone = std::get_if<book::ConeId>(&origin);
  if (cone == nullptr)
    return std::nullopt;
  return book::cross_of(once.registers(), once.registers().cone(*cone),
                        by_cone(once.standing(book::Verb::pollinate))[*cone]);
}

} // namespace

std::map<book::ConeId, std::vector<book::Entry>> by_cone(const std::vector<book::Entry>& passes) {
  std::map<book::ConeId, std::vector<book::Entry>> by_cone;
  for (const auto& entry : passes)
    if (entry.cone)
      by_cone[*entry.cone].push_back(entry);
  return by_cone;
}

std::map<book::Origin, OriginName> origin_names(store::Reading& reading,
                                                const book::Registers& registers) {
  return origin_names(registers, reading.standing_entries(book::Verb::pollinate));
}

std::map<book::Origin, OriginName> origin_names(const book::Registers& registers,
                                                const std::vector<book::Entry>& passes) {
  const auto of_cone = by_cone(passes);
  std::map<book::Origin, OriginName> names;
  std::map<book::Origin, book::Cross> crosses;
  std::map<std::string, std::set<book::Cross>> of_name;
  for (const auto& cone : registers.cones) {
    const auto found = of_cone.find(cone.id);
    const auto cross = book::cross_of(registers, cone,
                                      found == of_cone.end() ? std::span<const book::Entry>()
                                                             : std::span(found->second));
    names[cone.id] = {book::cross_name(registers, cross), book::taxon_formula(registers, cross),
                      registers.plant(cross.seed_parent).taxon, cone.code};
    of_name[names[cone.id].name].insert(cross);
    crosses[cone.id] = cross;
  }
  for (const auto& [origin, cross] : crosses)
    if (of_name[book::cross_name(registers, cross)].size() > 1)
      names[origin].name += fmt::format(" ({})", codes_of(registers, cross));
  for (const auto& purchase : registers.purchases)
    names[purchase.id] = name_of(registers, purchase);
  return names;
}

LineBack line_back(store::Reading& reading, const book::Registers& registers,
                   const book::Lot& lot) {
  OneReading once(reading, registers);
  return line_back(once, lot);
}

LineBack line_back(OneReading& once, const book::Lot& lot) {
  auto& reading = once.reading();
  const auto& origin = once.origins().at(lot.origin);
  const auto flows = reading.flows(lot.origin);
  const auto lots = line_to(lot.id, flows);
  const std::set<book::LotId> line(lots.begin(), lots.end());
  LineBack back{origin.name, origin.taxon, cross_of_origin(once, lot.origin), {}};
  back.steps.push_back(beginning(origin.code, flows, line));
  for (const auto& id : lots)
    back.steps.push_back(step_of(reading.lot(id), flows, line));
  return back;
}

} // namespace coneline::work
