// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/phrase.h"
#include "core/exchange/fields.h"
#include "core/exchange/store_season.h"

#include <fmt/format.h>

#include <map>
#include <set>

namespace coneline::exchange {

namespace {

template <class Row>
using Rows = std::vector<const Lined<Row>*>;

/// What belongs to one entry, from all files.
struct Parts {
  Rows<MovementRow> movements;
  Rows<PollinationRow> pollinations;
  Rows<WeighingRow> weighings;
  Rows<CleaningRow> cleanings;
  Rows<SortingRow> sortings;
  Rows<KeepingRow> keepings;
  Rows<SaleRow> sales;
  Rows<ConeLookRow> cone_looks;
  Rows<PlantNoteRow> plant_notes;
  Rows<PollenNoteRow> pollen_notes;
  Rows<CorrectionRow> corrections;
  Rows<DueAnswerRow> due_answers;
};

/// YYYY-MM-DDTHH:MM:SSZ, as the book writes it; empty lets the book give it.
bool is_moment(std::string_view text) {
  if (text.empty())
    return true;
  constexpr std::string_view shape = "T00:00:00Z";
  if (text.size() != 10 + shape.size() || !Date::parse(text.substr(0, 10)))
    return false;
  const auto time = text.substr(10);
  for (std::size_t i = 0; i < shape.size(); ++i)
    if (shape[i] == '0' ? (time[i] < '0' || time[i] > '9') : time[i] != shape[i])
      return false;
  return time.substr(1, 2) < "24" && time[4] < '6' && time[7] < '6';
}

class StoreEntries {
 public:
  StoreEntries(const Sheets& sheets, Stored& stored, store::Writing& writing, Faults& faults)
      : sheets_(sheets), stored_(stored), writing_(writing), faults_(faults) {
    collect(&Parts::movements);
    collect(&Parts::pollinations);
    collect(&Parts::weighings);
    collect(&Parts::cleanings);
    collect(&Parts::sortings);
    collect(&Parts::keepings);
    collect(&Parts::sales);
    collect(&Parts::cone_looks);
    collect(&Parts::plant_notes);
    collect(&Parts::pollen_notes);
    collect(&Parts::corrections);
    collect(&Parts::due_answers);
  }

  std::size_t run(RowsDone& done) {
    for (const auto& each : std::get<Sheet<book::Entry>>(sheets_).rows) {
      const auto& parts = parts_[each.row.id];
      if (!done.go_on(1 + parts.movements.size()))
        break;
      store(each, parts);
    }
    return not_judged_;
  }

 private:
  template <class Row>
  void collect(Rows<Row> Parts::*rows) {
    for (const auto& each : std::get<Sheet<Row>>(sheets_).rows)
      (parts_[each.row.entry].*rows).push_back(&each);
  }

  void store(const Lined<book::Entry>& each, const Parts& parts) {
    const auto lots = lots_of(each.row, parts);
    const bool in_doubt =
        std::ranges::any_of(lots, [&](auto lot) { return in_doubt_.contains(lot); });
    const auto stored = try_to_store(each, parts, in_doubt);
    if (stored)
      stored_.add(each.row.id, *stored);
    else
      in_doubt_.insert(lots.begin(), lots.end());
  }

  /// The lots an entry is about, by their numbers in the folder.
  static std::set<book::LotId> lots_of(const book::Entry& entry, const Parts& parts) {
    std::set<book::LotId> lots;
    if (entry.lot)
      lots.insert(*entry.lot);
    for (const auto* each : parts.movements)
      lots.insert({each->row.movement.from.lot, each->row.movement.to.lot});
    lots.erase(book::LotId{});
    return lots;
  }

  std::optional<book::EntryId> try_to_store(const Lined<book::Entry>& each, const Parts& parts,
                                            bool in_doubt) {
    if (!each.sound || !all_sound(parts) || !fits(each, parts))
      return std::nullopt;
    auto entry = with_parts(each.row, parts);
    if (!entry) {
      ++not_judged_;
      return std::nullopt;
    }
    auto entered = writing_.enter(*entry);
    if (entered)
      return *entered;
    if (in_doubt)
      ++not_judged_;
    else
      faults_.add(entered.error().at(place_of_fault(each, parts, *entry)));
    return std::nullopt;
  }

