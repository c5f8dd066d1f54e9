// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The last steps of a plan of needs: mix for the pots, and whether the pots find room.

#include "core/plan/needs.h"

#include <map>

namespace coneline::plan {

/// Adds the finished mix for `fill`, the litres that pots take by month, to `mixes`, and its parts
/// to `parts`, each part to what other mixes take of it. Fails where mix_for refuses the mix.
Result<void> add_mix(const book::Mix& mix, const ByMonth& fill, std::vector<Volume>& mixes,
                     std::map<std::string, ByMonth>& parts);

/// Sets `first_over` and `told` from the room needed and offered.
void tell_fit(SpaceNeeds& space, const std::vector<Date>& months);

/// "March 2027"
std::string month_name(Date day);

/// What a plan does not count, for its remarks.
std::string not_sown_told(std::int64_t seeds);
std::string left_out_told(std::int64_t lots);

} // namespace coneline::plan
