// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Cuts a candidate out of the picture, upright and at an even size, so that the decoder meets the
// easiest picture there can be.

#include "labels/read/candidate.h"
#include "labels/read/gray.h"

namespace coneline::labels {

/// Blank modules kept around a straightened candidate.
constexpr int kept_around = 4;

/// The candidate and its quiet zone, `pixels` a module, from a picture in which the candidate's
/// places are to be multiplied by `scale`. What lies outside the picture takes its nearest pixel.
GrayImage straightened(GrayView picture, double scale, const Candidate& candidate, int pixels);

} // namespace coneline::labels
