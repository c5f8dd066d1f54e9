// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A code of which one square is too dirty to be found: where two squares may belong together, the
// third is looked for where it must be.

#include "labels/read/candidate.h"
#include "labels/read/finder.h"
#include "labels/read/gray.h"

#include <functional>
#include <vector>

namespace coneline::labels {

/// Every place, for codes of 21 to 29 modules, that two of the squares may be corners of, with no
/// look at the picture. The third square stands where it would be seen from straight above; its
/// place in `squares` is that of the first of the two.
std::vector<Candidate> from_pairs(const std::vector<Finder>& finders);

/// Moves the corner that is nobody's square to where the picture looks most like one. Returns how
/// much it does there, 0 to 1; 0 when the other two do not look like squares. `scale` is what the
/// candidate's places are to be multiplied by for this picture.
double settle(GrayView picture, double scale, Candidate& candidate);

} // namespace coneline::labels
