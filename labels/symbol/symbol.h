// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The two-dimensional code on a label: QR, version 1 (21 × 21 modules), error correction level H,
// which mends up to 30 % of it. Every label of the program has the same number of modules, so all
// print at one size and are found in a picture by one shape.

#include "core/base/fault.h"

#include <string_view>
#include <vector>

namespace coneline::labels {

/// Blank modules that the standard (ISO/IEC 18004) asks for around a symbol.
constexpr int quiet_modules = 4;
/// Modules along a side of version 1, without the quiet zone.
constexpr int symbol_modules = 21;

/// Dark modules that touch in one row: from `column`, `length` of them.
struct Run {
  int row = 0;
  int column = 0;
  int length = 0;

  bool operator==(const Run&) const = default;
};

/// A square of modules, without its quiet zone.
class Symbol {
 public:
  /// `dark` row by row from the top left, `size` squared of them. A wrong number of them is a fault
  /// of the program and throws std::invalid_argument.
  Symbol(int size, std::vector<bool> dark);

  [[nodiscard]] int size() const { return size_; }
  /// Row and column count from 0; outside it is light, as the quiet zone is.
  [[nodiscard]] bool dark(int row, int column) const;
  /// The dark modules as runs along the rows: what a printer draws.
  [[nodiscard]] std::vector<Run> runs() const;

  bool operator==(const Symbol&) const = default;

 private:
  int size_;
  std::vector<bool> dark_;
};

/// Fails unless a code's text is 1 to 10 characters of 0-9 A-Z: more, or others, would need a
/// larger version, and the labels would no longer be alike.
Result<void> can_be_symbol(std::string_view text);

/// The symbol of a code's text, where it can be one.
Result<Symbol> symbol_of(std::string_view text);

} // namespace coneline::labels
