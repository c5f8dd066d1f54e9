// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The fleshy coat holds inhibitors and comes off; what is broken or lost on the way is counted.

#include "core/work/verb_done.h"

namespace coneline::work {

struct Clean {
  Code batch;
  int soak_days = 0;
  Count lost;
  Noted noted;
};

Result<Done> clean(store::Book& book, const Clean& wanted);

} // namespace coneline::work
