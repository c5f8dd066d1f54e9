// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/csv.h"
#include "core/report/cross_chart.h"
#include "core/report/germination_rows.h"
#include "core/report/ranking.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::report {
namespace {

using tests::day;

/// A tray of a cross, all that came up seen at two looks.
work::ObservedTray tray(int number, const std::string& cross, std::int64_t sown, std::int64_t up,
                        std::string_view sown_on = "2025-03-01") {
  work::ObservedTray one;
  one.lot.id = {number};
  one.lot.code = Code::of(Kind::tray, 17, number).value();
  one.origin.code = Code::of(Kind::cone, 17, 1).value();
  one.origin.name = cross;
  one.origin.taxon = "Cycas revoluta";
  one.sown_on = day(sown_on);
  one.sown = sown;
  for (const auto& [after, seen] :
       {std::pair(30, up / 4), {60, up / 2}, {90, up - up / 4 - up / 2}}) {
    work::Observed look;
    look.date = one.sown_on.plus_days(after);
    look.day = after;
    look.germinated = seen;
    one.looks.push_back(look);
  }
  return one;
}

GerminationReport report_of(const std::vector<work::ObservedTray>& trays, By by = By::cross,
                            int season_begins = 1) {
  Asked asked{day("2026-06-01")};
  asked.by = by;
  asked.season_begins = season_begins;
  return germination_report(trays, {}, asked).value();
}

/// 90, 87 and 10 in a hundred, in trays that agree.
std::vector<work::ObservedTray> three_crosses() {
  std::vector<work::ObservedTray> trays;
  int number = 0;
  for (const auto& [cross, up] : {std::pair("Low", 10), {"High", 90}, {"Near high", 87}})
    for (int i = 0; i < 3; ++i)
      trays.push_back(tray(++number, cross, 100, up));
  return trays;
}

TEST(Letters, GoOnAfterZ) {
  EXPECT_EQ(letters_of(0), "a");
  EXPECT_EQ(letters_of(25), "z");
  EXPECT_EQ(letters_of(26), "aa");
  EXPECT_EQ(letters_of(27), "ab");
}

TEST(Ranking, PutsTheHighestFirstAndSaysWhatCannotBeToldApart) {
  const auto report = report_of(three_crosses());
  ASSERT_EQ(report.ranking.size(), 3U);
  EXPECT_EQ(report.crosses[report.ranking[0]].name, "High");
  EXPECT_EQ(report.crosses[report.ranking[2]].name, "Low");
  EXPECT_EQ(report.crosses[report.ranking[0]].rank, 1U);
  EXPECT_EQ(report.crosses[report.ranking[0]].alike, "a");
  EXPECT_EQ(report.crosses[report.ranking[1]].alike, "a");
  EXPECT_EQ(report.crosses[report.ranking[2]].alike, "b");
  const auto told = alike_told(report);
  ASSERT_EQ(told.size(), 1U);
  EXPECT_EQ(told[0], "a: High and Near high cannot be told apart.");
}

TEST(Seasons, AreYearsOrBeginWithinOne) {
  EXPECT_EQ(season_of(day("2025-03-01"), 1), "2025");
  EXPECT_EQ(season_of(day("2025-06-30"), 7), "2024/25");
  EXPECT_EQ(season_of(day("1999-07-01"), 7), "1999/00");
}

TEST(Seasons, TakeTheirTraysTogether) {
  const std::vector trays{tray(1, "A", 40, 20, "2024-03-01"), tray(2, "A", 40, 24, "2025-03-01"),
                          tray(3, "B", 40, 8, "2025-04-01")};
  const auto by_season = report_of(trays, By::season);
  ASSERT_EQ(by_season.crosses.size(), 2U);
  EXPECT_EQ(by_season.crosses[1].name, "2025");
  EXPECT_EQ(by_season.crosses[1].figures.sown, 80);
  EXPECT_EQ(by_season.crosses[1].figures.germinated, 32);
  const auto by_both = report_of(trays, By::cross_and_season);
  ASSERT_EQ(by_both.crosses.size(), 3U);
  EXPECT_EQ(by_both.crosses[0].name, "A, 2024");
  EXPECT_EQ(by_both.crosses[0].season, "2024");
}

TEST(Rows, HaveACellAColumn) {
  const auto report = report_of(three_crosses());
  for (const auto& cross : report.crosses) {
    const auto cells = cells_of(report, cross);
    ASSERT_EQ(cells.size(), columns().size());
    ASSERT_EQ(cells_of(report, cross, cross.trays[0]).size(), columns().size());
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const bool number = columns()[i].type == "number" || columns()[i].type == "whole";
      EXPECT_EQ(number, std::holds_alternative<double>(cells[i]) ||
                            std::holds_alternative<std::int64_t>(cells[i]) ||
                            (number && std::holds_alternative<std::monostate>(cells[i])))
          << columns()[i].name;
    }
  }
}

