// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Which crosses stand above which, and which cannot be told apart. Private to this room.

#include "core/report/germination_report.h"

namespace coneline::report {

/// Fills `ranking` and `alike` from the comparisons, and rank and letters of the crosses.
void rank(GerminationReport& report);

/// a, b, … z, aa, ab, …
std::string letters_of(std::size_t number);

} // namespace coneline::report
