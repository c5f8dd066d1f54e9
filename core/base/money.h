// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Prices in the grower's own money: kept in whole cents, typed and said as an amount with two
// decimals.

#include "core/base/fault.h"

#include <cstdint>
#include <string>

namespace coneline {

/// 1850 for 18.5, to the nearest cent. Fails below 0, from a thousand million on, and for what is
/// no number.
Result<std::int64_t> cents_of(double amount);

/// "18.50", with the decimal sign of who reads it.
std::string money_said(double cents);

} // namespace coneline
