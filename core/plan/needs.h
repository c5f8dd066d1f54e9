// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a nursery needs in the months to come, from what stands in it today: pots, mix and bench, as
// expected values. What is not yet sown, sold or decided is not in it.
//
// The rules:
//   - months are calendar months, the first being today's; a standing count is that of the month's
//   end;
//   - a tray still sprouting gives what still_to_sprout says; seedlings are potted when the tray's
//   months since sowing are over, those that come up later in the month they come up;
//   - a step lasts the middle of its range; survival is applied when the step is left;
//   - after the last step a plant is ready. It stays in its pot until it is sold, and no sale is
//   foreseen: ready plants keep standing and keep taking room;
//   - a pot takes mix for its litres less the root ball, the litres of what the plant comes out of,
//   each by the plant (litres / cells). More for the mix's loss; its parts more for its shrink;
//   - a pot takes the rectangle around it, pots touching. A tray takes its room until the last
//   seedling is out of it; one from which nothing more is expected is cleared this month.
//
// 100 plants in 1 L, 12 months old of 12, survival 0.9, then 3 L:
//   into 3 L this month: 90; mix 90 × (3 − 1) = 180 L; lost 10.

#include "core/plan/route_walk.h"

#include <string>
#include <vector>

namespace coneline::plan {

/// Plants that stand together in one size of pot.
struct PlantsStanding {
  Code code;
  std::string cross;
  book::TaxonId taxon;
  book::PotId pot;
  Date since;
  std::int64_t plants = 0;
};

struct NeedsInput {
  Date today;
  int months = 24; ///< 1 or more
  book::Registers registers;
  std::vector<TrayStanding> trays;
  std::vector<PlantsStanding> groups;
  std::int64_t seeds_not_sown = 0; ///< in batches; named, not planned with
};

/// Values by month, as many as there are months.
using ByMonth = std::vector<double>;

struct PotNeeds {
  book::PotId pot;
  std::string name;
  int cells = 1;
  ByMonth into;                ///< plants moved into it
  double standing_today = 0;   ///< plants
  ByMonth standing;            ///< plants
  double containers_today = 0; ///< pots or trays; for a pot of several cells plants / cells
  ByMonth containers;
};

struct Volume {
  std::string name;
  ByMonth litres;
};

struct SpaceNeeds {
  book::Light light = book::Light::part_shade;
  double offered = 0;                    ///< m² that the places of this class have
  double today = 0;                      ///< m² taken
  ByMonth needed;                        ///< m²
  std::optional<std::size_t> first_over; ///< the first month that does not fit
  std::string told;                      ///< whether it fits; if not, from when and by how much
};

struct ReadyPlants {
  std::string cross;
  std::string taxon;
  ByMonth plants; ///< becoming ready
};

/// Not walked along a route; its bench room is counted as it stands, under its taxon's light class.
struct LeftOut {
  Code code;
  std::int64_t count = 0;
  std::string why;
};

/// here + come_up = growing + ready + lost, all within the months asked for.
struct PlantSums {
  double here = 0;    ///< seedlings and plants standing today
  double come_up = 0; ///< seedlings expected to come up
  double growing = 0; ///< on the route at the end
  double ready = 0;
  double lost = 0;
};

struct Needs {
  Date today;
  std::vector<Date> months; ///< the first day of each
  std::vector<PotNeeds> pots;
  std::vector<Volume> mixes; ///< finished
  std::vector<Volume> parts; ///< by name, over all mixes
  std::vector<SpaceNeeds> space;
  std::vector<ReadyPlants> ready;
  std::vector<LeftOut> left_out;
  std::vector<std::string> remarks; ///< what the reader has to know of this plan
  PlantSums sums;
};

/// Fails on fewer than 1 or more than 600 months, and on a mix that mix_for refuses.
Result<Needs> needs(const NeedsInput& input);

} // namespace coneline::plan
