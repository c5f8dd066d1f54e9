// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/commands/run_command.h"

#include <gtest/gtest.h>

namespace coneline::commands {
namespace {

const std::string bench = "space --length 3048 --width 3048 --pot 152.4";

// A real 10 x 10 ft bench with 6-inch pots.
TEST(SpaceCommand, GivesItsJsonDocument) {
  const auto square = run_command(bench + " --json").json();
  EXPECT_EQ(square.size(), 2U);
  EXPECT_EQ(square["pots"], 400);
  EXPECT_NEAR(square["per_square_metre"].get<double>(), 400 / (3.048 * 3.048), 1e-9);
  EXPECT_EQ(run_command(bench + " --pattern square --json").json(), square);
  EXPECT_EQ(run_command(bench + " --pattern staggered --json").json()["pots"], 429);
  EXPECT_EQ(run_command(bench + " --gap 0.1 --json").json()["pots"], 361);
}

TEST(SpaceCommand, SaysHowTheRowsRun) {
  EXPECT_NE(run_command(bench).out.find("20 of 20"), std::string::npos);
  EXPECT_NE(run_command(bench + " --pattern staggered").out.find("22, with 20 and 19 in turn"),
            std::string::npos);
}

TEST(SpaceCommand, APotLargerThanTheBenchIsAnAnswer) {
  const auto ran = run_command("space --length 100 --width 100 --pot 101 --json");
  EXPECT_EQ(ran.status, 0);
  EXPECT_EQ(ran.json()["pots"], 0);
  EXPECT_EQ(ran.json()["per_square_metre"], 0);
  EXPECT_NE(run_command("space --length 100 --width 100 --pot 101").out.find("larger"),
            std::string::npos);
}

TEST(SpaceCommand, WhatCannotBeIsTheInputsFault) {
  expect_refused("space --length 0 --width 100 --pot 10", 1);
  expect_refused("space --length 100 --width -100 --pot 10", 1);
  expect_refused("space --length 100 --width 100 --pot 0", 1);
  expect_refused("space --length 100 --width 100 --pot 10 --gap -1", 1);
  expect_refused("space --length 1e300 --width 100 --pot 10", 1);
}

TEST(SpaceCommand, WhatIsNotOfTheFormIsTheCommandLinesFault) {
  expect_refused("space --length 100 --width 100", 2);
  expect_refused("space --length long --width 100 --pot 10", 2);
  expect_refused(bench + " --pattern hexagon", 2);
  expect_refused(bench + " --pattern", 2);
}

} // namespace
} // namespace coneline::commands
