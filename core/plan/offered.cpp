// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/offered.h"

#include <algorithm>

namespace coneline::plan {

std::map<book::Light, double> offered_square_metres(const std::vector<book::Place>& places) {
  std::map<book::PlaceId, double> taken; // by measured places within
  for (const auto& place : places)
    if (place.within)
      taken[*place.within] += place.square_metres();
  std::map<book::Light, double> offered;
  for (const auto& place : places) {
    const bool house = place.kind == book::PlaceKind::house;
    const double inside = taken[place.id];
    offered[place.light] += house && inside > 0 ? 0 : std::max(0.0, place.square_metres() - inside);
  }
  return offered;
}

} // namespace coneline::plan
