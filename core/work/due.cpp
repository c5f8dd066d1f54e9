// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/due.h"

#include "core/base/phrase.h"
#include "core/work/due/list.h"

#include <fmt/format.h>

namespace coneline::work {

DueGround::DueGround(OneReading& all, const DueHabits& wanted)
    : once(all), sweep(all.sweep()), registers(all.registers()), day(all.day()), habits(wanted),
      cones(all.cone_courses()) {
  for (const auto& line : once.lot_lines())
    if (line.total() > 0)
      lots.emplace_back(line);
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

/// Only the season in which plants in the ground are moved is over with its last day. A ripe cone,
/// seed in water or a seedling waits, and is the more urgent.
bool is_over_after_its_time(DueKind kind) {
  return kind == DueKind::move_plant;
}

std::string late(int days) {
  return phrase_n(days, "late: {} day", "late: {} days");
}

void say_missed(Due& due, Date day, const DueHabits& habits) {
  if (due.to && *due.to < day)
    due.missed = is_over_after_its_time(due.kind)
                     ? phrase("missed: the time for it ended on {}", due.to->said())
                     : late(days_between(*due.to, day));
  else if (!due.to && due.from.plus_days(habits.days_until_late) < day)
    due.missed = late(days_between(due.from, day));
}

} // namespace

std::vector<Due> due_on(store::Reading& reading, const book::Registers& registers, Date day,
                        const DueHabits& habits) {
  OneReading once(reading, registers, day);
  return due_on(once, habits);
}

std::vector<Due> due_on(OneReading& once, const DueHabits& habits) {
  const DueGround ground(once, habits);
  DueList list(ground);
  for (const auto source :
       {cones_due, pollen_due, seed_due, trays_due, pots_due, plants_due, labels_due, mix_due})
    source(ground, list);
  const auto answers = due_answers(once);
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
    say_missed(each, ground.day, habits);
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
