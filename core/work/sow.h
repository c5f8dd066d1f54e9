// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Seed of a batch goes into trays. What judged it stays with it.

#include "core/work/verb_done.h"

namespace coneline::work {

struct Sow {
  Code batch;
  std::optional<book::State>
      from;        ///< none: what was judged filled; the unsorted where nothing was sorted
  Count seeds;     ///< all together
  int trays = 1;   ///< the seeds are shared out evenly, the first trays taking the odd ones
  std::string pot; ///< the tray's kind by name
  std::optional<std::string> mix;
  std::optional<Code> place;
  Noted noted;
};

/// Fails: more than there are on that day, more than the trays have cells for, a pot, mix or place
/// the book lacks. Tells where unsorted seed was taken though nobody said so.
Result<Done> sow(store::Book& book, const Sow& wanted);

} // namespace coneline::work
