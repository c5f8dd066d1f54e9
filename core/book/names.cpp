// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/names.h"

namespace coneline::book {

namespace {

bool is_blank(char c) {
  return c == ' ' || (c >= '\t' && c <= '\r');
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

std::string in_small_letters(std::string_view name) {
  auto small = squeezed(name);
  for (auto& c : small)
    if (c >= 'A' && c <= 'Z')
      c = static_cast<char>(c - 'A' + 'a');
  return small;
}

bool read_alike(std::string_view one, std::string_view other) {
  return in_small_letters(one) == in_small_letters(other);
}

} // namespace coneline::book
