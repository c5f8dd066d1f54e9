// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A lot has a first and a last day. Its label outlives it, and may be typed with a day before it.

#include "core/store/reading.h"

namespace coneline::work {

/// Fails where the lot holds nothing any more, and says what happened to it last.
Result<void> refuse_ended(store::Reading& reading, const book::Lot& lot);
/// Fails where nothing had come into the lot by the day, or what had come was reversed.
Result<void> refuse_not_begun(store::Reading& reading, const book::Lot& lot, Date day);
/// Fails where the lot holds nothing on the day: not begun, ended, or empty for a while.
Result<void> refuse_empty_on(store::Reading& reading, const book::Lot& lot, Date day);

} // namespace coneline::work
