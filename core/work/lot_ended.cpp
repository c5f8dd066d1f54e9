// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/lot_ended.h"

#include "core/base/phrase.h"
#include "core/work/tell.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::work {

namespace {

bool holds_something(store::Reading& reading, const book::Lot& lot, std::optional<Date> day) {
  return std::ranges::any_of(reading.balances_of(lot.id, day), [](const auto& balance) {
    return book::standing(balance.account.state) == book::Standing::on_hand;
  });
}

} // namespace

Result<void> refuse_ended(store::Reading& reading, const book::Lot& lot) {
  if (holds_something(reading, lot, std::nullopt))
    return {};
  const auto entries = reading.entries_of(lot.id);
  std::string last;
  for (const auto& entry : entries)
    if (!entry.movements.empty() && !entry.reverses && !reading.reversed_by(entry.id))
      last = fmt::format(": {}, {}", entry.date.said(), tell(reading, entry));
  return refuse(fault(phrase("{} has ended, nothing is left in this {}{}", lot.code.text(),
                             kind_said(lot.code.kind()), last),
                      "Take the old label away; if something is in it, count it again (recount)."));
}

Result<void> refuse_not_begun(store::Reading& reading, const book::Lot& lot, Date day) {
  std::optional<Date> began;
  for (const auto& entry : reading.entries_of(lot.id)) {
    const bool brings = std::ranges::any_of(entry.movements, [&](const auto& movement) {
      return movement.to.lot == lot.id &&
             (movement.from.lot != lot.id ||
              book::standing(movement.from.state) == book::Standing::beginning);
    });
    if (brings && !entry.reverses && !reading.reversed_by(entry.id))
      began = began ? std::min(*began, entry.date) : entry.date;
  }
  if (!began)
    return refuse(fault(phrase("nothing ever came into {}, or it was taken back", lot.code.text()),
                        "Check the code; take the label away."));
  if (*began > day)
    return refuse(fault(phrase_n(days_between(day, *began), "{1} began on {2}, {0} day after {3}",
                                 "{1} began on {2}, {0} days after {3}", lot.code.text(),
                                 began->said(), day.said()),
                        "Check the day."));
  return {};
}

Result<void> refuse_empty_on(store::Reading& reading, const book::Lot& lot, Date day) {
  if (holds_something(reading, lot, day))
    return {};
  if (auto begun = refuse_not_begun(reading, lot, day); !begun)
    return begun;
  if (auto ended = refuse_ended(reading, lot); !ended)
    return ended;
  return refuse(fault(phrase("{} holds nothing on {}", lot.code.text(), day.said()),
                      "Check the code and the day."));
}

} // namespace coneline::work
