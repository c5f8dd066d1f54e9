// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/binary_program.h"
#include "core/plan/crossing.h"
#include "tests/core/plan/small_crossing.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace coneline::plan {
namespace {

using tests::small_crossing;

TEST(Product, AddsTheWidthsOfIndependentFactorsOnALogarithmicScale) {
  const auto one = product({{"a", {100, book::Range{50, 200}, ""}}, {"b", {0.5, {}, ""}}});
  EXPECT_DOUBLE_EQ(one.likely, 50);
  EXPECT_NEAR(one.range->low, 25, 1e-9);
  EXPECT_NEAR(one.range->high, 100, 1e-9);
  EXPECT_EQ(one.source, "without the range of b");
  const auto two =
      product({{"a", {100, book::Range{50, 200}, ""}}, {"b", {0.5, book::Range{0.25, 1}, ""}}});
  EXPECT_NEAR(two.range->low, 50 * std::pow(2, -std::sqrt(2.0)), 1e-9);
  EXPECT_NEAR(two.range->high, 50 * std::pow(2, std::sqrt(2.0)), 1e-9);
  const auto none = product({{"a", {10, {}, ""}}});
  EXPECT_FALSE(none.range);
  const auto nothing = product({{"a", {10, book::Range{0, 20}, ""}}});
  EXPECT_DOUBLE_EQ(nothing.range->low, 0);
}

class Crossing : public testing::Test {
 protected:
  /// The possible cross of these two, by their turns.
  std::size_t at(std::size_t female, std::size_t pollen) const {
    return female * input.pollen.size() + pollen;
  }
  std::vector<PossibleCross> possible() const { return possible_crosses(input).value(); }
  std::string refusal() const {
    auto proposal = propose(input, possible(), wish);
    EXPECT_FALSE(proposal);
    return proposal ? "" : proposal.error().text();
  }
  static bool says(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
  }

