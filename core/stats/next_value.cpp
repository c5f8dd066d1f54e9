// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/next_value.h"

#include "core/base/phrase.h"
#include "core/stats/probability.h"

#include <boost/math/distributions/students_t.hpp>
#include <fmt/format.h>

#include <cmath>

namespace coneline::stats {

Result<Interval> next_value(std::span<const double> seen, double confidence) {
  auto inside = inside_0_and_1(confidence, "confidence");
  if (!inside)
    return refuse(inside.error());
  if (seen.size() < 2)
    return refuse(fault(phrase("{} values seen", seen.size()), "Two are the fewest."));
  double sum = 0;
  for (const double value : seen) {
    if (!(value > 0) || !std::isfinite(value))
      return refuse(fault(phrase("a value of {}", value), "Give numbers above 0."));
    sum += std::log(value);
  }
  const auto n = static_cast<double>(seen.size());
  const double mean = sum / n;
  double squares = 0;
  for (const double value : seen)
    squares += (std::log(value) - mean) * (std::log(value) - mean);
  const double t = boost::math::quantile(boost::math::students_t(n - 1), (1 + confidence) / 2);
  const double reach = t * std::sqrt(squares / (n - 1) * (1 + 1 / n));
  return Interval{std::exp(mean - reach), std::exp(mean + reach)};
}

} // namespace coneline::stats
