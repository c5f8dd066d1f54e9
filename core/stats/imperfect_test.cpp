// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/imperfect_test.h"

#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/stats/probability.h"

#include <fmt/format.h>

#include <cmath>

namespace coneline::stats {

namespace {

/// A share and its binomial variance.
struct Part {
  double share;
  double variance;
};

Part part(double chosen, double of) {
  const double share = chosen / of;
  return {share, share * (1 - share) / of};
}

} // namespace

Result<ShareEstimate> rogan_gladen(std::int64_t called_filled, std::int64_t tested,
                                   TestQuality quality) {
  if (const auto ok = from_0_to_1(quality.sensitivity, "the sensitivity"); !ok)
    return refuse(ok.error());
  if (const auto ok = from_0_to_1(quality.specificity, "the specificity"); !ok)
    return refuse(ok.error());
  const double youden = quality.sensitivity + quality.specificity - 1;
  if (youden <= 1e-12) // 0.7 + 0.3 is a little off 1 in doubles
    return refuse(fault(phrase("sensitivity and specificity add up to {}, which is not above "
                               "1: such a test says nothing",
                               write_real(quality.sensitivity + quality.specificity)),
                        "Cut seeds open instead, or check whether the two are exchanged."));
  if (tested < 1 || called_filled < 0 || called_filled > tested)
    return refuse(fault(phrase("{} of {} is no share", called_filled, tested),
                        "Give how many of those tested were called filled."));
  const auto apparent = part(static_cast<double>(called_filled), static_cast<double>(tested));
  return ShareEstimate{(apparent.share + quality.specificity - 1) / youden,
                       std::sqrt(apparent.variance) / youden};
}

Result<ShareEstimate> tenenbein(const DoubleSample& s) {
  const auto fewest =
      std::min({s.cut_filled_called_filled, s.cut_filled_called_empty, s.cut_empty_called_filled,
                s.cut_empty_called_empty, s.uncut_called_filled, s.uncut_called_empty});
  if (fewest < 0)
    return refuse(fault(phrase("a count cannot be below zero, and this is {}", fewest),
                        "Write how many there are."));
  const auto real = [](std::int64_t count) { return static_cast<double>(count); };
  const double cut_of_filled = real(s.cut_filled_called_filled) + real(s.cut_empty_called_filled);
  const double cut_of_empty = real(s.cut_filled_called_empty) + real(s.cut_empty_called_empty);
  if (cut_of_filled == 0 || cut_of_empty == 0)
    return refuse(fault(
        phrase("none was cut open of those called {}", cut_of_filled == 0 ? "filled" : "empty"),
        "Cut some of both groups: without it the test cannot be corrected."));
  const double called_filled = cut_of_filled + real(s.uncut_called_filled);
  const double all = called_filled + cut_of_empty + real(s.uncut_called_empty);
  // The likelihood falls into three parts, which the information keeps apart.
  const auto called = part(called_filled, all);
  const auto right = part(real(s.cut_filled_called_filled), cut_of_filled);
  const auto missed = part(real(s.cut_filled_called_empty), cut_of_empty);
  const double p = called.share;
  const double step = right.share - missed.share;
  return ShareEstimate{right.share * p + missed.share * (1 - p),
                       std::sqrt(step * step * called.variance + p * p * right.variance +
                                 (1 - p) * (1 - p) * missed.variance)};
}

} // namespace coneline::stats
