// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Finds what a name or code means in the book, or makes a register row of that name. Private to
// this room.

#include "core/book/registers.h"
#include "core/store/writing.h"

#include <optional>
#include <string>
#include <vector>

namespace coneline::work {

/// A parent as it was said, and what it is where the book lacks it.
struct ParentSaid {
  std::string said; ///< code or name; a plant without a name is always a new one
  std::string taxon;
  book::Sex sex = book::Sex::not_known;
  book::Certainty taxon_certainty = book::Certainty::certain;
  std::string origin{};
};

/// A tray or pot by name, and its size where the book lacks it.
struct PotSaid {
  std::string name;
  std::optional<double> litres;
  std::optional<double> width_mm;
  book::Shape shape = book::Shape::round;
};

class KnownOrNew {
 public:
  /// What it made, by name.
  struct News {
    std::vector<std::string> taxa;
    std::vector<std::string> plants;
    std::vector<std::string> places;
    std::vector<std::string> pots;
  };

  /// `note` stands in the rows that are made: where they come from. A record, in the words of the
  /// book.
  KnownOrNew(store::Writing& writing, std::string note)
      : writing_(writing), registers_(writing.registers()), note_(std::move(note)) {}

  [[nodiscard]] const book::Registers& registers() const { return registers_; }
  [[nodiscard]] const News& news() const { return news_; }

  Result<book::TaxonId> taxon(const std::string& name);
  /// One of the book of unknown sex is of this one from now on. Fails: of the other sex.
  Result<book::Plant> plant(const ParentSaid& parent);
  Result<book::Plant> add(const book::Plant& plant);
  /// Nothing where nothing is said.
  Result<std::optional<book::PlaceId>> place(const std::string& said);
  Result<book::Pot> pot(const PotSaid& meant);
  /// Pollen of a male for a pass on a day.
  Result<book::PollenLotId> pollen(const book::Plant& male, Date day);

 private:
  Result<void> shows_its_sex(book::Plant& plant, book::Sex sex);

  store::Writing& writing_;
  book::Registers registers_;
  std::string note_;
  News news_;
};

} // namespace coneline::work
