// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/replicates.h"

#include <gtest/gtest.h>

namespace coneline::stats {
namespace {

// US Federal Seed Act regulations, 7 CFR 201.55(a): averages 71-99 read, 51-70 from memory.
TEST(Replicates, PublishedLimits) {
  const int known[][3] = {{99, 99, 5},  {98, 98, 6},  {97, 97, 7},  {96, 96, 8},  {95, 95, 9},
                          {93, 94, 10}, {92, 92, 11}, {91, 91, 11}, {90, 90, 12}, {89, 89, 12},
                          {88, 88, 13}, {87, 87, 13}, {84, 86, 14}, {81, 83, 15}, {78, 80, 16},
                          {76, 77, 17}, {73, 75, 17}, {71, 72, 18}, {67, 70, 18}, {56, 66, 19},
                          {51, 55, 20}};
  for (const auto& [from, to, limit] : known)
    for (int average = from; average <= to; ++average) {
      EXPECT_EQ(largest_range(average), limit) << average;
      EXPECT_EQ(largest_range(101 - average), limit) << 101 - average;
    }
  for (const int average : {0, 1, 100})
    EXPECT_EQ(largest_range(average), std::nullopt);
}

// Limits by the table above.
TEST(Replicates, FourThatAgree) {
  const auto check = check_replicates({82, 87, 90, 78}).value();
  EXPECT_EQ(check.average, 84);
  EXPECT_EQ(check.limit, 14);
  EXPECT_EQ(check.range, 12);
  EXPECT_EQ(check.agree, true);
}

TEST(Replicates, FourThatDiffer) {
  EXPECT_EQ(check_replicates({84, 84, 76, 91})->agree, false);
  EXPECT_EQ(check_replicates({84, 84, 77, 91})->agree, true);
}

TEST(Replicates, HalvesRoundUp) {
  EXPECT_EQ(check_replicates({80, 80, 81, 81})->average, 81);
  EXPECT_EQ(check_replicates({80, 80, 80, 81})->average, 80);
  EXPECT_EQ(check_replicates({80, 81, 81, 81})->average, 81);
}

TEST(Replicates, NoLimitIsNoVerdict) {
  const auto check = check_replicates({100, 100, 100, 99}).value();
  EXPECT_EQ(check.average, 100);
  EXPECT_EQ(check.agree, std::nullopt);
}

TEST(Replicates, RefusesWhatIsNoPercentage) {
  EXPECT_FALSE(check_replicates({82, 87, 101, 78}));
  EXPECT_FALSE(check_replicates({82, 87, -1, 78}));
}

} // namespace
} // namespace coneline::stats
