// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/table.h"

#include <fmt/format.h>

#include <cmath>

namespace coneline::commands {

namespace {
bool looks_like_number(std::string_view cell) {
  return !cell.empty() && cell.find_first_not_of("0123456789.-–% ") == std::string_view::npos;
}
} // namespace

std::size_t width_of(std::string_view text) {
  std::size_t width = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    if ((byte & 0xC0U) == 0x80U)
      continue;
    // U+0300 to U+036F, the combining diacritical marks, stand on the letter before them.
    const auto next = i + 1 < text.size() ? static_cast<unsigned char>(text[i + 1]) : 0U;
    const bool combining = byte == 0xCC || (byte == 0xCD && next < 0xB0);
    width += combining ? 0 : 1;
  }
  return width;
}

Table::Table(std::vector<std::string> header) : rows_{std::move(header)} {}

void Table::row(std::vector<std::string> cells) {
  cells.resize(rows_.front().size());
  rows_.push_back(std::move(cells));
}

std::string Table::text() const {
  std::vector<std::size_t> widths(rows_.front().size(), 0);
  std::vector<bool> to_the_right(rows_.front().size(), true);
  for (std::size_t r = 0; r < rows_.size(); ++r)
    for (std::size_t c = 0; c < widths.size(); ++c) {
      widths[c] = std::max(widths[c], width_of(rows_[r][c]));
      if (r > 0 && !rows_[r][c].empty() && !looks_like_number(rows_[r][c]))
        to_the_right[c] = false;
    }
  std::string text;
  for (const auto& row : rows_) {
    std::string line;
    for (std::size_t c = 0; c < widths.size(); ++c) {
      const std::string pad(widths[c] - width_of(row[c]), ' ');
      line += to_the_right[c] ? pad + row[c] : row[c] + pad;
      if (c + 1 < widths.size())
        line += "  ";
    }
    line.erase(line.find_last_not_of(' ') + 1);
    text += line + '\n';
  }
  return text;
}

std::string shown(std::optional<double> value, int decimals) {
  if (!value || !std::isfinite(*value))
    return "–";
  return fmt::format("{:.{}f}", *value, decimals);
}

} // namespace coneline::commands
