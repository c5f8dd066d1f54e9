// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/commands/run_command.h"

#include <gtest/gtest.h>

namespace coneline::commands {
namespace {

const std::string worked = "mix --pots 100 --litres 2 --parts bark=4,peat=3,sand=3";

TEST(MixCommand, GivesItsJsonDocument) {
  const auto json = run_command(worked + " --json").json();
  EXPECT_EQ(json.size(), 2U);
  EXPECT_DOUBLE_EQ(json["finished_litres"].get<double>(), 200);
  ASSERT_EQ(json["parts"].size(), 3U);
  EXPECT_EQ(json["parts"][0]["name"], "bark");
  EXPECT_EQ(json["parts"][2]["name"], "sand");
  EXPECT_NEAR(json["parts"][0]["litres"].get<double>(), 94.12, 0.005); // own
  EXPECT_NEAR(json["parts"][1]["litres"].get<double>(), 70.59, 0.005);
}

TEST(MixCommand, TakesShrinkLossAndRootBall) {
  const auto json = run_command("mix --pots 10 --litres 3 --parts pumice=1,moss=0 --shrink 0.2 "
                                "--loss 0.1 --rootball 1 --json")
                        .json();
  EXPECT_DOUBLE_EQ(json["finished_litres"].get<double>(), 22);
  EXPECT_DOUBLE_EQ(json["parts"][0]["litres"].get<double>(), 27.5);
  EXPECT_EQ(json["parts"][1]["litres"], 0);
}

TEST(MixCommand, TheTableWarnsOfTheDust) {
  const auto ran = run_command(worked);
  EXPECT_NE(ran.out.find("94.1"), std::string::npos);
  EXPECT_NE(ran.out.find("mask"), std::string::npos);
  EXPECT_NE(ran.out.find("Legionella"), std::string::npos);
}

TEST(MixCommand, WhatCannotBeIsTheInputsFault) {
  expect_refused("mix --pots 10 --litres 2 --parts bark=1 --rootball 2.5", 1);
  expect_refused("mix --pots 10 --litres -2 --parts bark=1", 1);
  expect_refused("mix --pots 0 --litres 2 --parts bark=1", 1);
  expect_refused("mix --pots 10 --litres 2 --parts bark=0,peat=0", 1);
  expect_refused("mix --pots 10 --litres 2 --parts bark=1,peat=-1", 1);
  expect_refused("mix --pots 10 --litres 2 --parts bark=1,bark=1", 1);
  expect_refused(worked + " --shrink 1", 1);
  expect_refused(worked + " --shrink -0.1", 1);
  expect_refused(worked + " --loss -0.1", 1);
}

TEST(MixCommand, WhatIsNotOfTheFormIsTheCommandLinesFault) {
  for (const auto* parts : {"bark", "bark=", "=4", "bark=much", "bark=4,,sand=3", "bark:4",
                            "bark=4=3", "b\xFFrk=4", "bark\xFF"})
    expect_refused("mix --pots 10 --litres 2 --parts " + std::string(parts), 2);
  expect_refused("mix --pots 10 --litres 2", 2);
  expect_refused(worked + " --shrink 15%", 2);
}

} // namespace
} // namespace coneline::commands
