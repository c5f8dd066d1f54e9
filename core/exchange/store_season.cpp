// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/store_season.h"

#include "core/base/phrase.h"
#include "core/exchange/fields.h"

#include <fmt/format.h>

#include <map>
#include <set>
#include <tuple>

namespace coneline::exchange {

namespace {

/// The column that is left to be at fault when a row of sound fields is refused.
template <class Row>
constexpr std::string_view blamed = "code";
template <>
constexpr std::string_view blamed<book::Taxon> = "name";
template <>
constexpr std::string_view blamed<book::Place> = "name";
template <>
constexpr std::string_view blamed<book::PollenStore> = "name";
template <>
constexpr std::string_view blamed<book::Pot> = "width_mm";
template <>
constexpr std::string_view blamed<book::Mix> = "name";
template <>
constexpr std::string_view blamed<book::Route> = "taxon";
template <>
constexpr std::string_view blamed<book::LabelStock> = "page_width_mm";
template <>
constexpr std::string_view blamed<book::LabelLayout> = "name";
template <>
constexpr std::string_view blamed<book::PrinterScale> = "across_mm";
template <>
constexpr std::string_view blamed<book::Offer> = "litres";
template <>
constexpr std::string_view blamed<book::Good> = "name";
template <>
constexpr std::string_view blamed<book::Target> = "assurance";
template <>
constexpr std::string_view blamed<book::PlaceLimits> = "place";
template <>
constexpr std::string_view blamed<book::Pin> = "place";
template <>
constexpr std::string_view blamed<book::Lot> = "pot";

class StoreRegisters {
 public:
  StoreRegisters(const Sheets& sheets, Stored& stored, store::Writing& writing, Faults& faults,
                 RowsDone& done)
      : sheets_(sheets), stored_(stored), writing_(writing), faults_(faults), done_(done) {}

  /// False where the book has no sound cover, so that no code can be judged.
  bool run() {
    const auto& titles = sheet<book::Title>().rows;
    if (titles.size() != 1 || !titles.front().sound)
      return false;
    series_ = titles.front().row.series;
    if (auto put = writing_.put(titles.front().row); !put) {
      faults_.add(put.error().at(where(titles.front(), "series")));
      return false;
    }
    put_all<book::Taxon>();
    put_places();
    put_all<book::Pot>();
    put_mixes();
    put_routes();
    put_plants();
    put_all<book::PollenStore>();
    put_all<book::PollenLot>();
    put_all<book::Cone>();
    put_all<book::Purchase>();
    put_all<book::Lot>();
    for (const auto& each : sheet<book::Figure>().rows)
      if (auto put = writing_.put(each.row); !put)
        faults_.add(put.error().at(where(each, "value")));
    put_temperatures();
    put_all<book::LabelStock>();
    put_all<book::LabelLayout>();
    put_all<book::PrinterScale>();
    put_each_once<book::Offer>();
    put_each_once<book::Good>();
    put_all<book::Target>();
    put_one_for<book::Pin>(&book::Pin::lot, "this lot is pinned already");
    put_one_for<book::PlaceLimits>(&book::PlaceLimits::place,
                                   "the limits of this place stand already");
    if (faults_.none()) // else a print may be blamed for a lot that is missing already
      put_all<book::LabelPrint>();
    return true;
  }

 private:
  template <class Row>
  const Sheet<Row>& sheet() const {
    return std::get<Sheet<Row>>(sheets_);
  }

  template <class Row>
  void put(Lined<Row> each) {
    if (!done_.go_on())
      return;
    const auto id = each.row.id;
    WithStoredIds io(stored_);
    fields(io, each.row);
    if (!each.sound || !of_this_series(each) || !io.whole())
      return;
    each.row.id = {};
    auto put = [&] {
      if constexpr (std::is_same_v<Row, book::Lot>)
        return writing_.add(each.row);
      else
        return writing_.put(each.row);
    }();
    if (!put)
      faults_.add(put.error().at(where(each, blamed<Row>)));
    else if constexpr (!std::is_void_v<typename IdOf<Row>::Id>)
      stored_.add(id, *put);
  }

