// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/commands/with_nursery.h"

#include <filesystem>
#include <fstream>

namespace coneline::commands {
namespace {

class ReportCommand : public WithNursery {
 protected:
  ReportCommand() {
    const auto cone = nursery_.cone(nursery_.plant("Old Sentinel", book::Sex::female));
    const auto tray = nursery_.sow(nursery_.harvest(cone, "2025-02-01", 50), "2025-03-01", 40);
    nursery_.inspect(tray, "2025-04-01", 10);
    nursery_.inspect(tray, "2025-06-01", 5);
  }

  [[nodiscard]] std::string contents(const std::string& name) const {
    std::ifstream file(nursery_.at(name));
    return {std::istreambuf_iterator<char>(file), {}};
  }
};

TEST_F(ReportCommand, ShowsATableThatSaysTheDataAreInvented) {
  ASSERT_EQ(run({"report", "germination", "--as-of", "2025-07-01"}), 0) << err_.str();
  EXPECT_NE(out_.str().find("(invented data)"), std::string::npos);
  EXPECT_NE(out_.str().find("Old Sentinel × Blue Twin"), std::string::npos);
  EXPECT_NE(out_.str().find("25 waiting"), std::string::npos);
}

TEST_F(ReportCommand, WithJsonPrintsOneDocumentOfItsDay) {
  ASSERT_EQ(run({"report", "germination", "--json", "--as-of", "2025-05-01"}), 0) << err_.str();
  EXPECT_EQ(json()["crosses"][0]["germinated"], 10);
  ASSERT_EQ(run({"report", "germination", "--json", "--as-of", "2025-07-01"}), 0);
  EXPECT_EQ(json()["crosses"][0]["germinated"], 15);
}

TEST_F(ReportCommand, WritesTheFormThatTheFileIsNamedAfter) {
  const auto page = nursery_.at("page.html").string();
  ASSERT_EQ(run({"report", "germination", "--as-of", "2025-07-01", "--out", page}), 0)
      << err_.str();
  EXPECT_EQ(contents("page.html").substr(0, 15), "<!DOCTYPE html>");
  const auto rows = nursery_.at("rows.txt").string();
  ASSERT_EQ(run({"report", "germination", "--as-of", "2025-07-01", "--out", rows, "--format", "csv",
                 "--json"}),
            0);
  EXPECT_EQ(json()["format"], "csv");
  EXPECT_EQ(contents("rows.txt").substr(0, 6), "level,");
}

TEST_F(ReportCommand, WritesADictionaryBesideItsRows) {
  const auto rows = nursery_.at("rows.csv").string();
  ASSERT_EQ(
      run({"report", "germination", "--as-of", "2025-07-01", "--by", "season", "--out", rows}), 0)
      << err_.str();
  EXPECT_EQ(contents("rows.csv").substr(0, 6), "level,");
  EXPECT_NE(contents("rows.csv").find("\nseason,1,a,2025,"), std::string::npos);
  EXPECT_EQ(contents("rows.dictionary.csv").substr(0, 33), "column,type,unit,missing,meaning\n");
}

TEST_F(ReportCommand, WritesASpreadsheet) {
  const auto sheet = nursery_.at("report.xlsx").string();
  ASSERT_EQ(run({"report", "germination", "--as-of", "2025-07-01", "--out", sheet}), 0)
      << err_.str();
  EXPECT_EQ(contents("report.xlsx").substr(0, 2), "PK");
  EXPECT_EQ(run({"report", "germination", "--format", "xlsx"}), 2);
}

TEST_F(ReportCommand, WritesNoOtherFormUnderAnEndingOfItsOwn) {
  const auto refused = [&](const std::string& name) {
    EXPECT_EQ(run({"report", "germination", "--out", nursery_.at(name).string()}), 2) << name;
    EXPECT_FALSE(std::filesystem::exists(nursery_.at(name)));
    return err_.str();
  };
  EXPECT_NE(refused("g.pdf").find("'coneline report pdf' makes one"), std::string::npos);
  EXPECT_NE(refused("g.PDF").find("'coneline report pdf' makes one"), std::string::npos);
  EXPECT_NE(refused("g.docx").find(".csv, .json, .html, .xlsx or .txt"), std::string::npos);
  const auto text = nursery_.at("g.txt").string();
  ASSERT_EQ(run({"report", "germination", "--out", text, "--as-of", "2025-07-01"}), 0);
  EXPECT_EQ(contents("g.txt").substr(0, 21), "Germination per cross");
  EXPECT_NE(out_.str().find("1 cross as of 2025-07-01 written"), std::string::npos) << out_.str();
}

TEST_F(ReportCommand, SaysWhatIsLeftOutWithoutALoggersReadings) {
  const auto why = "days have no temperature";
  ASSERT_EQ(run({"report", "germination", "--time", "degree-days", "--as-of", "2025-07-01"}), 0);
  EXPECT_EQ(out_.str().find("No tray had been sown"), std::string::npos) << out_.str();
  EXPECT_NE(out_.str().find("1 tray had been sown by then, and it is left out"), std::string::npos);
  EXPECT_NE(out_.str().find("Left out: T"), std::string::npos) << out_.str();
  EXPECT_NE(out_.str().find(why), std::string::npos);
  EXPECT_NE(out_.str().find("temperature take-in"), std::string::npos);
  const auto file = nursery_.at("counts.csv").string();
  const std::vector<std::string> counts{"report",  "germination", "--time",   "degree-days",
                                        "--as-of", "2025-07-01",  "--format", "counts"};
  auto to_file = counts;
  to_file.insert(to_file.end(), {"--out", file});
  ASSERT_EQ(run(to_file), 0) << err_.str();
  EXPECT_NE(out_.str().find(why), std::string::npos) << out_.str();
  to_file.emplace_back("--json");
  ASSERT_EQ(run(to_file), 0);
  EXPECT_EQ(json()["left_out"].size(), 1U);
  ASSERT_EQ(run(counts), 0);
  EXPECT_EQ(out_.str(), "group,tray,sown,day,germinated,removed\n");
  EXPECT_NE(err_.str().find(why), std::string::npos) << "rows have no place for it";
}

TEST_F(ReportCommand, DescribesItsColumnsWithoutABook) {
  const auto ran = run_words({"report", "dictionary"});
  ASSERT_EQ(ran.status, 0) << ran.err;
  EXPECT_NE(ran.out.find("still_expected_low"), std::string::npos);
}

TEST_F(ReportCommand, ThatCannotWriteFails) {
  const auto out = (nursery_.at("missing") / "page.html").string();
  EXPECT_EQ(run({"report", "germination", "--out", out}), 1);
  EXPECT_EQ(out_.str(), "");
  EXPECT_NE(err_.str().find("cannot be written"), std::string::npos);
}

TEST_F(ReportCommand, RefusesWhatItDoesNotKnow) {
  EXPECT_EQ(run({"report", "germination", "--format", "pdf"}), 2);
  EXPECT_EQ(run({"report"}), 2);
  EXPECT_EQ(run({"report", "germination", "--as-of", "yesterday"}), 1);
  EXPECT_EQ(run({"report", "germination", "--confidence", "1"}), 2);
}

TEST_F(ReportCommand, OrderAndPlacingNameWhatHasNoRoute) {
  const auto why = "its taxon has no route";
  for (const std::string command : {"order", "placing", "forecast"}) {
    const std::vector<std::string> asked{command, "--as-of", "2025-07-01", "--months",
                                         "3",     "--runs",  "20"};
    ASSERT_EQ(run(asked), 0) << command << '\n' << err_.str();
    EXPECT_NE(out_.str().find("Left out: T"), std::string::npos) << command << out_.str();
    EXPECT_NE(out_.str().find(why), std::string::npos) << command;
    EXPECT_EQ(out_.str().find("Nothing has to be ordered.\n"), std::string::npos) << out_.str();
    EXPECT_EQ(out_.str().find("Everything finds room.\n"), std::string::npos) << out_.str();
    auto as_json = asked;
    as_json.emplace_back("--json");
    ASSERT_EQ(run(as_json), 0) << command;
    ASSERT_EQ(json()["left_out"].size(), 1U) << command;
    EXPECT_EQ(json()["left_out"][0]["why"], why);
  }
}

TEST_F(ReportCommand, NeedsNameWhatHasNoRoute) {
  ASSERT_EQ(run({"needs", "--as-of", "2025-07-01", "--months", "3"}), 0) << err_.str();
  EXPECT_NE(out_.str().find("its taxon has no route"), std::string::npos);
  ASSERT_EQ(run({"needs", "--as-of", "2025-07-01", "--months", "3", "--json"}), 0);
  EXPECT_EQ(json()["months"].size(), 3U);
  EXPECT_EQ(json()["left_out"][0]["count"], 40);
  EXPECT_EQ(run({"needs", "--months", "0"}), 2);
}

TEST_F(ReportCommand, NeedsAreWrittenAsRowsToo) {
  const auto rows = nursery_.at("needs.csv").string();
  ASSERT_EQ(run({"needs", "--as-of", "2025-07-01", "--csv", rows}), 0) << err_.str();
  EXPECT_EQ(contents("needs.csv").substr(0, 6), "month,");
}

} // namespace
} // namespace coneline::commands
