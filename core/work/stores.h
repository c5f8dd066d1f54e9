// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Stores held side by side by what came up later from seed kept in them. The trade's sources
// contradict each other, so the figures stand alone, without advice.

#include "core/stats/germination_figures.h"
#include "core/work/germination.h"

namespace coneline::work {

/// A batch that was in a store before it was sown.
struct KeptBatch {
  Code batch;
  book::TaxonId taxon;
  std::string store;                 ///< the one it was sown from, in the grower's words
  double months = 0;                 ///< from harvest to the first sowing
  std::vector<stats::Outcome> trays; ///< seed tried and come up: sown, less what still waits
  std::int64_t waiting = 0;
};

std::vector<KeptBatch> kept_batches(store::Reading& reading, const book::Registers& registers,
                                    Date as_of);

struct StoreFigures {
  std::string taxon;
  std::string store;
  std::size_t batches = 0;
  std::size_t trays = 0;
  std::int64_t tried = 0;
  std::int64_t came_up = 0;
  std::int64_t waiting = 0;
  double months_low = 0; ///< from harvest to sowing
  double months_high = 0;
  stats::FinalShare share; ///< of the tried, counting the spread between trays
};

/// By taxon, then by store; only where something was tried. `confidence` lies between 0 and 1.
std::vector<StoreFigures> compare_stores(std::span<const KeptBatch> batches,
                                         const book::Registers& registers, double confidence);

/// Months of after-ripening that worked, from the book's own seed of a taxon: between the tenth and
/// the ninetieth of every hundred seeds that came up. Nothing with fewer than three batches.
std::optional<book::Range> own_after_ripening(std::span<const KeptBatch> batches,
                                              book::TaxonId taxon);

} // namespace coneline::work
