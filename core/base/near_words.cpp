// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/near_words.h"

#include <algorithm>
#include <numeric>

namespace coneline {

std::size_t letters_between(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 1; i <= a.size(); ++i) {
    auto corner = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const auto change = corner + (a[i - 1] == b[j - 1] ? 0 : 1);
      corner = row[j];
      row[j] = std::min({row[j] + 1, row[j - 1] + 1, change});
    }
  }
  return row[b.size()];
}

std::vector<std::string> near_words(std::string_view word, const std::vector<std::string>& known) {
  constexpr std::size_t long_word = 6;
  constexpr std::size_t most = 3;
  std::size_t allowed = word.size() < long_word ? 1 : 2;
  std::vector<std::string> near;
  for (const auto& other : known) {
    const auto letters = letters_between(word, other);
    if (letters > allowed)
      continue;
    if (letters < allowed)
      near.clear();
    allowed = letters;
    near.push_back(other);
  }
  if (near.empty() && word.size() > 1)
    std::ranges::copy_if(known, std::back_inserter(near),
                         [&](const auto& other) { return other.starts_with(word); });
  if (near.size() > most)
    near.resize(most);
  return near;
}

} // namespace coneline
