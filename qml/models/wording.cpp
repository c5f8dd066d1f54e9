// SPDX-License-Identifier: GPL-3.0-or-later
#include "wording.h"

#include "core/base/number.h"
#include "core/work/origin_said.h"

#include <QLocale>
#include <QRegularExpression>
#include <QStringList>

#include <cmath>

namespace coneline::window {

QString text(std::string_view utf8) {
  return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

std::string plain(const QString& text) {
  return text.trimmed().toStdString();
}

QString phrased_of(std::string_view english) {
  return text(phrase_of(english));
}

QString fault_shown(const Fault& fault) {
  auto told = text(fault.text());
  const bool begins_with_file = fault.where && !fault.where->file.empty();
  if (!told.isEmpty() && !begins_with_file)
    told.front() = told.front().toUpper();
  return told;
}

QString origin_shown(const std::string& name) {
  return text(work::origin_said(name));
}

namespace {
QString day_format(QLocale::FormatType type) {
  auto format = QLocale().dateFormat(type);
  return format.contains(QStringLiteral("yyyy"))
             ? format
             : format.replace(QStringLiteral("yy"), QStringLiteral("yyyy"));
}
QString month_as(Date month, const QString& format) {
  return QLocale().toString(QDate(month.year(), static_cast<int>(month.month()), 1), format);
}
} // namespace

QString shown(Date day) {
  return QLocale().toString(
      QDate(day.year(), static_cast<int>(day.month()), static_cast<int>(day.day())),
      day_format(QLocale::ShortFormat));
}

QString month_shown(Date month) {
  return month_as(month, QStringLiteral("MMM yy"));
}

QString month_in_full(Date month) {
  return month_as(month, QStringLiteral("MMMM yyyy"));
}

QString shown(std::int64_t count) {
  return QLocale().toString(static_cast<qlonglong>(count));
}

QString shown(double value, int decimals) {
  return QLocale().toString(value, 'f', decimals);
}

QString shown_signed(double value, int decimals) {
  const auto size = shown(std::abs(value), decimals);
  if (size == shown(0.0, decimals))
    return size;
  return QChar(value > 0 ? u'+' : u'−') + size;
}

QString shown(Quantity quantity, double kept, int decimals) {
  return text(measured(quantity, kept, decimals));
}

QString written(double value) {
  QLocale locale;
  locale.setNumberOptions(QLocale::OmitGroupSeparator);
  return locale.toString(value, 'g', 10);
}

QString written(Quantity quantity, double kept) {
  return written(in_units(language().units(), quantity, kept));
}

Result<double> read_measure(Quantity quantity, const QString& typed) {
  constexpr double millionth = 1e-6;
  return read_exactly(quantity, typed).map([&](double kept) {
    return std::round(kept / millionth) * millionth;
  });
}

Result<double> read_exactly(Quantity quantity, const QString& typed) {
  return read_number(typed).map(
      [&](double given) { return from_units(language().units(), quantity, given); });
}

Result<double> read_number(const QString& typed) {
  const auto given = typed.trimmed();
  const QLocale locale;
  static const QRegularExpression like_thousands(QStringLiteral("^-?[1-9]\\d{0,2}([.,]\\d{3})+$"));
  const auto match = like_thousands.match(given);
  if (match.hasMatch() && match.captured(1).startsWith(locale.groupSeparator()))
    return refuse(
        fault(phrase("'{}' can be read in two ways", plain(typed)),
              phrase("Write {} or {}.", plain(QString(given).remove(locale.groupSeparator())),
                     plain(QString(given).replace(locale.groupSeparator(), locale.decimalPoint()) +
                           "0"))));
  auto point = given;
  return parse_real(
      plain(point.replace(locale.decimalPoint(), QStringLiteral(".")).replace(',', '.')));
}

Result<Date> read_day(const QString& typed) {
  if (auto iso = Date::parse(plain(typed)))
    return iso;
  const auto given = typed.trimmed();
  auto local = QLocale().toDate(given, day_format(QLocale::ShortFormat));
  if (!local.isValid()) {
    local = QLocale().toDate(given, QLocale::ShortFormat);
    // Two digits of a year are of this century.
    if (local.isValid() && local.year() < 2000)
      local = local.addYears(100);
  }
  if (!local.isValid())
    return refuse(fault(phrase("'{}' is no day", plain(typed)),
                        phrase("Write it like {} or 2026-03-09.", plain(shown(Date::today())))));
  return Date::of(local.year(), static_cast<unsigned>(local.month()),
                  static_cast<unsigned>(local.day()));
}

QString counted(book::State state, std::int64_t count) {
  const auto figure = shown(count);
  switch (state) {
  case book::State::sown:
    return phrased("{} sown, not up", figure);
  case book::State::root:
    return phrased("{} with a root", figure);
  case book::State::leaf:
    return phrased("{} with a leaf", figure);
  case book::State::plant:
    return phrased_n(count, "{1} plant", "{1} plants", figure);
  default:
    return figure + QChar(0x00A0) + text(book::said(state));
  }
}

QString range(std::int64_t low, std::int64_t high) {
  return low == high ? shown(low) : shown(low) + QChar(0x2013) + shown(high);
}

QString holding(const work::LotLine& line) {
  QStringList parts;
  for (const auto& [state, count] : line.on_hand)
    parts << counted(state, count);
  return parts.isEmpty() ? phrased("nothing left") : parts.join(QStringLiteral(", "));
}

QString place_name(const book::Registers& registers, std::optional<book::PlaceId> place) {
  return place ? text(registers.place(*place).name) : phrased("no place");
}

} // namespace coneline::window
