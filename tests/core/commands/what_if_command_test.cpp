// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/commands/run_command.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace coneline::commands {
namespace {

/// The invented nursery of the demonstration.
class WhatIfCommand : public RunsCommands {
 protected:
  WhatIfCommand() {
    EXPECT_EQ(run({"import", "--book", book_, CONELINE_TEST_DATA "/../../demo/season"}), 0)
        << err_.str();
  }
  int what_if(const std::vector<std::string>& more, const char* verb = "what-if") {
    std::vector<std::string> arguments{verb,       "--book", book_,    "--as-of", "2026-11-20",
                                       "--months", "24",     "--runs", "60"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return run(arguments);
  }
  static double years(const Json& answer, const std::string& what, const std::string& side) {
    double sum = 0;
    for (const auto& series : answer["series"])
      if (series["what"] == what)
        for (const auto& year : series["years"])
          sum += year[side]["mean"].get<double>();
    return sum;
  }

  tests::Scratch scratch_;
  std::string book_ = scratch_.at("book").string();
};

TEST_F(WhatIfCommand, ShowsBothPlansAndWritesNothing) {
  const auto csv = scratch_.at("what-if.csv").string();
  ASSERT_EQ(what_if({"--survival", "Cycas revoluta:2=0.5", "--csv", csv}), 0) << err_.str();
  for (const auto* text : {"invented data", "50 % live instead of 93 %", "difference",
                           "Nothing is written", "What changes most"})
    EXPECT_NE(out_.str().find(text), std::string::npos) << text << '\n' << out_.str();
  std::ifstream file(csv);
  std::string header;
  std::getline(file, header);
  EXPECT_EQ(header.substr(0, 29), "period,what,name,present_low,");
  ASSERT_EQ(what_if({"--survival", "Cycas revoluta:2=0.93", "--json"}), 0);
  EXPECT_EQ(years(json(), "plants into", "difference"), 0); // still 0.93 in the book
}

TEST_F(WhatIfCommand, AcceptWritesWhatWasSupposedAndThePlanIsThatThen) {
  const std::vector<std::string> changes{"--survival",
                                         "Cycas revoluta:2=0.7",
                                         "--place",
                                         "New bench:part shade:6000x1500",
                                         "--recipe",
                                         "Grit:pumice=3,bark=1",
                                         "--mix",
                                         "Deep pot 1 L=Grit",
                                         "--potting-months",
                                         "3-5,9",
                                         "--sold-after",
                                         "4",
                                         "--accept",
                                         "--json"};
  ASSERT_EQ(what_if(changes), 0) << err_.str();
  const auto accepted = json();
  EXPECT_TRUE(accepted["not_written"].empty());
  EXPECT_LT(years(accepted, "plants into", "difference"), 0);
  ASSERT_EQ(what_if({"--json"}, "forecast"), 0) << err_.str();
  const auto now = json();
  int compared = 0;
  for (const auto& series : accepted["series"]) {
    const Json* same = nullptr;
    for (const auto& one : now["series"])
      if (one["what"] == series["what"] && one["name"] == series["name"])
        same = &one;
    for (std::size_t month = 0; month < 24; ++month) {
      const auto& supposed = series["months"][month]["supposed"];
      const double mean = same == nullptr ? 0 : (*same)["mean"][month].get<double>();
      const double high = same == nullptr ? 0 : (*same)["high"][month].get<double>();
      EXPECT_NEAR(supposed["mean"].get<double>(), mean, 1e-6 * (1 + mean));
      EXPECT_EQ(supposed["high"].get<double>(), high);
      ++compared;
    }
  }
  EXPECT_GT(compared, 400);
  EXPECT_EQ(run({"check", "--book", book_}), 0);
}

TEST_F(WhatIfCommand, ConesSowingsAndPaceAreNoRecords) {
  EXPECT_EQ(what_if({"--no-cones", "--accept"}), 2);
  EXPECT_EQ(out_.str(), "");
  EXPECT_NE(err_.str().find("the cones that were seen"), std::string::npos) << err_.str();
  ASSERT_EQ(what_if({"--no-cones", "--json"}), 0) << err_.str();
  EXPECT_LT(years(json(), "plants into", "difference"), 0);
  EXPECT_EQ(json()["not_written"].size(), 1U);
  ASSERT_EQ(what_if({"--sow", "Cycas revoluta:400:2027-03", "--sooner", "Heated bench=0.7",
                     "--without", "Cool bench", "--json"}),
            0)
      << err_.str();
  EXPECT_EQ(json()["supposed"].size(), 3U);
  EXPECT_GT(years(json(), "plants into", "difference"), 0);
}

TEST_F(WhatIfCommand, ForecastCountsInWhatWillBeSownWhenAsked) {
  const auto into = [&](const std::vector<std::string>& more) {
    auto arguments = more;
    arguments.emplace_back("--json");
    EXPECT_EQ(what_if(arguments, "forecast"), 0) << err_.str();
    double sum = 0;
    const auto answer = json();
    for (const auto& series : answer["series"])
      if (series["what"] == "plants into")
        for (const auto& mean : series["mean"])
          sum += mean.get<double>();
    return sum;
  };
  const double present = into({});
  EXPECT_GT(into({"--sow-seed"}), present);
  EXPECT_GT(into({"--sow-cones"}), present);
  EXPECT_GT(into({"--sow", "Cycas revoluta:300:2027-01"}), present);
  EXPECT_DOUBLE_EQ(into({}), present);
  ASSERT_EQ(what_if({"--sow-seed", "--sow-cones"}, "forecast"), 0);
  EXPECT_NE(out_.str().find("seeds at hand that are judged filled"), std::string::npos);
}

TEST_F(WhatIfCommand, RefusesWhatIsNoChange) {
  for (const std::vector<std::string>& wrong : {std::vector<std::string>{},
                                                {"--survival", "Cycas revoluta:2"},
                                                {"--survival", "Cycas revoluta:9=0.5"},
                                                {"--survival", "Cycas revoluta:2=1.5"},
                                                {"--place", "New bench:part shade:6000"},
                                                {"--place", "New bench:gloom:6000x1500"},
                                                {"--place", "Heated bench:sun:6000x1500"},
                                                {"--without", "nowhere"},
                                                {"--mix", "Deep pot 1 L"},
                                                {"--mix", "Deep pot 1 L=no mix"},
                                                {"--recipe", "Grit:pumice"},
                                                {"--recipe", "Growing mix:Growing mix=1"},
                                                {"--sooner", "Cycas revoluta=0"},
                                                {"--sow", "Cycas revoluta:many:2027-03"},
                                                {"--sow", "Cycas revoluta:20:2017-03"},
                                                {"--potting-months", "13"},
                                                {"--sold-after", "-3"}}) {
    const auto status = what_if(wrong);
    EXPECT_TRUE(status == 1 || status == 2) << (wrong.empty() ? "" : wrong[1]);
    EXPECT_EQ(out_.str(), "");
    EXPECT_NE(err_.str(), "");
  }
}

} // namespace
} // namespace coneline::commands
