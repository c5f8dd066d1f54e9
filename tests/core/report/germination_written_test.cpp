// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/csv.h"
#include "core/report/germination_report.h"
#include "core/report/step_chart.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::report {
namespace {

using tests::day;
using tests::SmallNursery;

/// One tray of 40, 10 up, of a mother whose name is as awkward as names get.
GerminationReport small_report(SmallNursery& nursery, const std::string& mother) {
  const auto cone = nursery.cone(nursery.plant(mother, book::Sex::female));
  const auto tray = nursery.sow(nursery.harvest(cone, "2025-02-01", 50), "2025-03-01", 40);
  nursery.inspect(tray, "2025-04-01", 10);
  return nursery.book()
      .read(
          [](store::Reading& reading) { return germination_report(reading, {day("2025-05-01")}); })
      .value();
}

std::size_t times(const std::string& text, std::string_view part) {
  std::size_t count = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
    ++count;
  return count;
}

TEST(GerminationCsv, IsTidyAndSafeInASpreadsheet) {
  SmallNursery nursery;
  const auto report = small_report(nursery, "=HYPERLINK(\"x\"), \"Old\"");
  const auto table = read_csv(germination_csv(report), "report.csv").value();
  ASSERT_EQ(table.rows.size(), 2U);
  const auto field = [&](std::size_t row, const char* name) {
    return table.rows[row].fields[table.column(name).value()];
  };
  EXPECT_EQ(field(0, "level"), "cross");
  EXPECT_EQ(field(0, "cross").front(), '\'');
  EXPECT_EQ(from_spreadsheet(field(0, "cross")), report.crosses[0].name);
  EXPECT_EQ(field(1, "level"), "tray");
  EXPECT_EQ(field(1, "tray"), report.crosses[0].trays[0].seen.lot.code.text());
  EXPECT_EQ(field(1, "share"), "0.25");
  EXPECT_EQ(field(1, "share_method"), "Wilson");
  EXPECT_EQ(field(1, "waiting"), "30");
  EXPECT_EQ(field(0, "days_from_root_to_leaf"), "");
  EXPECT_EQ(field(0, "invented"), "yes");
  EXPECT_EQ(field(0, "as_of"), "2025-05-01");
}

TEST(GerminationJson, HasNullForWhatDoesNotExist) {
  SmallNursery nursery;
  const auto json = germination_json(small_report(nursery, "Old Sentinel"));
  const auto& cross = json["crosses"][0];
  EXPECT_EQ(cross["final"]["share"], 0.25);
  EXPECT_TRUE(cross["first_leaf"]["median_days_from_root"].is_null());
  EXPECT_EQ(cross["trays"][0]["looks"][0]["day"], 31);
  EXPECT_TRUE(cross["trays"][0]["sprouts_until"].is_null());
  EXPECT_EQ(json["invented"], true);
}

TEST(GerminationPage, EscapesEveryName) {
  SmallNursery nursery;
  const auto page = germination_html(small_report(nursery, "<script>alert('&\"')</script>"));
  EXPECT_EQ(page.find("<script"), std::string::npos);
  EXPECT_EQ(page.find("alert('"), std::string::npos);
  EXPECT_NE(page.find("&lt;script&gt;alert(&#39;&amp;&quot;&#39;)&lt;/script&gt;"),
            std::string::npos);
}

TEST(GerminationPage, StandsAloneInLightAndDark) {
  SmallNursery nursery;
  const auto page = germination_html(small_report(nursery, "Old Sentinel"));
  for (const auto* outside : {"http:", "https:", "src=", "href=", "url(", "@import"})
    EXPECT_EQ(page.find(outside), std::string::npos) << outside;
  EXPECT_NE(page.find("prefers-color-scheme: dark"), std::string::npos);
  EXPECT_NE(page.find("Invented data"), std::string::npos);
  EXPECT_EQ(times(page, "<svg"), times(page, "</svg>"));
  EXPECT_EQ(times(page, "<table"), times(page, "</table>"));
}

TEST(GerminationPage, OfARealNurserySaysNothingOfInvention) {
  SmallNursery nursery(false);
  const auto page = germination_html(small_report(nursery, "Old Sentinel"));
  EXPECT_EQ(page.find("Invented"), std::string::npos);
}

TEST(GerminationPage, OfAnEmptyBookSaysSo) {
  SmallNursery nursery;
  const auto report = nursery.book()
                          .read([](store::Reading& reading) {
                            return germination_report(reading, {day("2025-05-01")});
                          })
                          .value();
  EXPECT_NE(germination_html(report).find("No tray had been sown by then."), std::string::npos);
}

CrossReport curve(const std::string& name, double share) {
  CrossReport cross;
  cross.name = name;
  cross.curve = {{0, 0}, {30, share}};
  return cross;
}

TEST(StepChart, StepsAtTheLooksAndNamesEachCurve) {
  const std::vector<CrossReport> crosses{curve("A", 0.5), curve("B", 0.25)};
  const auto svg = step_chart(crosses, 30);
  EXPECT_NE(svg.find("M56.0 316.0H560.0V166.0"), std::string::npos) << svg; // half of 300 up
  EXPECT_NE(svg.find(">A</text>"), std::string::npos);
  EXPECT_NE(svg.find(">B</text>"), std::string::npos);
  EXPECT_EQ(times(svg, "class=\"curve c1\""), 2U); // the curve and the piece beside its name
}

TEST(StepChart, KeepsNamesApartWhereCurvesEndAlike) {
  std::vector<CrossReport> crosses;
  for (const auto* name : {"A", "B", "C", "D", "E", "F", "G"})
    crosses.push_back(curve(name, 0));
  const auto svg = step_chart(crosses, 30);
  std::vector<double> heights;
  const std::string begins = "class=\"name\" x=\"602\" y=\"";
  for (auto at = svg.find(begins); at != std::string::npos; at = svg.find(begins, at + 1))
    heights.push_back(std::stod(svg.substr(at + begins.size())));
  ASSERT_EQ(heights.size(), 7U);
  std::ranges::sort(heights);
  for (std::size_t at = 1; at < heights.size(); ++at)
    EXPECT_GE(heights[at] - heights[at - 1], 17.9);
  EXPECT_LE(heights.back(), 321); // inside the chart
}

} // namespace
} // namespace coneline::report
