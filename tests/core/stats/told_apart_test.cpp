// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/told_apart.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <set>

namespace coneline::stats {
namespace {

using Sets = std::vector<std::vector<std::size_t>>;

TEST(NotToldApart, AllTogetherWithoutADifference) {
  EXPECT_EQ(not_told_apart(3, {}), (Sets{{0, 1, 2}}));
  EXPECT_EQ(not_told_apart(0, {}), Sets{});
}

TEST(NotToldApart, OneMayStandBetweenTwo) {
  // Best and worst differ, the middle one from neither.
  EXPECT_EQ(not_told_apart(3, {{0, 2}}), (Sets{{0, 1}, {1, 2}}));
}

TEST(NotToldApart, AllApartStandAlone) {
  EXPECT_EQ(not_told_apart(3, {{0, 1}, {0, 2}, {1, 2}}), (Sets{{0}, {1}, {2}}));
}

RC_GTEST_PROP(NotToldApart, SharesASetExactlyWhenNotApart, ()) {
  const auto order = *rc::gen::inRange<std::size_t>(1, 9);
  std::set<std::pair<std::size_t, std::size_t>> apart;
  std::vector<Apart> list;
  for (std::size_t a = 0; a < order; ++a)
    for (std::size_t b = a + 1; b < order; ++b)
      if (*rc::gen::arbitrary<bool>()) {
        apart.emplace(a, b);
        list.push_back({a, b});
      }
  const auto sets = not_told_apart(order, list);
  for (std::size_t a = 0; a < order; ++a)
    for (std::size_t b = a; b < order; ++b) {
      const bool together = std::ranges::any_of(sets, [&](const auto& set) {
        return std::ranges::binary_search(set, a) && std::ranges::binary_search(set, b);
      });
      RC_ASSERT(together == !apart.contains({a, b}));
    }
}

} // namespace
} // namespace coneline::stats
