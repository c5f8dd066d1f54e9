// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/moment.h"

#include <fmt/format.h>

namespace coneline {

Result<Moment> Moment::parse(std::string_view text) {
  const auto no_moment = [&] {
    return refuse(fault(fmt::format("'{}' is no date with a time of day", text.substr(0, 60)),
                        "Write it as 2026-03-09T14:05:00."));
  };
  constexpr std::string_view shape = "0000-00-00T00:00:00";
  if (text.size() != shape.size())
    return no_moment();
  for (std::size_t i = 0; i < shape.size(); ++i)
    if (shape[i] == '0' ? (text[i] < '0' || text[i] > '9') : text[i] != shape[i])
      return no_moment();
  const auto two = [&](std::size_t at) { return (text[at] - '0') * 10 + text[at + 1] - '0'; };
  if (two(11) > 23 || two(14) > 59 || two(17) > 59)
    return no_moment();
  return Date::parse(text.substr(0, 10)).map([&](Date date) {
    return Moment{date, two(11) * 3600 + two(14) * 60 + two(17)};
  });
}

std::string Moment::iso() const {
  return fmt::format("{}T{:02}:{:02}:{:02}", date.iso(), second / 3600, second / 60 % 60,
                     second % 60);
}

} // namespace coneline
