// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The share that is filled, as judged by a test that errs, such as floating: some filled seeds
// float, some empty ones sink.

#include "core/base/fault.h"

#include <cstdint>

namespace coneline::stats {

struct ShareEstimate {
  double share = 0;
  double standard_error = 0;
};

/// How a test errs, known from elsewhere. Their sum must be above 1: at 1 the test says nothing.
struct TestQuality {
  double sensitivity = 1; ///< share of the filled that it calls filled
  double specificity = 1; ///< share of the empty that it calls empty
};

/// The true share from `called_filled` of `tested`: (apparent + Sp - 1) / (Se + Sp - 1), with the
/// standard error of the apparent share divided by Se + Sp - 1 (Rogan & Gladen 1978, American
/// Journal of Epidemiology 107:71-76). It is not cut off: a value below 0 or above 1 says that
/// the sample or the two qualities are off.
/// Fails on Se or Sp outside 0 to 1, Se + Sp <= 1, and counts that are no share.
Result<ShareEstimate> rogan_gladen(std::int64_t called_filled, std::int64_t tested,
                                   TestQuality quality);

/// Double sampling: the erring test was made on all, and some were cut open as well.
struct DoubleSample {
  std::int64_t cut_filled_called_filled = 0; ///< n11
  std::int64_t cut_filled_called_empty = 0;  ///< n10
  std::int64_t cut_empty_called_filled = 0;  ///< n01
  std::int64_t cut_empty_called_empty = 0;   ///< n00
  std::int64_t uncut_called_filled = 0;      ///< X
  std::int64_t uncut_called_empty = 0;       ///< Y
};

/// The maximum-likelihood share filled (Tenenbein 1970, Journal of the American Statistical
/// Association 65:1350-1361), with the standard error of the observed information. Of what was
/// sampled from something endless; for a batch that ends see sorting.h.
/// Fails on counts below zero, and when a group the test made has none cut open.
Result<ShareEstimate> tenenbein(const DoubleSample& sample);

} // namespace coneline::stats
