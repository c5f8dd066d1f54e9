// SPDX-License-Identifier: GPL-3.0-or-later
// A harvest on the table through the command line, and what the book learned from it.
#include "tests/core/commands/run_command.h"
#include "tests/core/store/first_cone.h"

namespace coneline::commands {
namespace {

class TableCommands : public testing::Test {
 protected:
  TableCommands() {
    static_cast<void>(tests::make_first_cone(scratch.at("t.coneline"), first));
    book = " --book " + scratch.at("t.coneline").string();
    batch = first.batch.text();
  }
  Json run(const std::string& arguments) {
    const auto ran = run_command(arguments + book + " --json");
    EXPECT_EQ(ran.status, 0) << arguments << '\n' << ran.err;
    return ran.status == 0 ? ran.json() : Json();
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  std::string book;
  std::string batch;
};

TEST_F(TableCommands, TheTableAccountsForEverySeedAndSaysWhatIsNext) {
  run("clean " + batch + " --lost 20 --soak-days 2 --on 2026-02-05");
  run("water " + batch + " --on 2026-02-06");
  run("sort " + batch + " --test float --filled 400 --empty 80 --on 2026-02-07");
  const auto table = run("table " + batch + " --on 2026-02-08");
  EXPECT_EQ(table["counted"], 500);
  EXPECT_EQ(table["judged_filled"], 400);
  EXPECT_EQ(table["judged_empty"], 80);
  EXPECT_EQ(table["lost_in_cleaning"], 20);
  EXPECT_EQ(table["not_accounted_for"], 0);
  EXPECT_EQ(table["floated"]["filled"]["high"], 80);
  EXPECT_TRUE(table["floated"]["filled"]["estimate"].is_null());
  EXPECT_TRUE(table["decision"].is_null());
  EXPECT_NE(table["next"].get<std::string>().find("Cut some floaters"), std::string::npos);
  EXPECT_FALSE(table["cautions"].empty());
}

TEST_F(TableCommands, FiguresAreAskedOnceAndDecideAboutTheFloaters) {
  run("sort " + batch + " --test float --filled 400 --empty 100 --on 2026-02-07");
  const auto given = run("table " + batch + " --on 2026-02-08 --plant-worth 20 --seed-cost 1");
  EXPECT_FALSE(given["decision"].is_null()) << given["decision_told"];
  EXPECT_TRUE(run("table " + batch + " --on 2026-02-08")["decision"].is_null()) << "not kept";
  expect_refused("discard " + batch + " --count 10 --on 2026-02-08" + book, 1);
  EXPECT_EQ(run("stores --on 2026-02-08"), Json::array());
  const auto tests = run("float-test --on 2026-02-08");
  ASSERT_EQ(tests.size(), 1U);
  EXPECT_EQ(tests[0]["verdict"], "not known");
  expect_refused("float-test --accept" + book, 2);
  expect_refused("figures nonsense 3" + book, 2);
}

TEST_F(TableCommands, MoreThanThereIsIsRefused) {
  run("sort " + batch + " --test float --filled 400 --empty 100 --on 2026-02-07");
  expect_refused("open " + batch + " --opened 5 --filled 6 --on 2026-02-08" + book, 1);
  expect_refused("open " + batch + " --opened 401 --filled 6 --on 2026-02-08" + book, 1);
  expect_refused("table T999 " + book, 1);
  expect_refused("table " + batch + " --confidence x" + book, 2);
  EXPECT_EQ(run("table " + batch + " --on 2026-02-09")["judged_filled"], 400);
}

// Rogan & Gladen 1978, American Journal of Epidemiology 107:71-76: (apparent + Sp - 1)/(Se + Sp -
// 1).
TEST(ImperfectTestCommand, CorrectsATestThatErrs) {
  const auto ran = run_command(
      "imperfect-test --called-filled 60 --tested 100 --sensitivity 0.9 --specificity 0.8 --json");
  ASSERT_EQ(ran.status, 0) << ran.err;
  EXPECT_NEAR(ran.json()["share"].get<double>(), (0.6 + 0.8 - 1) / (0.9 + 0.8 - 1), 1e-12);
  expect_refused(
      "imperfect-test --called-filled 60 --tested 100 --sensitivity 0.5 --specificity 0.5", 1);
  expect_refused("imperfect-test --called-filled 60 --tested 100", 2);
  EXPECT_EQ(run_command("imperfect-test --cut 45,5,3,20 --uncut 130,50 --json").status, 0);
  expect_refused("imperfect-test --cut 45,5,3 --uncut 130,50", 2);
}

} // namespace
} // namespace coneline::commands
