// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/sourced.h"

#include "core/base/number.h"
#include "core/base/phrase.h"

#include <fmt/format.h>

#include <cmath>

namespace coneline::book {

Result<Range> Range::of(double low, double high) {
  if (!std::isfinite(low) || !std::isfinite(high) || low < 0)
    return refuse(fault(phrase("a range from {} to {} is none", write_real(low), write_real(high)),
                        "Both ends are numbers of 0 or more."));
  if (low > high)
    return refuse(fault(phrase("a range from {} down to {}", write_real(low), write_real(high)),
                        "Put the smaller number first."));
  return Range{low, high};
}

} // namespace coneline::book
