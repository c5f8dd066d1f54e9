// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Questions about many entries that are summed where they lie, so that no entry is read for them.

#include "core/store/reading.h"

#include <optional>
#include <unordered_map>
#include <vector>

namespace coneline::store {

/// How often something was done to a lot, and when last.
struct DoneToLot {
  int times = 0;
  std::optional<Date> last;
};

/// By standing entries of the verb about each lot, up to the day; other lots are missing.
std::unordered_map<book::LotId, DoneToLot> done_to_lots(Reading& reading, book::Verb verb,
                                                        Date day);

/// The last day on which something was entered about each lot or moved from or to it, by entries
/// that stand, up to the day.
std::unordered_map<book::LotId, Date> last_entered(Reading& reading, Date day);

/// Entries of the verb that were reversed, by their numbers.
std::vector<book::Entry> reversed_entries(Reading& reading, book::Verb verb);

} // namespace coneline::store
