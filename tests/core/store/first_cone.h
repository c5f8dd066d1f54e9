// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A small book to start tests from: one female with one cone of 500 seeds, harvested; a male with
// pollen; a bench, a tray, two pots, a mix and a route.

#include "core/store/book.h"
#include "tests/core/day.h"
#include "tests/core/store/scratch.h"

namespace coneline::tests {

struct FirstCone {
  Code mother;
  Code father;
  Code pollen;
  Code cone;
  Code batch;
  Code bench;
  book::LotId batch_id;
  book::EntryId harvest;
};

inline Result<FirstCone> write_first_cone(store::Writing& writing) {
  FirstCone made;
  book::Taxon taxon;
  taxon.name = "Cycas revoluta";
  taxon.ripening = {book::Range{10, 14}, "common practice, no source"};
  taxon.after_ripening = {book::Range{0, 6}, "common practice, no source"};
  const auto taxon_id = writing.put(taxon).value();
  const auto house = writing
                         .put(book::Place{{},
                                          writing.next_code(Kind::place).value(),
                                          "House",
                                          book::PlaceKind::house,
                                          {},
                                          0,
                                          0,
                                          book::Light::part_shade,
                                          1})
                         .value();
  made.bench = writing.next_code(Kind::place).value();
  static_cast<void>(writing
                        .put(book::Place{{},
                                         made.bench,
                                         "Bench",
                                         book::PlaceKind::bench,
                                         house,
                                         3000,
                                         1200,
                                         book::Light::part_shade,
                                         2})
                        .value());
  const auto tray =
      writing.put(book::Pot{{}, "seed tray", 5, book::Shape::rectangular, 400, 300, 40, "measured"})
          .value();
  const auto small =
      writing.put(book::Pot{{}, "1 L deep", 1, book::Shape::round, 100, 100, 1, "measured"})
          .value();
  static_cast<void>(
      writing.put(book::Pot{{}, "10 L", 10, book::Shape::round, 280, 280, 1, "measured"}).value());
  const auto mix =
      writing
          .put(book::Mix{
              {}, "gritty", 0.15, 0.02, "measured", {{"perlite", 4}, {"peat", 3}, {"sand", 3}}})
          .value();
  book::Route route{{}, taxon_id, 0.7, {1, 6}, "common practice, no source", {}};
  route.steps = {{tray, mix, {6, 12}, 0.9, book::Light::part_shade, ""},
                 {small, mix, {12, 24}, 0.9, book::Light::part_shade, ""}};
  static_cast<void>(writing.put(route).value());
  book::Plant plant;
  plant.code = made.mother = writing.next_code(Kind::plant).value();
  plant.name = "Mother";
  plant.taxon = taxon_id;
  plant.sex = book::Sex::female;
  const auto mother = writing.put(plant).value();
  plant.code = made.father = writing.next_code(Kind::plant).value();
  plant.name = "Father";
  plant.sex = book::Sex::male;
  const auto father = writing.put(plant).value();
  made.pollen = writing.next_code(Kind::pollen).value();
  static_cast<void>(
      writing
          .put(book::PollenLot{{}, made.pollen, father, day("2025-01-20"), 3.5, "refrigerator", ""})
          .value());
  made.cone = writing.next_code(Kind::cone).value();
  const auto cone = writing.put(book::Cone{{}, made.cone, mother, day("2025-01-10"), ""}).value();
  book::Lot batch;
  batch.code = made.batch = writing.next_code(Kind::batch).value();
  batch.origin = cone;
  made.batch_id = writing.add(batch).value();
  book::Entry entry;
  entry.verb = book::Verb::harvest;
  entry.date = day("2026-02-01");
  entry.lot = made.batch_id;
  entry.movements = {{{made.batch_id, book::State::cone},
                      {made.batch_id, book::State::unsorted},
                      Count::sure(500)}};
  return writing.enter(entry).map([&](book::EntryId id) {
    made.harvest = id;
    return made;
  });
}

/// The book at this path.
inline store::Book make_first_cone(const std::filesystem::path& path, FirstCone& made) {
  auto book = store::Book::make(path, {"Test nursery", 17, true, day("2026-01-01")});
  made = book.value().write(write_first_cone).value();
  return std::move(book).value();
}

} // namespace coneline::tests
