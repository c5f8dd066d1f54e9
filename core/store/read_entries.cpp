// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/phrase.h"
#include "core/store/filling.h"
#include "core/store/reading.h"
#include "core/store/tables.h"
#include "sql.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <limits>
#include <map>

namespace coneline::store {

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

book::Movement movement_of(const Row& row) {
  return {{book::LotId{row.whole("from_lot")}, row.one_of<book::State>("from_state")},
          {book::LotId{row.whole("to_lot")}, row.one_of<book::State>("to_state")},
          Count::sure(row.whole("count"))};
}

namespace {

/// What an entry of this verb may have noted: the place of it among Detail's alternatives.
std::size_t may_note(book::Verb verb) {
  using book::Verb;
  switch (verb) {
  case Verb::pollinate:
    return book::Detail(book::Pollination{}).index();
  case Verb::harvest:
    return book::Detail(book::Weighing{}).index();
  case Verb::clean:
    return book::Detail(book::Cleaning{}).index();
  case Verb::sort:
  case Verb::open:
    return book::Detail(book::Sorting{}).index();
  case Verb::store:
    return book::Detail(book::Keeping{}).index();
  case Verb::sell:
    return book::Detail(book::Sale{}).index();
  case Verb::check_scales:
    return book::Detail(book::ConeLook{}).index();
  case Verb::watch_male_cone:
  case Verb::plan_move:
    return book::Detail(book::PlantNote{}).index();
  case Verb::collect_pollen:
  case Verb::test_pollen:
  case Verb::discard_pollen:
    return book::Detail(book::PollenNote{}).index();
  case Verb::correct:
    return book::Detail(book::Correction{}).index();
  case Verb::put_off:
  case Verb::dismiss:
    return book::Detail(book::DueAnswer{}).index();
  default:
    return 0; // nothing but its movements
  }
}

/// Entries by their numbers: a row of places where the numbers lie close together.
class ById {
 public:
  explicit ById(Entries& entries) {
    for (const auto& entry : entries) {
      first_ = std::min(first_, entry.id.value);
      last_ = std::max(last_, entry.id.value);
    }
    const auto span = last_ - first_ + 1;
    close_ = span <= 4 * static_cast<std::int64_t>(entries.size());
    if (close_)
      row_.resize(static_cast<std::size_t>(last_ - first_ + 1));
    for (auto& entry : entries)
      (close_ ? row_[at(entry.id.value)] : map_[entry.id.value]) = &entry;
  }

  [[nodiscard]] book::Entry* find(std::int64_t id) const {
    if (close_)
      return id < first_ || id > last_ ? nullptr : row_[at(id)];
    const auto found = map_.find(id);
    return found == map_.end() ? nullptr : found->second;
  }
  [[nodiscard]] book::EntryId first() const { return {first_}; }
  [[nodiscard]] book::EntryId last() const { return {last_}; }
  [[nodiscard]] bool close() const { return close_; }

 private:
  [[nodiscard]] std::size_t at(std::int64_t id) const {
    return static_cast<std::size_t>(id - first_);
  }

  std::int64_t first_ = std::numeric_limits<std::int64_t>::max();
  std::int64_t last_ = 0;
  bool close_ = false;
  std::vector<book::Entry*> row_;
  std::unordered_map<std::int64_t, book::Entry*> map_;
};

/// Puts movements and details into the entries they belong to.
class Fill {
 public:
  Fill(Tables& tables, Entries& entries) : tables_(tables), by_id_(entries) {}

  /// All that stands of the entries between their first and last.
  void everything() {
    between(by_id_.first(), by_id_.last());
    movements();
    for (std::size_t kind = 1; kind < std::variant_size_v<book::Detail>; ++kind)
      details(kind);
  }

  /// Of entries that lie apart: what their verbs may have noted.
  void apart(const Entries& entries) {
    if (by_id_.close()) {
      between(by_id_.first(), by_id_.last());
      movements();
    } else {
      for (const auto& entry : entries) {
        between(entry.id, entry.id);
        movements();
      }
    }
    details_of(entries);
  }

  void details_of(const Entries& entries) {
    constexpr std::size_t few = 8;
    std::map<std::size_t, std::vector<book::EntryId>> of_kind;
    for (const auto& entry : entries)
      if (const auto kind = may_note(entry.verb); kind != 0)
        of_kind[kind].push_back(entry.id);
    for (const auto& [kind, ids] : of_kind) {
      if (ids.size() > few) {
        const auto [first, last] = std::ranges::minmax(ids);
        between(first, last);
        details(kind);
      } else {
        for (const auto& id : ids) {
          between(id, id);
          details(kind);
        }
      }
    }
  }

 private:
  void between(book::EntryId first, book::EntryId last) {
    first_ = first;
    last_ = last;
  }

  void movements() {
    each(sql::movements_between,
         [](const Row& row, book::Entry& entry) { entry.movements.push_back(movement_of(row)); });
  }

  void details(std::size_t kind) {
    static constexpr std::array<void (Fill::*)(), std::variant_size_v<book::Detail>> readers{
        nullptr,
        &Fill::pollinations,
        &Fill::weighings,
        &Fill::cleanings,
        &Fill::sortings,
        &Fill::keepings,
        &Fill::sales,
        &Fill::cone_looks,
        &Fill::plant_notes,
        &Fill::pollen_notes,
        &Fill::corrections,
        &Fill::due_answers};
    (this->*readers[kind])();
  }

