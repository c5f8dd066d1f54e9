// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The chain of core/book/entry_chain.h in the file. Private to this room.

#include "core/base/progress.h"
#include "core/book/entry_chain.h"
#include "core/store/tables.h"

#include <optional>
#include <unordered_map>

namespace coneline::store {

class Reading;

/// What the chain calls the rows of this book. Remembers what it has looked up, so it lives no
/// longer than its transaction.
class StoredNames : public book::NamesInChain {
 public:
  explicit StoredNames(Tables& tables) : tables_(tables) {}
  std::string lot(book::LotId id) override;
  std::int64_t cone(book::ConeId id) override;
  std::int64_t place(book::PlaceId id) override;
  std::int64_t pollen_lot(book::PollenLotId id) override;
  std::int64_t plant(book::PlantId id) override;

 private:
  std::int64_t number(const char* table, std::int64_t id);
  Tables& tables_;
  std::unordered_map<book::LotId, std::string> lots_;
  std::unordered_map<std::string, std::int64_t> numbers_;
};

/// Writes the links of new entries, one after the other, within one transaction.
class Chain {
 public:
  explicit Chain(Tables& tables) : tables_(tables), names_(tables) {}
  /// `entry` has its id and its moment, and is the newest.
  void add(const book::Entry& entry);

 private:
  Tables& tables_;
  StoredNames names_;
  std::optional<std::string> last_;
};

/// Gives links to the entries of a book that was made before there was a chain. Does nothing where
/// one entry has a link.
void chain_older_entries(Tables& tables);

struct ChainProof {
  std::int64_t links = 0;
  std::string last; ///< the last link; empty without entries
  std::vector<std::string> faults;
};

/// Recomputes every link from the file. A chain whose proof `progress` stopped does not hold.
ChainProof prove_chain(Tables& tables, Reading& reading, const Progress& progress = {});

} // namespace coneline::store
