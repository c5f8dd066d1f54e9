// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The one place where a book becomes what a plan of needs starts from.

#include "core/plan/needs.h"
#include "core/store/reading.h"

namespace coneline::report {

/// What stands on the day `today`; entries for later days are left out.
plan::NeedsInput needs_input(store::Reading& reading, Date today, int months);

} // namespace coneline::report
