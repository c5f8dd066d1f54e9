// SPDX-License-Identifier: GPL-3.0-or-later
// What is answered from the list: put off, dismissed, done at once.
#include "core/base/phrase.h"
#include "core/work/cautions.h"
#include "core/work/correct.h"
#include "core/work/due/list.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

/// What can be answered may come due a season ahead, as the calendar shows it.
DueHabits far_ahead(DueHabits habits) {
  constexpr int season = 366;
  habits.days_ahead = std::max(habits.days_ahead, season);
  return habits;
}

Result<Due> due_of_key(store::Reading& reading, const book::Registers& registers,
                       const std::string& key, Date day, const DueHabits& habits) {
  for (auto& due : due_on(reading, registers, day, far_ahead(habits)))
    if (due.key == key)
      return due;
  return refuse(fault(phrase("'{}' is not due", key),
                      "It may be done, dismissed or another one by now: look at the list."));
}

/// An entry about a lot or a cone.
Result<book::Entry> entry_about(store::Reading& reading, book::Verb verb, const Code& code,
                                const Noted& noted) {
  auto entry = entry_for(verb, noted);
  if (code.kind() == Kind::cone) {
    const auto registers = reading.registers();
    auto cone = cone_coded(registers, code);
    if (!cone)
      return refuse(cone.error());
    entry.cone = cone->id;
    return entry;
  }
  auto lot = reading.lot(code);
  if (!lot)
    return refuse(lot.error());
  entry.lot = lot->id;
  return entry;
}

Result<Done> move_now(store::Writing& writing, const Due& due, const Noted& noted) {
  const auto registers = writing.registers();
  auto plant = *book::coded(registers.plants, due.code);
  for (const auto& plan : writing.standing_entries(book::Verb::plan_move))
    if (const auto& note = std::get<book::PlantNote>(plan.detail); note.plant == plant.id)
      plant.place = note.to;
  auto id = correct_to(writing, registers, plant, noted);
  if (!id)
    return refuse(id.error());
  Done done;
  done.entries = {*id};
  done.told =
      phrase("{} stands on {} now", book::plant_name(plant), registers.place(*plant.place).name);
  done.cautions = cautions_told(book::Verb::move);
  return done;
}

} // namespace

std::map<std::string, Answered> due_answers(OneReading& once) {
  std::vector<book::Entry> entries;
  for (const auto verb : {book::Verb::put_off, book::Verb::dismiss})
    std::ranges::copy(once.standing(verb), std::back_inserter(entries));
  std::ranges::sort(entries, {}, &book::Entry::id);
  std::map<std::string, Answered> answers;
  for (const auto& entry : entries) {
    const auto& given = std::get<book::DueAnswer>(entry.detail);
    auto& answer = answers[given.due];
    answer.until = given.until;
    answer.dismissed = entry.verb == book::Verb::dismiss;
    answer.times_put_off += entry.verb == book::Verb::put_off ? 1 : 0;
  }
  return answers;
}

Result<Done> answer_due(store::Book& book, const AnswerDue& wanted, const DueHabits& habits) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    auto due = due_of_key(writing, registers, wanted.key, wanted.noted.on, habits);
    if (!due)
      return refuse(due.error());
    if (wanted.until && *wanted.until <= wanted.noted.on)
      return refuse(fault(phrase("put off until {}, which is not after {}", wanted.until->said(),
                                 wanted.noted.on.said()),
                          "Give a later day."));
    if (!wanted.until && wanted.noted.note.empty())
      return refuse(fault("dismissed without a reason", "Say why in the note."));
    auto entry = entry_for(wanted.until ? book::Verb::put_off : book::Verb::dismiss, wanted.noted);
    entry.detail = book::DueAnswer{wanted.key, wanted.until};
    return entered(writing, entry,
                   wanted.until ? phrase("put off until {}: {}", wanted.until->said(), due->told)
                                : phrase("dismissed: {}", due->told));
  });
}

