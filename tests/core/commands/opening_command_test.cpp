// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/commands/run_command.h"

#include <gtest/gtest.h>

namespace coneline::commands {
namespace {

const std::string worked = "opening --seeds 300 --filled-at-least 15";

TEST(OpeningCommand, GivesItsJsonDocument) {
  EXPECT_EQ(run_command(worked + " --assurance 0.95 --json").json(), Json::parse(R"({"open":54})"));
  EXPECT_EQ(run_command(worked + " --json").json(), Json::parse(R"({"open":54})"));
}

TEST(OpeningCommand, WhatWasOpenedCounts) {
  EXPECT_EQ(run_command(worked + " --opened 10 --json").json(),
            Json::parse(R"({"open":54,"more":44})"));
  EXPECT_EQ(run_command(worked + " --opened 0 --json").json()["more"], 54);
}

TEST(OpeningCommand, TheTextWarnsOfThePoison) {
  const auto ran = run_command(worked);
  EXPECT_NE(ran.out.find("Cut 54"), std::string::npos);
  EXPECT_NE(ran.out.find("gloves"), std::string::npos);
}

TEST(OpeningCommand, WhatCannotBeIsTheInputsFault) {
  expect_refused("opening --seeds 300 --filled-at-least 0", 1);
  expect_refused("opening --seeds 300 --filled-at-least 301", 1);
  expect_refused(worked + " --assurance 0", 1);
  expect_refused(worked + " --assurance 1", 1);
  expect_refused(worked + " --opened 301", 1);
  expect_refused("opening --seeds 0 --filled-at-least 0", 1);
}

TEST(OpeningCommand, WhatIsNotOfTheFormIsTheCommandLinesFault) {
  expect_refused("opening --seeds 300", 2);
  expect_refused("opening --seeds many --filled-at-least 1", 2);
  expect_refused(worked + " --assurance 0,95", 2);
}

} // namespace
} // namespace coneline::commands
