// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/pedigree.h"
#include "core/book/round.h"

#include <gtest/gtest.h>

namespace coneline::book {
namespace {

Plant plant(std::int64_t id, std::string name, std::optional<PlantId> mother = {},
            std::optional<PlantId> father = {}) {
  Plant made;
  made.id = {id};
  made.code = Code::of(Kind::plant, 17, id).value();
  made.name = std::move(name);
  made.seed_parent = mother;
  made.pollen_parent = father;
  return made;
}

TEST(Pedigree, ParentsAreFoundByPlaceAndOthersAreNotKnown) {
  const auto parents =
      pedigree_of({plant(2, "A"), plant(4, "B"), plant(7, "C", PlantId{4}, PlantId{2}),
                   plant(9, "D", PlantId{3}, PlantId{99})});
  ASSERT_EQ(parents.size(), 4U);
  EXPECT_FALSE(parents[0].mother || parents[0].father);
  EXPECT_EQ(parents[2].mother, 1U);
  EXPECT_EQ(parents[2].father, 0U);
  // 3 stands between two that are there, 99 behind the last.
  EXPECT_FALSE(parents[3].mother);
  EXPECT_FALSE(parents[3].father);
}

TEST(Pedigree, APlantThatIsItsOwnAncestorIsToldByTheWayRound) {
  const std::vector plants{plant(1, "Ada", PlantId{2}), plant(2, "", {}, PlantId{1}),
                           plant(3, "Outside")};
  const auto words = own_ancestor_in_words(plants, pedigree_of(plants));
  const auto ada = plants[0].code.text() + " (Ada)";
  const auto other = plants[1].code.text();
  EXPECT_TRUE(words == ada + " → " + other + " → " + ada ||
              words == other + " → " + ada + " → " + other)
      << words;
}

TEST(Pedigree, NobodyIsTheirOwnAncestorIsNoWords) {
  const std::vector plants{plant(1, "Ada"), plant(2, "Ben", PlantId{1})};
  EXPECT_EQ(own_ancestor_in_words(plants, pedigree_of(plants)), "");
}

TEST(Tapped, IsNoneOnlyWhereNothingWasTapped) {
  EXPECT_TRUE(Tapped{}.none());
  EXPECT_FALSE((Tapped{1, 0, 0}.none()));
  EXPECT_FALSE((Tapped{0, 1, 0}.none()));
  EXPECT_FALSE((Tapped{0, 0, 1}.none()));
  Tapped both{1, 2, 3};
  both += {10, 20, 30};
  EXPECT_EQ(both, (Tapped{11, 22, 33}));
}

} // namespace
} // namespace coneline::book
