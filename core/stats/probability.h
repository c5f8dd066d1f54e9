// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Probabilities are checked where they come in, so that no formula meets one that is none.

#include "core/base/fault.h"

#include <string_view>

namespace coneline::stats {

/// The value itself when 0 < value < 1; a fault that calls it by `name` otherwise.
Result<double> inside_0_and_1(double value, std::string_view name);

/// The value itself when 0 <= value <= 1; a fault that calls it by `name` otherwise.
Result<double> from_0_to_1(double value, std::string_view name);

} // namespace coneline::stats
