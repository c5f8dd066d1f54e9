// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// One thing as a list shows it, before it is sorted and grouped.

#include "session.h"
#include "station.h"

namespace coneline::window {

struct Listed {
  Code code;
  QString group; ///< the heading it stands under
  QString what;  ///< "12 sown, 6 with a root"
  QString where; ///< place, or the day it began
  QString due;   ///< why something is due, or empty
  bool ended = false;
};

/// Everything at a station; ended lots last.
std::vector<Listed> listed(const Standing& standing, Station station, bool by_place);

} // namespace coneline::window
