// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/store/chain.h"
#include "core/store/writing.h"

#include <fmt/chrono.h>
#include <fmt/format.h>

#include <chrono>
#include <cmath>

namespace coneline::store {

namespace {

std::string now_utc() {
  const auto now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
  return fmt::format("{:%Y-%m-%dT%H:%M:%S}Z", now);
}

std::int64_t write_entry(Tables& tables, const book::Entry& entry) {
  return *tables
              .ask("INSERT INTO entry (verb, date, lot_id, cone_id, place_id, who, note, reverses, "
                   "entered) VALUES "
                   "(:verb, :date, :lot, :cone, :place, :who, :note, :reverses, :entered) "
                   "RETURNING id")
              .with(book::word(entry.verb))
              .with(entry.date)
              .with(entry.lot)
              .with(entry.cone)
              .with(entry.place)
              .with(entry.who)
              .with(entry.note)
              .with(entry.reverses)
              .with(entry.entered)
              .number();
}

void write_movements(Tables& tables, std::int64_t entry,
                     const std::vector<book::Movement>& movements) {
  for (const auto& [from, to, count] : movements)
    tables
        .ask(
            "INSERT INTO movement (entry_id, from_lot, from_state, to_lot, to_state, count) VALUES "
            "(:entry, :from_lot, :from_state, :to_lot, :to_state, :count)")
        .with(entry)
        .with(from.lot)
        .with(book::word(from.state))
        .with(to.lot)
        .with(book::word(to.state))
        .with(count.value())
        .run();
}

/// Writes what an entry noted besides its movements.
struct WriteDetail {
  Tables& tables;
  std::int64_t entry;

