// SPDX-License-Identifier: GPL-3.0-or-later
#include "entry_words.h"

#include "core/work/clean.h"
#include "core/work/tell.h"
#include "wording.h"

#include <QStringList>

#include <map>

namespace coneline::window {

namespace {

using book::State;

std::int64_t moved(const book::Entry& entry, State to) {
  std::int64_t sum = 0;
  for (const auto& movement : entry.movements)
    if (movement.to.state == to)
      sum += movement.count.value();
  return sum;
}

std::int64_t moved(const book::Entry& entry) {
  std::int64_t sum = 0;
  for (const auto& movement : entry.movements)
    sum += movement.count.value();
  return sum;
}

/// "3 new leaves" for a count above zero, else nothing.
QString some(std::int64_t count, const QString& said) {
  return count > 0 ? said : QString();
}

QString joined(QStringList parts, const QString& none) {
  parts.removeAll(QString());
  return parts.isEmpty() ? none : parts.join(QStringLiteral(", "));
}

QString pollinated(const book::Registers& registers, const book::Entry& entry) {
  QString words = phrased("pollinated");
  if (const auto* pass = std::get_if<book::Pollination>(&entry.detail)) {
    words += ", " + text(book::said(pass->method));
    for (const auto& used : pass->pollen)
      words += ", " + (used.lot ? text(registers.pollen_lot(*used.lot).code.text())
                                : phrased("pollen of an unknown father"));
  }
  return words;
}

QString stored(const book::Entry& entry) {
  QString words = phrased("stored");
  if (const auto* keeping = std::get_if<book::Keeping>(&entry.detail)) {
    words += ": " + text(keeping->store);
    if (keeping->celsius)
      words += ", " + shown(Quantity::celsius, *keeping->celsius, 0);
    if (keeping->until_from)
      words += phrased(", may be ready from {}", shown(*keeping->until_from));
  }
  return words;
}

QString inspected(const book::Entry& entry) {
  std::int64_t roots = 0;
  std::int64_t leaves = 0;
  const auto dead = moved(entry, State::dead);
  for (const auto& [from, to, count] : entry.movements) {
    roots += to.state == State::root ? count.value() : 0;
    leaves += to.state == State::leaf ? count.value() : 0;
  }
  return joined({some(roots, phrased_n(roots, "{} new root", "{} new roots")),
                 some(leaves, phrased_n(leaves, "{} new leaf", "{} new leaves")),
                 some(dead, phrased_n(dead, "{} taken out dead", "{} taken out dead"))},
                phrased("looked at, nothing new"));
}

/// "12 potted into G17: " and the codes, or without them where nothing changed its lot.
QString into(store::Reading& reading, const book::Entry& entry, const QString& said) {
  QStringList codes;
  for (const auto& movement : entry.movements)
    if (movement.from.lot != movement.to.lot)
      codes << text(reading.lot(movement.to.lot).code.text());
  codes.removeDuplicates();
  return codes.isEmpty() ? said : phrased("{} into {}", said, codes.join(QStringLiteral(", ")));
}

QString sold(const book::Entry& entry) {
  auto words = phrased_n(moved(entry), "{} sold", "{} sold");
  if (const auto* sale = std::get_if<book::Sale>(&entry.detail)) {
    if (!sale->buyer.empty())
      words += phrased(" to {}", sale->buyer);
    if (sale->cents)
      words += phrased(" for {}", shown(static_cast<double>(*sale->cents) / 100, 2));
  }
  return words;
}

QString sorted(const book::Entry& entry) {
  const auto filled = moved(entry, State::judged_filled);
  const auto empty = moved(entry, State::judged_empty);
  return phrased("sorted: {}",
                 joined({some(filled, phrased_n(filled, "{} judged filled", "{} judged filled")),
                         some(empty, phrased_n(empty, "{} judged empty", "{} judged empty"))},
                        phrased("nothing moved")));
}

QString recounted(const book::Entry& entry) {
  const auto missing = moved(entry, State::unexplained);
  if (missing > 0)
    return phrased_n(missing, "recounted: {} missing, unexplained",
                     "recounted: {} missing, unexplained");
  return moved(entry) > 0 ? phrased("recounted: {} more, unexplained", shown(moved(entry)))
                          : phrased("recounted: as it should be");
}

} // namespace

QString said(store::Reading& reading, const book::Registers& registers, const book::Entry& entry) {
  const auto all = moved(entry);
  switch (entry.verb) {
  case book::Verb::pollinate:
    return pollinated(registers, entry);
  case book::Verb::harvest:
    return all == 0 ? phrased("came off, no seed")
                    : phrased_n(all, "{} seed harvested", "{} seeds harvested");
  case book::Verb::buy_in:
    return phrased_n(all, "{} bought in", "{} bought in");
  case book::Verb::clean:
    return joined({phrased("cleaned"), some(all, phrased_n(all, "{} lost", "{} lost"))}, {});
  case book::Verb::sort:
    return sorted(entry);
  case book::Verb::open:
    return phrased("{} cut open: {} filled, {} empty", shown(all),
                   shown(moved(entry, State::opened_filled)),
                   shown(moved(entry, State::opened_empty)));
  case book::Verb::store:
    return stored(entry);
  case book::Verb::sow:
    return into(reading, entry, phrased_n(all, "{} sown", "{} sown"));
  case book::Verb::inspect:
    return inspected(entry);
  case book::Verb::pot:
    return into(reading, entry, phrased_n(all, "{} potted", "{} potted"));
  case book::Verb::pot_on:
    return into(reading, entry, phrased_n(all, "{} potted on", "{} potted on"));
  case book::Verb::move:
    return phrased("moved to {}", place_name(registers, entry.place));
  case book::Verb::lose:
    return phrased_n(all, "{} died", "{} died");
  case book::Verb::discard:
    return phrased_n(all, "{} discarded", "{} discarded");
  case book::Verb::sell:
    return sold(entry);
  case book::Verb::plant_out:
    return phrased_n(all, "{} planted out", "{} planted out");
  case book::Verb::recount:
    return recounted(entry);
  case book::Verb::check_scales:
  case book::Verb::watch_male_cone:
  case book::Verb::collect_pollen:
  case book::Verb::test_pollen:
  case book::Verb::discard_pollen:
  case book::Verb::plan_move:
  case book::Verb::correct:
  case book::Verb::put_off:
  case book::Verb::dismiss:
  case book::Verb::want_label:
  case book::Verb::print_label:
    return text(work::tell(reading, entry));
  case book::Verb::reverse:
    return phrased("took an entry back");
  }
  return {};
}

QString note_shown(const std::string& note) {
  return note == work::water_changed ? phrased("water changed") : text(note);
}

} // namespace coneline::window
