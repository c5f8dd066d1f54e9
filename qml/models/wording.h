// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// From core's values to what stands on the screen. Dates and figures follow the system's locale.

#include "core/base/date.h"
#include "core/book/account.h"
#include "core/work/overview.h"

#include <QDate>
#include <QString>

namespace coneline::window {

QString text(std::string_view utf8);
std::string plain(const QString& text);

QString shown(Date day);
QString shown(std::int64_t count);
QString shown(double value, int decimals);

/// A day as it was typed: the locale's short form or ISO 8601.
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
