// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/inspect.h"

#include "core/base/phrase.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

/// The day the tray was sown, which is no later than this one.
Result<Date> sown_by(store::Reading& reading, const book::Lot& tray, Date day) {
  for (const auto& entry : reading.entries_of(tray.id))
    if (entry.verb == book::Verb::sow && !reading.reversed_by(entry.id)) {
      if (entry.date <= day)
        return entry.date;
      return refuse(fault(phrase_n(days_between(day, entry.date),
                                   "{1} was sown on {2}, {0} day after this look",
                                   "{1} was sown on {2}, {0} days after this look",
                                   tray.code.text(), entry.date.said()),
                          "Check the day."));
    }
  return refuse(fault(phrase("{} was never sown, or its sowing was reversed", tray.code.text()),
                      "Check the code."));
}

std::string found(const Inspect& wanted) {
  std::string text;
  const auto add = [&](Count count, std::string_view one, std::string_view many) {
    if (!count.none())
      text += (text.empty() ? "" : ", ") + counted(count.value(), one, many);
  };
  add(wanted.roots, "new root", "new roots");
  add(wanted.leaves, "first leaf", "first leaves");
  add(wanted.dead, "dead seed out", "dead seeds out");
  return text.empty() ? phrase("nothing new") : text;
}

} // namespace

Result<Done> inspect(store::Writing& writing, const Inspect& wanted) {
  auto tray = lot_of_kind(writing, wanted.tray, Kind::tray);
  if (!tray)
    return refuse(tray.error());
  auto sown = sown_by(writing, *tray, wanted.noted.on);
  if (!sown)
    return refuse(sown.error());
  const auto roots_before = held(writing, tray->id, book::State::root, wanted.noted.on);
  const auto with_root = std::min(wanted.leaves.value(), roots_before + wanted.roots.value());
  auto entry = entry_for(book::Verb::inspect, wanted.noted);
  entry.lot = tray->id;
  const auto move = [&](book::State from, book::State to, std::int64_t count) {
    if (count > 0)
      entry.movements.push_back({{tray->id, from}, {tray->id, to}, Count::sure(count)});
  };
  move(book::State::sown, book::State::root, wanted.roots.value());
  move(book::State::root, book::State::leaf, with_root);
  move(book::State::sown, book::State::leaf, wanted.leaves.value() - with_root);
  move(book::State::sown, book::State::dead, wanted.dead.value());
  auto told = phrase("{} in {}", found(wanted), wanted.tray.text());
  // It is what was seen, so it is entered; but days to germination cannot be counted from it.
  if (*sown == wanted.noted.on && !(wanted.roots + wanted.leaves).none())
    told += phrase(", on the day it was sown: so the germination report leaves this tray out. "
                   "Reverse this look and enter it from {} on",
                   sown->plus_days(1).said());
  return entered(writing, entry, told);
}

Result<Done> inspect(store::Book& book, const Inspect& wanted) {
  return book.write([&](store::Writing& writing) { return inspect(writing, wanted); });
}

} // namespace coneline::work
