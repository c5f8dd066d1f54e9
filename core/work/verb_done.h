// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What every verb takes and gives besides its own figures.

#include "core/base/code.h"
#include "core/store/book.h"

#include <string>
#include <vector>

namespace coneline::work {

/// When it was done, by whom, and what is worth remembering.
struct Noted {
  Date on;
  std::string who;
  std::string note;
};

struct Done {
  std::vector<book::EntryId> entries; ///< what `reverse` takes
  std::vector<Code> made;             ///< lots and cones that are new and need a label
  std::string told;                   ///< one calm line: "6 new roots in T1742Q"
  std::vector<std::string> cautions;  ///< short; where the step can hurt
};

} // namespace coneline::work
