// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A ripe cone falls apart; its seeds are counted and become a batch. One that gave none ends too.

#include "core/work/verb_done.h"

namespace coneline::work {

struct Harvest {
  Code cone;
  Count seeds; ///< counted by hand; none: the cone gave no seed, and the note says why
  Noted noted;
  std::optional<book::Weighing> weighed =
      {}; ///< given: the count is by weight, and `seeds` is none
};

/// An entry about a cone that gave no seed names the cone and moves nothing. Fails: no such cone, a
/// day before the last pollination, weighings that do not do, no seed and no reason, no seed of a
/// cone that gave some or the other way round.
Result<Done> harvest(store::Book& book, const Harvest& wanted);

/// Seed or plants from elsewhere. Plants come in a pot; seed has none.
struct BuyIn {
  std::string taxon;
  std::string supplier;
  Count count;
  std::optional<std::string> pot; ///< given: these are plants
  std::optional<Code> place;
  Noted noted; ///< the note says what the supplier says of parents and papers
};

Result<Done> buy_in(store::Book& book, const BuyIn& wanted);

} // namespace coneline::work
