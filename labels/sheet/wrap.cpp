// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/sheet/wrap.h"

namespace coneline::labels {

namespace {

/// Where the next letter begins: past one code point and the marks that stand on it (U+0300 to
/// U+036F).
std::size_t next_letter(std::string_view text, std::size_t from) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const auto past_point = [&](std::size_t i) {
    ++i;
    while (i < text.size() && (byte(i) & 0xC0U) == 0x80U)
      ++i;
    return i;
  };
  auto i = past_point(from);
  while (i + 1 < text.size() && (byte(i) == 0xCC || (byte(i) == 0xCD && byte(i + 1) < 0xB0)))
    i = past_point(i);
  return i;
}

/// The longest beginning that fits, up to a hyphen where there is one; at least one letter.
std::size_t fitting(std::string_view word, double width, const WidthOf& width_of) {
  auto end = next_letter(word, 0);
  while (end < word.size()) {
    const auto longer = next_letter(word, end);
    if (width_of(word.substr(0, longer)) > width)
      break;
    end = longer;
  }
  if (end == word.size())
    return end;
  const auto hyphen = word.substr(0, end).rfind('-');
  return hyphen == std::string_view::npos ? end : hyphen + 1;
}

} // namespace

std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> words(1);
  for (const char c : text) {
    const bool blank = c == ' ' || (c >= '\t' && c <= '\r');
    if (!blank)
      words.back() += c;
    else if (!words.back().empty() && words.back() != "×")
      words.emplace_back();
    else if (words.back() == "×")
      words.back() += ' ';
  }
  if (words.back().empty())
    words.pop_back();
  return words;
}

std::vector<std::string> wrapped(std::string_view text, double width, const WidthOf& width_of) {
  std::vector<std::string> lines;
  for (auto word : words_of(text)) {
    if (!lines.empty() && width_of(lines.back() + ' ' + word) <= width) {
      lines.back() += ' ' + word;
      continue;
    }
    while (width_of(word) > width) {
      const auto end = fitting(word, width, width_of);
      if (end >= word.size())
        break; // one letter wider than the line
      lines.push_back(word.substr(0, end));
      word.erase(0, end);
    }
    lines.push_back(word);
  }
  return lines;
}

std::string elided(std::string_view text, double width, const WidthOf& width_of) {
  if (width_of(text) <= width)
    return std::string(text);
  std::string best;
  for (std::size_t end = 0; end < text.size(); end = next_letter(text, end)) {
    auto kept = text.substr(0, end);
    while (kept.ends_with(' '))
      kept.remove_suffix(1);
    const auto shorter = std::string(kept) + "…";
    if (width_of(shorter) > width)
      break;
    best = shorter;
  }
  return best;
}

} // namespace coneline::labels
