// SPDX-License-Identifier: GPL-3.0-or-later
// A germination report in all its forms, of less usual reports: by season, of degree-days, of trays
// left out, of nothing that came up, and of what no disk takes.
#include "core/base/csv.h"
#include "core/report/germination_report.h"
#include "core/report/report_file.h"
#include "core/report/spreadsheet.h"
#include "tests/core/work/small_nursery.h"

#include <cstdlib>
#include <fstream>

namespace coneline::report {
namespace {

using tests::day;

/// A tray of a cross with what came up at looks 30 days apart.
work::ObservedTray tray(int number, const std::string& cross, std::int64_t sown,
                        const std::vector<std::int64_t>& up,
                        std::string_view sown_on = "2025-03-01") {
  work::ObservedTray one;
  one.lot.id = {number};
  one.lot.code = Code::of(Kind::tray, 17, number).value();
  one.origin.code = Code::of(Kind::cone, 17, 1).value();
  one.origin.name = cross;
  one.origin.taxon = "Cycas revoluta";
  one.sown_on = day(sown_on);
  one.sown = sown;
  for (std::size_t at = 0; at < up.size(); ++at) {
    work::Observed look;
    look.day = 30.0 * static_cast<double>(at + 1);
    look.date = one.sown_on.plus_days(static_cast<int>(look.day));
    look.germinated = up[at];
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

bool has(std::string_view text, std::string_view part) {
  return text.find(part) != std::string_view::npos;
}

TEST(GerminationForms, CountsReadBackAsTheyWere) {
  const auto report = report_of({tray(1, "=Ada × Bo", 40, {5, 0, 3}), tray(2, "Cy × Bo", 20, {1})});
  const auto table = read_csv(germination_as(report, "counts").value(), "counts.csv").value();
  ASSERT_EQ(table.columns,
            (std::vector<std::string>{"group", "tray", "sown", "day", "germinated", "removed"}));
  ASSERT_EQ(table.rows.size(), 4U);
  EXPECT_EQ(table.rows[0].fields[0].front(), '\''); // no formula
  EXPECT_EQ(from_spreadsheet(table.rows[0].fields[0]), "=Ada × Bo");
  EXPECT_EQ(table.rows[2].fields[3], "90");
  EXPECT_EQ(table.rows[2].fields[4], "3");
  EXPECT_EQ(table.rows[3].fields[2], "20");
}

TEST(GerminationForms, AreThoseFiveAndNoOther) {
  const auto report = report_of({tray(1, "Ada × Bo", 40, {5, 8})});
  for (const auto& [form, begins] : {std::pair("csv", "level,"),
                                     {"counts", "group,"},
                                     {"json", "{"},
                                     {"html", "<!DOCTYPE"},
                                     {"xlsx", "PK"}})
    EXPECT_TRUE(germination_as(report, form)->starts_with(begins)) << form;
  const auto other = germination_as(report, "papyrus");
  ASSERT_FALSE(other);
  EXPECT_TRUE(has(other.error().text(), "no report is written as 'papyrus'"));
  const tests::Scratch scratch;
  EXPECT_FALSE(write_germination(report, "papyrus", scratch.at("rows.csv")));
  EXPECT_FALSE(write_germination(report, "csv", scratch.at("nowhere/rows.csv")));
  ASSERT_TRUE(write_germination(report, "csv", scratch.at("rows.csv")));
  EXPECT_TRUE(std::filesystem::exists(scratch.at("rows.dictionary.csv")));
  ASSERT_TRUE(write_germination(report, "json", scratch.at("all.json")));
  EXPECT_FALSE(std::filesystem::exists(scratch.at("all.dictionary.csv")));
}

// Sown in March 2025 and in November 2025: with seasons from October those are two.
TEST(GerminationForms, BySeasonAreNamedByIt) {
  const std::vector trays{tray(1, "Ada × Bo", 40, {5, 8}), tray(2, "Cy × Bo", 40, {15, 8}),
                          tray(3, "Ada × Bo", 40, {9, 9}, "2025-11-01")};
  const auto season = report_of(trays, By::season, 10);
  ASSERT_EQ(season.crosses.size(), 2U);
  EXPECT_EQ(season.crosses[0].season, "2024/25");
  EXPECT_EQ(season.crosses[1].season, "2025/26");
  EXPECT_TRUE(season.crosses[0].taxon.empty());
  EXPECT_EQ(germination_json(season)["crosses"][0]["season"], "2024/25");
  const auto page = germination_html(season);
  EXPECT_TRUE(has(page, "<h1>Germination per season</h1>"));
  EXPECT_TRUE(has(page, "<th>season</th>"));
  const auto both = report_of(trays, By::cross_and_season, 10);
  ASSERT_EQ(both.crosses.size(), 3U);
  EXPECT_TRUE(has(germination_html(both), "Germination per cross and season"));
  const auto cross = germination_json(report_of(trays));
  EXPECT_TRUE(cross["crosses"][0]["season"].is_null());
  EXPECT_EQ(cross["by"], "cross");
  for (const auto by : {By::cross, By::season, By::cross_and_season})
    EXPECT_EQ(by_named(by_word(by)), by);
  EXPECT_FALSE(by_named("moon"));
}

TEST(GerminationForms, RefuseMonthsThatAreNone) {
  for (const int month : {0, 13}) {
    Asked asked{day("2026-06-01")};
    asked.season_begins = month;
    EXPECT_FALSE(germination_report(std::vector<work::ObservedTray>{}, {}, asked)) << month;
  }
}

TEST(GerminationForms, NameEveryTrayThatIsLeftOutAndWhy) {
  const auto report = report_of({tray(1, "Ada × Bo", 40, {5}), tray(2, "Cy × Bo", 0, {}),
                                 tray(3, "Cy × Bo", 10, {12})}); // more up than sown
  ASSERT_EQ(report.left_out.size(), 2U);
  EXPECT_EQ(report.left_out[0].why, "nothing is sown in it");
  const auto page = germination_html(report);
  EXPECT_TRUE(has(page, "<h2>Left out</h2>"));
  for (const auto& each : report.left_out)
    EXPECT_TRUE(has(page, each.code.text()));
  const auto json = germination_json(report);
  ASSERT_EQ(json["left_out"].size(), 2U);
  EXPECT_EQ(json["left_out"][0]["why"], "nothing is sown in it");
  EXPECT_TRUE(germination_as(report, "xlsx")->starts_with("PK"));
  EXPECT_FALSE(has(germination_html(report_of({tray(1, "Ada × Bo", 40, {5})})), "Left out"));
}

TEST(GerminationForms, OfTraysNobodyLookedAtClaimNoCurve) {
  const auto report = report_of({tray(1, "Ada × Bo", 40, {})});
  const auto page = germination_html(report);
  EXPECT_TRUE(has(page, "No tray has been looked at yet."));
  EXPECT_TRUE(has(page, "No curve: nothing came up."));
  const auto json = germination_json(report);
  EXPECT_TRUE(json["crosses"][0]["fitted_curve"].is_null());
  EXPECT_TRUE(json["crosses"][0]["chart"]["may_end"].is_null());
  EXPECT_TRUE(json["crosses"][0]["chart"]["band"].is_null());
  EXPECT_TRUE(json["crosses"][0]["known_to_come"].is_null());
  EXPECT_TRUE(json["crosses"][0]["trays"][0]["sprouts_until"].is_null());
  EXPECT_TRUE(germination_as(report, "xlsx")->starts_with("PK"));
}

TEST(GerminationForms, SayWhatOneLookAndAnEmptyTrayTellOfTheCurve) {
  const auto one_look = report_of({tray(1, "Ada × Bo", 40, {5})});
  EXPECT_TRUE(has(germination_html(one_look), "No curve: all that came up was seen at one look."));
  auto emptied = tray(2, "Ada × Bo", 20, {5, 6});
  emptied.looks.back().removed = 9; // 5 + 6 up, 9 out: nothing waits
  const auto done = report_of({emptied});
  EXPECT_EQ(done.crosses[0].waiting, 0);
  EXPECT_TRUE(has(germination_html(done), ">none<"));
  const auto json = germination_json(done);
  EXPECT_TRUE(json["crosses"][0]["chart"]["may_end"].is_null()); // no more can come
  EXPECT_EQ(json["crosses"][0]["trays"][0]["waiting"], 0);
  EXPECT_EQ(json["time_unit"], "days");
  EXPECT_TRUE(json["temperature"].is_null());
}

TEST(GerminationForms, OfTwoCrossesSayWhetherTheyDiffer) {
  std::vector<work::ObservedTray> trays;
  for (int i = 0; i < 3; ++i) {
    trays.push_back(tray(1 + i, "High", 100, {60, 30}));
    trays.push_back(tray(11 + i, "Low", 100, {5, 5}));
  }
  const auto apart = report_of(trays);
  EXPECT_TRUE(has(germination_html(apart), "Each differs from every other beyond chance."));
  const auto json = germination_json(apart);
  ASSERT_EQ(json["comparisons"].size(), 1U);
  EXPECT_NEAR(std::abs(json["comparisons"][0]["difference"].get<double>()), 0.8, 0.01);
  EXPECT_LT(json["comparisons"][0]["p_adjusted"].get<double>(), 0.05);
  trays = {tray(1, "High", 100, {60, 30}), tray(2, "Higher", 100, {62, 30})};
  const auto alike = germination_json(report_of(trays));
  EXPECT_EQ(alike["cannot_be_told_apart"][0]["crosses"].size(), 2U);
}

TEST(GerminationForms, ByDegreeDaysNameTheirUnitAndWhatLacked) {
  tests::SmallNursery nursery;
  const auto cone = nursery.cone(nursery.plant("Ada", book::Sex::female));
  const auto sown = nursery.sow(nursery.harvest(cone, "2025-02-01", 50), "2025-03-01", 40);
  nursery.inspect(sown, "2025-04-01", 10);
  Asked asked{day("2025-05-01")};
  asked.degree_days = work::DegreeDayRules{};
  const auto report =
      nursery.book()
          .read([&](store::Reading& reading) { return germination_report(reading, asked); })
          .value();
  EXPECT_TRUE(report.crosses.empty()); // it stood nowhere, so no temperature is known
  ASSERT_EQ(report.left_out.size(), 1U);
  EXPECT_TRUE(has(report.time_unit_said(), "degree-days above"));
  const auto json = germination_json(report);
  EXPECT_TRUE(json["temperature"].is_string());
  EXPECT_TRUE(has(germination_html(report),
                  "1 tray had been sown by then, and it is left out, see below."));
  EXPECT_FALSE(has(lacking_told(report), "No day lacks")) << "all of its days do";
  EXPECT_TRUE(has(germination_html(report), "Left out"));
  EXPECT_FALSE(germination_report(std::vector{tray(1, "Ada × Bo", 40, {5})}, {}, asked)
                   ->left_out.empty()); // without any warmth
}

TEST(ASpreadsheet, TakesTextsOfEveryLengthAndKindOfCell) {
  const auto bytes = Spreadsheet::written([](Spreadsheet& book) {
    auto& sheet = book.sheet("[a/b]: '" + std::string(40, 'x'), {});
    EXPECT_EQ(sheet.rows(), 0); // no header
    std::string longest(32'766, 'a');
    longest += "éé"; // the cut falls into a letter of two bytes
    sheet.row({longest, std::int64_t{3}, 2.5, std::monostate{}});
    EXPECT_EQ(sheet.rows(), 1);
    Chart chart{"t", "x", "y", {}};
    for (const auto stroke : {Stroke::seen, Stroke::fitted, Stroke::band, Stroke::coming})
      chart.lines.push_back({"line", "[a/b]: '" + std::string(40, 'x'), 0, 0, 1, 2, stroke});
    sheet.chart(chart, 0);
  });
  ASSERT_TRUE(bytes) << bytes.error().text();
  EXPECT_TRUE(bytes->starts_with("PK"));
}

TEST(ASpreadsheet, WithoutARoomForTemporaryFilesIsRefused) {
  const tests::Scratch scratch;
  const auto* before = std::getenv("TMPDIR");
  const std::string kept = before == nullptr ? "" : before;
  ::setenv("TMPDIR", scratch.at("nowhere").c_str(), 1);
  const auto bytes = Spreadsheet::written([](Spreadsheet&) {});
  if (before == nullptr)
    ::unsetenv("TMPDIR");
  else
    ::setenv("TMPDIR", kept.c_str(), 1);
  ASSERT_FALSE(bytes);
  EXPECT_TRUE(has(bytes.error().text(), "no temporary file could be written"));
  const auto failed = Spreadsheet::written(
      [](Spreadsheet&) { throw std::runtime_error("its library is missing"); });
  ASSERT_FALSE(failed);
  EXPECT_TRUE(has(failed.error().text(), "its library is missing"));
}

} // namespace
} // namespace coneline::report
