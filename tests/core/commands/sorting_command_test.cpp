// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/commands/run_command.h"

#include <gtest/gtest.h>

namespace coneline::commands {
namespace {

const std::string worked = "sorting --sank 180 --floated 60 --opened-sank 10:9 "
                           "--opened-floated 10:0";

TEST(SortingCommand, GivesItsJsonDocument) {
  const auto ran = run_command(worked + " --json");
  ASSERT_EQ(ran.status, 0);
  EXPECT_EQ(ran.err, "");
  const auto json = ran.json();
  EXPECT_EQ(json["confidence"], 0.95);
  EXPECT_EQ(json["sank"], Json::parse(R"({"seeds":180,"opened":10,"filled_opened":9,
      "filled":{"estimate":162.0,"low":102,"high":179}})"));
  EXPECT_EQ(json["floated"], Json::parse(R"({"seeds":60,"opened":10,"filled_opened":0,
      "filled":{"estimate":0.0,"low":0,"high":17}})"));
  const auto& batch = json["batch"];
  EXPECT_EQ(batch["seeds"], 240);
  EXPECT_EQ(batch["filled"]["estimate"], 162.0);
  EXPECT_EQ(batch["filled_left"]["estimate"], 153.0);
  for (const auto* end : {"low", "high"})
    EXPECT_EQ(batch["filled_left"][end].get<int>(), batch["filled"][end].get<int>() - 9);
  std::string keys;
  for (const auto& [key, value] : json.items())
    keys += key + " ";
  for (const auto& [key, value] : batch.items())
    keys += key + " ";
  EXPECT_EQ(keys, "confidence sank floated batch seeds filled filled_left ");
}

TEST(SortingCommand, WhatDoesNotExistIsNull) {
  const auto json = run_command("sorting --sank 20 --floated 0 --json").json();
  EXPECT_TRUE(json["sank"]["filled"]["estimate"].is_null());
  EXPECT_EQ(json["sank"]["filled"]["low"], 0);
  EXPECT_EQ(json["sank"]["filled"]["high"], 20);
  EXPECT_EQ(json["floated"]["filled"]["estimate"], 0);
  EXPECT_EQ(json["floated"]["filled"]["high"], 0);
  EXPECT_TRUE(json["batch"]["filled"]["estimate"].is_null());
  EXPECT_TRUE(json["batch"]["filled_left"]["estimate"].is_null());
  EXPECT_EQ(json["batch"]["filled"]["high"], 20);
}

TEST(SortingCommand, TheConfidenceCounts) {
  const auto json = run_command(worked + " --confidence 0.8 --json").json();
  EXPECT_EQ(json["confidence"], 0.8);
  EXPECT_GT(json["sank"]["filled"]["low"].get<int>(), 102);
}

TEST(SortingCommand, TheTableWarnsOfThePoison) {
  const auto ran = run_command(worked);
  EXPECT_EQ(ran.status, 0);
  EXPECT_NE(ran.out.find("floated"), std::string::npos);
  EXPECT_NE(ran.out.find("162.0"), std::string::npos);
  EXPECT_NE(ran.out.find("gloves"), std::string::npos);
  EXPECT_NE(run_command("sorting --sank 20 --floated 3").out.find("any number"), std::string::npos);
}

TEST(SortingCommand, WhatCannotBeIsTheInputsFault) {
  expect_refused("sorting --sank 180 --floated 60 --opened-sank 10:12 --json", 1);
  expect_refused("sorting --sank 5 --floated 60 --opened-sank 6:1", 1);
  expect_refused("sorting --sank 5 --floated 60 --opened-floated 61:1", 1);
  expect_refused("sorting --sank -5 --floated 60", 1);
  expect_refused("sorting --sank 5 --floated 60 --opened-sank -1:0", 1);
  expect_refused("sorting --sank 99999999999999999999 --floated 60", 1);
  for (const auto* confidence : {"0", "1", "95", "-0.5"})
    expect_refused(worked + " --confidence " + confidence, 1);
  EXPECT_NE(run_command("sorting --sank 9 --floated 0 --opened-sank 2:5").err.find("3 too many"),
            std::string::npos);
}

TEST(SortingCommand, WhatIsNotOfTheFormIsTheCommandLinesFault) {
  for (const auto* opened : {"10", "10:", ":9", "ten:9", "10:9:8", "10.5:9", "10/9"})
    expect_refused("sorting --sank 180 --floated 60 --opened-sank " + std::string(opened), 2);
  expect_refused("sorting --sank 180", 2);
  expect_refused("sorting --sank 180 --floated 0x10", 2);
  expect_refused("sorting --sank 1.5 --floated 6", 2);
  expect_refused("sorting --sank 180 --floated 60 --confidence high", 2);
  expect_refused("sorting --sank 180 --floated 60 --drowned 2", 2);
}

} // namespace
} // namespace coneline::commands
