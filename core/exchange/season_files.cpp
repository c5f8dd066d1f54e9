// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/rows.h"

namespace coneline::exchange {

std::vector<std::string> files_of_a_season() {
  std::vector<std::string> names;
  const Sheets none;
  each_sheet(none, [&](const auto& sheet) {
    using Row = typename std::remove_cvref_t<decltype(sheet)>::Row;
    names.emplace_back(file_of<Row>);
  });
  return names;
}

} // namespace coneline::exchange
