// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/fields.h"
#include "core/exchange/store_season.h"

#include <map>
#include <set>

namespace coneline::exchange {

namespace {

class StoreRounds {
 public:
  StoreRounds(const Sheets& sheets, Stored& stored, store::Writing& writing, Faults& faults)
      : sheets_(sheets), stored_(stored), writing_(writing), faults_(faults) {}

  void run() {
    std::map<book::RoundId, std::vector<book::RoundStop>> stops;
    std::set<std::pair<book::RoundId, book::LotId>> planned;
    for (const auto& each : sheet<StopRow>().rows) {
      const auto row = with_ids(each);
      if (!row)
        continue;
      if (planned.emplace(each.row.round, each.row.stop.lot).second)
        stops[each.row.round].push_back(row->stop);
      else
        faults_.add(fault("this round has that tray already", "Each tray is a stop once.")
                        .at(where(each, "tray")));
    }
    for (const auto& each : sheet<book::Round>().rows) {
      auto row = with_ids(each);
      if (!row)
        continue;
      row->id = {};
      row->stops = stops[each.row.id];
      const auto put = writing_.put(*row);
      if (put)
        stored_.add(each.row.id, *put);
      else
        faults_.add(put.error().at(where(each, "round")));
    }
    put_entries();
    for (const auto& each : sheet<book::Sighting>().rows)
      if (const auto row = with_ids(each))
        if (const auto seen = writing_.see(*row); seen && !*seen)
          faults_.add(fault("the very same sight stands above already", "Each is written once.")
                          .at(where(each, "lot")));
  }

 private:
  template <class Row>
  const Sheet<Row>& sheet() const {
    return std::get<Sheet<Row>>(sheets_);
  }

  /// The row with the book's ids; nothing where it or what it refers to did not get in.
  template <class Row>
  std::optional<Row> with_ids(const Lined<Row>& each) const {
    auto row = each.row;
    WithStoredIds io(stored_);
    if constexpr (std::is_same_v<Row, StopRow>) {
      io.field("tray", row.stop.lot);
      io.field("place", row.stop.place);
    } else {
      fields(io, row);
    }
    return each.sound && io.whole() ? std::optional(row) : std::nullopt;
  }

  void put_entries() {
    std::set<book::EntryId> made;
    for (const auto& each : sheet<book::RoundEntry>().rows) {
      const auto row = with_ids(each);
      if (!row)
        continue;
      if (!made.insert(row->entry).second)
        faults_.add(fault("this entry is of a round already", "An entry is made on one round.")
                        .at(where(each, "entry")));
      else if (const auto added = writing_.add(*row); !added)
        faults_.add(added.error().at(where(each, "entry")));
    }
  }

  const Sheets& sheets_;
  Stored& stored_;
  store::Writing& writing_;
  Faults& faults_;
};

} // namespace

void store_rounds(const Sheets& sheets, Stored& stored, store::Writing& writing, Faults& faults) {
  StoreRounds(sheets, stored, writing, faults).run();
}

} // namespace coneline::exchange
