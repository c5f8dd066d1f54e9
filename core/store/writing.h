// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What can be written to a book, inside one transaction. Movements come in through `enter` alone,
// and `enter` asks the ledger's gate.

#include "core/store/reading.h"

namespace coneline::store {

class Writing : public Reading {
 public:
  explicit Writing(Tables& tables);
  ~Writing();
  Writing(const Writing&) = delete;
  Writing& operator=(const Writing&) = delete;

  /// Adds a row, or with an id that is stored brings the row up to date. Fails where a name or code
  /// stands already or a value is out of its range; the fault says which.
  Result<book::TaxonId> put(const book::Taxon& taxon);
  Result<book::PlaceId> put(const book::Place& place);
  Result<book::PotId> put(const book::Pot& pot);
  Result<book::MixId> put(const book::Mix& mix);
  Result<book::RouteId> put(const book::Route& route);
  Result<book::PlantId> put(const book::Plant& plant);
  Result<book::PollenLotId> put(const book::PollenLot& lot);
  Result<book::ConeId> put(const book::Cone& cone);
  Result<book::PurchaseId> put(const book::Purchase& purchase);
  Result<void> put(const book::Title& title);

  /// A lot without anything in it; the entry that fills it follows. Its code must be new.
  Result<book::LotId> add(const book::Lot& lot);

  /// Makes a round with its stops, or with an id that is stored brings its state up to date; the
  /// stops stay what they were.
  Result<book::RoundId> put(const book::Round& round);
  /// Notes that an entry was made on a round.
  Result<void> add(const book::RoundEntry& made);
  /// Notes that a label was seen. False where the very same sight stands already.
  Result<bool> see(const book::Sighting& sighting);

  /// The next free code of a kind in this book.
  Result<Code> next_code(Kind kind);

  /// Writes an entry when the gate admits its movements. For a reversal, `movements` are the mirror
  /// of the reversed entry's; anything else is refused. The entry's `entered` is set here when
  /// empty.
  Result<book::EntryId> enter(const book::Entry& entry);

 private:
  Result<void> know_lots(const book::Entry& entry);
  Result<void> is_mirror(const book::Entry& entry);
  book::Ledger ledger_;
};

} // namespace coneline::store
