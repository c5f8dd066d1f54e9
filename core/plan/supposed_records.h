// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What of a supposition can be written to the book when the grower accepts it, and what cannot.
//
//   survival, mix of a step      the route
//   a mix of other parts, new    the mix
//   a place more                 a new place
//   potting months, sold after   figures of the book
//   cones, sowings, pace, a place less: a supposition is no record of them; it is said why
//
// The records are what differs after the changes were made, so what is written is what was
// supposed.

#include "core/plan/supposed.h"
#include "core/store/book.h"

namespace coneline::plan {

struct SupposedRecords {
  std::vector<book::Place> places; ///< without id and code
  std::vector<book::Mix> mixes;    ///< new ones carry the id by which `routes` name them
  std::vector<book::Route> routes;
  std::vector<book::Figure> figures;
  std::vector<std::string> told;        ///< what is written, a sentence a change
  std::vector<std::string> not_written; ///< what is not, and why, a sentence a change

  [[nodiscard]] bool any() const { return !told.empty(); }
};

/// Fails where `suppose` does, and where nothing of it can be written. The source of a step whose
/// survival changes says so with the day.
Result<SupposedRecords> changes_of(const ForecastInput& present, const Supposition& supposition);

/// In the transaction of `writing`: all of it, or nothing where one is refused.
Result<void> write(store::Writing& writing, const SupposedRecords& records);

/// Both in one transaction, from the registers as they stand then. `present` is the plan that the
/// supposition was made of.
Result<SupposedRecords> accept(store::Book& book, const ForecastInput& present,
                               const Supposition& supposition);

} // namespace coneline::plan
