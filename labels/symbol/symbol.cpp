// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/symbol/symbol.h"

#include "core/base/phrase.h"

#define ZX_USE_UTF8
#include <ZXing/BitMatrix.h>
#include <ZXing/MultiFormatWriter.h>
#include <fmt/format.h>

#include <algorithm>
#include <stdexcept>
#include <string>

namespace coneline::labels {

namespace {
constexpr std::size_t longest = 10;
constexpr int level_h = 8; // the writer's own scale, 0 to 8

bool is_code_character(char c) {
  return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z');
}
} // namespace

Symbol::Symbol(int size, std::vector<bool> dark) : size_(size), dark_(std::move(dark)) {
  if (size < 1 || dark_.size() != static_cast<std::size_t>(size) * static_cast<std::size_t>(size))
    throw std::invalid_argument("a symbol is a full square of modules");
}

bool Symbol::dark(int row, int column) const {
  if (row < 0 || column < 0 || row >= size_ || column >= size_)
    return false;
  return dark_[static_cast<std::size_t>(row * size_ + column)];
}

std::vector<Run> Symbol::runs() const {
  std::vector<Run> runs;
  for (int row = 0; row < size_; ++row)
    for (int column = 0; column < size_; ++column) {
      if (!dark(row, column))
        continue;
      if (dark(row, column - 1))
        ++runs.back().length;
      else
        runs.push_back({row, column, 1});
    }
  return runs;
}

Result<void> can_be_symbol(std::string_view text) {
  if (text.empty())
    return refuse(fault("a label without a code", "Give each label the code of its lot."));
  if (text.size() > longest)
    return refuse(fault(phrase("'{}' has {} characters, {} too many for a label", text, text.size(),
                               text.size() - longest),
                        "A code has at most 10 characters."));
  const auto odd = std::ranges::find_if_not(text, is_code_character);
  if (odd != text.end())
    return refuse(fault(phrase("'{}' cannot stand on a label: character {} is none of 0-9 A-Z",
                               text, odd - text.begin() + 1),
                        "Write codes in capitals and digits only."));
  return {};
}

Result<Symbol> symbol_of(std::string_view text) {
  if (auto can = can_be_symbol(text); !can)
    return refuse(can.error());
  const auto bits = ZXing::MultiFormatWriter(ZXing::BarcodeFormat::QRCode)
                        .setEccLevel(level_h)
                        .setMargin(0)
                        .encode(std::string(text), 0, 0);
  std::vector<bool> dark;
  for (int row = 0; row < bits.height(); ++row)
    for (int column = 0; column < bits.width(); ++column)
      dark.push_back(bits.get(column, row));
  if (bits.width() != symbol_modules)
    return refuse(program_fault(fmt::format("'{}' came out {} modules wide instead of {}", text,
                                            bits.width(), symbol_modules)));
  return Symbol(bits.width(), std::move(dark));
}

} // namespace coneline::labels
