// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The verb "store": seed put by to ripen on, or to wait.

#include "core/work/verb_done.h"

namespace coneline::work {

struct Keep {
  Code batch;
  std::string store; ///< "refrigerator", "box of dry perlite"
  std::optional<double> celsius;
  std::optional<Date> until_from; ///< none: from the taxon's after-ripening, where the book has it
  std::optional<Date> until_to;
  std::optional<Code> place;
  Noted noted;
};

/// Fails: no such batch, no seed left in it, an end before the day, no store named, one colder than
/// -200 °C or warmer than 40 °C. Above 32 °C it asks whether °F were meant.
Result<Done> keep(store::Book& book, const Keep& wanted);

} // namespace coneline::work
