// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Closed sets of words, written the same in code, on screen, in files and in the book.
//
// A set is an enum with a specialisation of Words that lists its members and how each is written:
//
//   word(Sex::not_known) == "not known"        read_word<Sex>("male").value() == Sex::male

#include "core/base/fault.h"
#include "core/base/phrase.h"

#include <fmt/format.h>

#include <array>
#include <string>
#include <string_view>
#include <utility>

namespace coneline::book {

template <class Set>
struct Words; // { static constexpr std::string_view what; static constexpr std::array all; }

template <class Set>
std::string_view word(Set member) {
  for (const auto& [value, text] : Words<Set>::all)
    if (value == member)
      return text;
  return "";
}

/// The word as it is said to a person; `word` is what stands in the book and in files.
template <class Set>
std::string said(Set member) {
  return phrase_of(word(member));
}

/// Fails on any other word; the fault lists those there are.
template <class Set>
Result<Set> read_word(std::string_view text) {
  for (const auto& [value, name] : Words<Set>::all)
    if (name == text)
      return value;
  std::string known;
  for (const auto& [value, name] : Words<Set>::all)
    known += fmt::format("{}{}", known.empty() ? "" : ", ", name);
  return refuse(fault(phrase("'{}' is no {}", text, phrase_of(Words<Set>::what)),
                      phrase("Use one of: {}.", known)));
}

} // namespace coneline::book
