// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Which of the words that are known may have been meant by one that is not.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace coneline {

/// Letters to change, add or leave out to get from one to the other.
std::size_t letters_between(std::string_view a, std::string_view b);

/// Those of `known` that are fewest letters away, at most three: one letter for a short word, two
/// for one of six and more. Where there is none, those that begin with the word.
std::vector<std::string> near_words(std::string_view word, const std::vector<std::string>& known);

} // namespace coneline
