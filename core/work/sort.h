// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Telling filled seed from empty: a test that leaves the seed whole, and the cut test, which does
// not.

#include "core/work/verb_done.h"

namespace coneline::work {

/// The seeds judged come from `from`; those that stay as they were judged need no entry.
struct Sort {
  Code batch;
  book::State from = book::State::unsorted;
  book::SeedTest test = book::SeedTest::floating;
  Count filled;
  Count empty;
  Noted noted;
};

/// Fails: nothing judged, more judged than there are, the cut test (that is `open`).
Result<Done> sort(store::Book& book, const Sort& wanted);

struct Open {
  Code batch;
  book::State from = book::State::judged_filled;
  Count opened;
  Count filled; ///< of the opened
  Noted noted;
};

/// Fails: nothing opened, filled above opened, more opened than there are.
Result<Done> open(store::Book& book, const Open& wanted);

} // namespace coneline::work
