// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/money.h"

#include "core/base/phrase.h"

#include <cmath>

namespace coneline {

namespace {
constexpr double a_unit = 100; // cents
constexpr double most = 1e9;
} // namespace

Result<std::int64_t> cents_of(double amount) {
  if (!(amount >= 0 && amount < most))
    return refuse(fault(phrase("a price of {:g}", amount),
                        "Give 0 or more, such as 18.50; at most a thousand million."));
  return std::llround(amount * a_unit);
}

std::string money_said(double cents) {
  return decimal_said(cents / a_unit, 2);
}

} // namespace coneline
