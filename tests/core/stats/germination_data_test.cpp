// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_data.h"

#include <gtest/gtest.h>

namespace coneline::stats {
namespace {

TEST(GerminationData, SoundTraysHaveNoFaults) {
  EXPECT_TRUE(faults_of({"A", "1", 10, {{0, 0, 0}, {7.5, 4, 1}, {14, 5, 0}}}).empty());
  EXPECT_TRUE(faults_of({"A", "1", 0, {}}).empty());
}

struct Unsound {
  Tray tray;
  std::optional<std::size_t> look;
  TrayColumn column;
  const char* said;
};

TEST(GerminationData, NamesLookColumnAndAmountOfEveryFault) {
  for (const auto& bad : {
           Unsound{{"A", "1", -1, {}}, std::nullopt, TrayColumn::sown, "-1 sown is below zero"},
           Unsound{{"A", "1", 1'000'001, {}}, std::nullopt, TrayColumn::sown, "no tray holds more"},
           Unsound{
               {"A", "1", 9, {{-2, 0, 0}}}, 0, TrayColumn::day, "day -2 lies before the sowing"},
           Unsound{{"A", "1", 9, {{3, 1, 0}, {3, 0, 0}}},
                   1,
                   TrayColumn::day,
                   "two inspections on day 3"},
           Unsound{{"A", "1", 9, {{3, -1, 0}}}, 0, TrayColumn::germinated, "-1 germinated"},
           Unsound{{"A", "1", 9, {{3, 0, -4}}}, 0, TrayColumn::removed, "-4 removed"},
           Unsound{{"A", "1", 9, {{0, 1, 0}}}, 0, TrayColumn::germinated, "germinated on day 0"},
           Unsound{{"A", "1", 9, {{3, 5, 0}, {4, 6, 0}}},
                   1,
                   TrayColumn::germinated,
                   "11 germinated of 9 sown: 2 too many"},
           Unsound{{"A", "1", 9, {{3, 5, 0}, {4, 2, 3}}},
                   1,
                   TrayColumn::removed,
                   "7 germinated and 3 removed of 9 sown: 1 too many"},
           Unsound{{"A", "1", 9, {{3, 5, 3}, {4, 2, 0}}},
                   1,
                   TrayColumn::germinated,
                   "7 germinated and 3 removed of 9 sown: 1 too many"},
       }) {
    const auto faults = faults_of(bad.tray);
    ASSERT_EQ(faults.size(), 1U) << bad.said;
    EXPECT_EQ(faults[0].look, bad.look) << bad.said;
    EXPECT_EQ(faults[0].column, bad.column) << bad.said;
    EXPECT_NE(faults[0].what.find(bad.said), std::string::npos) << faults[0].what;
  }
}

TEST(GerminationData, GroupsStandInTheOrderOfTheirFirstTray) {
  const std::vector<Tray> trays{{"B", "1", 1, {}}, {"A", "2", 1, {}}, {"B", "3", 1, {}}};
  const auto groups = groups_of(trays);
  ASSERT_EQ(groups.size(), 2U);
  EXPECT_EQ(groups[0].name, "B");
  EXPECT_EQ(groups[0].trays, (std::vector<std::size_t>{0, 2}));
  EXPECT_EQ(groups[1].name, "A");
}

} // namespace
} // namespace coneline::stats
