// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Which crosses could be made with the cones and the pollen there are, and which are best made.
//
// Plants to expect from a cross = seeds of the cone × share of the pollen that is viable ×
// germination × survival of every step of the seed parent's route. Where factors have ranges, the
// range of the product takes them as independent: on a logarithmic scale the widths to each side
// add up by their squares. A factor without a range is held at its likely value, and said so. That
// seed set goes with the viable share of the pollen is a rule of thumb without a source.
//
// Room is the most a cross takes of a light class in any step of its route: the plants that enter
// the step × the rectangle around the pot / its cells. It says nothing of when.

#include "core/book/registers.h"
#include "core/stats/kinship.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace coneline::plan {

/// A number one reckons with, where it comes from, and its range of 10 to 90 % where there is one.
struct Estimate {
  double likely = 0;
  std::optional<book::Range> range;
  std::string source;
};

/// The product of independent estimates; `source` names the factors that have no range.
Estimate product(const std::vector<std::pair<std::string, Estimate>>& factors);

/// A cone that takes pollen or will, or a female whose cone is still expected.
struct FemaleToCross {
  Code code; ///< of the cone, or of the plant
  book::PlantId plant;
  std::optional<Estimate> seeds;
  std::string when; ///< "loose now", "expected"
};

struct PollenToUse {
  Code code;
  book::PlantId plant;
  std::optional<double> millilitres; ///< left; none where nobody measured
  std::optional<Estimate> viability; ///< share that germinates; none where not tested
  Date collected;
  std::string store;
};

struct CrossingInput {
  Date today;
  book::Registers registers;
  std::vector<stats::Parents> parents; ///< of registers.plants, by place in that list
  std::vector<FemaleToCross> females;
  std::vector<PollenToUse> pollen;
  std::map<book::TaxonId, Estimate> germination; ///< where the book has its own; else the route's
  /// m² left by light class; a class that is missing has none. Nothing: room is not asked about.
  std::optional<std::map<book::Light, double>> room;
  double millilitres_a_cone = 1;    ///< all passes together
  std::vector<std::string> remarks; ///< where these numbers come from
  /// Cones and pollen that cannot be used, and why.
  std::vector<std::pair<Code, std::string>> left_out;
};

/// One female with one lot of pollen.
struct PossibleCross {
  std::size_t female = 0; ///< place in CrossingInput::females
  std::size_t pollen = 0; ///< place in CrossingInput::pollen
  bool hybrid = false;
  std::string name;   ///< seed parent first, as the book names crosses
  std::string taxon;  ///< the taxon, or the formula of a hybrid: names joined by × (ICN Art. H.2),
                      ///< seed parent first
  double kinship = 0; ///< of the two parents, which is the inbreeding of the offspring
  double mean_kinship = 0; ///< of an offspring with all plants of its parents' taxa in the book
  std::vector<book::PlantId> founders; ///< among the ancestors of both
  std::optional<Estimate> plants;
  std::map<book::Light, double> room; ///< m²
  std::vector<std::string> missing;   ///< permits and papers
  std::vector<std::string> remarks;
};

/// Every female with every lot of pollen, females first in their order. Fails, naming the way,
/// where a plant is its own ancestor, where there are no females, or no pollen.
Result<std::vector<PossibleCross>> possible_crosses(const CrossingInput& input);

enum class Aim { most_plants, least_kinship, mixture };

struct CrossingWish {
  Aim aim = Aim::most_plants;
  /// Of a mixture: how much kinship weighs, 0 to 1. The sum made greatest is
  /// (1 - weight) × plants / most plants of any cross - weight × mean kinship / highest of any
  /// cross.
  double kinship_weight = 0.5;
  /// At most so many crosses for most plants, else just as many. None: free for most plants; for
  /// the other aims as many as can be made.
  std::optional<int> crosses;
  bool hybrids = false; ///< may be proposed
  /// Crosses of closer parents are not proposed. Half sibs are common practice, no source.
  double most_kinship = 0.125;
  std::vector<std::size_t> pinned; ///< places in the list of possible crosses; made whatever else
  std::vector<std::size_t> forbidden; ///< never made
  double seconds = 10;                ///< for each search; a proposal takes up to three
};

struct PollenTaken {
  std::size_t pollen = 0;
  double millilitres = 0;
};

/// With its bound: no choice within the same limits has a sum above it.
struct Proposal {
  std::vector<std::size_t> chosen; ///< places in the list of possible crosses
  double sum = 0;                  ///< what was made greatest, in the aim's own measure
  double bound = 0;
  double gap = 0; ///< (bound - sum) / |sum|; 0 for the best there is
  bool proven = false;
  std::string measure; ///< what `sum` and `bound` are: "plants", "mean kinship, summed" …
  double plants = 0;
  std::optional<double> mean_kinship; ///< of the offspring, each cross the same; none without one
  std::size_t founders = 0;           ///< represented in the offspring
  std::vector<PollenTaken> pollen;
  std::map<book::Light, double> room; ///< m² taken
};

/// The exact best; of choices that are equal in the aim, the one with the freshest pollen, or for
/// least kinship with most plants; where the time ran out first, the best found, not proven. Fails
/// where the limits leave no choice; the fault says which and what to change. Where none was found
/// in the time the fault says that instead, since there may be one.
Result<Proposal> propose(const CrossingInput& input, const std::vector<PossibleCross>& possible,
                         const CrossingWish& wish);

/// Why this cross is not proposed unless it is pinned; empty where it may be.
std::string why_not(const PossibleCross& cross, const CrossingWish& wish);

} // namespace coneline::plan
