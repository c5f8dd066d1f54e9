// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The room that the places of a book offer, by light class.

#include "core/book/registers.h"

#include <map>
#include <vector>

namespace coneline::plan {

/// m² to stand on by light class, no spot counted twice: a bench offers what its measured bays do
/// not take, a house its own measure only where no measured bench stands in it. What stands there
/// without being a lot (parent plants) is not taken off.
std::map<book::Light, double> offered_square_metres(const std::vector<book::Place>& places);

} // namespace coneline::plan
