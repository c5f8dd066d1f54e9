// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/phrase.h"
#include "core/book/cross.h"
#include "core/book/pedigree.h"
#include "core/plan/crossing.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace coneline::plan {

namespace {

std::size_t place_of(const book::Registers& registers, book::PlantId id) {
  return static_cast<std::size_t>(
      std::ranges::lower_bound(registers.plants, id, {}, &book::Plant::id) -
      registers.plants.begin());
}

const book::Route* route_of(const book::Registers& registers, book::TaxonId taxon) {
  const auto found = std::ranges::find(registers.routes, taxon, &book::Route::taxon);
  return found == registers.routes.end() ? nullptr : &*found;
}

class Possible {
 public:
  explicit Possible(const CrossingInput& input) : input_(input), kinship_(input.parents) {}

  std::vector<PossibleCross> all() {
    std::vector<PossibleCross> crosses;
    for (std::size_t female = 0; female < input_.females.size(); ++female)
      for (std::size_t pollen = 0; pollen < input_.pollen.size(); ++pollen)
        crosses.push_back(of(female, pollen));
    return crosses;
  }

 private:
  PossibleCross of(std::size_t female, std::size_t pollen) {
    const auto& registers = input_.registers;
    const auto& mother = registers.plant(input_.females[female].plant);
    const auto& father = registers.plant(input_.pollen[pollen].plant);
    const book::Cross named{mother.id, {father.id}, false};
    PossibleCross cross;
    cross.female = female;
    cross.pollen = pollen;
    cross.hybrid = mother.taxon != father.taxon;
    cross.name = book::cross_name(registers, named);
    cross.taxon = book::taxon_formula(registers, named);
    relate(cross, mother, father);
    expect_plants(cross, mother.taxon);
    look_for_papers(cross, mother);
    if (father.id != mother.id)
      look_for_papers(cross, father);
    return cross;
  }

  void relate(PossibleCross& cross, const book::Plant& mother, const book::Plant& father) {
    const auto& registers = input_.registers;
    const auto one = place_of(registers, mother.id);
    const auto other = place_of(registers, father.id);
    cross.kinship = kinship_.of(one, other);
    std::vector<std::size_t> group;
    for (std::size_t at = 0; at < registers.plants.size(); ++at)
      if (registers.plants[at].taxon == mother.taxon || registers.plants[at].taxon == father.taxon)
        group.push_back(at);
    cross.mean_kinship = (kinship_.mean(one, group) + kinship_.mean(other, group)) / 2;
    std::set<std::size_t> founders;
    for (const auto plant : {one, other})
      for (const auto founder : stats::founders_behind(input_.parents, plant))
        founders.insert(founder);
    for (const auto at : founders)
      cross.founders.push_back(registers.plants[at].id);
    if (founders.contains(one) || founders.contains(other))
      cross.remarks.emplace_back(
          phrase("the parents of one or both are not known, so their kinship is taken as 0"));
  }

  void expect_plants(PossibleCross& cross, book::TaxonId taxon) {
    const auto& female = input_.females[cross.female];
    const auto& pollen = input_.pollen[cross.pollen];
    const auto* route = route_of(input_.registers, taxon);
    if (!female.seeds)
      cross.remarks.push_back(
          phrase("no seed of a cone of its taxon was ever counted, so no plants are reckoned "
                 "for {}: say how many seeds to expect",
                 female.code.text()));
    if (route == nullptr)
      cross.remarks.push_back(
          phrase("{} has no route, so no plants are reckoned: give its germination and steps",
                 input_.registers.taxon(taxon).name));
    if (!pollen.viability)
      cross.remarks.push_back(
          phrase_n(days_between(pollen.collected, input_.today),
                   "the pollen {1}, {0} day old, was not tested, and is reckoned as all viable",
                   "the pollen {1}, {0} days old, was not tested, and is reckoned as all viable",
                   pollen.code.text()));
    if (!female.seeds || route == nullptr)
      return;
    const auto own = input_.germination.find(taxon);
    const Estimate germination = own != input_.germination.end()
                                     ? own->second
                                     : Estimate{route->germination, std::nullopt, route->source};
    std::vector<std::pair<std::string, Estimate>> factors{{phrase("seeds"), *female.seeds},
                                                          {phrase("germination"), germination}};
    if (pollen.viability)
      factors.emplace_back(phrase("viable pollen"), *pollen.viability);
    double entering = female.seeds->likely * (pollen.viability ? pollen.viability->likely : 1);
    double survival = 1;
    for (std::size_t step = 0; step < route->steps.size(); ++step) {
      const auto& stay = route->steps[step];
      const auto& pot = input_.registers.pot(stay.pot);
      auto& room = cross.room[stay.light];
      room = std::max(room, entering * pot.square_metres() / pot.cells);
      entering *= stay.survival * (step == 0 ? germination.likely : 1);
      survival *= stay.survival;
    }
    factors.emplace_back(phrase("survival"), Estimate{survival, std::nullopt, phrase("route")});
    cross.plants = product(factors);
  }

  void look_for_papers(PossibleCross& cross, const book::Plant& plant) const {
    const auto say = [&](const std::string& what) {
      cross.missing.push_back(
          phrase("{} of {} ({})", what, plant.code.text(), book::plant_name(plant)));
    };
    if (plant.papers.empty())
      say(phrase("papers"));
    if (plant.origin.empty())
      say(phrase("origin"));
    if (plant.taxon_certainty != book::Certainty::certain)
      say(phrase("a certain name"));
  }

  const CrossingInput& input_;
  stats::Kinship kinship_;
};

} // namespace

Estimate product(const std::vector<std::pair<std::string, Estimate>>& factors) {
  Estimate result{1, std::nullopt, {}};
  double down = 0;
  double up = 0;
  bool ranged = false;
  for (const auto& [name, factor] : factors) {
    result.likely *= factor.likely;
    if (!factor.range || !(factor.likely > 0)) {
      result.source = result.source.empty() ? phrase("without the range of {}", name)
                                            : result.source + ", " + name;
      continue;
    }
    ranged = true;
    down += std::pow(std::log(factor.likely / factor.range->low), 2); // infinite for a low of 0
    up += std::pow(std::log(factor.range->high / factor.likely), 2);
  }
  if (ranged)
    result.range = book::Range{result.likely * std::exp(-std::sqrt(down)),
                               result.likely * std::exp(std::sqrt(up))};
  return result;
}

Result<std::vector<PossibleCross>> possible_crosses(const CrossingInput& input) {
  if (const auto way = book::own_ancestor_in_words(input.registers.plants, input.parents);
      !way.empty())
    return refuse(book_fault(phrase("a plant is its own ancestor: {}", way),
                             "Correct the parents of one of them."));
  if (input.females.empty())
    return refuse(fault("no female has a cone that takes pollen now or will",
                        "Enter the cone when it is seen, or name a female that is expected to "
                        "cone."));
  if (input.pollen.empty())
    return refuse(fault("no pollen is left in any lot",
                        "Enter the pollen that was collected, or correct its amount."));
  return Possible(input).all();
}

} // namespace coneline::plan
