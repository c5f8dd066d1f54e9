// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/commands/run_command.h"

#include <gtest/gtest.h>

namespace coneline::commands {
namespace {

TEST(SowingCommand, GivesItsJsonDocument) {
  EXPECT_EQ(run_command("sowing --plants 100 --stages 0.75,0.8,0.9 --json").json(),
            Json::parse(R"({"expected":186,"assured":207})"));
  EXPECT_EQ(run_command("sowing --plants 100 --stages 0.6 --assurance 0.9 --json").json(),
            Json::parse(R"({"expected":167,"assured":180})"));
}

TEST(SowingCommand, SaysBothInWords) {
  const auto ran = run_command("sowing --plants 100 --stages 0.6");
  EXPECT_EQ(ran.status, 0);
  EXPECT_NE(ran.out.find("185"), std::string::npos);
  EXPECT_NE(ran.out.find("167"), std::string::npos);
}

TEST(SowingCommand, WhatCannotBeIsTheInputsFault) {
  for (const auto* stages : {"0", "0.5,0", "1.2", "-0.5", "0.5,80"})
    expect_refused("sowing --plants 100 --stages " + std::string(stages), 1);
  expect_refused("sowing --plants 0 --stages 0.5", 1);
  expect_refused("sowing --plants -3 --stages 0.5", 1);
  expect_refused("sowing --plants 99999999999999999999 --stages 0.5", 1);
  expect_refused("sowing --plants 100 --stages 0.5 --assurance 0", 1);
  expect_refused("sowing --plants 100 --stages 0.5 --assurance 1", 1);
}

TEST(SowingCommand, WhatIsNotOfTheFormIsTheCommandLinesFault) {
  for (const auto* stages : {"half", "0.5,,0.5", "0.5,", "0.5;0.6", "nan", "inf"})
    expect_refused("sowing --plants 100 --stages " + std::string(stages), 2);
  expect_refused("sowing --plants 100", 2);
  expect_refused("sowing --plants 1.5 --stages 0.5", 2);
}

} // namespace
} // namespace coneline::commands
