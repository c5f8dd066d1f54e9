// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The registers of an invented nursery: taxa, places, pots, mixes, routes, parent plants.

#include "core/store/book.h"

#include <map>

namespace coneline::demo {

/// The value, or the fault as an exception: whatever the demo is refused is a fault of the demo.
template <class T>
T must(Result<T> result) {
  if (!result)
    throw std::runtime_error(result.error().text());
  if constexpr (!std::is_void_v<T>)
    return std::move(*result);
}

Date day(std::string_view iso);

/// What the seasons refer to by name.
struct Nursery {
  std::map<std::string, Code> plants;
  std::map<std::string, Code> places;
};

book::Title invented_title();

/// Fills an empty book.
Nursery found_nursery(store::Book& book);

} // namespace coneline::demo
