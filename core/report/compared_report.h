// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Two plans beside each other, written out.

#include "core/book/title.h"
#include "core/plan/compared.h"
#include "core/plan/supposed_records.h"

#include <nlohmann/json.hpp>

#include <string>

namespace coneline::report {

/// One row a value of a month, or of a year ("2026-11 to 2027-10"): period,what,name, then low,
/// middle, high and mean of both plans, low, middle, high and mean of the difference, unit,
/// invented.
std::string compared_csv(const plan::Comparison& compared, const book::Title& title);

nlohmann::ordered_json compared_json(const plan::Comparison& compared);

} // namespace coneline::report
