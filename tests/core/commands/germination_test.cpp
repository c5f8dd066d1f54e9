// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/germination.h"
#include "tests/core/commands/run_command.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>

namespace coneline::commands {
namespace {

class GerminationCommand : public testing::Test {
 protected:
  void SetUp() override {
    file_ = std::filesystem::temp_directory_path() /
            fmt::format("germination-{}.csv",
                        testing::UnitTest::GetInstance()->current_test_info()->name());
  }
  void TearDown() override { std::filesystem::remove(file_); }

  Ran run(const std::string& text, std::vector<std::string> options) {
    std::ofstream(file_) << text;
    std::vector<std::string> arguments{"germination", file_.string()};
    arguments.insert(arguments.end(), options.begin(), options.end());
    return run_words(std::move(arguments));
  }

  std::filesystem::path file_;
};

const char* const two_trays = "group,tray,sown,day,germinated,removed\n"
                              "A,1,20,7,4,0\nA,1,20,14,6,1\nA,1,20,21,2,0\n"
                              "B,2,20,7,0,0\nB,2,20,14,0,0\n";

TEST_F(GerminationCommand, GivesEveryKeyInOrder) {
  const auto ran = run(two_trays, {"--json"});
  ASSERT_EQ(ran.status, 0) << ran.err;
  const auto json = Json::parse(ran.out);
  std::vector<std::string> keys;
  for (const auto& [key, value] : json.items())
    keys.push_back(key);
  EXPECT_EQ(keys, (std::vector<std::string>{"trays", "groups", "comparisons"}));
  keys.clear();
  for (const auto& [key, value] : json["trays"][0].items())
    keys.push_back(key);
  EXPECT_EQ(keys, (std::vector<std::string>{
                      "group", "tray", "sown", "germinated", "removed", "final", "mean_time",
                      "variance", "velocity", "uncertainty", "synchrony", "t50_coolbear",
                      "t50_farooq", "speed", "peak_value", "germination_value"}));
  EXPECT_EQ(json["trays"][0]["germinated"], 12);
  EXPECT_EQ(json["trays"][0]["final"]["share"], 0.6);
  EXPECT_TRUE(json["trays"][1]["mean_time"].is_null());
  EXPECT_TRUE(json["trays"][1]["germination_value"].is_null());
}

std::vector<std::string> keys_of(const Json& json) {
  std::vector<std::string> keys;
  for (const auto& [key, value] : json.items())
    keys.push_back(key);
  return keys;
}

TEST_F(GerminationCommand, GivesGroupsAndComparisonsInOrder) {
  const auto json = Json::parse(run(two_trays, {"--json"}).out);
  const auto& group = json["groups"][0];
  EXPECT_EQ(keys_of(group), (std::vector<std::string>{"group", "trays", "sown", "germinated",
                                                      "final", "between_trays", "curve", "stepwise",
                                                      "still_expected", "share_in_end"}));
  EXPECT_TRUE(group["between_trays"].is_null());
  EXPECT_EQ(keys_of(group["curve"]),
            (std::vector<std::string>{"family", "germinable", "shape", "scale", "standard_errors",
                                      "log_likelihood", "boundary"}));
  EXPECT_EQ(keys_of(group["still_expected"]), (std::vector<std::string>{"median", "low", "high"}));
  EXPECT_EQ(keys_of(group["stepwise"][0]), (std::vector<std::string>{"from", "to", "mass"}));
  EXPECT_TRUE(json["groups"][1]["curve"].is_null());
  EXPECT_EQ(json["groups"][1]["stepwise"], Json::array());
  ASSERT_EQ(json["comparisons"].size(), 1U);
  EXPECT_EQ(keys_of(json["comparisons"][0]),
            (std::vector<std::string>{"a", "b", "difference", "low", "high", "p_value",
                                      "p_adjusted", "curve_p_value"}));
  EXPECT_EQ(json["comparisons"][0]["difference"], 0.6);
  EXPECT_TRUE(json["comparisons"][0]["curve_p_value"].is_null());
}

// Ritz, Pipper & Streibig 2013, European J. Agronomy 45:1-6, from the file to the answer.
TEST_F(GerminationCommand, FitsPublishedCounts) {
  std::ifstream in(fmt::format("{}/germination/chickweed-hours.csv", CONELINE_TEST_DATA));
  const std::string text(std::istreambuf_iterator<char>(in), {});
  const auto json = Json::parse(run(text, {"--json"}).out);
  const auto& curve = json["groups"][0]["curve"];
  EXPECT_EQ(curve["family"], "log-logistic");
  EXPECT_NEAR(curve["germinable"].get<double>(), 0.2001092, 5e-8);
  EXPECT_NEAR(curve["shape"].get<double>(), 20.76739, 5e-6);
  EXPECT_NEAR(curve["scale"].get<double>(), 196.0530, 5e-5);
  EXPECT_NEAR(curve["log_likelihood"].get<double>(), -188.1719, 5e-5);
  EXPECT_EQ(
      Json::parse(run(text, {"--json", "--family", "weibull"}).out)["groups"][0]["curve"]["family"],
      "weibull");
  EXPECT_EQ(run(text, {"--family", "gamma"}).status, 2);
}

TEST_F(GerminationCommand, PrintsNothingOnAFault) {
  const auto ran = run("group,tray,sown,day,germinated\nA,1,5,7,6\n", {"--json"});
  EXPECT_EQ(ran.status, 1);
  EXPECT_EQ(ran.out, "");
  EXPECT_NE(ran.err.find("line 2, column germinated: 6 germinated of 5 sown: 1 too many"),
            std::string::npos)
      << ran.err;
}

TEST_F(GerminationCommand, RefusesAWrongCommandLine) {
  EXPECT_EQ(run(two_trays, {"--confidence", "1"}).status, 2);
  EXPECT_EQ(run(two_trays, {"--confidence", "0"}).status, 2);
  EXPECT_EQ(run(two_trays, {"--certainty", "0.9"}).status, 2);
}

TEST_F(GerminationCommand, ShowsGroupsWithTheirTraysBeneath) {
  const auto ran = run(two_trays, {});
  ASSERT_EQ(ran.status, 0) << ran.err;
  EXPECT_LT(ran.out.find("\nA "), ran.out.find("\n  1 "));
  EXPECT_LT(ran.out.find("\n  1 "), ran.out.find("\nB "));
}

} // namespace
} // namespace coneline::commands
