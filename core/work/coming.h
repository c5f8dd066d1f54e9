// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is still to come of the seed in trays, for each cross and tray, with what the book knows of
// the taxon: its other crosses give the prior (stats/germination_prior.h), the cross's own counts
// take over. Trays of one seed parent and the same pollen parents are one cross, as in the report.

#include "core/stats/coming.h"
#include "core/work/germination.h"

namespace coneline::work {

struct ComingTray {
  ObservedTray seen;
  std::int64_t germinated = 0;
  stats::Coming coming;
};

struct ComingCross {
  std::string name;
  std::string taxon; ///< name or hybrid formula
  stats::GerminationPrior prior;
  stats::Coming coming;
  std::vector<ComingTray> trays; ///< those with seed waiting, in the order of codes
};

struct TrayNotReckoned {
  Code code;
  std::string why;
};

struct ComingBook {
  Date as_of;
  stats::ComingAsked asked;
  std::vector<ComingCross> crosses; ///< those with seed waiting, in the order of their names
  std::vector<TrayNotReckoned> left_out;
};

/// Everything that waits on `as_of`, or with `only` what waits in that cross: the cross of the tray
/// with this code. Fails on a confidence outside 0 to 1 or days not above 0.
Result<ComingBook> coming(store::Reading& reading, Date as_of, const stats::ComingAsked& asked,
                          const std::optional<Code>& only = std::nullopt);

/// A cross that was ever sown, with all curves that fit it.
struct CrossKnown {
  std::string name;
  book::TaxonId taxon;
  std::vector<ObservedTray> trays;
  stats::GerminationPosterior posterior;
};

struct GerminationKnown {
  std::vector<CrossKnown> crosses;
  std::map<book::TaxonId, stats::GerminationPrior> next; ///< of a further cross, by taxon
  std::vector<TrayNotReckoned> left_out;
};

/// Everything sown by `as_of`, for whoever plans with it.
GerminationKnown germination_known(store::Reading& reading, const book::Registers& registers,
                                   Date as_of);

/// "3 other crosses of the taxon: 41–83 % germinable, half of it up by day 90–210".
std::string told(const stats::GerminationPrior& prior, double confidence);

/// Half of the seed that germinates is up by this day, where nothing else is known: the middle of
/// the route's months, else half a year (common practice, no source).
double usual_day(const book::Route* route);

} // namespace coneline::work
