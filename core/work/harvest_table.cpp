// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/harvest_table.h"

#include "core/base/phrase.h"
#include "core/work/clean.h"
#include "core/work/resolve.h"
#include "core/work/sort.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::work {

namespace {

using book::State;

bool is_judged(State state) {
  return state == State::judged_filled || state == State::judged_empty;
}

/// Seed on its way within the batch or out of it.
void leave(HarvestTable& table, const store::Flow& flow, bool within) {
  const auto count = flow.count;
  const auto part = [&]() -> JudgedPart* {
    if (flow.from.state == State::judged_filled)
      return &table.filled;
    return flow.from.state == State::judged_empty ? &table.empty : nullptr;
  }();
  if (flow.to.state == State::opened_filled || flow.to.state == State::opened_empty) {
    if (part == nullptr) {
      table.opened_unsorted += count;
      return;
    }
    part->opened += count;
    part->opened_filled += flow.to.state == State::opened_filled ? count : 0;
    return;
  }
  if (!within)
    table.sown += count;
  else if (flow.to.state == State::lost_in_cleaning)
    table.lost += count;
  else if (flow.to.state == State::discarded)
    table.discarded += count;
  else if (book::standing(flow.to.state) == book::Standing::end)
    table.other += count;
}

void count_flows(HarvestTable& table, const std::vector<store::Flow>& flows) {
  for (const auto& flow : flows) {
    const bool from_here = flow.from.lot == table.batch.id;
    const bool to_here = flow.to.lot == table.batch.id;
    const bool began = book::standing(flow.from.state) == book::Standing::beginning ||
                       flow.from.state == State::unexplained;
    if (to_here && began && book::standing(flow.to.state) == book::Standing::on_hand)
      table.counted += flow.count;
    else if (from_here)
      leave(table, flow, to_here);
    // A judged part is all that came into it, less what was judged otherwise.
    for (auto* part : {&table.filled, &table.empty}) {
      const auto state = part == &table.filled ? State::judged_filled : State::judged_empty;
      if (to_here && flow.to.state == state)
        part->seeds += flow.count;
      if (from_here && flow.from.state == state && to_here &&
          (is_judged(flow.to.state) || flow.to.state == State::unsorted))
        part->seeds -= flow.count;
    }
  }
}

void read_history(HarvestTable& table, store::Reading& reading, Date today) {
  for (const auto& entry : reading.entries_of(table.batch.id)) {
    if (entry.lot != table.batch.id || entry.date > today || entry.reverses ||
        reading.reversed_by(entry.id))
      continue;
    if (entry.verb == book::Verb::harvest || entry.verb == book::Verb::buy_in)
      table.harvested = entry.date;
    if (const auto* cleaning = std::get_if<book::Cleaning>(&entry.detail)) {
      table.cleaned = std::max(table.cleaned.value_or(entry.date), entry.date);
      if (cleaning->soak_days > 0)
        table.soaks_until = entry.date.plus_days(cleaning->soak_days);
    }
    if (const auto* sorting = std::get_if<book::Sorting>(&entry.detail);
        sorting != nullptr && entry.verb == book::Verb::sort) {
      table.test = sorting->test;
      if (sorting->test == book::SeedTest::floating)
        table.floated.push_back(entry.date);
    }
    if (const auto* keeping = std::get_if<book::Keeping>(&entry.detail))
      table.kept = *keeping;
  }
}

using What = TableCount::What;

Result<void> enough(std::int64_t there, std::int64_t wanted, const char* of) {
  if (wanted <= there)
    return {};
  return refuse(fault(phrase("{} {} on the table, and {} are counted: {} too many", there,
                             phrase_of(of), wanted, wanted - there),
                      "Count again."));
}

void open_some(JudgedPart& part, const TableCount& count) {
  const auto opened = (count.first + count.second).value();
  part.on_hand -= opened;
  part.opened += opened;
  part.opened_filled += count.first.value();
}

} // namespace

Result<void> HarvestTable::add(const TableCount& count) {
  const auto all = (count.first + count.second).value();
  const auto first = count.first.value();
  const auto second = count.second.value();
  const auto result = [&]() -> Result<void> {
    switch (count.what) {
    case What::lost:
    case What::floated:
      return enough(unsorted, all, to_phrase("unsorted seeds are"));
    case What::again:
    case What::floaters:
      return enough(empty.on_hand, all, to_phrase("floaters are"));
    case What::sinkers:
      return enough(filled.on_hand, all, to_phrase("sinkers are"));
    }
    return {};
  }();
  if (!result)
    return result;
  switch (count.what) {
  case What::lost:
    unsorted -= all;
    lost += all;
    break;
  case What::floated:
    unsorted -= all;
    filled.on_hand += first;
    filled.seeds += first;
    empty.on_hand += second;
    empty.seeds += second;
    break;
  case What::again:
    for (auto* seeds : {&empty.on_hand, &empty.seeds})
      *seeds -= first;
    for (auto* seeds : {&filled.on_hand, &filled.seeds})
      *seeds += first;
    break;
  case What::sinkers:
    open_some(filled, count);
    break;
  case What::floaters:
    open_some(empty, count);
    break;
  }
  return {};
}

Result<Done> enter(store::Book& book, const Code& batch, const TableCount& count,
                   const Noted& noted) {
  switch (count.what) {
  case What::lost:
    return clean(book, {batch, 0, count.first, noted});
  case What::floated:
    return sort(
        book, {batch, State::unsorted, book::SeedTest::floating, count.first, count.second, noted});
  case What::again:
    return sort(
        book, {batch, State::judged_empty, book::SeedTest::floating, count.first, Count{}, noted});
  case What::sinkers:
  case What::floaters:
    return open(book,
                {batch, count.what == What::sinkers ? State::judged_filled : State::judged_empty,
                 count.first + count.second, count.first, noted});
  }
  return Done{};
}

Result<stats::Sorted> HarvestTable::judged(double confidence) const {
  return stats::sort_by_water(filled.cut_test(), empty.cut_test(), confidence);
}

HarvestTable harvest_table(store::Reading& reading, const book::Lot& batch,
                           const OriginName& origin, Date today) {
  HarvestTable table;
  table.batch = batch;
  table.origin = origin;
  for (const auto& balance : reading.balances_of(batch.id)) {
    if (balance.account.state == State::unsorted)
      table.unsorted = balance.count;
    if (balance.account.state == State::judged_filled)
      table.filled.on_hand = balance.count;
    if (balance.account.state == State::judged_empty)
      table.empty.on_hand = balance.count;
  }
  count_flows(table, reading.flows(batch.origin));
  read_history(table, reading, today);
  return table;
}

Result<HarvestTable> harvest_table(store::Reading& reading, const book::Registers& registers,
                                   const Code& batch, Date today) {
  auto lot = lot_of_kind(reading, batch, Kind::batch);
  if (!lot)
    return refuse(lot.error());
  return harvest_table(reading, *lot, origin_names(reading, registers).at(lot->origin), today);
}

} // namespace coneline::work
