// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Row numbers in the book, each kind a type of its own so that a cone is never taken for a tray. 0
// means not yet stored.

#include <compare>
#include <cstdint>
#include <functional>

namespace coneline::book {

template <class Of>
struct Id {
  std::int64_t value = 0;

  [[nodiscard]] bool stored() const { return value > 0; }
  auto operator<=>(const Id&) const = default;
};

using TaxonId = Id<struct TaxonTag>;
using PlantId = Id<struct PlantTag>;
using PollenLotId = Id<struct PollenLotTag>;
using PollenStoreId = Id<struct PollenStoreTag>;
using ConeId = Id<struct ConeTag>;
using PurchaseId = Id<struct PurchaseTag>;
using PlaceId = Id<struct PlaceTag>;
using PotId = Id<struct PotTag>;
using MixId = Id<struct MixTag>;
using RouteId = Id<struct RouteTag>;
using LotId = Id<struct LotTag>;
using EntryId = Id<struct EntryTag>;

} // namespace coneline::book

template <class Of>
struct std::hash<coneline::book::Id<Of>> {
  std::size_t operator()(coneline::book::Id<Of> id) const noexcept {
    return std::hash<std::int64_t>{}(id.value);
  }
};
