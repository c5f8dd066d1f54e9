// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// All registers of a book at once: what lots, entries and routes refer to. A nursery has a few
// hundred of these, so they are read together and looked up in memory.

#include "core/book/cone.h"
#include "core/book/figure.h"
#include "core/book/mix.h"
#include "core/book/place.h"
#include "core/book/plant.h"
#include "core/book/pollen_lot.h"
#include "core/book/pot.h"
#include "core/book/route.h"
#include "core/book/taxon.h"
#include "core/book/title.h"

#include <algorithm>
#include <stdexcept>
#include <vector>

namespace coneline::book {

/// The row with this id. The book's foreign keys make sure it exists; std::out_of_range is a fault
/// of the program.
template <class Row, class RowId>
const Row& row_of(const std::vector<Row>& rows, RowId id) {
  const auto found =
      std::ranges::lower_bound(rows, id, {}, &Row::id); // rows come in the order of their ids
  if (found == rows.end() || found->id != id)
    throw std::out_of_range("a row that the book refers to is missing");
  return *found;
}

/// The row with this name, or null.
template <class Row>
const Row* named(const std::vector<Row>& rows, std::string_view name) {
  const auto found = std::ranges::find(rows, name, &Row::name);
  return found == rows.end() ? nullptr : &*found;
}

/// The row with this code, or null.
template <class Row>
const Row* coded(const std::vector<Row>& rows, const Code& code) {
  const auto found = std::ranges::find(rows, code, &Row::code);
  return found == rows.end() ? nullptr : &*found;
}

/// Each list in the order of its ids.
struct Registers {
  Title title;
  std::vector<Taxon> taxa;
  std::vector<Place> places;
  std::vector<Pot> pots;
  std::vector<Mix> mixes;
  std::vector<Route> routes;
  std::vector<Plant> plants;
  std::vector<PollenLot> pollen_lots;
  std::vector<Cone> cones;
  std::vector<Purchase> purchases;
  std::vector<Figure> figures; ///< by name
  std::vector<PollenStore> pollen_stores;

  [[nodiscard]] const Taxon& taxon(TaxonId id) const { return row_of(taxa, id); }
  [[nodiscard]] const Place& place(PlaceId id) const { return row_of(places, id); }
  [[nodiscard]] const Pot& pot(PotId id) const { return row_of(pots, id); }
  [[nodiscard]] const Mix& mix(MixId id) const { return row_of(mixes, id); }
  [[nodiscard]] const Plant& plant(PlantId id) const { return row_of(plants, id); }
  [[nodiscard]] const PollenLot& pollen_lot(PollenLotId id) const {
    return row_of(pollen_lots, id);
  }
  [[nodiscard]] const Cone& cone(ConeId id) const { return row_of(cones, id); }
  [[nodiscard]] const Purchase& purchase(PurchaseId id) const { return row_of(purchases, id); }
  /// The route of a taxon, or null.
  [[nodiscard]] const Route* route(TaxonId id) const {
    const auto found = std::ranges::find(routes, id, &Route::taxon);
    return found == routes.end() ? nullptr : &*found;
  }
};

} // namespace coneline::book