  template <class Row>
  void put_all() {
    for (const auto& each : sheet<Row>().rows)
      put(each);
  }

  /// A second row of the same offer or good would take the place of the first without a word.
  template <class Row>
  void put_each_once() {
    std::set<decltype(key(Row{}))> there;
    for (const auto& each : sheet<Row>().rows)
      if (!each.sound || there.insert(key(each.row)).second)
        put(each);
      else
        faults_.add(fault("the very same stands above already", "Each is written once.")
                        .at(where(each, blamed<Row>)));
  }
  static auto key(const book::Offer& offer) {
    return std::tuple(offer.good, offer.supplier, offer.form, offer.litres);
  }
  static auto key(const book::Good& good) { return good.name; }

  /// Of what has no id of its own but is one for a lot or a place.
  template <class Row, class Of>
  void put_one_for(Of Row::*of, const char* already) {
    std::set<Of> there;
    for (auto each : sheet<Row>().rows) {
      const auto own = each.row.*of;
      WithStoredIds io(stored_);
      fields(io, each.row);
      if (!each.sound || !io.whole())
        continue;
      if (!there.insert(own).second)
        faults_.add(fault(already, "Each is written once.").at(where(each, blamed<Row>)));
      else if (auto put = writing_.put(each.row); !put)
        faults_.add(put.error().at(where(each, blamed<Row>)));
    }
  }

  template <class Row>
  bool of_this_series(const Lined<Row>& each) {
    if constexpr (requires { each.row.code; })
      if (each.row.code.series() != series_) {
        faults_.add(fault(phrase("the code {} is of series {}, the book's is {}",
                                 each.row.code.text(), each.row.code.series(), series_),
                          "Codes begin with the series that book.csv names.")
                        .at(where(each, "code")));
        return false;
      }
    return true;
  }

  void put_temperatures() {
    for (const auto& each : sheet<book::Temperature>().rows) {
      if (!done_.go_on())
        return;
      const auto place = stored_.find(each.row.place);
      if (!each.sound || !place)
        continue;
      auto reading = each.row;
      reading.place = *place;
      if (auto put = writing_.add(reading); !put)
        faults_.add(put.error().at(where(each, "at")));
    }
  }

  /// A place may stand above the one it is within, so the latter is put in afterwards.
  void put_places() {
    const auto& rows = sheet<book::Place>().rows;
    for (auto each : rows) {
      each.row.within.reset();
      put(each);
    }
    for (auto each : rows) {
      const auto id = stored_.find(each.row.id);
      if (!id || !each.row.within)
        continue;
      if (in_a_circle(each.row)) {
        faults_.add(fault(phrase("the place {} would be within itself", each.row.code.text()),
                          "A bay is within a bench, a bench within a house.")
                        .at(where(each, "within")));
        continue;
      }
      const auto within = stored_.find(*each.row.within);
      each.row.id = *id;
      each.row.within = within;
      if (auto put = writing_.put(each.row); !put)
        faults_.add(put.error().at(where(each, "within")));
    }
  }

  [[nodiscard]] bool in_a_circle(const book::Place& place) const {
    const auto& rows = sheet<book::Place>().rows;
    std::set<book::PlaceId> passed{place.id};
    for (auto next = place.within; next && next->stored();
         next = rows[static_cast<std::size_t>(next->value - 1)].row.within)
      if (!passed.insert(*next).second)
        return true;
    return false;
  }

  /// The rows that belong to each parent; nothing for a parent with a row at fault.
  template <class Row, class Id>
  std::map<Id, std::vector<const Lined<Row>*>> children(Id Row::*parent) const {
    std::map<Id, std::vector<const Lined<Row>*>> found;
    for (const auto& each : sheet<Row>().rows)
      found[each.row.*parent].push_back(&each);
    return found;
  }
  template <class Row>
  static bool sound(const std::vector<const Lined<Row>*>& rows) {
    return std::ranges::all_of(rows, [](const auto* each) { return each->sound; });
  }

