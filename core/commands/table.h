// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A plain table for a terminal: a header, columns as wide as they need, numbers to the right.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace coneline::commands {

class Table {
 public:
  explicit Table(std::vector<std::string> header);

  /// As many cells as the header has.
  void row(std::vector<std::string> cells);
  [[nodiscard]] std::string text() const;

 private:
  std::vector<std::vector<std::string>> rows_;
};

/// A number with so many decimals; a dash where there is none.
std::string shown(std::optional<double> value, int decimals);

/// Columns that a text takes in a terminal: code points, combining marks not counted.
std::size_t width_of(std::string_view text);

} // namespace coneline::commands
