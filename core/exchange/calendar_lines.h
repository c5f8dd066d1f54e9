// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Whether the lines of a calendar file are whole. The calendar library passes over what it cannot
// read and does not say which line it was, and a broken line could be the one that matters.

#include "core/base/fault.h"

#include <string>
#include <string_view>
#include <vector>

namespace coneline::exchange {

/// Every line that is no content line of RFC 5545 (name, parameters, colon, value; or a folded
/// continuation), components that do not close, dates that are none; each with its line.
std::vector<Fault> broken_lines(std::string_view text, const std::string& file);

/// The lines on which to-dos and events begin.
std::vector<std::size_t> component_lines(std::string_view text);

} // namespace coneline::exchange