  template <class Row>
  static bool sound(const Rows<Row>& rows) {
    return std::ranges::all_of(rows, [](const auto* each) { return each->sound; });
  }
  static bool all_sound(const Parts& parts) {
    return sound(parts.movements) && sound(parts.pollinations) && sound(parts.weighings) &&
           sound(parts.cleanings) && sound(parts.sortings) && sound(parts.keepings) &&
           sound(parts.sales) && sound(parts.cone_looks) && sound(parts.plant_notes) &&
           sound(parts.pollen_notes) && sound(parts.corrections) && sound(parts.due_answers);
  }

  /// What can be told wrong of an entry and its parts before the book is asked.
  bool fits(const Lined<book::Entry>& each, const Parts& parts) {
    const auto& entry = each.row;
    const auto say = [&](std::string what, std::string remedy, std::string_view column) {
      faults_.add(fault(std::move(what), std::move(remedy)).at(where(each, column)));
      return false;
    };
    if (entry.place && !entry.lot)
      return say("a place without a lot that stands there", "Name the lot.", "place");
    if ((entry.verb == book::Verb::reverse) != entry.reverses.has_value())
      return say("a reversal names the entry it reverses, and nothing else does",
                 "Name the entry, or correct the verb.", "reverses");
    if (entry.reverses && entry.reverses->value >= entry.id.value)
      return say("an entry that comes no earlier is reversed", "Name an earlier entry.",
                 "reverses");
    if (!is_moment(entry.entered))
      return say(phrase("'{}' is no moment", shortened(entry.entered)),
                 "Write it as 2026-03-09T14:05:00Z, or leave it empty.", "entered");
    if (entry.verb == book::Verb::pollinate && !entry.cone)
      return say("a pollination without its cone", "Name the cone.", "cone");
    if (entry.verb == book::Verb::check_scales && !entry.cone)
      return say("a look at the scales without its cone", "Name the cone.", "cone");
    for (const auto& [verb, file, rows, whole] : details_of(parts)) {
      if (rows > 0 && verb != filed_under(entry.verb) &&
          !(is_cut(entry) && verb == book::Verb::sort))
        return say(
            phrase("{} has a row for this entry, which is '{}'", file, book::said(entry.verb)),
            phrase("Take it out; that file is for '{}'.", book::said(verb)), "verb");
      if (rows == 0 && whole && verb == filed_under(entry.verb) && !amends(entry))
        return say(phrase("{} has no row for this entry", file), "Add one.", "verb");
    }
    return one_row(each, parts) && one_method(parts.pollinations) && one_weight(parts.weighings);
  }

  /// A file with details: the verb it is for, and how many rows one entry has there.
  struct Details {
    book::Verb verb;
    std::string_view file;
    std::size_t rows;
    bool whole;
  };
  template <class Row>
  Details details(book::Verb verb, const Rows<Row>& rows) const {
    return {verb, file_of<Row>, rows.size(), std::get<Sheet<Row>>(sheets_).whole};
  }
  [[nodiscard]] std::array<Details, 11> details_of(const Parts& parts) const {
    auto weighed = details(book::Verb::harvest, parts.weighings);
    weighed.whole = false; // most seed is counted by hand
    return {details(book::Verb::pollinate, parts.pollinations),
            weighed,
            details(book::Verb::clean, parts.cleanings),
            details(book::Verb::sort, parts.sortings),
            details(book::Verb::store, parts.keepings),
            details(book::Verb::sell, parts.sales),
            details(book::Verb::check_scales, parts.cone_looks),
            details(book::Verb::watch_male_cone, parts.plant_notes),
            details(book::Verb::collect_pollen, parts.pollen_notes),
            details(book::Verb::correct, parts.corrections),
            details(book::Verb::put_off, parts.due_answers)};
  }
  /// The verb that a file with details is named for; several verbs share some files.
  static book::Verb filed_under(book::Verb verb) {
    switch (verb) {
    case book::Verb::plan_move:
      return book::Verb::watch_male_cone;
    case book::Verb::test_pollen:
    case book::Verb::discard_pollen:
      return book::Verb::collect_pollen;
    case book::Verb::dismiss:
      return book::Verb::put_off;
    default:
      return verb;
    }
  }
  /// A correction of another row than a plant's is told in the note alone.
  static bool amends(const book::Entry& entry) {
    return entry.verb == book::Verb::correct && !entry.note.empty();
  }
  /// Cutting open is noted as a test, like sorting.
  static bool is_cut(const book::Entry& entry) { return entry.verb == book::Verb::open; }

