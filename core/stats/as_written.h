// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a number meant before it became a double. A grower writes 0.95, and a tail of exactly
// 1/40 is then not above (1 - 0.95)/2, although in doubles 1 - 0.95 is a little more than 0.05.
// Where a decision hangs on equality, it is made with the decimal that was written.

#include <boost/multiprecision/cpp_int.hpp>

namespace coneline::stats {

using Rational = boost::multiprecision::cpp_rational;

/// The shortest decimal that reads as this double, exactly: 0.95 gives 19/20. The value is finite.
Rational as_written(double value);

} // namespace coneline::stats
