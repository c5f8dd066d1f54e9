// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/probability.h"

#include "core/base/number.h"
#include "core/base/phrase.h"

#include <fmt/format.h>

namespace coneline::stats {

Result<double> inside_0_and_1(double value, std::string_view name) {
  if (value > 0 && value < 1)
    return value;
  return refuse(
      fault(phrase("{} must lie between 0 and 1, and this is {}", name, write_real(value)),
            "Write 95 % as 0.95; neither 0 nor 1 can be had."));
}

Result<double> from_0_to_1(double value, std::string_view name) {
  if (value >= 0 && value <= 1)
    return value;
  return refuse(fault(phrase("{} must lie from 0 to 1, and this is {}", name, write_real(value)),
                      "Write 80 % as 0.8."));
}

} // namespace coneline::stats
