// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Fits words into a width. Knows no font: how wide a text is, it is told.

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace coneline::labels {

/// The width of a UTF-8 text in the unit of the caller.
using WidthOf = std::function<double(std::string_view)>;

/// What stands between blanks, a × with the word after it. Line breaks, tabs and repeated blanks
/// count as one blank.
std::vector<std::string> words_of(std::string_view text);

/// Lines not wider than `width`, broken between words; a word wider than a line is broken after a
/// hyphen, or else where it must. No lines for an empty text.
std::vector<std::string> wrapped(std::string_view text, double width, const WidthOf& width_of);

/// The text, or as much of its beginning as fits with "…" after it. Empty when not even that fits.
std::string elided(std::string_view text, double width, const WidthOf& width_of);

} // namespace coneline::labels
