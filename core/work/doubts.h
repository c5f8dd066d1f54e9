// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What in an entry that was just made may be a slip of a tired hand. Nothing of it is refused: a
// cone may be harvested in parts, and a day to come may be meant.

#include "core/work/verb_done.h"

namespace coneline::work {

/// One line each, in the reader's language: a day to come (from the day after tomorrow on, for a
/// clock may be set to another zone), an entry of the same day that stands and says the same, and a
/// new cone of a plant one of whose cones is being pollinated.
std::vector<std::string> doubts(store::Book& book, const Done& done, Date today);

} // namespace coneline::work
