// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the harvest table says at a moment: the split to the seed, the filled ones with their range,
// what the book knows of the float test, what to do with the floaters, and the next step.

#include "core/plan/floaters.h"
#include "core/work/float_history.h"
#include "core/work/harvest_table.h"

namespace coneline::report {

/// What the grower reckons with, in his own money. None where it was never said.
struct GrowersFigures {
  std::optional<double> plant_worth;
  std::optional<double> seed_cost; ///< of a sown seed; none: from the two prices, where there are
  std::optional<double> litre_price;
  std::optional<double> bench_price; ///< of a square metre for a month
  double keep_cost = 0;              ///< of a seed kept until it is decided

  bool operator==(const GrowersFigures&) const = default;
};

/// The names under which a book keeps them.
/// Those kept in the book.
GrowersFigures figures_in(const book::Registers& registers);

struct HarvestAsked {
  double confidence = 0.95;
  double assurance = 0.95;
  GrowersFigures figures;
  std::optional<work::TableCount> counting; ///< reckoned with as if it were in the book
};

/// What the opening of a part tells and costs.
struct PartView {
  work::JudgedPart part;
  stats::Filled filled;            ///< opened ones included
  std::int64_t open_for_tenth = 0; ///< to cut in all, so that a tenth filled shows at the assurance
  std::optional<double> filled_by_opening; ///< filled ones a further 10 cuts cost, expected
};

struct HarvestView {
  work::HarvestTable table;
  book::FloatTest float_test = book::FloatTest::unknown;
  std::string float_source;
  stats::Sorted judged;
  PartView sank;
  PartView floated;
  work::FloatHistory history;
  std::optional<double> seed_cost;
  std::optional<plan::FloatersDecision> decision; ///< none without floaters or figures
  std::string decision_told; ///< the decision's reason, or what is missing for one
  std::string next;          ///< the next step, one sentence
  std::vector<std::string> cautions;
};

/// What the page of a batch rests on: read once, it serves for every count that is tried on it.
struct HarvestGround {
  work::HarvestTable table;
  work::FloatHistory history;
  book::Registers registers;
  Date today;
};
/// Fails: no such batch.
Result<HarvestGround> harvest_ground(store::Reading& reading, const Code& batch, Date today);
/// Fails: more counted than there is, a confidence or assurance outside 0 to 1, figures that cannot
/// be.
Result<HarvestView> harvest_view(const HarvestGround& ground, const HarvestAsked& asked);

} // namespace coneline::report
