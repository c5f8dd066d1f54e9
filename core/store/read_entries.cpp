// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/phrase.h"
#include "core/store/reading.h"
#include "core/store/tables.h"
#include "sql.h"

#include <fmt/format.h>

namespace coneline::store {

namespace {

using Entries = std::vector<book::Entry>;

book::Entry entry_of(const Row& row) {
  book::Entry entry;
  entry.id = {row.whole("id")};
  entry.verb = row.one_of<book::Verb>("verb");
  entry.date = row.date("date");
  entry.lot = row.maybe_id<book::LotId>("lot_id");
  entry.cone = row.maybe_id<book::ConeId>("cone_id");
  entry.place = row.maybe_id<book::PlaceId>("place_id");
  entry.who = row.text("who");
  entry.note = row.text("note");
  entry.reverses = row.maybe_id<book::EntryId>("reverses");
  entry.entered = row.text("entered");
  return entry;
}

/// Puts movements and details into the entries they belong to.
class Fill {
 public:
  Fill(Tables& tables, Entries& entries) : tables_(tables) {
    for (auto& entry : entries)
      by_id_[entry.id.value] = &entry;
  }

  void between(book::EntryId first, book::EntryId last) {
    first_ = first;
    last_ = last;
    each(sql::movements_between, [](const Row& row, book::Entry& entry) {
      entry.movements.push_back(
          {{book::LotId{row.whole("from_lot")}, row.one_of<book::State>("from_state")},
           {book::LotId{row.whole("to_lot")}, row.one_of<book::State>("to_state")},
           Count::sure(row.whole("count"))});
    });
    each(sql::pollinations_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::Pollination{row.one_of<book::PollinationMethod>("method"), {}};
    });
    each(sql::pollination_pollen_between, [](const Row& row, book::Entry& entry) {
      std::get<book::Pollination>(entry.detail)
          .pollen.push_back(
              {row.maybe_id<book::PollenLotId>("pollen_lot_id"), row.maybe_real("millilitres")});
    });
    each(sql::weighings_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::Weighing{{}, row.real("grams")};
    });
    each(sql::weighing_hundreds_between, [](const Row& row, book::Entry& entry) {
      std::get<book::Weighing>(entry.detail).hundreds.push_back(row.real("grams"));
    });
    each(sql::cleanings_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::Cleaning{static_cast<int>(row.whole("soak_days"))};
    });
    each(sql::sortings_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::Sorting{row.one_of<book::SeedTest>("test")};
    });
    each(sql::keepings_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::Keeping{row.text("store"), row.maybe_real("celsius"),
                                   row.maybe_date("until_from"), row.maybe_date("until_to")};
    });
    each(sql::sales_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::Sale{row.text("buyer"), row.maybe_whole("cents")};
    });
    diary();
  }

 private:
  void diary() {
    each(sql::cone_looks_between, [](const Row& row, book::Entry& entry) {
      entry.detail =
          book::ConeLook{row.one_of<book::Scales>("scales"), row.maybe_whole("fertile_scales")};
    });
    each(sql::plant_notes_between, [](const Row& row, book::Entry& entry) {
      book::PlantNote note{{row.whole("plant_id")}, {}, row.maybe_id<book::PlaceId>("to_place_id")};
      if (row.has("male_cone"))
        note.male_cone = row.one_of<book::MaleCone>("male_cone");
      entry.detail = note;
    });
    each(sql::pollen_notes_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::PollenNote{{row.whole("pollen_lot_id")},
                                      row.maybe_real("millilitres"),
                                      row.maybe_whole("counted"),
                                      row.maybe_whole("germinated"),
                                      row.text("conditions")};
    });
    each(sql::corrections_between, [](const Row& row, book::Entry& entry) {
      if (!std::holds_alternative<book::Correction>(entry.detail))
        entry.detail = book::Correction{};
      std::get<book::Correction>(entry.detail)
          .changes.push_back(
              {{row.whole("plant_id")}, row.text("field"), row.text("stood"), row.text("stands")});
    });
    each(sql::due_answers_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::DueAnswer{row.text("due"), row.maybe_date("until")};
    });
  }

  template <class Take>
  void each(const char* query, Take take) {
    tables_.ask(query).with(first_).with(last_).each([&](const Row& row) {
      if (const auto found = by_id_.find(row.whole("entry_id")); found != by_id_.end())
        take(row, *found->second);
    });
  }

  Tables& tables_;
  std::unordered_map<std::int64_t, book::Entry*> by_id_;
  book::EntryId first_;
  book::EntryId last_;
};

Entries filled(Tables& tables, Statement asked) {
  // A few entries are filled one at a time; many in one sweep over their whole range.
  constexpr std::size_t few = 200;
  Entries entries;
  asked.each([&](const Row& row) { entries.push_back(entry_of(row)); });
  Fill fill(tables, entries);
  if (entries.size() > few) {
    const auto [first, last] = std::ranges::minmax_element(entries, {}, &book::Entry::id);
    fill.between(first->id, last->id);
  } else {
    for (const auto& entry : entries)
      fill.between(entry.id, entry.id);
  }
  return entries;
}

} // namespace

Entries Reading::entries() {
  return filled(tables_, tables_.ask(sql::entries));
}

Entries Reading::entries_between(book::EntryId first, book::EntryId last) {
  return filled(tables_, tables_.ask(sql::entries_between).with(first).with(last));
}

std::vector<book::Link> Reading::links() {
  std::vector<book::Link> links;
  tables_.ask(sql::links).each([&](const Row& row) {
    links.push_back({{row.whole("entry_id")}, row.text("hash")});
  });
  return links;
}

std::optional<book::Link> Reading::last_link() {
  std::optional<book::Link> last;
  tables_.ask(sql::last_link).each([&](const Row& row) {
    last = book::Link{{row.whole("entry_id")}, row.text("hash")};
  });
  return last;
}

Entries Reading::last_entries(int most) {
  return filled(tables_, tables_.ask(sql::last_entries).with(most));
}

Entries Reading::entries_of(book::LotId lot) {
  return filled(tables_, tables_.ask(sql::entries_of_lot).with(lot).with(lot).with(lot));
}

Entries Reading::entries_of(book::ConeId cone) {
  return filled(tables_, tables_.ask(sql::entries_of_cone).with(cone));
}

Entries Reading::entries_of(book::PlantId plant) {
  return filled(tables_, tables_.ask(sql::entries_of_plant).with(plant).with(plant));
}

Entries Reading::standing_entries(book::Verb verb) {
  return filled(tables_, tables_.ask(sql::standing_entries_of_verb).with(book::word(verb)));
}

Result<book::Entry> Reading::entry(book::EntryId id) {
  auto found = filled(tables_, tables_.ask(sql::entry_by_id).with(id));
  if (found.empty())
    return refuse(
        fault(phrase("there is no entry {}", id.value), "The history of a lot lists its entries."));
  return std::move(found.front());
}

std::optional<book::EntryId> Reading::reversed_by(book::EntryId id) {
  const auto found = tables_.ask(sql::reversed_by).with(id).number();
  return found ? std::optional(book::EntryId{*found}) : std::nullopt;
}

} // namespace coneline::store
