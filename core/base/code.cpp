// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/code.h"

#include "core/base/check_character.h"
#include "core/base/number.h"
#include "core/base/phrase.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace coneline {

namespace {

constexpr std::int64_t smallest_running = 101;
constexpr std::int64_t largest_running = 99'999'999;
constexpr std::size_t longest = 10;

/// Capitals, without blanks and hyphens.
std::string tidy(std::string_view typed) {
  std::string kept;
  for (const char c : typed) {
    if (c == ' ' || c == '-' || c == '\t')
      continue;
    kept += (c >= 'a' && c <= 'z') ? static_cast<char>(c - 'a' + 'A') : c;
  }
  return kept;
}

std::optional<Kind> kind_of(char letter) {
  switch (const auto kind = static_cast<Kind>(letter)) {
  case Kind::plant:
  case Kind::pollen:
  case Kind::cone:
  case Kind::purchase:
  case Kind::batch:
  case Kind::tray:
  case Kind::pot_group:
  case Kind::place:
    return kind;
  }
  return std::nullopt;
}

/// Kind and number of a tidy text whose check character is right; nothing otherwise.
std::optional<Code> read(std::string_view text) {
  if (text.size() < 5 || text.size() > longest || !check_holds(text))
    return std::nullopt;
  const auto kind = kind_of(text.front());
  if (!kind || text[1] == '0')
    return std::nullopt;
  const auto running = parse_whole(text.substr(1, text.size() - 2));
  if (!running)
    return std::nullopt;
  const auto code = Code::from_running(*kind, *running);
  if (!code)
    return std::nullopt;
  return *code;
}

} // namespace

std::string_view kind_word(Kind kind) {
  switch (kind) {
  case Kind::plant:
    return "plant";
  case Kind::pollen:
    return "pollen lot";
  case Kind::cone:
    return "cone";
  case Kind::purchase:
    return "purchase";
  case Kind::batch:
    return "batch";
  case Kind::tray:
    return "tray";
  case Kind::pot_group:
    return "pot group";
  case Kind::place:
    return "place";
  }
  return "";
}

std::string kind_said(Kind kind) {
  return phrase_of(kind_word(kind));
}

Result<Kind> kind_named(std::string_view word) {
  std::string all;
  for (const auto kind : all_kinds) {
    if (kind_word(kind) == word)
      return kind;
    all += (all.empty() ? "" : ", ") + std::string(kind_word(kind));
  }
  return refuse(fault(phrase("'{}' is no kind of thing", word), phrase("One of: {}.", all)));
}

Result<Code> Code::of(Kind kind, int series, std::int64_t number) {
  if (series < 10 || series > 99 || number < 1 || number > 999'999)
    return refuse(fault(phrase("series {} and number {} make no code", series, number),
                        "A series is 10 to 99, a number 1 to 999999."));
  return from_running(kind, parse_whole(fmt::format("{}{}", series, number)).value());
}

Result<Code> Code::from_running(Kind kind, std::int64_t running) {
  const bool in_range = running >= smallest_running && running <= largest_running;
  // After the two digits of the series the number starts at 1, so it has no leading zero.
  if (!in_range || fmt::format("{}", running)[2] == '0')
    return refuse(fault(phrase("{} is no running number of a code", running),
                        "It is the book's series (10 to 99) followed by 1 to 999999."));
  return Code(kind, running);
}

int Code::series() const {
  auto rest = running_;
  while (rest > 99)
    rest /= 10;
  return static_cast<int>(rest);
}

std::int64_t Code::number_in_series() const {
  auto power = std::int64_t{1};
  while (running_ / power > 99)
    power *= 10;
  return running_ % power;
}

std::string Code::text() const {
  const auto body = fmt::format("{}{}", static_cast<char>(kind_), running_);
  return body + check_character(body).value_or('?');
}

Result<Code> Code::parse(std::string_view typed) {
  const auto text = tidy(typed);
  if (const auto code = read(text))
    return *code;
  if (text.empty())
    return refuse(fault("no code was given", "Scan the label or type its code, such as T1742Q."));
  if (text.size() > longest)
    return refuse(fault(phrase("'{}' is no code: it has {} characters, a code at most {}", typed,
                               text.size(), longest),
                        "Scan the label or type its code, such as T1742Q."));
  if (!kind_of(text.front()) || text.size() < 5 ||
      !std::all_of(text.begin() + 1, text.end() - 1, [](char c) { return c >= '0' && c <= '9'; }))
    return refuse(fault(phrase("'{}' is no code", typed),
                        "A code is a letter, digits and a check character, such as T1742Q."));
  return refuse(fault(phrase("'{}' has a wrong character: its check character does not fit", typed),
                      "Look at the label and type it again."));
}

std::vector<Code> corrections(std::string_view typed) {
  constexpr std::string_view alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
  const auto text = tidy(typed);
  std::vector<Code> found;
  const auto keep = [&](const std::string& tried) {
    if (const auto code = read(tried))
      found.push_back(*code);
  };
  for (std::size_t i = 0; i < text.size() && text.size() <= longest; ++i) {
    auto tried = text;
    for (const char c : alphabet) {
      tried[i] = c;
      if (c != text[i])
        keep(tried);
    }
    if (i + 1 < text.size() && text[i] != text[i + 1]) {
      tried = text;
      std::swap(tried[i], tried[i + 1]);
      keep(tried);
    }
  }
  std::ranges::sort(found, {}, &Code::text);
  const auto repeats = std::ranges::unique(found);
  found.erase(repeats.begin(), repeats.end());
  return found;
}

} // namespace coneline
