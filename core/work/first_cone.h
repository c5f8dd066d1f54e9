// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A line begins: a female plant and the cone on it, what was seen of its scales, and the pollen
// that it took, where it took some. All of it is entered, or nothing.

#include "core/book/diary.h"
#include "core/work/verb_done.h"

namespace coneline::work {

struct FirstCone {
  std::string plant; ///< what the grower calls it
  std::string taxon; ///< taken into the register where it is new
  std::string origin;
  Date seen; ///< the first look at the cone
  book::Scales scales = book::Scales::tight;

  /// Pollen of a male plant that becomes one of the book's; of one that nobody knows where `male`
  /// is empty.
  struct Pass {
    std::string male;
    Date collected;
    Date day;
    book::PollinationMethod method = book::PollinationMethod::dry;
  };
  std::optional<Pass> pass;
  Date today; ///< the scales are as they are today
};

/// Gives the cone's code as what was made. Fails: no taxon, a pass before the cone was seen, pollen
/// collected after its pass.
Result<Done> first_cone(store::Book& book, const FirstCone& wanted);

} // namespace coneline::work
