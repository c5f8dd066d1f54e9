// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/due.h"

#include "core/base/phrase.h"
#include "core/work/due/list.h"

#include <fmt/format.h>

namespace coneline::work {

DueGround::DueGround(store::Reading& book, const book::Registers& all, Date on,
                     const DueHabits& wanted)
    : reading(book), registers(all), day(on), habits(wanted), cones(cone_courses(book, all)) {
  for (auto& line : lot_lines(book, all))
    if (line.total() > 0)
      lots.push_back(std::move(line));
  for (const auto verb : {book::Verb::inspect, book::Verb::clean, book::Verb::sow,
                          book::Verb::store, book::Verb::want_label, book::Verb::print_label})
    for (const auto& entry : reading.standing_entries(verb))
      if (entry.lot && entry.date <= day) {
        auto& before = done_[{verb, *entry.lot}];
        ++before.times;
        before.last = entry.date;
      }
}

DoneBefore DueGround::done(book::Verb verb, book::LotId lot) const {
  const auto found = done_.find({verb, lot});
  return found == done_.end() ? DoneBefore{} : found->second;
}

std::string due_key(DueKind kind, const Code& code, int times) {
  return fmt::format("{} {} {}", book::word(kind), code.text(), times);
}

void DueList::add(const Item& item) {
  add(Due{item.kind, item.code, item.from, item.to, item.told,
          item.place ? ground_.registers.place(*item.place).walk : INT_MAX,
          due_key(item.kind, item.code, item.times), "", 0, item.done_at_once});
}

void DueList::add(Due due) {
  if (due.from <= ground_.horizon())
    due_.push_back(std::move(due));
}

namespace {

void say_missed(Due& due, Date day, const DueHabits& habits) {
  if (due.to && *due.to < day)
    due.missed = phrase("missed: the time for it ended on {}", due.to->said());
  else if (!due.to && due.from.plus_days(habits.days_until_late) < day)
    due.missed = phrase("late: {} days", days_between(due.from, day));
}

} // namespace

std::vector<Due> due_on(store::Reading& reading, const book::Registers& registers, Date day,
                        const DueHabits& habits) {
  const DueGround ground(reading, registers, day, habits);
  DueList list(ground);
  for (const auto source :
       {cones_due, pollen_due, seed_due, trays_due, pots_due, plants_due, labels_due, mix_due})
    source(ground, list);
  const auto answers = due_answers(reading);
  std::vector<Due> due;
  for (auto& each : list.take()) {
    if (const auto found = answers.find(each.key); found != answers.end()) {
      const auto& answer = found->second;
      if (answer.dismissed || (answer.until && *answer.until > ground.horizon()))
        continue;
      each.times_put_off = answer.times_put_off;
      if (answer.until)
        each.from = std::max(each.from, *answer.until);
    }
    say_missed(each, day, habits);
    due.push_back(std::move(each));
  }
  std::ranges::stable_sort(due, [](const Due& a, const Due& b) {
    return std::tie(a.walk, a.from, a.code) < std::tie(b.walk, b.from, b.code);
  });
  return due;
}

std::vector<Due> by_day(std::vector<Due> due) {
  std::ranges::stable_sort(due, [](const Due& a, const Due& b) {
    return std::tie(a.from, a.walk, a.code) < std::tie(b.from, b.walk, b.code);
  });
  return due;
}

} // namespace coneline::work
