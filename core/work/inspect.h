// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// One look at a tray, also one that found nothing: that too is knowledge. Root and first leaf are
// different events.

#include "core/work/verb_done.h"

namespace coneline::work {

struct Inspect {
  Code tray;
  Count roots;  ///< new since the look before
  Count leaves; ///< first leaves; of roots seen before, then of seed whose root was not seen
  Count dead;   ///< ungerminated seed taken out dead
  Noted noted;
};

/// Fails: no tray, a day before sowing, more than is in the tray. What came up on the day of sowing
/// is entered, and the answer says that the germination report then leaves the tray out.
Result<Done> inspect(store::Book& book, const Inspect& wanted);
/// The same as a part of something larger, in one transaction with it.
Result<Done> inspect(store::Writing& writing, const Inspect& wanted);

} // namespace coneline::work
