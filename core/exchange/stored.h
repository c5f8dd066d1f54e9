// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// From the row numbers within a folder to the ids that the book gave.

#include "core/exchange/keys.h"

namespace coneline::exchange {

class Stored {
 public:
  template <class Id>
  void add(Id in_folder, Id in_book) {
    std::get<Map<Id>>(all_).emplace(in_folder, in_book);
  }
  template <class Id>
  [[nodiscard]] std::optional<Id> find(Id in_folder) const {
    const auto& map = std::get<Map<Id>>(all_);
    const auto found = map.find(in_folder);
    return found == map.end() ? std::nullopt : std::optional(found->second);
  }

 private:
  template <class Id>
  using Map = std::unordered_map<Id, Id>;
  std::tuple<Map<book::TaxonId>, Map<book::PotId>, Map<book::MixId>, Map<book::PlaceId>,
             Map<book::PlantId>, Map<book::PollenLotId>, Map<book::ConeId>, Map<book::PurchaseId>,
             Map<book::LotId>, Map<book::EntryId>, Map<book::RoundId>>
      all_;
};

/// Walks over a row's fields and puts the book's ids in.
class WithStoredIds {
 public:
  explicit WithStoredIds(const Stored& stored) : stored_(stored) {}

  /// False where the row refers to one that did not get into the book.
  [[nodiscard]] bool whole() const { return whole_; }

  template <class Column, class Value, class... RuleOrKind>
  void field(const Column&, Value& value, RuleOrKind...) {
    change(value);
  }
  template <class Column>
  void lot_code(const Column&, Code&) {}
  template <class Column>
  void any_code(const Column&, Code&) {}
  template <class Column, class Id>
  void own_number(const Column&, Id&) {}

 private:
  template <class Value>
  void change(Value&) {}
  template <class Of>
  void change(book::Id<Of>& id) {
    const auto found = stored_.find(id);
    whole_ = whole_ && found;
    id = found.value_or(id);
  }
  template <class Of>
  void change(std::optional<book::Id<Of>>& id) {
    if (id)
      change(*id);
  }
  void change(book::Origin& origin) {
    std::visit([&](auto& id) { change(id); }, origin);
  }

  const Stored& stored_;
  bool whole_ = true;
};

} // namespace coneline::exchange
