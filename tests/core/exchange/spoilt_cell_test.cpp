// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever stands in one cell, it comes in or is refused with its place; the program never stops.
#include "core/base/csv.h"
#include "core/exchange/import_season.h"
#include "tests/core/exchange/small_season.h"

#include <gtest/gtest.h>

namespace coneline::exchange {
namespace {

const std::vector<std::string> spoilt{
    "",   "0",   "-1",  "1e300",      "99999999999999999999", "nan", "x",
    "=1", "2.5", "yes", "2026-02-30", "2200-01-01",           "sow", "T1713"};

TEST(SpoiltCell, ComesInOrIsRefusedInPlace) {
  const tests::Scratch scratch;
  const auto folder = scratch.at("season");
  ASSERT_TRUE(write_season(tests::small_season(), folder, Existing::keep));
  auto book =
      store::Book::make(scratch.at("book"), {"", 10, false, tests::day("2026-01-01")}).value();
  int refused = 0;
  for (const auto& [file, text] : tests::contents(folder)) {
    const auto table = read_csv(text, file).value();
    for (std::size_t row = 0; row < table.rows.size(); ++row)
      for (std::size_t column = 0; column < table.columns.size(); ++column)
        for (const auto& value : spoilt) {
          std::string changed = csv_line(table.columns);
          for (std::size_t i = 0; i < table.rows.size(); ++i) {
            auto fields = table.rows[i].fields;
            if (i == row)
              fields[column] = value;
            changed += csv_line(fields);
          }
          tests::put(folder / file, changed);
          const auto in = import_season(folder, book, Import::dry_run);
          const auto cell = fmt::format("'{}' in {}, row {}, column {}", value, file, row + 2,
                                        table.columns[column]);
          ASSERT_TRUE(in) << cell << ": " << in.error().text();
          refused += in->faults.none() ? 0 : 1;
          for (const auto& fault : in->faults.listed())
            ASSERT_TRUE(fault.where && fault.where->line > 0 && fault.blame == Blame::input)
                << cell << ": " << fault.text();
        }
    tests::put(folder / file, text);
  }
  EXPECT_GT(refused, 1000);
}

} // namespace
} // namespace coneline::exchange
