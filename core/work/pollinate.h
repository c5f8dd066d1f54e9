// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// One pass over a receptive cone. It is repeated every second or third day while the cone stays
// loose (common practice, no source), so a cone has several pollinations, each with its own pollen.

#include "core/work/verb_done.h"

namespace coneline::work {

struct PollenGiven {
  std::optional<Code> lot; ///< none: the father is not known
  std::optional<double> millilitres;
};

struct Pollinate {
  Code target; ///< a cone, or a female plant whose new cone this is
  book::PollinationMethod method = book::PollinationMethod::dry;
  std::vector<PollenGiven> pollen;
  Noted noted;
};

/// Fails: no such cone or plant, a male plant, pollen collected later than the day, pollen of a
/// female, a cone harvested before.
Result<Done> pollinate(store::Book& book, const Pollinate& wanted);
/// Within a transaction that does more.
Result<Done> pollinate(store::Writing& writing, const Pollinate& wanted);

} // namespace coneline::work