  CrossingInput input = small_crossing();
  CrossingWish wish;
};

// Females: Ada and Bea (Cycas), full sibs of the same parents; Dora (Dioon). Pollen: of Carl, full
// sib of Ada and Bea, and of Egon, a founder; of Fritz, a Dioon.
TEST_F(Crossing, TellsKinshipHybridsFoundersAndPlants) {
  const auto all = possible();
  ASSERT_EQ(all.size(), 9U);
  const auto& sibs = all[at(0, 0)];
  EXPECT_DOUBLE_EQ(sibs.kinship, 0.25);
  EXPECT_FALSE(sibs.hybrid);
  EXPECT_EQ(sibs.founders.size(), 2U);
  const auto& wide = all[at(0, 1)];
  EXPECT_DOUBLE_EQ(wide.kinship, 0);
  EXPECT_EQ(wide.founders.size(), 3U);
  EXPECT_EQ(wide.taxon, "Cycas revoluta");
  // 100 seeds × 0.5 up × 0.9 × 0.8 survive.
  EXPECT_DOUBLE_EQ(wide.plants->likely, 36);
  EXPECT_EQ(all[at(0, 2)].taxon, "Cycas revoluta × Dioon edule");
  EXPECT_TRUE(all[at(0, 2)].hybrid);
  EXPECT_EQ(all[at(2, 1)].taxon, "Dioon edule × Cycas revoluta"); // the seed parent first
}

TEST_F(Crossing, ViabilityCountsAndItsAbsenceIsSaid) {
  input.pollen[1].viability = Estimate{0.5, book::Range{0.25, 1}, "tested"};
  const auto all = possible();
  EXPECT_DOUBLE_EQ(all[at(0, 1)].plants->likely, 18);
  EXPECT_TRUE(says(all[at(0, 0)].remarks.back(), "not tested"));
}

TEST_F(Crossing, RoomIsTheMostOfAnyStep) {
  // 100 seeds in trays of 40 cells of 0.12 m²; 50 seedlings × 0.9 in pots of 0.01 m².
  EXPECT_DOUBLE_EQ(possible()[at(0, 1)].room.at(book::Light::part_shade), 0.45);
}

TEST_F(Crossing, SaysWhatPapersAreMissing) {
  const auto missing = possible()[at(0, 1)].missing;
  ASSERT_FALSE(missing.empty());
  EXPECT_TRUE(says(missing.front(), "papers of P"));
}

TEST_F(Crossing, UnknownParentsAreTakenAsUnrelatedAndThatIsSaid) {
  EXPECT_TRUE(says(possible()[at(0, 1)].remarks.front(), "not known"));
}

TEST_F(Crossing, MostPlantsWithinThePollen) {
  const auto proposal = propose(input, possible(), wish).value();
  // Ada and Bea with Egon (Carl is a full sib), Dora with Fritz.
  EXPECT_EQ(proposal.chosen, (std::vector<std::size_t>{at(0, 1), at(1, 1), at(2, 2)}));
  EXPECT_TRUE(proposal.proven);
  EXPECT_DOUBLE_EQ(proposal.gap, 0);
  EXPECT_DOUBLE_EQ(proposal.sum, proposal.plants);
  input.pollen[1].millilitres = 1.5; // enough for one cone
  EXPECT_EQ(propose(input, possible(), wish)->chosen,
            (std::vector<std::size_t>{at(1, 1), at(2, 2)}));
}

TEST_F(Crossing, PollenOfUnknownAmountIsEnoughForOneCone) {
  input.pollen[1].millilitres = std::nullopt;
  EXPECT_EQ(propose(input, possible(), wish)->chosen.size(), 2U);
}

TEST_F(Crossing, PinsAndForbids) {
  wish.pinned = {at(0, 0)}; // full sibs, which would not be proposed
  wish.forbidden = {at(1, 1)};
  EXPECT_EQ(propose(input, possible(), wish)->chosen,
            (std::vector<std::size_t>{at(0, 0), at(2, 2)}));
}

TEST_F(Crossing, LeastKinshipTakesTheLeastRelated) {
  input.pollen[1].millilitres = 1;
  wish.aim = Aim::least_kinship;
  wish.most_kinship = 0.5;
  wish.crosses = 1;
  const auto proposal = propose(input, possible(), wish).value();
  ASSERT_EQ(proposal.chosen.size(), 1U);
  double least = 1;
  const auto all = possible();
  for (const auto& cross : all)
    if (why_not(cross, wish).empty())
      least = std::min(least, cross.mean_kinship);
  EXPECT_DOUBLE_EQ(all[proposal.chosen.front()].mean_kinship, least);
}

TEST_F(Crossing, ContradictionsAreNamedWithWhatToChange) {
  wish.pinned = {at(0, 0), at(0, 1)};
  EXPECT_TRUE(says(refusal(), "pinned twice"));
  wish.pinned = wish.forbidden = {at(0, 1)};
  EXPECT_TRUE(says(refusal(), "both pinned and forbidden"));
  wish.forbidden = {};
  wish.pinned = {at(0, 1), at(1, 1)};
  input.pollen[1].millilitres = 1.5;
  EXPECT_TRUE(says(refusal(), "0.5 too few")) << refusal();
  input.room = std::map<book::Light, double>{{book::Light::part_shade, 0.1}};
  input.pollen[1].millilitres = 2;
  EXPECT_TRUE(says(refusal(), "m² of part shade")) << refusal();
  input.room = std::nullopt;
  wish.pinned = {};
  wish.aim = Aim::mixture;
  wish.crosses = 5;
  EXPECT_TRUE(says(refusal(), "5 crosses are asked for, and 3 can be made")) << refusal();
}

TEST_F(Crossing, NoFemalesNoPollenAndAPlantThatIsItsOwnAncestorAreRefused) {
  auto none = input;
  none.females.clear();
  EXPECT_TRUE(says(possible_crosses(none).error().text(), "no female"));
  none = input;
  none.pollen.clear();
  EXPECT_TRUE(says(possible_crosses(none).error().text(), "no pollen"));
  input.parents[0] = {{2}, {}}; // the mother of Ada is her child
  const auto text = possible_crosses(input).error().text();
  EXPECT_TRUE(says(text, "is its own ancestor: ")) << text;
  EXPECT_TRUE(says(text, " → ")) << text;
}

// Against every choice there is: each female with one of the lots, or none.
class Enumeration {
 public:
  Enumeration(const CrossingInput& input, const std::vector<PossibleCross>& possible,
              const CrossingWish& wish)
      : input_(input), possible_(possible), wish_(wish) {}

