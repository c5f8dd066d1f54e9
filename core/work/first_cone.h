// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A line begins: a female plant and the cone on it, what was seen of its scales, and the pollen
// that it took, where it took some. Plants that the book has already stay the rows they are. All of
// it is entered, or nothing.

#include "core/book/diary.h"
#include "core/work/verb_done.h"

namespace coneline::work {

struct FirstCone {
  std::string plant; ///< what the grower calls it, or its code
  std::string taxon; ///< taken into the register where it is new
  std::string origin;
  Date seen; ///< the first look at the cone
  book::Scales scales = book::Scales::tight;

  /// Pollen of a male plant by name or code, which becomes one of the book's, of the same taxon as
  /// the seed parent by guess, where it is not one yet; of one that nobody knows where `male` is
  /// empty.
  struct Pass {
    std::string male;
    Date collected;
    Date day;
    book::PollinationMethod method = book::PollinationMethod::dry;
  };
  std::optional<Pass> pass;
  Date today; ///< the scales are as they are today
};

/// Gives the cone's code as what was made. Fails: no taxon, a plant of the book that is of another
/// taxon or sex, one plant for both parents, a day after today, a pass before the cone was seen,
/// pollen collected after its pass.
Result<Done> first_cone(store::Book& book, const FirstCone& wanted);

} // namespace coneline::work