  void put_mixes() {
    auto parts = children(&PartRow::mix);
    for (auto each : sheet<book::Mix>().rows) {
      const auto& own = parts[each.row.id];
      each.sound = each.sound && sound(own) && sheet<PartRow>().whole;
      for (const auto* part : own)
        each.row.parts.push_back(part->row.part);
      put(each);
    }
  }

  void put_routes() {
    auto steps = children(&StepRow::taxon);
    std::set<book::TaxonId> with_route;
    for (auto each : sheet<book::Route>().rows) {
      const auto& own = steps[each.row.taxon];
      with_route.insert(each.row.taxon);
      each.sound = each.sound && sound(own) && sheet<StepRow>().whole;
      for (const auto* step : own) {
        WithStoredIds io(stored_);
        auto row = step->row;
        fields(io, row);
        each.sound = each.sound && io.whole() && in_turn(*step, each.row.steps.size() + 1);
        each.row.steps.push_back(row.what);
      }
      put(each);
    }
    for (const auto& each : sheet<StepRow>().rows)
      if (each.sound && sheet<book::Route>().whole && !with_route.contains(each.row.taxon))
        faults_.add(fault("a step of a taxon without a route", "Add the taxon to routes.csv.")
                        .at(where(each, "taxon")));
  }

  bool in_turn(const Lined<StepRow>& step, std::size_t expected) {
    if (static_cast<std::size_t>(step.row.step) == expected)
      return true;
    if (step.sound)
      faults_.add(fault(phrase("step {} where step {} is expected", step.row.step, expected),
                        "The steps of a route stand in their order, from 1.")
                      .at(where(step, "step")));
    return false;
  }

  void put_plants() {
    auto papers = children(&PaperRow::plant);
    for (auto each : sheet<book::Plant>().rows) {
      const auto& own = papers[each.row.id];
      // A paper at fault is told by itself; the plant is put all the same, since others need it.
      for (const auto* paper : own)
        each.row.papers.push_back(paper->row.paper);
      auto alone = each;
      alone.row.seed_parent.reset();
      alone.row.pollen_parent.reset();
      put(alone);
    }
    put_parents(papers);
  }

  /// A plant may stand above its parents, so these are put in afterwards.
  void put_parents(std::map<book::PlantId, std::vector<const Lined<PaperRow>*>>& papers) {
    for (auto each : sheet<book::Plant>().rows) {
      const auto id = stored_.find(each.row.id);
      if (!id || (!each.row.seed_parent && !each.row.pollen_parent))
        continue;
      for (const auto* paper : papers[each.row.id])
        each.row.papers.push_back(paper->row.paper);
      WithStoredIds io(stored_);
      fields(io, each.row);
      each.row.id = *id;
      if (!io.whole())
        continue;
      if (auto put = writing_.put(each.row); !put)
        faults_.add(
            put.error().at(where(each, each.row.seed_parent ? "seed_parent" : "pollen_parent")));
    }
  }

  const Sheets& sheets_;
  Stored& stored_;
  store::Writing& writing_;
  Faults& faults_;
  RowsDone& done_;
  int series_ = 0;
};

std::size_t rows_of(const Sheets& sheets) {
  std::size_t rows = 0;
  each_sheet(sheets, [&](const auto& sheet) { rows += sheet.rows.size(); });
  return rows;
}

} // namespace

std::size_t store_season(const Sheets& sheets, store::Writing& writing, Faults& faults,
                         const Progress& progress) {
  Stored stored;
  RowsDone done(progress, rows_of(sheets));
  if (!StoreRegisters(sheets, stored, writing, faults, done).run())
    return std::get<Sheet<book::Entry>>(sheets).rows.size();
  const auto not_judged = store_entries(sheets, stored, writing, faults, done);
  if (!done.go_on(0))
    return not_judged;
  store_rounds(sheets, stored, writing, faults);
  if (faults.none())
    check_links(sheets, stored, writing, faults);
  done.end();
  return not_judged;
}

} // namespace coneline::exchange
