// SPDX-License-Identifier: GPL-3.0-or-later
// What the season plan keeps in the book: entered, shown, reckoned with, taken out again.
#include "tests/core/commands/run_command.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace coneline::commands {
namespace {

/// The invented nursery of the demonstration.
class PlanRecords : public RunsCommands {
 protected:
  PlanRecords() {
    EXPECT_EQ(run({"import", CONELINE_TEST_DATA "/../../demo/season"}), 0) << err_.str();
  }
  int run(std::vector<std::string> arguments) {
    arguments.insert(arguments.end(), {"--book", book_});
    return RunsCommands::run(std::move(arguments));
  }
  int plan(std::vector<std::string> arguments) {
    arguments.insert(arguments.end(), {"--as-of", "2026-11-20", "--runs", "100", "--json"});
    return run(std::move(arguments));
  }
  [[nodiscard]] std::string a_lot_on(const std::string& place, Json placing) const {
    for (const auto& lot : placing["benches"])
      if (lot["places"][0] == place)
        return lot["lot"];
    return "";
  }

  tests::Scratch scratch_;
  std::string book_ = scratch_.at("book").string();
};

TEST_F(PlanRecords, OffersAndGoodsAreReckonedWith) {
  EXPECT_EQ(run({"enter", "offer", "coarse perlite", "Mill", "--litres", "100", "--price", "15",
                 "--lead-days", "3"}),
            0)
      << err_.str();
  EXPECT_EQ(run({"enter", "offer", "peat", "Mill", "--form", "bale", "--litres", "100",
                 "--expansion", "2.2", "--price", "24"}),
            0);
  EXPECT_EQ(run({"enter", "offer", "coarse sand", "Mill", "--litres", "15", "--price", "4.05"}), 0);
  ASSERT_EQ(plan({"order"}), 0) << err_.str();
  const double whole = json()["cents"];
  EXPECT_GT(whole, 0);
  EXPECT_EQ(run({"enter", "good", "coarse perlite", "--on-hand", "100000"}), 0);
  ASSERT_EQ(plan({"order"}), 0) << err_.str();
  EXPECT_LT(json()["cents"], whole);
  ASSERT_EQ(run({"offers", "--json"}), 0);
  EXPECT_EQ(json()["offers"].size(), 3U);
  EXPECT_EQ(json()["offers"][2]["cents"], 405);
  EXPECT_EQ(json()["goods"][0]["on_hand"], 100000);
  // The same again is a new price; what is struck is gone.
  EXPECT_EQ(run({"enter", "offer", "coarse sand", "Mill", "--litres", "15", "--price", "5"}), 0);
  EXPECT_EQ(run({"strike-offer", "peat", "Mill"}), 0);
  ASSERT_EQ(run({"offers", "--json"}), 0);
  EXPECT_EQ(json()["offers"].size(), 2U);
  EXPECT_EQ(json()["offers"][1]["cents"], 500);
  EXPECT_EQ(run({"strike-offer", "peat", "Mill"}), 1);
}

TEST_F(PlanRecords, AFileOfOffersComesInWholeOrNotAtAll) {
  const auto file = scratch_.at("offers.csv").string();
  std::ofstream(file) << "good,supplier,form,litres,cents\npeat,Mill,bag,70,900\n"
                         "peat,Mill,sack,70,900\n";
  EXPECT_EQ(run({"take-in-offers", file}), 1);
  EXPECT_NE(err_.str().find("line 3, column form"), std::string::npos) << err_.str();
  ASSERT_EQ(run({"offers", "--json"}), 0);
  EXPECT_TRUE(json()["offers"].empty());
  std::ofstream(file) << "good,supplier,form,litres,cents\npeat,Mill,bag,70,900\n";
  EXPECT_EQ(run({"take-in-offers", file}), 0);
  ASSERT_EQ(run({"offers", "--json"}), 0);
  EXPECT_EQ(json()["offers"].size(), 1U);
}

TEST_F(PlanRecords, RefuseWhatCannotBe) {
  const auto refused = [&](std::vector<std::string> arguments) {
    EXPECT_EQ(run(std::move(arguments)), 1) << out_.str();
    EXPECT_EQ(out_.str(), "");
    return err_.str();
  };
  EXPECT_NE(refused({"enter", "offer", "peat", "Mill", "--litres", "0", "--price", "1"})
                .find("0 litres in a pack"),
            std::string::npos);
  EXPECT_EQ(run({"enter", "offer", "peat", "Mill", "--litres", "nan", "--price", "1"}), 2);
  refused({"enter", "offer", "peat", "Mill", "--litres", "70", "--price", "-1"});
  refused({"enter", "offer", "peat", "", "--litres", "70", "--price", "1"});
  refused({"enter", "offer", "peat", "Mill", "--litres", "70", "--price", "1", "--form", "sack"});
  refused({"enter", "good", "peat", "--on-hand", "-1"});
  refused({"enter", "good", "peat", "--keeps", "0"});
  refused({"enter", "limits", "nowhere", "--bears", "50"});
  refused({"enter", "limits", "Cool bench", "--bears", "0"});
  refused({"enter", "limits", "Cool bench", "--frost", "warm"});
}

TEST_F(PlanRecords, PinsHoldALotWhereItIs) {
  ASSERT_EQ(plan({"placing", "--seconds", "2"}), 0) << err_.str();
  const auto placing = json();
  EXPECT_LE(placing["bound"], placing["cost"].get<double>() + 1e-6);
  ASSERT_FALSE(placing["taken"].empty());
  for (const auto& [place, taken] : placing["taken"].items())
    for (const auto& share : taken)
      EXPECT_LE(share, 1 + 1e-6) << place;
  const auto lot = a_lot_on("Heated bench", placing);
  ASSERT_NE(lot, "");
  EXPECT_EQ(run({"pin", lot, "Cool bench"}), 0) << err_.str();
  ASSERT_EQ(plan({"placing", "--seconds", "2"}), 0) << err_.str();
  const auto placed = json();
  int rows = 0;
  for (const auto& one : placed["benches"])
    if (one["lot"] == lot) {
      EXPECT_EQ(one["places"][0], "Cool bench");
      ++rows;
    }
  EXPECT_GE(rows, 1) << lot;
  EXPECT_EQ(run({"pin", lot, "Glasshouse"}), 1);
  EXPECT_NE(err_.str().find("has no size"), std::string::npos) << err_.str();
  EXPECT_EQ(run({"pin", lot, "nowhere"}), 1);
  EXPECT_EQ(run({"unpin", lot}), 0);
  EXPECT_EQ(run({"unpin", lot}), 1);
  EXPECT_EQ(plan({"placing", "--pin", lot}), 2);
  EXPECT_EQ(plan({"placing", "--pin", lot + "=nowhere"}), 2);
}

TEST_F(PlanRecords, TargetsShowWhereTheyWantTheSame) {
  ASSERT_EQ(run({"line", "--json"}), 0);
  ASSERT_EQ(plan({"forecast", "--months", "24"}), 0) << err_.str();
  std::string cross;
  const auto forecast = json();
  for (const auto& series : forecast["series"])
    if (series["what"] == "ready" || series["what"] == "plants into")
      if (series["what"] == "ready")
        cross = series["name"];
  ASSERT_NE(cross, "");
  const auto enter = [&](const std::string& plants) {
    return run({"enter", "target", "--cross", cross, "--pot", "Deep pot 1 L", "--plants", plants,
                "--by", "2028-10", "--as-of", "2026-11-20"});
  };
  EXPECT_EQ(enter("5000"), 0) << err_.str();
  EXPECT_EQ(enter("3000"), 0);
  EXPECT_EQ(enter("0"), 1);
  ASSERT_EQ(plan({"targets"}), 0) << err_.str();
  const auto told = json();
  ASSERT_EQ(told["targets"].size(), 2U);
  ASSERT_FALSE(told["conflicts"].empty());
  EXPECT_EQ(told["conflicts"][0]["of"], "seed");
  EXPECT_GT(told["conflicts"][0]["wanted"], told["conflicts"][0]["there"]);
  EXPECT_NE(told["conflicts"][0]["told"].get<std::string>().find("2 targets of"),
            std::string::npos);
  EXPECT_EQ(run({"strike-target", "1"}), 0);
  EXPECT_EQ(run({"strike-target", "1"}), 1);
  ASSERT_EQ(plan({"targets"}), 0);
  EXPECT_EQ(json()["targets"].size(), 1U);
}

} // namespace
} // namespace coneline::commands
