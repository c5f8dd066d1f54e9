// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/kinship.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <random>

namespace coneline::stats {
namespace {

using Plants = std::vector<Parents>;

// The values of the textbook, Falconer & Mackay, Introduction to Quantitative Genetics, 4th ed.
// 1996, chapter 5 (from memory).
class Textbook : public testing::Test {
 protected:
  // 0 1 founders; 2 3 full sibs of 0 x 1; 4 founder; 5 of 0 x 4, half sib of 2; 6 7 founders;
  // 8 of 2 x 6 and 9 of 3 x 7, first cousins; 10 of the full sibs 2 x 3; 11 of the cousins 8 x 9.
  Plants plants{{}, {}, {{0}, {1}}, {{0}, {1}}, {},         {{0}, {4}},
                {}, {}, {{2}, {6}}, {{3}, {7}}, {{2}, {3}}, {{8}, {9}}};
  Kinship kinship{plants};
};

TEST_F(Textbook, ParentAndChild) {
  EXPECT_DOUBLE_EQ(kinship.of(0, 2), 0.25);
}
TEST_F(Textbook, FullSibs) {
  EXPECT_DOUBLE_EQ(kinship.of(2, 3), 0.25);
}
TEST_F(Textbook, HalfSibs) {
  EXPECT_DOUBLE_EQ(kinship.of(2, 5), 0.125);
}
TEST_F(Textbook, FirstCousins) {
  EXPECT_DOUBLE_EQ(kinship.of(8, 9), 0.0625);
}
TEST_F(Textbook, OffspringOfFullSibsIsInbred) {
  EXPECT_DOUBLE_EQ(kinship.inbreeding(10), 0.25);
  EXPECT_DOUBLE_EQ(kinship.of(10, 10), 0.625);
}
TEST_F(Textbook, OffspringOfFirstCousinsIsInbred) {
  EXPECT_DOUBLE_EQ(kinship.inbreeding(11), 0.0625);
}
TEST_F(Textbook, FoundersAreUnrelatedAndNotInbred) {
  EXPECT_DOUBLE_EQ(kinship.of(0, 1), 0);
  EXPECT_DOUBLE_EQ(kinship.of(0, 0), 0.5);
}

// Full-sib mating, generation after generation: F = 0, 1/4, 3/8, 1/2, 19/32 (the recurrence
// F(t) = (1 + 2 F(t-1) + F(t-2)) / 4 of the same chapter; from memory).
TEST(Kinship, RepeatedFullSibMating) {
  Plants plants{{}, {}};
  for (std::size_t pair = 0; pair < 5; ++pair)
    for (int sib = 0; sib < 2; ++sib)
      plants.push_back({{2 * pair}, {2 * pair + 1}});
  const Kinship kinship(plants);
  double before = 0;
  double last = 0;
  for (std::size_t pair = 2; pair < 6; ++pair) {
    const double next = (1 + 2 * last + before) / 4;
    EXPECT_DOUBLE_EQ(kinship.inbreeding(2 * pair), next);
    before = last;
    last = next;
  }
}

TEST(Kinship, ASelfedPlantIsHalfInbred) {
  EXPECT_DOUBLE_EQ(Kinship(Plants{{}, {{0}, {0}}}).inbreeding(1), 0.5);
}

TEST(Kinship, ParentsMayStandAfterTheirChildren) {
  const Kinship kinship(Plants{{{2}, {1}}, {}, {}});
  EXPECT_DOUBLE_EQ(kinship.of(0, 2), 0.25);
}

TEST(Kinship, AnUnknownParentIsRelatedToNobody) {
  const Kinship kinship(Plants{{}, {{0}, {}}, {{0}, {}}});
  EXPECT_DOUBLE_EQ(kinship.of(1, 2), 0.125);
  EXPECT_DOUBLE_EQ(kinship.inbreeding(1), 0);
}

TEST(Kinship, NamesTheWayFromAPlantBackToItself) {
  const Plants plants{{}, {{3}, {0}}, {{1}, {}}, {{0}, {2}}};
  const auto way = own_ancestor(plants);
  EXPECT_EQ(way, (std::vector<std::size_t>{1, 3, 2, 1}));
  EXPECT_THROW(static_cast<void>(Kinship(plants)), std::invalid_argument);
  EXPECT_EQ(own_ancestor({{{0}, {}}}), (std::vector<std::size_t>{0, 0}));
  EXPECT_TRUE(own_ancestor({{}, {{0}, {0}}}).empty());
}

// The second method: Wright's paths. f(x, y) = Σ over ancestors a and pairs of ways from x and
// from y up to a that share no plant but a: (1/2)^(steps of both + 1) · (1 + F(a)).
class Paths {
 public:
  explicit Paths(const Plants& plants) : plants_(plants) {}

  double of(std::size_t x, std::size_t y) const {
    if (x == y)
      return (1 + inbreeding(x)) / 2;
    double sum = 0;
    for (std::size_t a = 0; a < plants_.size(); ++a)
      for (const auto& one : ways(x, a))
        for (const auto& other : ways(y, a))
          if (apart(one, other))
            sum += std::pow(0.5, static_cast<double>(one.size() + other.size() - 1)) *
                   (1 + inbreeding(a));
    return sum;
  }
  double inbreeding(std::size_t x) const {
    const auto [mother, father] = plants_[x];
    return mother && father ? of(*mother, *father) : 0;
  }

 private:
  using Way = std::vector<std::size_t>;