  /// The best by `value`, of those with `number` crosses where one is given; nothing where there is
  /// no choice within the limits.
  template <class Value>
  std::optional<double> best(Value value, std::optional<std::size_t> number) {
    std::optional<double> best;
    each([&](const std::vector<std::size_t>& chosen) {
      if (number && chosen.size() != *number)
        return;
      double sum = 0;
      for (const auto at : chosen)
        sum += value(possible_[at]);
      best = std::max(best.value_or(sum), sum);
    });
    return best;
  }
  std::optional<std::size_t> most() {
    const auto best = this->best([](const PossibleCross&) { return 1.0; }, std::nullopt);
    return best ? std::optional(static_cast<std::size_t>(std::lround(*best))) : std::nullopt;
  }

 private:
  template <class Act>
  void each(Act act) {
    const auto ways = input_.pollen.size() + 1;
    std::size_t count = 1;
    for (std::size_t i = 0; i < input_.females.size(); ++i)
      count *= ways;
    for (std::size_t way = 0; way < count; ++way) {
      std::vector<std::size_t> chosen;
      auto rest = way;
      for (std::size_t female = 0; female < input_.females.size(); ++female, rest /= ways)
        if (rest % ways > 0)
          chosen.push_back(female * input_.pollen.size() + rest % ways - 1);
      if (allowed(chosen))
        act(chosen);
    }
  }
  bool allowed(const std::vector<std::size_t>& chosen) const {
    const auto has = [](const auto& list, std::size_t at) {
      return std::find(list.begin(), list.end(), at) != list.end();
    };
    std::map<std::size_t, double> pollen;
    std::map<book::Light, double> room;
    for (const auto at : chosen) {
      if (has(wish_.forbidden, at))
        return false;
      if (!has(wish_.pinned, at) && !why_not(possible_[at], wish_).empty())
        return false;
      pollen[possible_[at].pollen] += input_.millilitres_a_cone;
      for (const auto& [light, taken] : possible_[at].room)
        room[light] += taken;
    }
    for (const auto at : wish_.pinned)
      if (!has(chosen, at))
        return false;
    for (const auto& [lot, taken] : pollen)
      if (taken > input_.pollen[lot].millilitres.value_or(input_.millilitres_a_cone) + 1e-9)
        return false;
    for (const auto& [light, taken] : room)
      if (input_.room && taken > input_.room->at(light) + 1e-9)
        return false;
    return true;
  }

