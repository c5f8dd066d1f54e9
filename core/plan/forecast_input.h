// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a forecast starts from: what stands, what is assumed, and what is known of germination and
// survival. Months are counted from the one of `standing.today`, which is month 0.
//
// The rules, in which a forecast differs from the plan of needs:
//   - the months in a step are drawn evenly over the route's range, once for all plants that are in
//     a lot together; what should have been moved is moved now. A move is made in the first month,
//     from the one it is due in, in which the grower pots; leaving the last step needs no potting;
//   - a later step is entered in the middle of a month;
//   - the share that survives a step is drawn once a taxon, step and season (the calendar year in
//     which the step is left), the plants then die or live each for itself;
//   - seed comes up as one draw of its cross says, for all trays of the cross together. What comes
//     up before its tray is potted waits for that day, what comes up later is potted in the first
//     potting month;
//   - a tray takes its bench room until it is potted and nothing more can come up in it;
//   - ready plants stand until they are sold or planted out, so many months later as is assumed;
//   - seed that is to be sown is drawn once a sowing, how much and when. It fills as many trays as
//   its number needs, which take their room from that month on, come up as their cross does from
//   then, are given up together and are due together. The grower's own sowings are made in the
//   month he says, all others wait for a month in which he pots.

#include "core/plan/needs.h"
#include "core/stats/germination_posterior.h"

#include <array>
#include <limits>
#include <map>
#include <optional>

namespace coneline::plan {

/// What the grower assumes; none of it is the program's to know. Values without a source are common
/// practice and meant to be changed.
struct Assumptions {
  std::array<bool, 12> potting{true, true, true, true, true, true,
                               true, true, true, true, true, true}; ///< January first
  /// The plants that the route's survival is worth when the book's own history is set against it.
  /// Infinite: the route's share is the truth.
  double survival_weight = 20;
  /// How alike seasons are: a season's share is that of so many plants around the long-run one.
  /// Infinite: all seasons are the same.
  double season_weight = 60;
  /// Where no cross is known at all and the route alone speaks: the seeds its germination is worth.
  double germination_weight = 10;
  double tray_done_below = 0.05;      ///< a tray is given up when the chance of one more is below
  std::optional<int> sold_after;      ///< months a ready plant stands; without it it stays
  double settling = 0;                ///< share of the mix that settles in the pot and is filled up
  double wet_kilograms_a_litre = 0.9; ///< of a filled pot, watered
};

/// For one cross: equally likely ways in which its seed may still come up. A draw holds for every
/// tray of the cross the chance that a seed waiting today comes up in each month, month by month;
/// the rest of 1 is the chance that it comes up later or never.
struct CrossSprouting {
  std::string cross; ///< its name
  book::TaxonId taxon;
  std::vector<Code> trays;
  int months = 0; ///< months listed for each tray; nothing comes up after them
  std::vector<std::vector<double>> draws; ///< each of trays × months values, tray after tray
  /// By draw, the curve and spread of the cross that it came from; empty where the route alone
  /// spoke.
  std::vector<stats::PosteriorPoint> points;
  /// By draw, the share of the cross's seed that comes up, where the route alone spoke.
  std::vector<double> shares;
};

enum class SeedFrom { at_hand, cone, told };

/// One way in which a sowing may turn out.
struct SeedDraw {
  Date sown_on;           ///< the day from which on it can be sown
  std::int64_t seeds = 0; ///< 0 to 1 000 000
};

/// Seed that is to be sown.
struct Sowing {
  SeedFrom from = SeedFrom::told;
  std::optional<Code> code; ///< the batch or cone that has the seed
  std::string cross;
  book::TaxonId taxon;
  std::vector<SeedDraw> draws; ///< equally likely; one where nothing is uncertain
  double pace = 1;             ///< times as long as its cross takes to come up
  std::string basis;           ///< what the number rests on

  /// Of the seeds, over the draws.
  [[nodiscard]] double mean_seeds() const;
};

/// What became of the plants of one taxon and step that have left it: equivalent plants, those of a
/// season counted less the more they shared their season's luck.
struct StepHistory {
  double alive = 0;
  double died = 0;
};

/// A taxon's step; the tray is step 0.
using StepOf = std::pair<book::TaxonId, std::size_t>;

struct ForecastInput {
  NeedsInput standing;
  Assumptions assumed;
  std::vector<CrossSprouting> sprouting;
  std::map<StepOf, StepHistory> history;
  std::map<Code, book::PlaceId> places; ///< where lots stand today
  /// What the book tells of a cross of the taxon that has not been sown yet: equally likely points.
  std::map<book::TaxonId, std::vector<stats::PosteriorPoint>> next_cross;
  std::vector<Sowing> sowings;      ///< none where only what stands is asked about
  std::vector<std::string> remarks; ///< what the reader has to know of the input
};

/// Plants of a season are worth n / (1 + (n - 1) / (season_weight + 1)) independent ones: the
/// beta-binomial's variance. 20 plants at 60 are worth 15.25.
StepHistory equivalent(std::int64_t alive, std::int64_t died, double season_weight);

/// Refuses fewer than 1 and more than 120 months; can_be_planned asks it too, and whoever reads a
/// book for a plan before that, since reading for a thousand years takes long.
Result<void> are_months_to_plan(int months);

/// Refuses what no plan can be made from, and says what to change: fewer than 1 or more than 120
/// months, a route without steps or with a step that never ends, a year without a potting month, a
/// mix that is its own part by any way or whose parts come to nothing, shares and weights out of
/// their range, draws that are no probabilities, a sowing of a number that cannot be.
Result<void> can_be_planned(const ForecastInput& input);

} // namespace coneline::plan
