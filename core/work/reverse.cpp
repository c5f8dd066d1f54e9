// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/reverse.h"

#include "core/base/phrase.h"
#include "core/work/pollen.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

std::string told(store::Reading& reading, const book::Entry& entry) {
  std::string back;
  for (const auto& [from, to, count] : entry.movements)
    back += phrase("{}{} from '{}'{} back to '{}'{}", back.empty() ? ": " : "; ", count.value(),
                   book::said(to.state),
                   from.lot == to.lot ? std::string()
                                      : phrase(" of {}", reading.lot(to.lot).code.text()),
                   book::said(from.state), phrase(" of {}", reading.lot(from.lot).code.text()));
  return phrase("{} on {}{}", book::said(entry.verb), entry.date.said(), back);
}

Result<Done> reverse(store::Writing& writing, const Reverse& wanted) {
  auto first = writing.entry(wanted.entry);
  if (!first)
    return refuse(first.error());
  if (first->verb == book::Verb::correct)
    return refuse(fault(phrase("entry {} corrected the register", first->id.value),
                        "Correct it again; what stood before is kept in its history."));
  if (first->verb == book::Verb::collect_pollen && !first->reverses &&
      !writing.reversed_by(first->id))
    if (auto free = collection_is_not_needed(writing, writing.registers(), *first); !free)
      return refuse(free.error());
  auto entry = entry_for(book::Verb::reverse, {first->date, wanted.who, wanted.note});
  entry.lot = first->lot;
  entry.cone = first->cone;
  entry.reverses = first->id;
  entry.movements = first->movements;
  for (auto& movement : entry.movements)
    std::swap(movement.from, movement.to);
  return entered(writing, entry, phrase("reversed: {}", told(writing, *first)));
}

Result<Done> reverse(store::Book& book, const Reverse& wanted) {
  return book.write([&](store::Writing& writing) { return reverse(writing, wanted); });
}

} // namespace coneline::work