  void operator()(std::monostate) const {}
  void operator()(const book::Pollination& detail) const {
    tables.ask("INSERT INTO pollination (entry_id, method) VALUES (:entry, :method)")
        .with(entry)
        .with(book::word(detail.method))
        .run();
    int position = 0;
    for (const auto& pollen : detail.pollen)
      tables
          .ask("INSERT INTO pollination_pollen (entry_id, position, pollen_lot_id, millilitres) "
               "VALUES "
               "(:entry, :position, :lot, :millilitres)")
          .with(entry)
          .with(++position)
          .with(pollen.lot)
          .with(pollen.millilitres)
          .run();
  }
  void operator()(const book::Weighing& detail) const {
    tables.ask("INSERT INTO weighing (entry_id, grams) VALUES (:entry, :grams)")
        .with(entry)
        .with(detail.grams)
        .run();
    int position = 0;
    for (const double grams : detail.hundreds)
      tables
          .ask("INSERT INTO weighing_hundred (entry_id, position, grams) VALUES (:entry, "
               ":position, :grams)")
          .with(entry)
          .with(++position)
          .with(grams)
          .run();
  }
  void operator()(const book::Cleaning& detail) const {
    tables.ask("INSERT INTO cleaning (entry_id, soak_days) VALUES (:entry, :days)")
        .with(entry)
        .with(detail.soak_days)
        .run();
  }
  void operator()(const book::Sorting& detail) const {
    tables.ask("INSERT INTO sorting (entry_id, test) VALUES (:entry, :test)")
        .with(entry)
        .with(book::word(detail.test))
        .run();
  }
  void operator()(const book::Keeping& detail) const {
    tables
        .ask("INSERT INTO keeping (entry_id, store, celsius, until_from, until_to) VALUES "
             "(:entry, :store, :celsius, :until_from, :until_to)")
        .with(entry)
        .with(detail.store)
        .with(detail.celsius)
        .with(detail.until_from)
        .with(detail.until_to)
        .run();
  }
  void operator()(const book::Sale& detail) const {
    tables.ask("INSERT INTO sale (entry_id, buyer, cents) VALUES (:entry, :buyer, :cents)")
        .with(entry)
        .with(detail.buyer)
        .with(detail.cents)
        .run();
  }
  void operator()(const book::ConeLook& detail) const {
    tables
        .ask("INSERT INTO cone_look (entry_id, scales, fertile_scales) VALUES "
             "(:entry, :scales, :fertile)")
        .with(entry)
        .with(book::word(detail.scales))
        .with(detail.fertile_scales)
        .run();
  }
  void operator()(const book::PlantNote& detail) const {
    const auto state =
        detail.male_cone ? std::optional(std::string(book::word(*detail.male_cone))) : std::nullopt;
    tables
        .ask("INSERT INTO plant_note (entry_id, plant_id, male_cone, to_place_id) VALUES "
             "(:entry, :plant, :male_cone, :place)")
        .with(entry)
        .with(detail.plant)
        .with(state)
        .with(detail.to)
        .run();
  }
  void operator()(const book::PollenNote& detail) const {
    tables
        .ask("INSERT INTO pollen_note (entry_id, pollen_lot_id, millilitres, counted, germinated, "
             "conditions) VALUES (:entry, :lot, :millilitres, :counted, :germinated, :conditions)")
        .with(entry)
        .with(detail.lot)
        .with(detail.millilitres)
        .with(detail.counted)
        .with(detail.germinated)
        .with(detail.conditions)
        .run();
  }
  void operator()(const book::Correction& detail) const {
    int position = 0;
    for (const auto& change : detail.changes)
      tables
          .ask("INSERT INTO correction (entry_id, position, plant_id, field, stood, stands) VALUES "
               "(:entry, :position, :plant, :field, :stood, :stands)")
          .with(entry)
          .with(++position)
          .with(change.plant)
          .with(change.field)
          .with(change.stood)
          .with(change.stands)
          .run();
  }
  void operator()(const book::DueAnswer& detail) const {
    tables.ask("INSERT INTO due_answer (entry_id, due, until) VALUES (:entry, :due, :until)")
        .with(entry)
        .with(detail.due)
        .with(detail.until)
        .run();
  }
};

bool is_amount(double value) {
  return std::isfinite(value) && value > 0;
}

Result<void> sound(const book::PollenNote& note) {
  if (note.millilitres && !is_amount(*note.millilitres))
    return refuse(
        fault(phrase("{} ml of pollen", *note.millilitres), "Give an amount above 0, or none."));
  if (note.counted.has_value() != note.germinated.has_value())
    return refuse(
        fault("a viability test counts grains and those that germinated", "Give both counts."));
  if (note.counted &&
      (*note.counted < 1 || *note.germinated < 0 || *note.germinated > *note.counted))
    return refuse(fault(phrase("{} germinated of {} counted", *note.germinated, *note.counted),
                        "Count at least one grain, and no more germinated than counted."));
  return {};
}

Result<void> sound_diary(const book::Entry& entry) {
  if (const auto* note = std::get_if<book::PollenNote>(&entry.detail))
    return sound(*note);
  if (const auto* look = std::get_if<book::ConeLook>(&entry.detail);
      look != nullptr && look->fertile_scales && *look->fertile_scales < 1)
    return refuse(fault(phrase("{} fertile scales", *look->fertile_scales),
                        "Give a count above 0, or none."));
  if (const auto* note = std::get_if<book::PlantNote>(&entry.detail);
      note != nullptr && note->male_cone.has_value() == note->to.has_value())
    return refuse(fault("a note of a plant says what its male cone is like, or where it shall go",
                        "Give one of the two."));
  if (const auto* answer = std::get_if<book::DueAnswer>(&entry.detail); answer != nullptr) {
    if (answer->due.empty())
      return refuse(fault("an answer to nothing that was due", "Name what was due."));
    if ((entry.verb == book::Verb::put_off) != answer->until.has_value() && !entry.reverses)
      return refuse(fault("what is put off has a day, and what is dismissed has none",
                          "Give the day, or take it out."));
  }
  return {};
}

Result<void> sound(const book::Entry& entry) {
  if (auto is = sound_diary(entry); !is)
    return is;
  if (const auto* pass = std::get_if<book::Pollination>(&entry.detail)) {
    if (pass->pollen.empty())
      return refuse(fault("a pollination without pollen",
                          "Name the pollen lot, or say that the father is not known."));
    for (const auto& pollen : pass->pollen)
      if (pollen.millilitres && !is_amount(*pollen.millilitres))
        return refuse(fault(phrase("{} ml of pollen", *pollen.millilitres),
                            "Give an amount above 0, or none."));
  }
  if (const auto* weighed = std::get_if<book::Weighing>(&entry.detail))
    for (const double grams : weighed->hundreds)
      if (!is_amount(grams) || !is_amount(weighed->grams))
        return refuse(fault(phrase("100 seeds of {} g, all of it {} g", grams, weighed->grams),
                            "Give weights above 0."));
  if (const auto* cleaned = std::get_if<book::Cleaning>(&entry.detail);
      cleaned != nullptr && (cleaned->soak_days < 0 || cleaned->soak_days > most_whole))
    return refuse(fault(phrase("{} days of soaking", cleaned->soak_days),
                        phrase("Give 0 to {}.", most_whole)));
  if (const auto* kept = std::get_if<book::Keeping>(&entry.detail);
      kept != nullptr && kept->celsius && !std::isfinite(*kept->celsius))
    return refuse(fault(phrase("seed kept at {} °C", *kept->celsius), "Give a number, or none."));
  if (entry.place && !entry.lot)
    return refuse(program_fault("a place without a lot to stand there"));
  if ((entry.verb == book::Verb::reverse) != entry.reverses.has_value())
    return refuse(fault("a reversal names the entry it reverses, and nothing else does"));
  return {};
}

} // namespace

void Writing::know_lots(const book::Entry& entry) {
  for (const auto& [from, to, count] : entry.movements)
    for (const auto& id : {from.lot, to.lot})
      if (!ledger_.knows(id)) {
        const auto known = lot(id);
        ledger_.know(id, known.code.kind(), known.origin, book::Ledger::History::recall);
      }
}

Result<void> Writing::is_mirror(const book::Entry& entry) {
  auto first = this->entry(*entry.reverses);
  if (!first)
    return refuse(first.error());
  if (first->reverses)
    return refuse(fault(phrase("entry {} is itself a reversal", first->id.value),
                        "Make the entry again instead of reversing its reversal."));
  if (const auto by = reversed_by(first->id))
    return refuse(
        fault(phrase("entry {} was reversed already, by entry {}", first->id.value, by->value)));
  auto mirrored = first->movements;
  for (auto& movement : mirrored)
    std::swap(movement.from, movement.to);
  if (mirrored != entry.movements || first->date != entry.date)
    return refuse(
        fault(phrase("this is not the mirror of entry {}", first->id.value),
              "A reversal has the day of the first entry and its movements the other way round."));
  return {};
}

Result<book::EntryId> Writing::enter(const book::Entry& entry) {
  if (auto is = sound(entry); !is)
    return refuse(is.error());
  know_lots(entry);
  if (entry.reverses)
    if (auto is = is_mirror(entry); !is)
      return refuse(is.error());
  auto admitted = entry.reverses ? ledger_.admit_reversal(entry.date, entry.movements)
                                 : ledger_.admit(entry.date, entry.movements);
  if (!admitted)
    return refuse(admitted.error());
  auto written = entry;
  if (written.entered.empty())
    written.entered = now_utc();
  written.id = {write_entry(tables(), written)};
  write_movements(tables(), written.id.value, written.movements);
  std::visit(WriteDetail{tables(), written.id.value}, written.detail);
  chain_->add(written);
  return written.id;
}

} // namespace coneline::store