  const CrossingInput& input_;
  const std::vector<PossibleCross>& possible_;
  const CrossingWish& wish_;
};

struct Case {
  CrossingInput input;
  std::vector<PossibleCross> possible;
  CrossingWish wish;
};

Case any_case() {
  Case drawn;
  drawn.input.females.resize(*rc::gen::inRange<std::size_t>(1, 5));
  drawn.input.pollen.resize(*rc::gen::inRange<std::size_t>(1, 5));
  drawn.input.millilitres_a_cone = *rc::gen::inRange(1, 4) / 2.0;
  for (auto& lot : drawn.input.pollen)
    if (*rc::gen::inRange(0, 4) > 0)
      lot.millilitres = *rc::gen::inRange(0, 12) / 4.0;
  if (*rc::gen::inRange(0, 2) > 0)
    drawn.input.room = {{book::Light::sun, *rc::gen::inRange(0, 60) / 10.0},
                        {book::Light::shade, *rc::gen::inRange(0, 60) / 10.0}};
  for (std::size_t female = 0; female < drawn.input.females.size(); ++female)
    for (std::size_t lot = 0; lot < drawn.input.pollen.size(); ++lot) {
      PossibleCross cross;
      cross.female = female;
      cross.pollen = lot;
      cross.hybrid = *rc::gen::inRange(0, 4) == 0;
      cross.kinship = *rc::gen::inRange(0, 5) / 16.0;
      cross.mean_kinship = *rc::gen::inRange(1, 100) / 200.0;
      if (*rc::gen::inRange(0, 8) > 0)
        cross.plants = Estimate{static_cast<double>(*rc::gen::inRange(1, 100)), {}, ""};
      cross.room[*rc::gen::element(book::Light::sun, book::Light::shade)] =
          *rc::gen::inRange(0, 30) / 10.0;
      drawn.possible.push_back(cross);
    }
  drawn.wish.hybrids = *rc::gen::inRange(0, 2) > 0;
  const auto some = [&] {
    std::vector<std::size_t> list;
    if (*rc::gen::inRange(0, 3) == 0)
      list.push_back(*rc::gen::inRange<std::size_t>(0, drawn.possible.size()));
    return list;
  };
  drawn.wish.pinned = some();
  drawn.wish.forbidden = some();
  drawn.wish.kinship_weight = *rc::gen::inRange(0, 5) / 4.0;
  drawn.wish.aim = *rc::gen::element(Aim::most_plants, Aim::least_kinship, Aim::mixture);
  return drawn;
}

RC_GTEST_PROP(CrossingProperty, IsTheBestOfAllChoices, ()) {
  const auto drawn = any_case();
  const auto proposal = propose(drawn.input, drawn.possible, drawn.wish);
  Enumeration all(drawn.input, drawn.possible, drawn.wish);
  const auto most = all.most();
  if (!proposal) {
    // Refused only where nothing at all may be made, or what is pinned cannot be.
    RC_ASSERT(!most || *most == 0);
    return;
  }
  RC_ASSERT(most.has_value() && *most > 0);
  RC_ASSERT(proposal->proven);
  RC_ASSERT(proposal->gap < 1e-6);
  const auto plants = [](const PossibleCross& cross) {
    return cross.plants ? cross.plants->likely : 0;
  };
  if (drawn.wish.aim == Aim::most_plants) {
    RC_ASSERT(std::abs(proposal->sum - *all.best(plants, std::nullopt)) < 1e-6);
    return;
  }
  RC_ASSERT(proposal->chosen.size() == *most);
  if (drawn.wish.aim == Aim::least_kinship) {
    const auto best =
        *all.best([](const PossibleCross& cross) { return -cross.mean_kinship; }, most);
    RC_ASSERT(std::abs(proposal->sum + best) < 1e-6);
    double chosen = 0;
    for (const auto at : proposal->chosen)
      chosen += drawn.possible[at].mean_kinship;
    RC_ASSERT(std::abs(chosen - proposal->sum) < 1e-6);
    return;
  }
  // The mixture as the header states it, over the crosses that may be made.
  double most_plants = 1e-9;
  double highest = 1e-9;
  for (std::size_t at = 0; at < drawn.possible.size(); ++at) {
    const auto has = [&](const auto& list) {
      return std::find(list.begin(), list.end(), at) != list.end();
    };
    const auto& cross = drawn.possible[at];
    if (has(drawn.wish.pinned) ||
        (!has(drawn.wish.forbidden) && why_not(cross, drawn.wish).empty())) {
      most_plants = std::max(most_plants, plants(cross));
      highest = std::max(highest, cross.mean_kinship);
    }
  }
  const double weight = drawn.wish.kinship_weight;
  const auto best = *all.best(
      [&](const PossibleCross& cross) {
        return (1 - weight) * plants(cross) / most_plants - weight * cross.mean_kinship / highest;
      },
      most);
  RC_ASSERT(std::abs(proposal->sum - best) < 1e-6);
}

} // namespace
} // namespace coneline::plan
