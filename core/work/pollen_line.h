// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What goes into and out of a pollen lot day by day. Private to this room.

#include "core/work/one_reading.h"

#include <map>

namespace coneline::work {

/// One thing that happened to a lot; amounts in ml, collected ones above 0, used ones below.
struct PollenStep {
  Date date;
  book::Verb verb = book::Verb::collect_pollen;
  std::optional<double> millilitres;
  book::PollenNote note;
};

/// The steps of every lot in the order of their days, by entries that stand.
struct PollenSteps {
  std::map<book::PollenLotId, std::vector<PollenStep>> of;
  std::map<book::PollenLotId, Date> taken_back; ///< first collections that were reversed
};
PollenSteps pollen_steps(OneReading& once);

} // namespace coneline::work
