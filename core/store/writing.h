// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What can be written to a book, inside one transaction. Movements come in through `enter` alone,
// and `enter` asks the ledger's gate.

#include "core/store/reading.h"

#include <memory>

namespace coneline::store {

class Chain;

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
  /// Fails, too, where the plant would be its own ancestor.
  Result<book::PlantId> put(const book::Plant& plant);
  Result<book::PollenLotId> put(const book::PollenLot& lot);
  /// A store of this name that is there already is brought up to date.
  Result<book::PollenStoreId> put(const book::PollenStore& store);
  Result<book::ConeId> put(const book::Cone& cone);
  Result<book::PurchaseId> put(const book::Purchase& purchase);
  Result<void> put(const book::Title& title);
  /// By its name.
  Result<void> put(const book::Figure& figure);
  Result<book::LabelStockId> put(const book::LabelStock& stock);
  Result<book::LabelLayoutId> put(const book::LabelLayout& layout);
  /// One for a printer and stock: a second brings the first up to date.
  Result<book::PrinterScaleId> put(const book::PrinterScale& scale);
  /// Prints are added, never changed. Fails on a code that nothing in the book has.
  Result<book::LabelPrintId> put(const book::LabelPrint& print);

  /// One for a good, supplier, form and size: a second brings the first up to date.
  Result<book::OfferId> put(const book::Offer& offer);
  void take_out(book::OfferId offer);
  /// By its name.
  Result<book::GoodId> put(const book::Good& good);
  /// A further one, or with an id the one that is changed.
  Result<book::TargetId> put(const book::Target& target);
  void take_out(book::TargetId target);
  /// One for a place: a second takes its place.
  Result<void> put(const book::PlaceLimits& limits);
  /// One for a lot: a second moves it. Fails where nothing can stand there.
  Result<void> put(const book::Pin& pin);
  /// False where the lot has no pin.
  bool take_out_pin(book::LotId lot);

  /// A lot without anything in it; the entry that fills it follows. Its code must be new.
  Result<book::LotId> add(const book::Lot& lot);

  /// Fails on a number that is not finite, and where the place has a reading of that moment.
  Result<void> add(const book::Temperature& reading);
  /// Takes out the readings of a place from the first to the last day; returns how many.
  std::int64_t take_out_temperatures(book::PlaceId place, Date first, Date last);
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
  /// empty. The entry's link is written with it.
  Result<book::EntryId> enter(const book::Entry& entry);

 private:
  Result<void> is_not_its_own_ancestor(const book::Plant& plant);
  void know_lots(const book::Entry& entry);
  Result<void> is_mirror(const book::Entry& entry);
  book::Ledger ledger_;
  std::unique_ptr<Chain> chain_;
};

} // namespace coneline::store
