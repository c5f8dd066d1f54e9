// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A placing as a bench list: what to move when, what stands where, what finds no room.

#include "core/plan/placing.h"
#include "core/report/plan_paper.h"

#include <nlohmann/json.hpp>

namespace coneline::report {

/// "3.20 m² of part shade find no room in May 2027: T1742Q, G1791X."; then what is wrong with
/// places and pots.
std::vector<std::string> no_room_told(const plan::PlacingInput& input,
                                      const plan::Placing& placing);
/// "4 moves; no placing has fewer." or how far from the best it can be.
std::string proof_told(const plan::Placing& placing);

/// Tables "to do", "benches" and "room taken".
PlanPaper placing_paper(const plan::PlacingInput& input, const plan::Placing& placing);
nlohmann::ordered_json placing_json(const plan::PlacingInput& input, const plan::Placing& placing);

} // namespace coneline::report
