// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Finds what a name or code means in the book, or makes a register row of that name. Private to
// this room.

#include "core/work/bring_in.h"

namespace coneline::work {

class KnownOrNew {
 public:
  KnownOrNew(store::Writing& writing, BroughtAll& news)
      : writing_(writing), registers_(writing.registers()), news_(news) {}

  [[nodiscard]] const book::Registers& registers() const { return registers_; }

  Result<book::TaxonId> taxon(const std::string& name);
  /// A parent by code or name; one the book lacks is made of the taxon, and of the sex.
  Result<book::Plant> plant(const std::string& said, const std::string& taxon, book::Sex sex,
                            book::Certainty taxon_certainty);
  Result<book::Plant> add(const book::Plant& plant);
  /// Nothing where nothing is said.
  Result<std::optional<book::PlaceId>> place(const std::string& said);
  Result<book::Pot> pot(const BroughtIn& line);
  /// Pollen of a male for a pass on a day.
  Result<book::PollenLotId> pollen(const book::Plant& male, Date day);

 private:
  Result<void> shows_its_sex(book::Plant& plant, book::Sex sex);

  store::Writing& writing_;
  book::Registers registers_;
  BroughtAll& news_;
};

} // namespace coneline::work
