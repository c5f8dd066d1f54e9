// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// From core's values to what stands on the screen. Dates and figures follow the system's locale.

#include "core/base/date.h"
#include "core/base/phrase.h"
#include "core/book/account.h"
#include "core/work/overview.h"

#include <QDate>
#include <QString>

template <>
struct fmt::formatter<QString> : fmt::formatter<std::string_view> {
  template <class Context>
  auto format(const QString& text, Context& context) const {
    const auto bytes = text.toUtf8();
    return fmt::formatter<std::string_view>::format(
        {bytes.data(), static_cast<std::size_t>(bytes.size())}, context);
  }
};

namespace coneline::window {

QString text(std::string_view utf8);
std::string plain(const QString& text);

/// What the program says, put into the language of the window; see core/base/phrase.h.
template <class... Args>
QString phrased(fmt::format_string<const Args&...> english, const Args&... args) {
  return text(phrase(english, args...));
}
template <class... Args>
QString phrased_n(std::int64_t count, fmt::format_string<const std::int64_t&, const Args&...> one,
                  fmt::format_string<const std::int64_t&, const Args&...> many,
                  const Args&... args) {
  return text(phrase_n(count, one, many, args...));
}
/// A text that was marked with to_phrase, or a word of the book.
QString phrased_of(std::string_view english);

/// A fault as a sentence of a page; on the command line it stands after the program's name.
QString fault_shown(const Fault& fault);

/// The name of an origin (work::OriginName), which is a key, as it is said.
QString origin_shown(const std::string& name);

/// As the system writes days in short, but with all digits of the year.
QString shown(Date day);
/// The month of a day, in short.
QString month_shown(Date month);
QString month_in_full(Date month);
QString shown(std::int64_t count);
QString shown(double value, int decimals);
/// A difference, with a plus where it is one; a minus is as long as the plus.
QString shown_signed(double value, int decimals);
/// With its unit, in the units people reckon in: "1.2 m²", "12.9 ft²".
QString shown(Quantity quantity, double kept, int decimals);

/// A number as it stands in a field to be changed: the locale's decimal sign, nothing between
/// thousands.
QString written(double value);
/// The locale's decimal sign or a point or comma; refused where a sign may stand between
/// thousands as well, as in 1,234.
Result<double> read_number(const QString& typed);
/// The same of a measure typed in the units people reckon in, to a millionth of the book's unit.
Result<double> read_measure(Quantity quantity, const QString& typed);
/// The same to the last figure, for what is written again in other units.
Result<double> read_exactly(Quantity quantity, const QString& typed);
/// A measure of the book as it stands in a field to be changed.
QString written(Quantity quantity, double kept);

/// A day as it was typed: the locale's short form, its year of two or four digits, or ISO 8601.
Result<Date> read_day(const QString& typed);

/// "488 unsorted", "6 with a root", "38 plants".
QString counted(book::State state, std::int64_t count);

/// "41–58", or one figure where both are equal.
QString range(std::int64_t low, std::int64_t high);

/// What a lot holds, in words: "12 sown, 6 with a root"; "nothing left" where it is empty.
QString holding(const work::LotLine& line);

/// Short enough for a list: "Bench 3", or "no place".
QString place_name(const book::Registers& registers, std::optional<book::PlaceId> place);

} // namespace coneline::window
