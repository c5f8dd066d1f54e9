// SPDX-License-Identifier: GPL-3.0-or-later
#include "entry_words.h"

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
QString some(std::int64_t count, const char* one, const char* many) {
  return count > 0 ? shown(count) + " " + QString::fromUtf8(count == 1 ? one : many) : QString();
}

QString joined(QStringList parts, const QString& none) {
  parts.removeAll(QString());
  return parts.isEmpty() ? none : parts.join(QStringLiteral(", "));
}

QString pollinated(const book::Registers& registers, const book::Entry& entry) {
  QString words = QStringLiteral("pollinated");
  if (const auto* pass = std::get_if<book::Pollination>(&entry.detail)) {
    words += ", " + text(book::word(pass->method));
    for (const auto& used : pass->pollen)
      words += ", " + (used.lot ? text(registers.pollen_lot(*used.lot).code.text())
                                : QStringLiteral("pollen of an unknown father"));
  }
  return words;
}

QString stored(const book::Entry& entry) {
  QString words = QStringLiteral("stored");
  if (const auto* keeping = std::get_if<book::Keeping>(&entry.detail)) {
    words += ": " + text(keeping->store);
    if (keeping->celsius)
      words += ", " + shown(*keeping->celsius, 0) + " °C";
    if (keeping->until_from)
      words += ", may be ready from " + shown(*keeping->until_from);
  }
  return words;
}

QString inspected(const book::Entry& entry) {
  std::int64_t roots = 0;
  std::int64_t leaves = 0;
  for (const auto& [from, to, count] : entry.movements) {
    roots += to.state == State::root ? count.value() : 0;
    leaves += to.state == State::leaf ? count.value() : 0;
  }
  return joined({some(roots, "new root", "new roots"), some(leaves, "new leaf", "new leaves"),
                 some(moved(entry, State::dead), "taken out dead", "taken out dead")},
                QStringLiteral("looked at, nothing new"));
}

QString into(store::Reading& reading, const book::Entry& entry) {
  QStringList codes;
  for (const auto& movement : entry.movements)
    if (movement.from.lot != movement.to.lot)
      codes << text(reading.lot(movement.to.lot).code.text());
  codes.removeDuplicates();
  return codes.isEmpty() ? QString() : " into " + codes.join(QStringLiteral(", "));
}

QString sold(const book::Entry& entry) {
  auto words = shown(moved(entry)) + " sold";
  if (const auto* sale = std::get_if<book::Sale>(&entry.detail)) {
    if (!sale->buyer.empty())
      words += " to " + text(sale->buyer);
    if (sale->cents)
      words += " for " + shown(static_cast<double>(*sale->cents) / 100, 2);
  }
  return words;
}

QString recounted(const book::Entry& entry) {
  const auto missing = moved(entry, State::unexplained);
  if (missing > 0)
    return "recounted: " + shown(missing) + " missing, unexplained";
  return moved(entry) > 0 ? "recounted: " + shown(moved(entry)) + " more, unexplained"
                          : QStringLiteral("recounted: as it should be");
}

} // namespace

QString said(store::Reading& reading, const book::Registers& registers, const book::Entry& entry) {
  const auto all = shown(moved(entry));
  switch (entry.verb) {
  case book::Verb::pollinate:
    return pollinated(registers, entry);
  case book::Verb::harvest:
    return all + " seeds harvested";
  case book::Verb::buy_in:
    return all + " bought in";
  case book::Verb::clean:
    return joined({QStringLiteral("cleaned"), some(moved(entry), "lost", "lost")}, {});
  case book::Verb::sort:
    return "sorted: " +
           joined({some(moved(entry, State::judged_filled), "judged filled", "judged filled"),
                   some(moved(entry, State::judged_empty), "judged empty", "judged empty")},
                  QStringLiteral("nothing moved"));
  case book::Verb::open:
    return all + " cut open: " + shown(moved(entry, State::opened_filled)) + " filled, " +
           shown(moved(entry, State::opened_empty)) + " empty";
  case book::Verb::store:
    return stored(entry);
  case book::Verb::sow:
    return all + " sown" + into(reading, entry);
  case book::Verb::inspect:
    return inspected(entry);
  case book::Verb::pot:
    return all + " potted" + into(reading, entry);
  case book::Verb::pot_on:
    return all + " potted on" + into(reading, entry);
  case book::Verb::move:
    return "moved to " + place_name(registers, entry.place);
  case book::Verb::lose:
    return all + " died";
  case book::Verb::discard:
    return all + " discarded";
  case book::Verb::sell:
    return sold(entry);
  case book::Verb::plant_out:
    return all + " planted out";
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
    return QStringLiteral("took an entry back");
  }
  return {};
}

} // namespace coneline::window