  /// Every way up from x to a, both included. A plant with one parent in both places has two.
  std::vector<Way> ways(std::size_t x, std::size_t a) const {
    if (x == a)
      return {{x}};
    std::vector<Way> all;
    for (const auto& parent : {plants_[x].mother, plants_[x].father})
      if (parent)
        for (auto way : ways(*parent, a)) {
          way.insert(way.begin(), x);
          all.push_back(std::move(way));
        }
    return all;
  }
  static bool apart(const Way& one, const Way& other) {
    return std::all_of(one.begin(), one.end() - 1,
                       [&](auto plant) {
                         return std::find(other.begin(), other.end(), plant) == other.end();
                       }) &&
           std::find(other.begin(), other.end() - 1, one.back()) == other.end() - 1;
  }

  const Plants& plants_;
};

/// A pedigree in which each plant has parents from among those before it, or none, or one.
rc::Gen<Plants> pedigrees(std::size_t most) {
  return rc::gen::mapcat(rc::gen::inRange<std::size_t>(2, most + 1), [](std::size_t size) {
    return rc::gen::map(rc::gen::container<std::vector<unsigned>>(
                            2 * size, rc::gen::inRange<unsigned>(0, 1'000'000)),
                        [size](const std::vector<unsigned>& drawn) {
                          Plants plants(size);
                          for (std::size_t i = 2; i < size; ++i) {
                            const auto parent = [&](unsigned number) -> std::optional<std::size_t> {
                              if (number % 5 == 0)
                                return std::nullopt;
                              return number / 5 % i;
                            };
                            plants[i] = {parent(drawn[2 * i]), parent(drawn[2 * i + 1])};
                          }
                          return plants;
                        });
  });
}

RC_GTEST_PROP(KinshipProperty, AgreesWithCountingPaths, ()) {
  const auto plants = *pedigrees(9);
  const Kinship kinship(plants);
  const Paths paths(plants);
  for (std::size_t x = 0; x < plants.size(); ++x)
    for (std::size_t y = 0; y < plants.size(); ++y)
      RC_ASSERT(std::abs(kinship.of(x, y) - paths.of(x, y)) < 1e-12);
}

RC_GTEST_PROP(KinshipProperty, SharesOfFoundersAddUpAndMeanKinshipFollows, ()) {
  const auto plants = *pedigrees(12);
  const Kinship kinship(plants);
  std::vector<std::size_t> group(plants.size());
  for (std::size_t i = 0; i < group.size(); ++i)
    group[i] = i;
  const auto founders = founders_of(plants, kinship, group);
  double sum = founders.unnamed;
  for (const double share : founders.share)
    sum += share;
  RC_ASSERT(std::abs(sum - 1) < 1e-12);
  double mean = 0;
  for (const auto plant : group)
    mean += kinship.mean(plant, group) / static_cast<double>(group.size());
  RC_ASSERT(std::abs(founders.mean_kinship - mean) < 1e-12);
  RC_ASSERT(founders.effective >= founders.genome_equivalents - 1e-9);
}

// Founders that gave alike and whose genes were all handed on count in full.
TEST(Founders, OfUnrelatedPlantsAreAllOfThem) {
  const Plants plants{{}, {}, {}, {}};
  const auto founders = founders_of(plants, Kinship(plants), {0, 1, 2, 3});
  EXPECT_EQ(founders.named, 4U);
  EXPECT_DOUBLE_EQ(founders.effective, 4);
  EXPECT_DOUBLE_EQ(founders.genome_equivalents, 4);
}

TEST(Founders, OfTwoFullSibs) {
  const Plants plants{{}, {}, {{0}, {1}}, {{0}, {1}}};
  const auto founders = founders_of(plants, Kinship(plants), {2, 3});
  EXPECT_DOUBLE_EQ(founders.effective, 2);
  EXPECT_DOUBLE_EQ(founders.mean_kinship, (0.5 + 0.25) / 2);
  EXPECT_EQ(founders_behind(plants, 3), (std::vector<std::size_t>{0, 1}));
}

/// A third method, by chance: genes dropped through the pedigree many times.
TEST(Kinship, AgreesWithDroppingGenes) {
  const Plants plants{{},         {},         {{0}, {1}}, {{0}, {1}}, {},
                      {{2}, {4}}, {{3}, {2}}, {{5}, {6}}, {{7}, {0}}, {{8}, {6}}};
  constexpr int drops = 200'000;
  std::mt19937_64 chance(20261125);
  const auto one_of = [&](const std::array<int, 2>& genes) { return genes[chance() >> 63U]; };
  std::vector<double> alike(plants.size() * plants.size(), 0);
  std::vector<std::array<int, 2>> genes(plants.size());
  for (int drop = 0; drop < drops; ++drop) {
    for (std::size_t i = 0; i < plants.size(); ++i) {
      const int own = static_cast<int>(2 * i);
      genes[i] = {plants[i].mother ? one_of(genes[*plants[i].mother]) : own,
                  plants[i].father ? one_of(genes[*plants[i].father]) : own + 1};
    }
    for (std::size_t x = 0; x < plants.size(); ++x)
      for (std::size_t y = 0; y <= x; ++y)
        for (const int a : genes[x])
          for (const int b : genes[y])
            alike[x * plants.size() + y] += a == b ? 0.25 : 0;
  }
  const Kinship kinship(plants);
  for (std::size_t x = 0; x < plants.size(); ++x)
    for (std::size_t y = 0; y <= x; ++y)
      EXPECT_NEAR(alike[x * plants.size() + y] / drops, kinship.of(x, y), 0.005);
}

} // namespace
} // namespace coneline::stats
