// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sums.h"

#include "core/store/tables.h"
#include "sql.h"

namespace coneline::store {

std::unordered_map<book::LotId, DoneToLot> done_to_lots(Reading& reading, book::Verb verb,
                                                        Date day) {
  std::unordered_map<book::LotId, DoneToLot> done;
  reading.tables()
      .ask(sql::done_to_lots)
      .with(book::word(verb))
      .with(day)
      .each([&](const Row& row) {
        done[book::LotId{row.whole("lot_id")}] = {static_cast<int>(row.whole("times")),
                                                  row.date("last")};
      });
  return done;
}

std::unordered_map<book::LotId, Date> last_entered(Reading& reading, Date day) {
  std::unordered_map<book::LotId, Date> last;
  reading.tables().ask(sql::last_entered).with(day).each([&](const Row& row) {
    last[book::LotId{row.whole("lot_id")}] = row.date("date");
  });
  return last;
}

} // namespace coneline::store
