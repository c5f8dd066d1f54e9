// SPDX-License-Identifier: GPL-3.0-or-later
// Lists of the invented nursery's book: what the document has stands in the table too, files are
// written whole, and wrong words are refused.
#include "tests/core/commands/with_demo_book.h"

#include <fstream>
#include <set>

namespace coneline::commands {
namespace {

using Words = std::vector<std::string>;

/// Every text of a document that is a code.
void codes_in(const Json& json, std::set<std::string>& codes) {
  if (json.is_string() && json.get<std::string>().size() > 3 &&
      json.get<std::string>().size() < 8 && Code::parse(json.get<std::string>()))
    codes.insert(json.get<std::string>());
  if (json.is_structured())
    for (const auto& each : json)
      codes_in(each, codes);
}

std::string content(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

std::ptrdiff_t lines_of(const std::string& text) {
  return std::ranges::count(text, '\n');
}

class DemoLists : public DemoBook {};

TEST_F(DemoLists, LoseNothingThatTheDocumentHas) {
  const std::vector<Words> lists{{"pollen"},
                                 {"cones"},
                                 {"due", "--on", demo_day},
                                 {"due", "--on", demo_day, "--by-day", "--ahead", "30"},
                                 {"parents"},
                                 {"trays", "done", "--as-of", demo_day}};
  for (const auto& words : lists) {
    std::set<std::string> codes;
    codes_in(json(words), codes);
    EXPECT_GT(codes.size(), 5U) << words[0];
    const auto ran = run(words);
    EXPECT_EQ(ran.status, 0) << ran.err;
    for (const auto& code : codes)
      EXPECT_NE(ran.out.find(code), std::string::npos) << words[0] << ": " << code;
  }
}

TEST_F(DemoLists, DueGoesIntoACalendarAsTodosOrEvents) {
  const auto file = own_.at("due.ics").string();
  const auto due = json({"due", "--on", demo_day, "--ahead", "14"})["due"];
  for (const auto& [as, begins] : {std::pair("todo", "BEGIN:VTODO"), {"event", "BEGIN:VEVENT"}}) {
    const auto told =
        run({"due", "--on", demo_day, "--ahead", "14", "--calendar", file, "--as", as});
    ASSERT_EQ(told.status, 0) << told.err;
    const auto text = content(file);
    std::size_t count = 0;
    for (auto at = text.find(begins); at != std::string::npos; at = text.find(begins, at + 1))
      ++count;
    EXPECT_NE(told.out.find(std::to_string(due.size()) + " due and " +
                            std::to_string(count - due.size()) + " settled in "),
              std::string::npos)
        << as << ": " << told.out;
  }
  const auto before = content(file);
  expect_refused({"due", "--on", demo_day, "--calendar", file, "--as", "song"}, 2, "song");
  expect_refused({"due", "--on", demo_day, "--ahead", "-1"}, 2, "-1");
  expect_refused({"due", "--on", demo_day, "--ahead", "2147483647"}, 2, "Give 0 to 3650 days.");
  EXPECT_EQ(run({"due", "--on", demo_day, "--ahead", "3650"}).status, 0);
  expect_refused({"due", "--on", "someday"}, 1, "someday");
  expect_refused({"due", "--on", demo_day, "--calendar", own_.at("no/such/due.ics").string()}, 1,
                 "due.ics");
  EXPECT_EQ(content(file), before);
  EXPECT_NE(run({"due", "--on", "2023-01-02"}).out.find("Nothing is due"), std::string::npos);
}

TEST_F(DemoLists, LeavesAreToldByCrossWithTheirTest) {
  const auto book = json({"leaves", "--as-of", demo_day});
  const auto ran = run({"leaves", "--as-of", demo_day});
  ASSERT_FALSE(book["crosses"].empty());
  for (const auto& cross : book["crosses"])
    EXPECT_NE(ran.out.find(cross["cross"].get<std::string>()), std::string::npos) << ran.out;
  EXPECT_NE(run({"leaves", "--as-of", "2023-01-02"}).out.find("No tray had been sown"),
            std::string::npos);
  expect_refused({"leaves", "--as-of", "someday"}, 1, "someday");
}

TEST_F(DemoLists, NeedsGoIntoAFileOneRowAValue) {
  const auto file = own_.at("needs.csv").string();
  ASSERT_EQ(run({"needs", "--as-of", demo_day, "--months", "24", "--csv", file}).status, 0);
  const auto needs = json({"needs", "--as-of", demo_day, "--months", "24"});
  EXPECT_EQ(needs["months"].size(), 24U);
  EXPECT_GT(lines_of(content(file)), 24);
  EXPECT_NE(run({"needs", "--as-of", demo_day}).out.find("Plants becoming ready"),
            std::string::npos);
  expect_refused({"needs", "--as-of", demo_day, "--csv", own_.at("no/such/needs.csv").string()}, 1,
                 "needs.csv");
  expect_refused({"needs", "--as-of", "someday"}, 1, "someday");
}

TEST_F(DemoLists, TheOrderGoesIntoFilesAndIsComparedByAssurance) {
  ASSERT_EQ(run({"take-in-offers", std::string(CONELINE_DEMO_SEASON) + "/../offers.csv"}).status,
            0);
  const auto csv = own_.at("order.csv").string();
  const auto xlsx = own_.at("order.xlsx").string();
  const Words order{"order", "--as-of", demo_day, "--months", "9", "--runs", "60"};
  auto with_files = order;
  with_files.insert(with_files.end(), {"--csv", csv, "--xlsx", xlsx, "--compare"});
  const auto ran = run(with_files);
  ASSERT_EQ(ran.status, 0) << ran.err;
  EXPECT_EQ(content(xlsx).substr(0, 2), "PK");
  EXPECT_NE(ran.out.find("99 %"), std::string::npos) << "assurances beside each other: " << ran.out;
  const auto told = json(order);
  EXPECT_EQ(lines_of(content(csv)), static_cast<std::ptrdiff_t>(told["orders"].size()) + 1);
  auto nowhere = order;
  nowhere.insert(nowhere.end(), {"--xlsx", own_.at("no/such/order.xlsx").string()});
  expect_refused(nowhere, 1, "order.xlsx");
}

TEST_F(DemoLists, GerminationIsReportedInEachForm) {
  const Words report{"report", "germination", "--as-of", demo_day};
  for (const auto& [form, begins] : {std::pair("csv", "level,"),
                                     {"html", "<!DOCTYPE html>"},
                                     {"xlsx", "PK"},
                                     {"json", "{"},
                                     {"counts", "group,tray,"}}) {
    const auto file = own_.at(std::string("report.") + form).string();
    auto words = report;
    words.insert(words.end(), {"--format", form, "--out", file});
    ASSERT_EQ(run(words).status, 0) << form;
    EXPECT_EQ(content(file).substr(0, std::string(begins).size()), begins) << form;
  }
  // What is written as counts is read by the command that takes counts, with the same trays.
  const auto trays = json({"report", "germination", "--as-of", demo_day})["crosses"];
  std::size_t sown = 0;
  for (const auto& cross : trays)
    sown += cross["sown"].get<std::size_t>();
  const auto read = run_command("germination " + own_.at("report.counts").string() + " --json");
  ASSERT_EQ(read.status, 0) << read.err;
  std::size_t again = 0;
  const auto counts = read.json();
  for (const auto& group : counts["groups"])
    again += group["sown"].get<std::size_t>();
  EXPECT_GT(sown, 0U);
  EXPECT_EQ(again, sown);
  auto nowhere = report;
  nowhere.insert(nowhere.end(), {"--out", own_.at("no/such/report.html").string()});
  expect_refused(nowhere, 1, "report.html");
}

TEST_F(DemoLists, ConditionsAreComparedOnlyWhereTheyAreKnown) {
  const auto all = json({"why", "--as-of", demo_day});
  ASSERT_GT(all["conditions"].size(), 2U);
  const auto of_day = json({"why", "--as-of", demo_day, "--by-day", "120"});
  EXPECT_EQ(of_day["conditions"].size(), all["conditions"].size());
  const auto one =
      json({"why", "--as-of", demo_day, "--by", "judged", "--taxon", "Cycas revoluta"});
  EXPECT_EQ(one["conditions"].size(), 1U);
  EXPECT_EQ(run({"why", "--as-of", demo_day}).status, 0);
  expect_refused({"why", "--as-of", demo_day, "--by", "moon"}, 2, "moon");
  expect_refused({"why", "--as-of", demo_day, "--taxon", "No such"}, 1, "No such");
}

} // namespace
} // namespace coneline::commands
