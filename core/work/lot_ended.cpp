// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/lot_ended.h"

#include "core/base/phrase.h"
#include "core/work/tell.h"

#include <fmt/format.h>

namespace coneline::work {

Result<void> refuse_ended(store::Reading& reading, const book::Lot& lot) {
  for (const auto& balance : reading.balances_of(lot.id))
    if (book::standing(balance.account.state) == book::Standing::on_hand)
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

} // namespace coneline::work
