// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is on hand along the line, and the lots at each station.

#include "core/book/registers.h"
#include "core/store/reading.h"
#include "core/work/line_back.h"

namespace coneline::work {

/// One lot as a list shows it.
struct LotLine {
  book::Lot lot;
  OriginName origin;
  std::map<book::State, std::int64_t> on_hand; ///< only states with something in them
  std::int64_t came_in = 0;                    ///< seeds or plants that ever came in
  std::optional<book::PlaceId> place;
  std::optional<Date> since;                ///< the first day something came in
  [[nodiscard]] std::int64_t total() const; ///< all on hand
};

/// Every lot that ever held something and still stands, in the order of their ids; ended ones too.
std::vector<LotLine> lot_lines(store::Reading& reading, const book::Registers& registers);

/// One cone with its passes.
struct ConeLine {
  book::Cone cone;
  OriginName origin;
  std::vector<Date> passes;                  ///< in the order of their days
  std::vector<book::PollenUsed> last_pollen; ///< of the last pass
  std::int64_t harvested = 0;       ///< seeds; 0 also of a cone that came off and gave none
  std::optional<Date> harvested_on; ///< none while it stands on the plant
};
std::vector<ConeLine> cone_lines(store::Reading& reading, const book::Registers& registers);

/// What the strip of stations shows.
struct OnHand {
  std::int64_t pollen_lots = 0;
  std::int64_t cones = 0; ///< on the plants
  std::int64_t seeds = 0; ///< in batches
  std::int64_t in_trays = 0;
  std::int64_t in_pots = 0;
  std::int64_t out = 0; ///< sold and planted out, ever
};
OnHand on_hand(store::Reading& reading, const book::Registers& registers);

} // namespace coneline::work