TEST(Rows, TheDictionaryNamesEveryColumnOnce) {
  const auto dictionary = read_csv(germination_dictionary(), "dictionary").value();
  const auto rows = read_csv(germination_csv(report_of(three_crosses())), "rows").value();
  ASSERT_EQ(dictionary.rows.size(), rows.columns.size());
  for (std::size_t i = 0; i < rows.columns.size(); ++i) {
    EXPECT_EQ(dictionary.rows[i].fields[0], rows.columns[i]);
    EXPECT_NE(dictionary.rows[i].fields[4], "");
  }
}

TEST(CrossChart, HasStepsCurveBandAndWhereItMayEnd) {
  const auto report = report_of(three_crosses());
  const auto& low = report.crosses[1];
  ASSERT_EQ(low.name, "Low");
  const auto chart = cross_chart(low);
  EXPECT_EQ(chart.last, 90);
  EXPECT_EQ(chart.until, 112.5);
  EXPECT_NEAR(chart.steps.back().share, 0.1, 1e-6);
  ASSERT_EQ(chart.fitted.size(), chart.band.size());
  for (std::size_t i = 0; i < chart.band.size(); ++i) {
    EXPECT_LE(chart.band[i].low, chart.fitted[i].share + 1e-12);
    EXPECT_GE(chart.band[i].high, chart.fitted[i].share - 1e-12);
  }
  ASSERT_TRUE(chart.coming);
  EXPECT_GE(chart.coming->low, 0.1);
  EXPECT_LE(chart.coming->high, 1);
  const auto svg = cross_svg(chart, "days");
  EXPECT_NE(svg.find("class=\"band\""), std::string::npos);
  EXPECT_NE(svg.find("where it may end"), std::string::npos);
}

TEST(CrossChart, OfACrossThatWasNotLookedAtIsEmpty) {
  auto one = tray(1, "A", 40, 0);
  one.looks.clear();
  const auto report = report_of({one});
  EXPECT_TRUE(cross_chart(report.crosses[0]).steps.empty());
}

TEST(Spreadsheet, IsAZipWithItsSheets) {
  const auto bytes = germination_xlsx(report_of(three_crosses()));
  ASSERT_TRUE(bytes) << bytes.error().text();
  EXPECT_EQ(bytes->substr(0, 2), "PK");
  EXPECT_NE(bytes->find("xl/charts/chart1.xml"), std::string::npos);
}

TEST(DegreeDays, WithoutTemperatureEveryTrayIsLeftOut) {
  Asked asked{day("2026-06-01")};
  asked.degree_days.emplace();
  const auto report = germination_report(three_crosses(), {}, asked).value();
  EXPECT_TRUE(report.crosses.empty());
  EXPECT_EQ(report.left_out.size(), 9U);
  EXPECT_EQ(report.time_unit(), "degree-days above 10 °C");
}

} // namespace
} // namespace coneline::report
