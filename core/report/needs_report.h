// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The needs of the months to come, written out. All values are expected ones.

#include "core/book/title.h"
#include "core/plan/needs.h"

#include <nlohmann/json.hpp>

#include <string>

namespace coneline::report {

/// One row a value: month,what,name,value,unit,invented. `what` is "into pot", "standing in pot",
/// "pots standing", "mix", "part", "bench needed", "bench offered" or "ready".
std::string needs_csv(const plan::Needs& needs, const book::Title& title);
nlohmann::ordered_json needs_json(const plan::Needs& needs, const book::Title& title);

/// What a reader has to know of how the values come about, a sentence each.
std::vector<std::string> needs_rules();

} // namespace coneline::report
