// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/labels_to_renew.h"

#include "core/work/overview.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace coneline::work {

namespace {

void later(std::optional<Date>& date, Date other) {
  if (!date || *date < other)
    date = other;
}

/// The last day of a standing entry about each lot, up to a day.
std::map<book::LotId, Date> last_entered(store::Reading& reading, Date today) {
  const auto entries = reading.entries();
  std::set<book::EntryId> reversed;
  for (const auto& entry : entries)
    if (entry.reverses)
      reversed.insert(*entry.reverses);
  std::map<book::LotId, Date> seen;
  const auto note = [&](book::LotId lot, Date date) {
    auto& last = seen.try_emplace(lot, date).first->second;
    last = std::max(last, date);
  };
  for (const auto& entry : entries) {
    if (entry.reverses || reversed.contains(entry.id) || entry.date > today)
      continue;
    if (entry.lot)
      note(*entry.lot, entry.date);
    for (const auto& movement : entry.movements) {
      note(movement.from.lot, entry.date);
      note(movement.to.lot, entry.date);
    }
  }
  return seen;
}

} // namespace

std::map<Code, LabelHistory> label_histories(store::Reading& reading) {
  std::map<Code, LabelHistory> histories;
  for (const auto& print : reading.label_records().prints) {
    auto& history = histories[print.code];
    history.last = history.times == 0 ? print.printed : std::max(history.last, print.printed);
    history.times += print.copies;
  }
  return histories;
}

std::vector<LabelToRenew> labels_to_renew(store::Reading& reading, Date today, int days) {
  const auto registers = reading.registers();
  const auto histories = label_histories(reading);
  const auto seen = last_entered(reading, today);
  const auto sighted = reading.last_seen(today);
  std::vector<std::pair<int, LabelToRenew>> found;
  for (const auto& line : lot_lines(reading, registers)) {
    if (line.total() == 0)
      continue;
    LabelToRenew label{line.lot.code, {}, {}, line.place, 0};
    if (const auto last = seen.find(line.lot.id); last != seen.end())
      later(label.seen, last->second);
    if (const auto sight = sighted.find(line.lot.id); sight != sighted.end())
      later(label.seen, sight->second);
    if (const auto history = histories.find(line.lot.code); history != histories.end()) {
      label.printed = history->second.last;
      label.times_printed = history->second.times;
    }
    auto last = label.seen;
    if (label.printed)
      later(last, *label.printed);
    if (!last || days_between(*last, today) > days)
      found.emplace_back(line.place ? registers.place(*line.place).walk : 1'000'000, label);
  }
  std::ranges::sort(found, {},
                    [](const auto& each) { return std::tuple(each.first, each.second.code); });
  std::vector<LabelToRenew> labels;
  for (auto& [walk, label] : found)
    labels.push_back(label);
  return labels;
}

} // namespace coneline::work
