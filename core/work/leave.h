// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The ways out of the nursery: lose, discard, sell, plant out.

#include "core/work/verb_done.h"

namespace coneline::work {

enum class WayOut { dead, discarded, sold, planted_out };

/// Floaters of a taxon for which the float test is not known to hold are not thrown away before
/// some were cut open, unless the grower is sure.
enum class Floaters { ask_for_opened, grower_is_sure };

struct Leave {
  Code lot;
  WayOut way = WayOut::dead;
  std::optional<book::State> state; ///< none where the lot holds only one
  Count count;
  std::string buyer;                 ///< of a sale
  std::optional<std::int64_t> cents; ///< of a sale, for all of it
  Noted noted;
  Floaters floaters = Floaters::ask_for_opened;
};

/// Fails: more than there are, floaters to be thrown away unopened (see Floaters), a state left
/// open where the lot holds several, planting out what is no plant.
Result<Done> leave(store::Book& book, const Leave& wanted);

} // namespace coneline::work
