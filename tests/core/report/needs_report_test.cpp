// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/csv.h"
#include "core/report/needs_report.h"
#include "tests/core/plan/small_plan.h"

namespace coneline::report {
namespace {

using namespace coneline::tests;

plan::Needs small_needs() {
  auto input = small_plan("2026-01-15");
  input.groups = {group(one_litre, "2025-03-01", 100), group(ten_litres, "2025-03-01", 3)};
  return plan::needs(input).value();
}

TEST(NeedsCsv, HasOneRowAValue) {
  const auto table =
      read_csv(needs_csv(small_needs(), {"Test", 17, true, day("2026-01-01")}), "needs.csv")
          .value();
  const auto value = [&](const std::string& month, const std::string& what,
                         const std::string& name) -> std::string {
    for (const auto& row : table.rows)
      if (row.fields[0] == month && row.fields[1] == what && row.fields[2] == name)
        return row.fields[3];
    return "missing";
  };
  EXPECT_EQ(value("2026-03", "into pot", "3 L"), "90");
  EXPECT_EQ(value("2026-01", "into pot", "3 L"), "0");
  EXPECT_EQ(value("2026-03", "mix", "cycad mix").substr(0, 3), "198");
  EXPECT_EQ(value("2027-03", "ready", "A × B"), "85.5");
  EXPECT_EQ(value("2026-05", "bench offered", "sun"), "1");
  EXPECT_EQ(table.rows.size() % 24, 0U);
  EXPECT_EQ(table.rows[0].fields[5], "yes");
}

TEST(NeedsJson, NamesTheMonthThatDoesNotFitAndWhatIsLeftOut) {
  const auto json = needs_json(small_needs(), {"Test", 17, false, day("2026-01-01")});
  EXPECT_EQ(json["months"].size(), 24U);
  EXPECT_EQ(json["months"][0], "2026-01");
  EXPECT_EQ(json["left_out"].size(), 1U);
  EXPECT_EQ(json["left_out"][0]["count"], 3);
  for (const auto& space : json["space"])
    if (space["light"] == "sun")
      EXPECT_EQ(space["first_month_over"], "2026-03");
    else
      EXPECT_TRUE(space["first_month_over"].is_null());
  EXPECT_FALSE(json["rules"].empty());
  EXPECT_EQ(json["invented"], false);
}

} // namespace
} // namespace coneline::report