Result<Done> do_due(store::Book& book, const std::string& key, const Noted& noted,
                    const DueHabits& habits) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    auto due = due_of_key(writing, writing.registers(), key, noted.on, habits);
    if (!due)
      return refuse(due.error());
    if (due->kind == DueKind::move_plant)
      return move_now(writing, *due, noted);
    if (due->kind != DueKind::print_label)
      return refuse(
          fault(phrase("'{}' needs more than a tick", key),
                phrase("Enter what was done: '{} {}'.", book::said(due->kind), due->code.text())));
    auto entry = entry_about(writing, book::Verb::print_label, due->code, noted);
    if (!entry)
      return refuse(entry.error());
    return entered(writing, *entry, phrase("label of {} printed", due->code.text()));
  });
}

Result<Due> due_meant(store::Reading& reading, const book::Registers& registers,
                      const std::string& typed, Date day, const DueHabits& habits) {
  std::vector<Due> fits;
  for (auto& due : due_on(reading, registers, day, far_ahead(habits))) {
    if (due.key == typed)
      return due;
    const auto code = due.code.text();
    if (typed == code || typed == fmt::format("{} {}", book::word(due.kind), code))
      fits.push_back(std::move(due));
  }
  if (fits.size() == 1)
    return fits.front();
  std::string keys;
  for (const auto& due : fits)
    keys += fmt::format("{}'{}'", keys.empty() ? "" : ", ", due.key);
  return refuse(fits.empty() ? fault(phrase("nothing is due for '{}'", typed),
                                     "Give a code, or a key from the list of what is due.")
                             : fault(phrase("several things are due for '{}'", typed),
                                     phrase("Say which: {}.", keys)));
}

Result<Done> want_label(store::Book& book, const Code& code, const Noted& noted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    auto entry = entry_about(writing, book::Verb::want_label, code, noted);
    if (!entry)
      return refuse(entry.error());
    return entered(writing, *entry, phrase("a new label for {} is on the list", code.text()));
  });
}

Result<Done> plan_move(store::Book& book, const Code& plant, const Code& place,
                       const Noted& noted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    const auto* row = book::coded(registers.plants, plant);
    if (row == nullptr)
      return refuse(fault(phrase("there is no plant {}", plant.text()), "Check the code."));
    auto to = place_coded(registers, place);
    if (!to)
      return refuse(to.error());
    auto entry = entry_for(book::Verb::plan_move, noted);
    entry.detail = book::PlantNote{row->id, {}, *to};
    return entered(
        writing, entry,
        phrase("{} is to be moved to {}", book::plant_name(*row), registers.place(**to).name));
  });
}

std::vector<Settled> settled_since(store::Reading& reading, const book::Registers& registers,
                                   Date first, Date day) {
  OneReading once(reading, registers); // of few verbs: no sweep
  const auto answers = due_answers(once);
  std::vector<Settled> settled;
  const auto add = [&](const std::string& key, Date date, std::string told, bool dismissed) {
    if (date < first || date > day)
      return;
    const auto answer = answers.find(key);
    settled.push_back({key, date, std::move(told), dismissed,
                       answer == answers.end() ? 0 : answer->second.times_put_off});
  };
  for (const auto& entry : once.standing(book::Verb::dismiss)) {
    const auto& key = std::get<book::DueAnswer>(entry.detail).due;
    if (const auto answer = answers.find(key); answer != answers.end() && answer->second.dismissed)
      add(key, entry.date, entry.note, true);
  }
  // The n-th entry of a verb settles the piece of work that came after n - 1 of them.
  const std::array verbs{std::pair(book::Verb::pollinate, DueKind::pollinate),
                         std::pair(book::Verb::check_scales, DueKind::check_scales),
                         std::pair(book::Verb::inspect, DueKind::inspect),
                         std::pair(book::Verb::clean, DueKind::clean),
                         std::pair(book::Verb::print_label, DueKind::print_label)};
  for (const auto& [verb, kind] : verbs) {
    std::map<std::string, int> times;
    for (const auto& entry : reading.standing_entries(verb)) {
      const auto code = entry.cone  ? registers.cone(*entry.cone).code
                        : entry.lot ? reading.lot(*entry.lot).code
                                    : Code{};
      add(due_key(kind, code, times[code.text()]++), entry.date,
          fmt::format("{} {}", book::word(kind), code.text()), false);
    }
  }
  return settled;
}

} // namespace coneline::work
