// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/names.h"

#include <algorithm>
#include <numeric>

namespace coneline::book {

namespace {

bool is_blank(char c) {
  return c == ' ' || (c >= '\t' && c <= '\r');
}

std::string in_small_letters(std::string_view name) {
  auto small = squeezed(name);
  for (auto& c : small)
    if (c >= 'A' && c <= 'Z')
      c = static_cast<char>(c - 'A' + 'a');
  return small;
}

} // namespace

std::string squeezed(std::string_view name) {
  std::string text;
  for (const char c : name)
    if (!is_blank(c))
      text += c;
    else if (!text.empty() && text.back() != ' ')
      text += ' ';
  if (!text.empty() && text.back() == ' ')
    text.pop_back();
  return text;
}

bool read_alike(std::string_view one, std::string_view other) {
  return in_small_letters(one) == in_small_letters(other);
}

std::size_t letters_apart(std::string_view one, std::string_view other) {
  const auto from = in_small_letters(one);
  const auto to = in_small_letters(other);
  // Row by row: apart[j] is between what was read of `from` and the first j letters of `to`.
  std::vector<std::size_t> apart(to.size() + 1);
  std::iota(apart.begin(), apart.end(), std::size_t{0});
  for (std::size_t i = 0; i < from.size(); ++i) {
    auto before = apart[0]++;
    for (std::size_t j = 0; j < to.size(); ++j) {
      const auto changed = before + (from[i] == to[j] ? 0 : 1);
      before = apart[j + 1];
      apart[j + 1] = std::min({changed, apart[j] + 1, before + 1});
    }
  }
  return apart.back();
}

} // namespace coneline::book