  bool one_row(const Lined<book::Entry>& each, const Parts& parts) {
    for (const auto& [verb, file, rows, whole] : details_of(parts))
      if (rows > 1 && verb != book::Verb::pollinate && verb != book::Verb::harvest &&
          verb != book::Verb::correct) {
        faults_.add(fault(phrase("{} has {} rows for this entry", file, rows), "Keep one.")
                        .at(where(each, "entry")));
        return false;
      }
    return true;
  }

  bool one_method(const Rows<PollinationRow>& rows) {
    for (const auto* each : rows)
      if (each->row.method != rows.front()->row.method) {
        faults_.add(
            fault(phrase("the pass is '{}' here and '{}' on line {}", book::said(each->row.method),
                         book::said(rows.front()->row.method), rows.front()->line),
                  "One pass has one method.")
                .at(where(*each, "method")));
        return false;
      }
    return true;
  }

  bool one_weight(const Rows<WeighingRow>& rows) {
    for (const auto* each : rows)
      if (each->row.grams != rows.front()->row.grams) {
        faults_.add(fault(phrase("all the seed weighs {} g here and {} g on line {}",
                                 each->row.grams, rows.front()->row.grams, rows.front()->line),
                          "One harvest has one weight.")
                        .at(where(*each, "grams")));
        return false;
      }
    return true;
  }

  /// The entry with the book's ids; nothing where it refers to what did not get in.
  std::optional<book::Entry> with_parts(book::Entry entry, const Parts& parts) const {
    WithStoredIds io(stored_);
    fields(io, entry);
    for (const auto* each : parts.movements) {
      auto movement = each->row.movement;
      io.field("from_lot", movement.from.lot);
      io.field("to_lot", movement.to.lot);
      entry.movements.push_back(movement);
    }
    if (!parts.pollinations.empty()) {
      book::Pollination pass{parts.pollinations.front()->row.method, {}};
      for (const auto* each : parts.pollinations) {
        pass.pollen.push_back(each->row.pollen);
        io.field("pollen_lot", pass.pollen.back().lot);
      }
      entry.detail = pass;
    }
    if (!parts.weighings.empty()) {
      book::Weighing weighed{{}, parts.weighings.front()->row.grams};
      for (const auto* each : parts.weighings)
        weighed.hundreds.push_back(each->row.hundred_grams);
      entry.detail = weighed;
    }
    for (const auto* each : parts.cleanings)
      entry.detail = each->row.cleaning;
    for (const auto* each : parts.sortings)
      entry.detail = each->row.sorting;
    for (const auto* each : parts.keepings)
      entry.detail = each->row.keeping;
    for (const auto* each : parts.sales)
      entry.detail = each->row.sale;
    for (const auto* each : parts.cone_looks)
      entry.detail = each->row.look;
    for (const auto* each : parts.plant_notes) {
      auto note = each->row.note;
      io.field("plant", note.plant);
      io.field("to_place", note.to);
      entry.detail = note;
    }
    for (const auto* each : parts.pollen_notes) {
      auto note = each->row.note;
      io.field("pollen_lot", note.lot);
      entry.detail = note;
    }
    if (!parts.corrections.empty()) {
      book::Correction correction;
      for (const auto* each : parts.corrections) {
        correction.changes.push_back(each->row.change);
        io.field("plant", correction.changes.back().plant);
      }
      entry.detail = correction;
    }
    for (const auto* each : parts.due_answers)
      entry.detail = each->row.answer;
    return io.whole() ? std::optional(entry) : std::nullopt;
  }

  /// The movement that the gate stopped. Nothing of this folder is kept any more, so the movements
  /// can be tried one by one.
  Where place_of_fault(const Lined<book::Entry>& each, const Parts& parts, book::Entry entry) {
    if (parts.movements.empty() || entry.reverses)
      return where(each, entry.reverses ? "reverses" : "verb");
    const auto movements = std::exchange(entry.movements, {});
    for (std::size_t i = 0; i < movements.size(); ++i) {
      entry.movements = {movements[i]};
      if (!writing_.enter(entry))
        return where(*parts.movements[i], "count");
    }
    return where(*parts.movements.front(), "count");
  }

  const Sheets& sheets_;
  Stored& stored_;
  store::Writing& writing_;
  Faults& faults_;
  std::map<book::EntryId, Parts> parts_;
  std::set<book::LotId> in_doubt_;
  std::size_t not_judged_ = 0;
};

} // namespace

std::size_t store_entries(const Sheets& sheets, Stored& stored, store::Writing& writing,
                          Faults& faults, RowsDone& done) {
  return StoreEntries(sheets, stored, writing, faults).run(done);
}

} // namespace coneline::exchange
