// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/ledger.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace coneline::book {

namespace {
/// Only these may have given more than they took.
bool may_go_below_zero(State state) {
  return standing(state) == Standing::beginning || state == State::unexplained;
}
} // namespace

Timeline::Timeline(std::vector<Change> changes) {
  std::ranges::stable_sort(changes, {}, &Change::date);
  for (const auto& change : changes)
    add(change.date, change.by);
}

void Timeline::add(Date date, std::int64_t by) {
  // Most entries come in the order of their days, so this is nearly always the end.
  auto at = std::ranges::upper_bound(steps_, date, {}, &Change::date);
  if (at == steps_.begin() || std::prev(at)->date != date)
    at = std::next(steps_.insert(at, Change{date, at == steps_.begin() ? 0 : std::prev(at)->by}));
  for (auto step = std::prev(at); step != steps_.end(); ++step)
    step->by += by;
}

std::int64_t Timeline::on(Date date) const {
  const auto after = std::ranges::upper_bound(steps_, date, {}, &Change::date);
  return after == steps_.begin() ? 0 : std::prev(after)->by;
}

Change Timeline::lowest_from(Date date) const {
  Change lowest{date, on(date)};
  for (auto step = std::ranges::upper_bound(steps_, date, {}, &Change::date); step != steps_.end();
       ++step)
    if (step->by < lowest.by)
      lowest = *step;
  return lowest;
}

Ledger::Ledger(Recall recall, Name name) : recall_(std::move(recall)), name_(std::move(name)) {}

Ledger::Ledger()
    : Ledger([](Account) { return Timeline(); },
             [](LotId lot) { return phrase("lot {}", lot.value); }) {}

void Ledger::know(LotId lot, Kind kind, Origin origin, History history) {
  lots_.insert_or_assign(lot, Known{kind, origin, history});
}

Timeline& Ledger::timeline(Account account) {
  const auto found = timelines_.find(account);
  if (found != timelines_.end())
    return found->second;
  const bool recalled = lots_.at(account.lot).history == History::recall;
  return timelines_.emplace(account, recalled ? recall_(account) : Timeline()).first->second;
}

std::int64_t Ledger::balance(Account account) {
  return timeline(account).now();
}

Result<void> Ledger::sound(const Movement& movement) const {
  const auto& [from, to, count] = movement;
  if (count.none())
    return refuse(fault("a movement of nothing", "Write how many."));
  for (const auto& account : {from, to}) {
    const auto known = lots_.find(account.lot);
    if (known == lots_.end())
      return refuse(program_fault(phrase("lot {} is not known to the ledger", account.lot.value)));
    if (!holds(known->second.kind, account.state))
      return refuse(fault(phrase("a {} holds nothing that is '{}'", kind_said(known->second.kind),
                                 word(account.state))));
  }
  if (from == to)
    return refuse(fault(phrase("{} would go from '{}' to '{}' of the same lot", count.value(),
                               word(from.state), word(to.state))));
  if (lots_.at(from.lot).origin != lots_.at(to.lot).origin)
    return refuse(fault(phrase("{} and {} come from different cones; a lot holds seed of one",
                               name_(from.lot), name_(to.lot)),
                        "Make a lot of its own for each cone; two lots may share a place."));
  return {};
}

Result<void> Ledger::in_the_trade(const Movement& movement) const {
  const auto& [from, to, count] = movement;
  if (!leads_to(from.state, to.state))
    return refuse(fault(phrase("what is '{}' in {} cannot become '{}'", word(from.state),
                               name_(from.lot), word(to.state))));
  const bool other_lot_in_one_batch = from.lot != to.lot && standing(to.state) != Standing::on_hand;
  if (other_lot_in_one_batch || (standing(from.state) == Standing::beginning && from.lot != to.lot))
    return refuse(program_fault("beginnings and ends belong to the lot that gave or took"));
  return {};
}

Fault Ledger::below_zero(Account account, Date date, Change lowest, std::int64_t asked) const {
  const auto name = name_(account.lot);
  const auto there = lowest.by + asked;
  if (lowest.date <= date)
    return fault(phrase("{} has {} '{}' on {}, and {} are asked for: {} too many", name, there,
                        word(account.state), date.said(), asked, -lowest.by),
                 "Check the number and the day, or recount the lot first.");
  return fault(
      phrase(
          "taking {} '{}' from {} on {} would leave {} below zero on {}, because of later entries",
          asked, word(account.state), name, date.said(), -lowest.by, lowest.date.said()),
      phrase("At most {} can be taken on that day; or reverse the later entries first.",
             std::max<std::int64_t>(there, 0)));
}

Result<void> Ledger::take(Date date, std::span<const Movement> movements) {
  std::map<Account, std::int64_t>
      changes; // in their order, so that the same one is named each time
  for (const auto& [from, to, count] : movements) {
    changes[from] -= count.value();
    changes[to] += count.value();
  }
  for (const auto& [account, by] : changes) {
    if (by >= 0 || may_go_below_zero(account.state))
      continue;
    auto lowest = timeline(account).lowest_from(date);
    lowest.by += by;
    if (lowest.by < 0)
      return refuse(below_zero(account, date, lowest, -by));
  }
  for (const auto& [account, by] : changes)
    timeline(account).add(date, by);
  return {};
}

Result<void> Ledger::admit(Date date, std::span<const Movement> movements) {
  for (const auto& movement : movements) {
    if (auto is = sound(movement); !is)
      return is;
    if (auto is = in_the_trade(movement); !is)
      return is;
  }
  return take(date, movements);
}

Result<void> Ledger::admit_reversal(Date date, std::span<const Movement> mirrored) {
  for (const auto& movement : mirrored)
    if (auto is = sound(movement); !is)
      return is;
  return take(date, mirrored);
}

} // namespace coneline::book
