// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A ripe cone falls apart; its seeds are counted and become a batch.

#include "core/work/verb_done.h"

namespace coneline::work {

struct Harvest {
  Code cone;
  Count seeds; ///< counted by hand
  Noted noted;
  std::optional<book::Weighing> weighed =
      {}; ///< given: the count is by weight, and `seeds` is none
};

/// Fails: no such cone, no seeds, a day before the last pollination, weighings that do not do.
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