  void pollinations() {
    each(sql::pollinations_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::Pollination{row.one_of<book::PollinationMethod>("method"), {}};
    });
    each(sql::pollination_pollen_between, [](const Row& row, book::Entry& entry) {
      std::get<book::Pollination>(entry.detail)
          .pollen.push_back(
              {row.maybe_id<book::PollenLotId>("pollen_lot_id"), row.maybe_real("millilitres")});
    });
  }
  void weighings() {
    each(sql::weighings_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::Weighing{{}, row.real("grams")};
    });
    each(sql::weighing_hundreds_between, [](const Row& row, book::Entry& entry) {
      std::get<book::Weighing>(entry.detail).hundreds.push_back(row.real("grams"));
    });
  }
  void cleanings() {
    each(sql::cleanings_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::Cleaning{static_cast<int>(row.whole("soak_days"))};
    });
  }
  void sortings() {
    each(sql::sortings_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::Sorting{row.one_of<book::SeedTest>("test")};
    });
  }
  void keepings() {
    each(sql::keepings_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::Keeping{row.text("store"), row.maybe_real("celsius"),
                                   row.maybe_date("until_from"), row.maybe_date("until_to")};
    });
  }
  void sales() {
    each(sql::sales_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::Sale{row.text("buyer"), row.maybe_whole("cents")};
    });
  }
  void cone_looks() {
    each(sql::cone_looks_between, [](const Row& row, book::Entry& entry) {
      entry.detail =
          book::ConeLook{row.one_of<book::Scales>("scales"), row.maybe_whole("fertile_scales")};
    });
  }
  void plant_notes() {
    each(sql::plant_notes_between, [](const Row& row, book::Entry& entry) {
      book::PlantNote note{{row.whole("plant_id")}, {}, row.maybe_id<book::PlaceId>("to_place_id")};
      if (row.has("male_cone"))
        note.male_cone = row.one_of<book::MaleCone>("male_cone");
      entry.detail = note;
    });
  }
  void pollen_notes() {
    each(sql::pollen_notes_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::PollenNote{{row.whole("pollen_lot_id")},
                                      row.maybe_real("millilitres"),
                                      row.maybe_whole("counted"),
                                      row.maybe_whole("germinated"),
                                      row.text("conditions")};
    });
  }
  void corrections() {
    each(sql::corrections_between, [](const Row& row, book::Entry& entry) {
      if (!std::holds_alternative<book::Correction>(entry.detail))
        entry.detail = book::Correction{};
      std::get<book::Correction>(entry.detail)
          .changes.push_back(
              {{row.whole("plant_id")}, row.text("field"), row.text("stood"), row.text("stands")});
    });
  }
  void due_answers() {
    each(sql::due_answers_between, [](const Row& row, book::Entry& entry) {
      entry.detail = book::DueAnswer{row.text("due"), row.maybe_date("until")};
    });
  }

  template <class Take>
  void each(const char* query, Take take) {
    tables_.ask(query).with(first_).with(last_).each([&](const Row& row) {
      if (auto* entry = by_id_.find(row.whole("entry_id")))
        take(row, *entry);
    });
  }

  Tables& tables_;
  ById by_id_;
  book::EntryId first_;
  book::EntryId last_;
};

/// Whether all entries of a range were asked for.
enum class Range { whole, some };

/// Of a whole range everything is read that stands of it, also what its verbs do not note: the
/// proof looks at it. Of some entries, what their verbs may have noted.
Entries filled(Tables& tables, Statement asked, Range range) {
  Entries entries;
  asked.each([&](const Row& row) { entries.push_back(entry_of(row)); });
  if (entries.empty())
    return entries;
  Fill fill(tables, entries);
  if (range == Range::whole)
    fill.everything();
  else
    fill.apart(entries);
  return entries;
}

} // namespace

void fill_details(Tables& tables, Entries& entries) {
  if (!entries.empty())
    Fill(tables, entries).details_of(entries);
}

Entries Reading::entries() {
  return filled(tables_, tables_.ask(sql::entries), Range::whole);
}

Entries Reading::entries_between(book::EntryId first, book::EntryId last) {
  return filled(tables_, tables_.ask(sql::entries_between).with(first).with(last), Range::whole);
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
  return filled(tables_, tables_.ask(sql::last_entries).with(most), Range::some);
}

Entries Reading::entries_of(book::LotId lot) {
  return filled(tables_, tables_.ask(sql::entries_of_lot).with(lot).with(lot).with(lot),
                Range::some);
}

Entries Reading::entries_of(book::ConeId cone) {
  return filled(tables_, tables_.ask(sql::entries_of_cone).with(cone), Range::some);
}

Entries Reading::entries_of(book::PlantId plant) {
  return filled(tables_, tables_.ask(sql::entries_of_plant).with(plant).with(plant), Range::some);
}

Entries Reading::standing_entries(book::Verb verb) {
  return filled(tables_, tables_.ask(sql::standing_entries_of_verb).with(book::word(verb)),
                Range::some);
}

Result<book::Entry> Reading::entry(book::EntryId id) {
  auto found = filled(tables_, tables_.ask(sql::entry_by_id).with(id), Range::some);
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
