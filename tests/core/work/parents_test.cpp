// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/parents.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

namespace coneline::work {
namespace {

class ParentsOfPlants : public testing::Test {
 protected:
  ParentsOfPlants() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {
    child = add(book::Sex::not_known);
    grandchild = add(book::Sex::female);
  }
  Code add(book::Sex sex) {
    return book
        .write([&](store::Writing& writing) -> Result<Code> {
          book::Plant plant;
          plant.code = writing.next_code(Kind::plant).value();
          plant.taxon = {1};
          plant.sex = sex;
          return writing.put(plant).map([&](auto) { return plant.code; });
        })
        .value();
  }
  book::Plant plant(const Code& code) {
    return *book::coded(
        book.read([](store::Reading& reading) { return reading.registers(); })->plants, code);
  }
  std::string refusal(const GiveParents& wanted) {
    const auto before = plant(wanted.plant);
    const auto done = give_parents(book, wanted);
    EXPECT_FALSE(done);
    EXPECT_EQ(plant(wanted.plant).seed_parent, before.seed_parent); // nothing half written
    return done ? "" : done.error().text();
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
  Code child;
  Code grandchild;
};

TEST_F(ParentsOfPlants, AreKept) {
  ASSERT_TRUE(give_parents(book, {child, first.mother, first.father}));
  EXPECT_EQ(plant(child).seed_parent, plant(first.mother).id);
  EXPECT_EQ(plant(child).pollen_parent, plant(first.father).id);
  ASSERT_TRUE(give_parents(book, {child, first.mother, std::nullopt}));
  EXPECT_EQ(plant(child).pollen_parent, std::nullopt);
}

TEST_F(ParentsOfPlants, OfTheWrongSexAreRefused) {
  EXPECT_NE(refusal({child, first.father, std::nullopt}).find("male plant and cannot be the seed"),
            std::string::npos);
  EXPECT_NE(
      refusal({child, std::nullopt, first.mother}).find("female plant and cannot be the pollen"),
      std::string::npos);
}

TEST_F(ParentsOfPlants, APlantIsNotItsOwnAncestorAndTheWayIsNamed) {
  ASSERT_TRUE(give_parents(book, {child, first.mother, std::nullopt}));
  ASSERT_TRUE(give_parents(book, {grandchild, child, std::nullopt}));
  const auto text = refusal({first.mother, grandchild, std::nullopt});
  EXPECT_NE(text.find("its own ancestor: "), std::string::npos) << text;
  for (const auto& code : {first.mother, child, grandchild})
    EXPECT_NE(text.find(code.text()), std::string::npos) << text;
  EXPECT_NE(refusal({child, child, std::nullopt}).find("own ancestor"), std::string::npos);
}

} // namespace
} // namespace coneline::work
