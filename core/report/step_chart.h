// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Germination over time as step curves, drawn as SVG for a page. Curves are told apart by dash and
// by the name at their end, by colour only then; grey print still reads.

#include "core/report/germination_report.h"

#include <span>
#include <string>

namespace coneline::report {

/// As many curves as one chart can name at their ends.
inline constexpr std::size_t curves_in_chart = 7;

/// At most curves_in_chart crosses. Share of the seed sown from 0 to 100 %, time since sowing, in
/// `unit`, up to `last_day`, which is above 0.
std::string step_chart(std::span<const CrossReport> crosses, double last_day,
                       const std::string& unit = "days");

/// Text for HTML and SVG: & < > " ' as entities, control characters as the replacement character.
std::string escaped(std::string_view text);

} // namespace coneline::report
