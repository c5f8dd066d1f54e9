// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What lies on the harvest table: a batch as it is split, to the seed, and what the split says of
// the filled ones.
//
//   counted = unsorted + judged filled + judged empty + opened + lost in cleaning + gone on

#include "core/stats/sorting.h"
#include "core/work/line_back.h"
#include "core/work/verb_done.h"

namespace coneline::work {

/// Seed of the batch that was ever judged alike and not judged otherwise since.
struct JudgedPart {
  std::int64_t seeds = 0; ///< on hand, opened and gone on
  std::int64_t on_hand = 0;
  std::int64_t opened = 0;
  std::int64_t opened_filled = 0;

  [[nodiscard]] stats::CutTest cut_test() const { return {seeds, opened, opened_filled}; }
};

/// What is being counted at the table and not in the book yet.
struct TableCount {
  enum class What {
    lost,     ///< in cleaning: `first`
    floated,  ///< of the unsorted: `first` sank, `second` floated
    again,    ///< of the floaters: `first` sink now
    sinkers,  ///< cut open of those judged filled: `first` filled, `second` empty
    floaters, ///< cut open of those judged empty: likewise
  };
  What what = What::floated;
  Count first;
  Count second;
};

struct HarvestTable {
  book::Lot batch;
  OriginName origin;
  std::int64_t counted = 0; ///< seeds that ever came in, those a recount found too
  std::int64_t unsorted = 0;
  std::int64_t opened_unsorted = 0; ///< cut open before any test
  JudgedPart filled;                ///< sinkers, where the test is floating
  JudgedPart empty;                 ///< floaters
  std::int64_t lost = 0;            ///< in cleaning
  std::int64_t sown = 0;
  std::int64_t discarded = 0;
  std::int64_t other = 0; ///< dead, sold, missing at a recount
  std::optional<Date> harvested;
  std::optional<Date> cleaned;                ///< the last day
  std::optional<Date> soaks_until;            ///< out of the water on this day
  book::SeedTest test = book::SeedTest::none; ///< the last one
  std::vector<Date> floated;                  ///< the days of float tests
  std::optional<book::Keeping> kept;

  [[nodiscard]] std::int64_t opened() const {
    return opened_unsorted + filled.opened + empty.opened;
  }
  [[nodiscard]] std::int64_t on_hand() const { return unsorted + filled.on_hand + empty.on_hand; }
  /// 0 at every moment; what else is a fault of the program.
  [[nodiscard]] std::int64_t not_accounted_for() const {
    return counted - on_hand() - opened() - lost - sown - discarded - other;
  }
  /// As it will be once the count is in the book. Fails where more is counted than there is.
  Result<void> add(const TableCount& count);
  /// What the cut tests say of filled seed, at a confidence between 0 and 1.
  [[nodiscard]] Result<stats::Sorted> judged(double confidence) const;
};

/// Enters what was counted at the table, by the verb it belongs to.
Result<Done> enter(store::Book& book, const Code& batch, const TableCount& count,
                   const Noted& noted);

/// The table of a batch whose origin is known by name already, where many are asked about.
HarvestTable harvest_table(store::Reading& reading, const book::Lot& batch,
                           const OriginName& origin, Date today);

/// Fails: no such batch.
Result<HarvestTable> harvest_table(store::Reading& reading, const book::Registers& registers,
                                   const Code& batch, Date today);

} // namespace coneline::work
