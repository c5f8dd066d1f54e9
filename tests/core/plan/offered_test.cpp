// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/offered.h"

#include <gtest/gtest.h>

namespace coneline::plan {
namespace {

using book::Light;
using book::PlaceKind;

book::Place place(std::int64_t id, PlaceKind kind, std::int64_t within, double length, double width,
                  Light light = Light::part_shade) {
  book::Place place;
  place.id = {id};
  place.kind = kind;
  if (within > 0)
    place.within = book::PlaceId{within};
  place.length_mm = length;
  place.width_mm = width;
  place.light = light;
  return place;
}

TEST(Offered, AddsBenchesByLight) {
  const auto offered = offered_square_metres(
      {place(1, PlaceKind::bench, 0, 2000, 1000), place(2, PlaceKind::bench, 0, 3000, 1000),
       place(3, PlaceKind::bench, 0, 1000, 1000, Light::sun)});
  EXPECT_DOUBLE_EQ(offered.at(Light::part_shade), 5);
  EXPECT_DOUBLE_EQ(offered.at(Light::sun), 1);
}

TEST(Offered, ABenchOffersWhatItsBaysDoNotTake) {
  const auto offered = offered_square_metres({place(1, PlaceKind::bench, 0, 3000, 1000),
                                              place(2, PlaceKind::bay, 1, 1000, 1000, Light::shade),
                                              place(3, PlaceKind::bay, 1, 1000, 1000)});
  EXPECT_DOUBLE_EQ(offered.at(Light::shade), 1);
  EXPECT_DOUBLE_EQ(offered.at(Light::part_shade), 2); // a bay and the third left of the bench
}

TEST(Offered, BaysMeasuredLargerThanTheirBenchLeaveItNothing) {
  const auto offered = offered_square_metres(
      {place(1, PlaceKind::bench, 0, 1000, 1000), place(2, PlaceKind::bay, 1, 1100, 1000)});
  EXPECT_DOUBLE_EQ(offered.at(Light::part_shade), 1.1);
}

TEST(Offered, UnmeasuredBaysLeaveTheBenchWhole) {
  const auto offered = offered_square_metres(
      {place(1, PlaceKind::bench, 0, 2000, 1000), place(2, PlaceKind::bay, 1, 0, 0)});
  EXPECT_DOUBLE_EQ(offered.at(Light::part_shade), 2);
}

TEST(Offered, TheWalkwaysOfAHouseAreNoBench) {
  const auto offered = offered_square_metres(
      {place(1, PlaceKind::house, 0, 10000, 6000), place(2, PlaceKind::bench, 1, 3000, 1000),
       place(3, PlaceKind::house, 0, 4000, 1000)}); // plants stand on this one's floor
  EXPECT_DOUBLE_EQ(offered.at(Light::part_shade), 7);
}

TEST(Offered, HalfOfAHouseWithTwoAndThreeBenches) {
  // 38 × 60 ft with two benches of 2 × 60 and three of 6 × 50 ft: 1 140 of 2 280 ft², 50 %
  // (University of Arkansas, greenhouse management course: read).
  constexpr double foot = 304.8;
  std::vector<book::Place> places{place(1, PlaceKind::house, 0, 60 * foot, 38 * foot)};
  for (std::int64_t id = 2; id <= 3; ++id)
    places.push_back(place(id, PlaceKind::bench, 1, 60 * foot, 2 * foot));
  for (std::int64_t id = 4; id <= 6; ++id)
    places.push_back(place(id, PlaceKind::bench, 1, 50 * foot, 6 * foot));
  const auto offered = offered_square_metres(places);
  constexpr double square_foot = foot * foot / 1e6;
  EXPECT_NEAR(offered.at(Light::part_shade) / square_foot, 1140, 1e-9);
  EXPECT_NEAR(offered.at(Light::part_shade) / places.front().square_metres(), 0.5, 1e-12);
}

} // namespace
} // namespace coneline::plan
