// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How many seeds of a batch are filled, when it was sorted into two parts and some of each part
// were cut open. Adding the intervals of the parts covers, but is too wide: both parts would have
// to be at their worst at once. This is one interval for the sum.
//
// Method: a likelihood-ratio test, made exact by its worst case. For a sum T and an outcome of both
// cut tests let
//
//   L(T) = log of the largest likelihood over all pairs (M1, M2)
//          - log of the largest likelihood over the pairs with M1 + M2 = T.
//
// A pair is rejected when outcomes with an L(T) at least as large as the one seen have a
// probability, under that pair, of at most 1 - confidence. T is rejected when each of its pairs is.
// The interval runs from the smallest to the largest T not rejected.
//
// Why it covers: whatever the true pair, the chance that this pair is rejected is at most
// 1 - confidence, since the probability above is its p-value, summed over the outcomes and not
// approximated; and its sum can lie outside the interval only when it is rejected. Ties within
// rounding count as at least as large, which can only widen. Nothing is assumed of the parts.
// Why it is not merely wide: L has nearly the same distribution under every pair, so that the worst
// pair asks little more than the true one; its smallest coverage over all pairs is close to the
// confidence (see the test). The error is not shared out evenly to both ends.
//
// The outcomes with a large L(T) lie beyond two staircases: for fixed T, L with the sign of
// (estimate - T) never falls when more filled are found in either part, because the hypergeometric
// likelihood is log-concave in M and its ratios are monotone. So the probability of an outcome
// beyond a stair only rises with M1 and M2, or only falls, which bounds whole ranges of pairs at
// once.

#include "core/stats/hypergeometric.h"

namespace coneline::stats {

/// Largest tables the method makes: (seeds + 1) * (opened + 1), both parts together.
constexpr std::int64_t most_batch_cells = 3'000'000;

/// The interval for the number filled in both parts, opened ones included. Both tests are checked,
/// each with 1 <= opened; 0 < confidence < 1. Where the tables would be larger than
/// `most_batch_cells` it adds the parts' intervals at the square root of the confidence instead:
/// the cut tests do not depend on each other, so it covers too, but is wider.
CountInterval batch_interval(const CutTest& one, const CutTest& other, double confidence);

} // namespace coneline::stats
