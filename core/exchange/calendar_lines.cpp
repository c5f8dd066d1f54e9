// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/calendar_lines.h"

#include "core/base/date.h"
#include "core/base/phrase.h"
#include "core/exchange/faults.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace coneline::exchange {

namespace {

struct Content {
  std::size_t line = 0;
  std::string text; ///< unfolded
  bool folded_from_nothing = false;
};

std::vector<Content> unfold(std::string_view text) {
  std::vector<Content> lines;
  std::size_t number = 0;
  while (!text.empty()) {
    const auto end = text.find('\n');
    auto line = text.substr(0, end);
    text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
    ++number;
    if (line.ends_with('\r'))
      line.remove_suffix(1);
    const bool folded = !line.empty() && (line.front() == ' ' || line.front() == '\t');
    if (folded && !lines.empty())
      lines.back().text += line.substr(1);
    else if (!line.empty())
      lines.push_back({number, std::string(line), folded});
  }
  return lines;
}

bool is_name(char c) {
  return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
}

/// The name in capitals and the value; an empty name for what is no content line.
std::pair<std::string, std::string> split(const std::string& text) {
  std::string name;
  std::size_t at = 0;
  while (at < text.size() && is_name(text[at]))
    name += text[at] >= 'a' ? static_cast<char>(text[at++] - 'a' + 'A') : text[at++];
  bool quoted = false;
  if (at < text.size() && text[at] != ':' && text[at] != ';')
    return {};
  for (; at < text.size(); ++at) {
    if (text[at] == '"')
      quoted = !quoted;
    else if (text[at] == ':' && !quoted)
      return {name, text.substr(at + 1)};
  }
  return {};
}

bool is_day(std::string_view value) {
  constexpr std::size_t digits = 8;
  if (value.size() < digits)
    return false;
  const auto iso =
      fmt::format("{}-{}-{}", value.substr(0, 4), value.substr(4, 2), value.substr(6, 2));
  const auto rest = value.substr(digits);
  return Date::parse(iso) &&
         (rest.empty() ||
          (rest.size() >= 7 && rest.size() <= 8 && rest.front() == 'T' &&
           std::ranges::all_of(rest.substr(1, 6), [](char c) { return c >= '0' && c <= '9'; })));
}

bool is_date_field(std::string_view name) {
  constexpr std::array names{"DTSTART", "DTEND", "DUE", "COMPLETED", "DTSTAMP"};
  return std::ranges::find(names, name) != names.end();
}

} // namespace

std::vector<Fault> broken_lines(std::string_view text, const std::string& file) {
  std::vector<Fault> faults;
  std::vector<std::pair<std::string, std::size_t>> open;
  const auto say = [&](std::size_t line, std::string what, std::string remedy) {
    faults.push_back(fault(std::move(what), std::move(remedy)).at({file, line, {}}));
  };
  const auto lines = unfold(text);
  for (const auto& content : lines) {
    const auto [name, value] = split(content.text);
    if (name.empty() || content.folded_from_nothing)
      say(content.line, phrase("'{}' is no line of a calendar", shortened(content.text)),
          "Write the file again from the calendar program, or mend the line.");
    else if (name == "BEGIN")
      open.emplace_back(value, content.line);
    else if (name == "END" && (open.empty() || open.back().first != value))
      say(content.line, phrase("END:{} without its BEGIN", shortened(value)),
          "The file is cut or its lines are out of order: write it again.");
    else if (name == "END")
      open.pop_back();
    // Time zones have dates of their own that no to-do has.
    else if (is_date_field(name) && !is_day(value) &&
             std::ranges::none_of(open, [](const auto& each) { return each.first == "VTIMEZONE"; }))
      say(content.line, phrase("{} '{}' is no day", name, shortened(value)),
          "Write it as 20260309 or 20260309T140500Z.");
  }
  for (const auto& [name, line] : open)
    say(line, phrase("BEGIN:{} without its END", shortened(name)),
        "The file is cut: write it again.");
  if (lines.empty() ||
      split(lines.front().text) != std::pair<std::string, std::string>{"BEGIN", "VCALENDAR"})
    say(1, "this is no iCalendar file", "It begins with BEGIN:VCALENDAR.");
  return faults;
}

std::vector<std::size_t> component_lines(std::string_view text) {
  std::vector<std::size_t> found;
  for (const auto& content : unfold(text))
    if (const auto [name, value] = split(content.text);
        name == "BEGIN" && (value == "VTODO" || value == "VEVENT"))
      found.push_back(content.line);
  return found;
}

} // namespace coneline::exchange
