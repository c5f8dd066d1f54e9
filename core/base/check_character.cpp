// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/check_character.h"

namespace coneline {

namespace {
constexpr std::string_view alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
constexpr int modulus = 36;
} // namespace

std::optional<char> check_character(std::string_view body) {
  if (body.empty())
    return std::nullopt;
  int product = modulus;
  for (const char c : body) {
    const auto value = alphabet.find(c);
    if (value == std::string_view::npos)
      return std::nullopt;
    int sum = (product + static_cast<int>(value)) % modulus;
    if (sum == 0)
      sum = modulus;
    product = 2 * sum % (modulus + 1);
  }
  return alphabet[static_cast<std::size_t>((modulus + 1 - product) % modulus)];
}

bool check_holds(std::string_view text) {
  if (text.size() < 2)
    return false;
  return check_character(text.substr(0, text.size() - 1)) == text.back();
}

} // namespace coneline
