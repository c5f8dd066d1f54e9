// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A label outlives its lot.

#include "core/store/reading.h"

namespace coneline::work {

/// Fails where the lot holds nothing any more, and says what happened to it last.
Result<void> refuse_ended(store::Reading& reading, const book::Lot& lot);

} // namespace coneline::work
