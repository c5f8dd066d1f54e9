// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A first look at a candidate. Any three squares of neighbouring labels make a triple; those of one
// code also stand at the same turn. This costs a few hundred pixels and spares the rest.

#include "labels/read/candidate.h"
#include "labels/read/gray.h"

namespace coneline::labels {

/// False when the three squares do not look like squares of this candidate's turn and size. `scale`
/// is what the candidate's places are to be multiplied by for this picture.
bool worth_reading(GrayView picture, double scale, const Candidate& candidate);

} // namespace coneline::labels
