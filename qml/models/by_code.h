// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Rows of what stands found by their codes, for a list that asks for each of many.

#include "core/base/code.h"

#include <algorithm>
#include <vector>

namespace coneline::window {

/// The rows outlive it. `code_of` gives a row's code; of several of one code the first is found.
template <class Row>
class ByCode {
 public:
  template <class CodeOf>
  ByCode(const std::vector<Row>& rows, CodeOf code_of) {
    places_.reserve(rows.size());
    for (const auto& row : rows)
      places_.emplace_back(code_of(row), &row);
    std::ranges::stable_sort(places_, {}, &Place::first);
  }
  /// Null where there is none.
  [[nodiscard]] const Row* find(const Code& code) const {
    const auto found = std::ranges::lower_bound(places_, code, {}, &Place::first);
    return found == places_.end() || found->first != code ? nullptr : found->second;
  }

 private:
  using Place = std::pair<Code, const Row*>;
  std::vector<Place> places_;
};

} // namespace coneline::window
