// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Pollen, from the male cone to the last grain: the cone comes loose and sheds, is taken off, and
// pollen is collected every second or third day while it sheds (common practice, no source); lots
// are drawn down by passes, tested, and thrown away.

#include "core/stats/share_interval.h"
#include "core/work/verb_done.h"

namespace coneline::work {

struct WatchMaleCone {
  Code plant;
  book::MaleCone state = book::MaleCone::shedding;
  Noted noted;
};
/// A plant of unknown sex becomes male. Fails: no such plant, a female plant.
Result<Done> watch_male_cone(store::Book& book, const WatchMaleCone& wanted);

struct CollectPollen {
  Code source; ///< a male plant, for a new lot, or a lot that takes more
  std::optional<double> millilitres;
  std::string store; ///< of a new lot: "refrigerator, dry"
  Noted noted;
  std::string lot_note{}; ///< of a new lot: what its label answers
};
/// A plant of unknown sex becomes male. Fails: no such plant or lot, a female plant, a lot
/// collected later or thrown away.
Result<Done> collect_pollen(store::Book& book, const CollectPollen& wanted);
/// Within a transaction that does more.
Result<Done> collect_pollen(store::Writing& writing, const CollectPollen& wanted);

struct TestPollen {
  Code lot;
  std::int64_t counted = 0;
  std::int64_t germinated = 0;
  std::string conditions;
  Noted noted;
};
Result<Done> test_pollen(store::Book& book, const TestPollen& wanted);

struct DiscardPollen {
  Code lot;
  std::optional<double> millilitres; ///< all that is left when not given
  Noted noted;
};
Result<Done> discard_pollen(store::Book& book, const DiscardPollen& wanted);

struct PollenTest {
  Date date;
  std::int64_t counted = 0;
  std::int64_t germinated = 0;
  stats::Interval range; ///< Wilson's, 95 %
  std::string conditions;
};

/// A pollen lot with what came of it, by entries that stand.
struct PollenLine {
  book::PollenLot lot;
  std::optional<double> collected; ///< ml; none where no collection was measured
  double used = 0;                 ///< ml, in measured passes
  double discarded = 0;            ///< ml
  int passes = 0;
  int passes_unmeasured = 0;
  std::optional<double> left; ///< ml; at most so much where passes were not measured
  std::optional<Date> gone;   ///< all thrown away, or its collection taken back, on this day
  std::vector<PollenTest> tests;
  std::optional<book::Range> years; ///< the age limit of its store
  std::string years_source;         ///< as it is said
  std::optional<Date> old_from;     ///< the early end of the limit
  std::optional<Date> old_to;
  [[nodiscard]] bool there() const { return !gone && !(left && *left <= 0); }
};

/// Every lot, those first that should go first: by the early end of their limit, then by age.
std::vector<PollenLine> pollen_lines(store::Reading& reading, const book::Registers& registers);

/// Fails where a lot would be used or thrown away on a day before it was collected, after it was
/// gone, or beyond what is left on any day.
Result<void> pollen_suffices(store::Reading& reading, const book::Registers& registers,
                             const book::PollenLot& lot, Date day,
                             std::optional<double> millilitres);
/// Fails where taking back this collection, which stands, would leave less than nothing in its lot
/// on a day, or a pass with pollen that never came in.
Result<void> collection_is_not_needed(store::Reading& reading, const book::Registers& registers,
                                      const book::Entry& collection);

/// Seed set and germination by store and age of the pollen, from cones whose passes all used
/// pollen of one store and one age.
struct PollenAgeRow {
  std::string store;
  int years = 0; ///< whole years of age at the pass
  int cones = 0;
  std::int64_t seeds = 0;
  std::int64_t ceiling = 0; ///< two a fertile scale, of cones whose scales were counted
  std::int64_t seeds_of_ceiling = 0;
  std::int64_t sown = 0;
  std::int64_t germinated = 0;
  std::optional<stats::Interval> set; ///< Wilson's, 95 %, of seeds_of_ceiling / ceiling
  std::optional<stats::Interval> germination;
};
std::vector<PollenAgeRow> pollen_by_age(store::Reading& reading, const book::Registers& registers);

} // namespace coneline::work
