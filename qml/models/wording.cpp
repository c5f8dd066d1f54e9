// SPDX-License-Identifier: GPL-3.0-or-later
#include "wording.h"

#include <QLocale>
#include <QStringList>

namespace coneline::window {

QString text(std::string_view utf8) {
  return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

std::string plain(const QString& text) {
  return text.trimmed().toStdString();
}

QString shown(Date day) {
  return QLocale().toString(
      QDate(day.year(), static_cast<int>(day.month()), static_cast<int>(day.day())),
      QLocale::ShortFormat);
}

QString shown(std::int64_t count) {
  return QLocale().toString(static_cast<qlonglong>(count));
}

QString shown(double value, int decimals) {
  return QLocale().toString(value, 'f', decimals);
}

Result<Date> read_day(const QString& typed) {
  if (auto iso = Date::parse(plain(typed)))
    return iso;
  const auto local = QLocale().toDate(typed.trimmed(), QLocale::ShortFormat);
  if (!local.isValid())
    return refuse(fault("'" + plain(typed) + "' is no day",
                        "Write it like " + plain(shown(Date::today())) + " or 2026-03-09."));
  return Date::of(local.year(), static_cast<unsigned>(local.month()),
                  static_cast<unsigned>(local.day()));
}

QString counted(book::State state, std::int64_t count) {
  const auto figure = shown(count) + QChar(0x00A0);
  switch (state) {
  case book::State::sown:
    return figure + "sown, not up";
  case book::State::root:
    return figure + "with a root";
  case book::State::leaf:
    return figure + "with a leaf";
  case book::State::plant:
    return figure + (count == 1 ? "plant" : "plants");
  default:
    return figure + text(book::word(state));
  }
}

QString range(std::int64_t low, std::int64_t high) {
  return low == high ? shown(low) : shown(low) + QChar(0x2013) + shown(high);
}

QString holding(const work::LotLine& line) {
  QStringList parts;
  for (const auto& [state, count] : line.on_hand)
    parts << counted(state, count);
  return parts.isEmpty() ? QStringLiteral("nothing left") : parts.join(QStringLiteral(", "));
}

QString place_name(const book::Registers& registers, std::optional<book::PlaceId> place) {
  return place ? text(registers.place(*place).name) : QStringLiteral("no place");
}

} // namespace coneline::window
