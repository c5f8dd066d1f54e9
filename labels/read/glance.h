// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A first look at a candidate. Any three squares of neighbouring labels make a triple; those of one
// code also stand at the same turn. This costs a few hundred pixels and spares the rest.

#include "labels/read/candidate.h"
#include "labels/read/gray.h"

namespace coneline::labels {

/// The share of modules, 0 to 1, that look as they should in the square whose top left module
/// stands at (left, top). `scale` is what the candidate's places are to be multiplied by for this
/// picture.
double square_likeness(GrayView picture, double scale, const Candidate& candidate, int top,
                       int left);

/// False when the three squares do not look like squares of this candidate's turn and size.
bool worth_reading(GrayView picture, double scale, const Candidate& candidate);

} // namespace coneline::labels
