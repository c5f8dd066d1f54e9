// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What can be asked of a book. Every count is a sum over movements; no number is kept twice.

#include "core/book/entry.h"
#include "core/book/entry_chain.h"
#include "core/book/label.h"
#include "core/book/ledger.h"
#include "core/book/lot.h"
#include "core/book/registers.h"
#include "core/book/round.h"
#include "core/book/temperature.h"

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

namespace coneline::store {

/// What an account holds; for beginnings below zero.
struct Balance {
  book::Account account;
  std::int64_t count = 0;
};

/// One day on which a tray was looked at, or lost ungerminated seed.
struct TrayLook {
  book::LotId tray;
  Date date;
  std::int64_t germinated = 0;       ///< seeds whose root or first leaf was seen for the first time
  std::int64_t leaves = 0;           ///< first leaves, of roots seen before or not
  std::int64_t straight_to_leaf = 0; ///< of both: the root was not seen before the leaf
  std::int64_t removed = 0;          ///< ungerminated seeds taken out, dead or missing
};

/// Seed coming into a tray.
struct TraySown {
  book::LotId tray;
  Date date; ///< the first day
  std::int64_t seeds = 0;
};

/// All that went from one account to another, by entries that stand.
struct Flow {
  book::Account from;
  book::Account to;
  Date first; ///< the first day
  std::int64_t count = 0;
};

/// What came into a lot on a day: from its cone or purchase, or from another lot.
struct Arrival {
  book::LotId lot;
  Date date;
  std::int64_t count = 0;
};

class Tables;

class Reading {
 public:
  explicit Reading(Tables& tables) : tables_(tables) {}

  book::Registers registers();
  book::Title title();

  std::vector<book::Lot> lots(); ///< in the order of their ids, those whose making was reversed too
  /// Fails: no such lot, or the label of another book.
  Result<book::Lot> lot(const Code& code);
  book::Lot lot(book::LotId id);

  /// Every account that is not empty, at the end of the day; without a day, with all entries.
  std::vector<Balance> balances(std::optional<Date> day = std::nullopt);
  std::vector<Balance> balances_of(book::LotId lot, std::optional<Date> day = std::nullopt);
  book::Timeline timeline(book::Account account);

  /// Where each lot stands; a lot that was never put anywhere is missing.
  std::unordered_map<book::LotId, book::PlaceId> places(std::optional<Date> day = std::nullopt);

  std::vector<book::Entry> entries(); ///< all, in the order they were written
  /// Those whose numbers lie between, both included, in their order.
  std::vector<book::Entry> entries_between(book::EntryId first, book::EntryId last);
  std::vector<book::Entry> last_entries(int most);
  std::vector<book::Entry>
  entries_of(book::LotId lot); ///< those about it and those that moved from or to it
  std::vector<book::Entry> entries_of(book::ConeId cone);
  std::vector<book::Entry> entries_of(book::PlantId plant); ///< what was noted of it or corrected
  Result<book::Entry> entry(book::EntryId id);
  /// The entry that reversed this one, if any.
  std::optional<book::EntryId> reversed_by(book::EntryId id);
  /// The chain over the entries as it is stored, in the order of the entries.
  std::vector<book::Link> links();
  /// The last link, which vouches for all entries; nothing in a book without entries.
  std::optional<book::Link> last_link();
  /// Entries that stand: neither reversed nor a reversal. In the order of their days.
  std::vector<book::Entry> standing_entries(book::Verb verb);

  /// What went between the accounts of all lots of one cone or purchase, by first days.
  std::vector<Flow> flows(const book::Origin& origin);
  /// Both without what was entered for later days.
  std::vector<TraySown> trays_sown(std::optional<Date> day = std::nullopt);
  std::vector<TrayLook> tray_looks(std::optional<Date> day = std::nullopt);
  std::vector<Arrival> arrivals(); ///< by entries that stand, in the order of lots, then days

  std::vector<book::Temperature> temperatures(); ///< in the order in which they were taken in
  std::vector<book::Temperature> temperatures(book::PlaceId place); ///< by time
  std::vector<book::PlaceId> places_measured(); ///< that have a reading
  std::vector<book::Stay> stays();              ///< by lot, then day
  book::LabelRecords label_records();
  std::vector<book::Round> rounds();             ///< with their stops, in the order of their ids
  std::vector<book::RoundEntry> round_entries(); ///< in the order of the entries
  std::vector<book::Sighting> sightings();       ///< in the order they were written
  /// The last day on which each lot's label was seen, by scan, picture or log; a lot whose label
  /// was never seen is missing.
  std::unordered_map<book::LotId, Date> last_seen(std::optional<Date> day = std::nullopt);

  /// For this room alone.
  [[nodiscard]] Tables& tables() { return tables_; }

 private:
  Tables& tables_;
};

} // namespace coneline::store
