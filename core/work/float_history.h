// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the book's own seed says about the float test, taxon by taxon. A suggestion: the taxon's
// float test is changed when the grower accepts it, never by itself.

#include "core/stats/float_record.h"
#include "core/work/verb_done.h"

namespace coneline::work {

constexpr double float_confidence = 0.80;

struct FloatHistory {
  book::TaxonId taxon;
  std::string name;
  book::Sourced<book::FloatTest> now;       ///< as the book has it
  std::vector<stats::SeasonRecord> seasons; ///< a batch each, those with anything to tell
  stats::PartRecord sank;                   ///< summed over all seasons
  stats::PartRecord floated;
  std::int64_t floated_waiting = 0; ///< floaters sown that may still come up
  stats::FloatLearned learned;      ///< at float_confidence
  stats::FloatVerdict verdict = stats::FloatVerdict::not_known;
  std::optional<book::FloatTest> suggested; ///< where it differs from `now`
  std::string told;                         ///< "Of 118 floaters sown in your book 3 came up; …"
};

/// Every taxon of the book whose seed was floated; only lots of pure or hybrid seed of that seed
/// parent. Batches whose last judgement was by another test are not in it.
std::vector<FloatHistory> float_histories(store::Reading& reading, const book::Registers& registers,
                                          Date as_of);

/// The history of one taxon, also where it has none. Fails: no such taxon.
Result<FloatHistory> float_history(store::Reading& reading, const book::Registers& registers,
                                   const std::string& taxon, Date as_of);

/// Writes what is suggested to the taxon, with the counts as its source. Fails: nothing is
/// suggested.
Result<Done> accept_float_test(store::Book& book, const std::string& taxon, Date as_of);

} // namespace coneline::work
