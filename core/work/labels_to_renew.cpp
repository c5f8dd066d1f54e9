// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/labels_to_renew.h"

#include "core/work/one_reading.h"

#include <algorithm>
#include <tuple>

namespace coneline::work {

namespace {

void later(std::optional<Date>& date, Date other) {
  if (!date || *date < other)
    date = other;
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
  OneReading once(reading, registers, today);
  return labels_to_renew(once, label_histories(reading), days);
}

std::vector<LabelToRenew> labels_to_renew(OneReading& once,
                                          const std::map<Code, LabelHistory>& histories, int days) {
  const auto today = once.day();
  const auto& registers = once.registers();
  const auto& sweep = once.sweep();
  const auto sighted = once.reading().last_seen(today);
  std::vector<std::pair<int, LabelToRenew>> found;
  for (const auto& line : once.lot_lines()) {
    if (line.total() == 0)
      continue;
    LabelToRenew label{line.lot.code, {}, {}, line.place, 0};
    label.seen = sweep.of(line.lot.id).entered;
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
