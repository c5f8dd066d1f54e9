// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What rows are called in other files: a code, a name, or an entry's number. Keys go both ways: to
// write an id as its key, and to find the id a key stands for.

#include "core/exchange/rows.h"

#include <unordered_map>

namespace coneline::exchange {

/// How rows of one kind are called. `made_of` are the letters of their codes; without any they go
/// by name.
template <class Id>
struct Called;
template <>
struct Called<book::TaxonId> {
  using Row = book::Taxon;
  static constexpr std::string_view what = "taxon", column = "name", letters = "";
};
template <>
struct Called<book::PotId> {
  using Row = book::Pot;
  static constexpr std::string_view what = "pot", column = "name", letters = "";
};
template <>
struct Called<book::MixId> {
  using Row = book::Mix;
  static constexpr std::string_view what = "mix", column = "name", letters = "";
};
template <>
struct Called<book::PlaceId> {
  using Row = book::Place;
  static constexpr std::string_view what = "place", column = "code", letters = "H";
};
template <>
struct Called<book::PlantId> {
  using Row = book::Plant;
  static constexpr std::string_view what = "plant", column = "code", letters = "P";
};
template <>
struct Called<book::PollenLotId> {
  using Row = book::PollenLot;
  static constexpr std::string_view what = "pollen lot", column = "code", letters = "L";
};
template <>
struct Called<book::ConeId> {
  using Row = book::Cone;
  static constexpr std::string_view what = "cone", column = "code", letters = "C";
};
template <>
struct Called<book::PurchaseId> {
  using Row = book::Purchase;
  static constexpr std::string_view what = "purchase", column = "code", letters = "Q";
};
template <>
struct Called<book::LotId> {
  using Row = book::Lot;
  static constexpr std::string_view what = "lot", column = "code", letters = "BTG";
};
template <>
struct Called<book::EntryId> {
  using Row = book::Entry;
  static constexpr std::string_view what = "entry", column = "entry", letters = "";
};

template <>
struct Called<book::RoundId> {
  using Row = book::Round;
  static constexpr std::string_view what = "round", column = "round", letters = "";
};

/// Rows that go by a number of their own.
template <class Id>
inline constexpr bool numbered =
    std::is_same_v<Id, book::EntryId> || std::is_same_v<Id, book::RoundId>;

template <class Id>
struct KeysOf {
  std::unordered_map<std::string, Id> ids;
  std::unordered_map<Id, std::string> texts;
  bool whole = true; ///< false where the file could not be read, so that a missing key proves
                     ///< nothing
};

class Keys {
 public:
  template <class Id>
  KeysOf<Id>& of() {
    return std::get<KeysOf<Id>>(all_);
  }
  template <class Id>
  [[nodiscard]] const KeysOf<Id>& of() const {
    return std::get<KeysOf<Id>>(all_);
  }
  template <class Id>
  void add(std::string key, Id id) {
    of<Id>().texts.insert_or_assign(id, key);
    of<Id>().ids.emplace(std::move(key), id);
  }
  /// The key of a row that is there; std::out_of_range is a fault of the program.
  template <class Id>
  [[nodiscard]] const std::string& text(Id id) const {
    return of<Id>().texts.at(id);
  }

 private:
  std::tuple<KeysOf<book::TaxonId>, KeysOf<book::PotId>, KeysOf<book::MixId>, KeysOf<book::PlaceId>,
             KeysOf<book::PlantId>, KeysOf<book::PollenLotId>, KeysOf<book::ConeId>,
             KeysOf<book::PurchaseId>, KeysOf<book::LotId>, KeysOf<book::EntryId>,
             KeysOf<book::RoundId>>
      all_;
};

/// For a kind of row that others refer to, the type of its id.
template <class Row>
struct IdOf {
  using Id = void;
};
template <class Row>
requires requires {
  Called<decltype(Row::id)>::what;
}
struct IdOf<Row> {
  using Id = decltype(Row::id);
};

} // namespace coneline::exchange
