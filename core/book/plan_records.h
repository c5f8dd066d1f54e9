// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a book holds for the season plan beside its registers.

#include "core/book/offer.h"
#include "core/book/taxon.h"

namespace coneline::book {

/// A lot that is to stand in a place, whatever the plan would rather.
struct Pin {
  LotId lot;
  PlaceId place;
};

using TargetId = Id<struct TargetTag>;

/// Plants of a cross to have in a pot by the end of a month.
struct Target {
  TargetId id;
  std::string cross;
  TaxonId taxon;
  PotId pot;
  std::int64_t plants = 0;
  Date by; ///< any day of the month
  double assurance = 0.9;
};

/// Fails on a target without cross, plants, or an assurance outside 0 to 1.
Result<void> is_sound(const Target& target);

/// What a place bears and how cold it gets there.
struct PlaceLimits {
  PlaceId place;
  std::optional<double> kilograms_a_square_metre;
  Frost frost = Frost::not_known; ///< the frost that comes there; none: it is kept free of it
};

/// Fails on a load that is none.
Result<void> is_sound(const PlaceLimits& limits);

/// Each list in the order of its ids; pins in that of their lots.
struct PlanRecords {
  std::vector<Offer> offers;
  std::vector<Good> goods;
  std::vector<Target> targets;
  std::vector<Pin> pins;
  std::vector<PlaceLimits> limits; ///< by place
};

} // namespace coneline::book
