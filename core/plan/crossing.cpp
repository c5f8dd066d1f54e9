// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/crossing.h"

#include "core/base/phrase.h"
#include "core/plan/binary_program.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace coneline::plan {

namespace {

constexpr double rounding = 1e-9;

bool holds(const std::vector<std::size_t>& list, std::size_t at) {
  return std::ranges::find(list, at) != list.end();
}

double plants_of(const PossibleCross& cross) {
  return cross.plants ? cross.plants->likely : 0;
}

class Propose {
 public:
  Propose(const CrossingInput& input, const std::vector<PossibleCross>& possible,
          const CrossingWish& wish)
      : input_(input), possible_(possible), wish_(wish) {}

  Result<Proposal> run() {
    if (auto sound = wish_is_sound(); !sound)
      return refuse(sound.error());
    if (auto fits = pinned_fit(); !fits)
      return refuse(fits.error());
    auto program = limits();
    if (std::ranges::none_of(candidates_, [](bool is) { return is; }))
      return refuse(none_may_be_made());
    auto best = wish_.aim == Aim::most_plants ? most_plants(std::move(program))
                                              : by_kinship(std::move(program));
    if (best && best->chosen.empty())
      return refuse(best->proven ? too_little() : none_found_within(wish_.seconds));
    return best;
  }

 private:
  Result<void> wish_is_sound() const {
    if (!(wish_.kinship_weight >= 0 && wish_.kinship_weight <= 1))
      return refuse(fault(phrase("a weight of {}", wish_.kinship_weight),
                          "Give the weight of kinship as 0 to 1."));
    if (!(wish_.most_kinship >= 0 && wish_.most_kinship <= 1))
      return refuse(fault(phrase("a kinship of {}", wish_.most_kinship),
                          "Kinship is 0 to 1; half sibs have 0.125, full sibs 0.25."));
    if (wish_.crosses && *wish_.crosses < 1)
      return refuse(fault(phrase("{} crosses", *wish_.crosses), "Ask for at least 1."));
    return {};
  }

  std::string name(std::size_t at) const {
    const auto& cross = possible_.at(at);
    return phrase("{} with {}", input_.females[cross.female].code.text(),
                  input_.pollen[cross.pollen].code.text());
  }

  /// What the grower fixed must be possible by itself; each contradiction is named.
  Result<void> pinned_fit() const {
    std::map<std::size_t, std::size_t> of_female;
    std::map<std::size_t, double> pollen;
    std::map<book::Light, double> room;
    for (const auto at : std::set(wish_.pinned.begin(), wish_.pinned.end())) {
      const auto& cross = possible_.at(at);
      if (holds(wish_.forbidden, at))
        return refuse(fault(phrase("{} is both pinned and forbidden", name(at)),
                            "Take one of the two away."));
      if (const auto [first, fresh] = of_female.emplace(cross.female, at); !fresh)
        return refuse(
            fault(phrase("{} is pinned twice: {} and {}", input_.females[cross.female].code.text(),
                         name(first->second), name(at)),
                  "A proposal gives a cone one father; pin one of them."));
      pollen[cross.pollen] += input_.millilitres_a_cone;
      for (const auto& [light, square_metres] : cross.room)
        room[light] += square_metres;
    }
    for (const auto& [lot, needed] : pollen) {
      const auto& left = input_.pollen[lot].millilitres;
      if (left && needed > *left + rounding)
        return refuse(fault(
            phrase("the pinned crosses take {:g} ml of {}, and {:g} ml are left: {:g} too few",
                   needed, input_.pollen[lot].code.text(), *left, needed - *left),
            "Unpin a cross, take less for each cone, or use another lot."));
    }
    for (const auto& [light, needed] : room)
      if (input_.room && needed > free_room(light) + rounding)
        return refuse(fault(phrase("the pinned crosses take {} of {}, and {} are free",
                                   measured(Quantity::square_metres, needed, 2), book::said(light),
                                   measured(Quantity::square_metres, free_room(light), 2)),
                            "Unpin a cross, or say how much room there will be."));
    if (wish_.crosses && of_female.size() > static_cast<std::size_t>(*wish_.crosses))
      return refuse(
          fault(phrase("{} crosses are pinned and {} asked for", of_female.size(), *wish_.crosses),
                "Unpin some, or ask for more crosses."));
    return {};
  }

  double free_room(book::Light light) const {
    const auto found = input_.room->find(light);
    return found == input_.room->end() ? 0 : std::max(0.0, found->second);
  }

  Fault none_may_be_made() const {
    std::string reasons;
    std::set<std::string> told;
    for (std::size_t at = 0; at < possible_.size(); ++at) {
      const auto why =
          holds(wish_.forbidden, at) ? phrase("forbidden") : why_not(possible_[at], wish_);
      if (told.insert(why).second)
        reasons += (reasons.empty() ? "" : "; ") + name(at) + ": " + why;
    }
    return fault(
        phrase("none of the {} possible crosses may be proposed ({})", possible_.size(), reasons),
        "Pin one, allow hybrids, or allow closer parents.");
  }

  BinaryProgram limits() {
    BinaryProgram program;
    program.values.assign(possible_.size(), 0);
    std::map<std::size_t, BinaryProgram::Limit> females;
    std::map<std::size_t, BinaryProgram::Limit> pollen;
    std::map<book::Light, BinaryProgram::Limit> room;
    for (std::size_t at = 0; at < possible_.size(); ++at) {
      const auto& cross = possible_[at];
      const bool pinned = holds(wish_.pinned, at);
      candidates_.push_back(pinned ||
                            (!holds(wish_.forbidden, at) && why_not(cross, wish_).empty()));
      if (pinned)
        program.kept.push_back(at);
      else if (!candidates_.back())
        program.out.push_back(at);
      females[cross.female].terms.emplace_back(at, 1);
      pollen[cross.pollen].terms.emplace_back(at, input_.millilitres_a_cone);
      for (const auto& [light, square_metres] : cross.room)
        room[light].terms.emplace_back(at, square_metres);
    }
    for (auto& [female, limit] : females) {
      limit.high = 1;
      program.limits.push_back(std::move(limit));
    }
    for (auto& [lot, limit] : pollen) {
      // Of a lot that nobody measured there is enough for one cone, as far as anybody knows.
      limit.high = input_.pollen[lot].millilitres.value_or(input_.millilitres_a_cone) + rounding;
      program.limits.push_back(std::move(limit));
    }
    if (input_.room)
      for (auto& [light, limit] : room) {
        limit.high = free_room(light) + rounding;
        program.limits.push_back(std::move(limit));
      }
    return program;
  }

  BinaryProgram::Limit count_limit(double low, double high) const {
    BinaryProgram::Limit limit{{}, low, high};
    for (std::size_t at = 0; at < possible_.size(); ++at)
      limit.terms.emplace_back(at, 1);
    return limit;
  }

  Result<Proposal> most_plants(BinaryProgram program) {
    for (std::size_t at = 0; at < possible_.size(); ++at)
      program.values[at] = plants_of(possible_[at]);
    if (wish_.crosses)
      program.limits.push_back(count_limit(0, *wish_.crosses));
    const auto best = best_of(program);
    if (!best)
      return refuse(best.error());
    return proposal(among_equals(program, *best, freshness()), phrase("plants"), 1);
  }

  /// Just so many crosses, chosen for kinship; of choices that are equal in it, the one with most
  /// plants.
  Result<Proposal> by_kinship(BinaryProgram program) {
    const auto number = how_many(program);
    if (!number)
      return refuse(number.error());
    program.limits.push_back(count_limit(*number, *number));
    double most_plants = rounding;
    double highest = rounding;
    for (std::size_t at = 0; at < possible_.size(); ++at)
      if (candidates_[at]) {
        most_plants = std::max(most_plants, plants_of(possible_[at]));
        highest = std::max(highest, possible_[at].mean_kinship);
      }
    const double weight = wish_.aim == Aim::mixture ? wish_.kinship_weight : 1;
    for (std::size_t at = 0; at < possible_.size(); ++at)
      program.values[at] = wish_.aim == Aim::mixture
                               ? (1 - weight) * plants_of(possible_[at]) / most_plants -
                                     weight * possible_[at].mean_kinship / highest
                               : -possible_[at].mean_kinship;
    const auto best = best_of(program);
    if (!best)
      return refuse(best.error());
    if (wish_.aim == Aim::mixture)
      return proposal(among_equals(program, *best, freshness()),
                      phrase("mixture of plants and kinship"), 1);
    return proposal(among_equals(program, *best, all_plants()),
                    phrase("mean kinship, summed over the crosses"), -1);
  }

  Result<double> how_many(BinaryProgram program) const {
    std::ranges::fill(program.values, 1.0);
    const auto most = best_of(program);
    if (!most)
      return refuse(most.error());
    const bool enough = wish_.crosses && *wish_.crosses <= most->value;
    if (!enough && !most->proven)
      return refuse(none_found_within(wish_.seconds)); // more may be possible
    if (!wish_.crosses)
      return most->value;
    if (!enough)
      return refuse(fault(phrase("{} crosses are asked for, and {:g} can be made with the "
                                 "cones, the pollen and the room there are",
                                 *wish_.crosses, most->value),
                          "Ask for fewer, collect more pollen, take less for each cone, "
                          "or say how much room there will be."));
    return *wish_.crosses;
  }

  /// What stops one cross by itself; empty where nothing does.
  std::string stopped_by(const PossibleCross& cross) const {
    const auto& lot = input_.pollen[cross.pollen];
    if (lot.millilitres && input_.millilitres_a_cone > *lot.millilitres + rounding)
      return phrase("{:g} ml of pollen are needed and {:g} ml are left", input_.millilitres_a_cone,
                    *lot.millilitres);
    for (const auto& [light, needed] : cross.room)
      if (input_.room && needed > free_room(light) + rounding)
        return phrase("{} of {} are needed and {} are free",
                      measured(Quantity::square_metres, needed, 2), book::said(light),
                      measured(Quantity::square_metres, free_room(light), 2));
    return {};
  }

  /// That no choice keeps the limits is told otherwise than that none was found in the time.
  Result<Chosen> best_of(const BinaryProgram& program) const {
    auto best = choose(program, wish_.seconds);
    if (!best)
      return refuse(best.error());
    if (!*best)
      return refuse(too_little());
    return **std::move(best);
  }

  Fault too_little() const {
    constexpr std::size_t enough_to_see = 3;
    std::string reasons;
    std::size_t told = 0;
    for (std::size_t at = 0; at < possible_.size() && told < enough_to_see; ++at)
      if (candidates_[at])
        if (const auto why = stopped_by(possible_[at]); !why.empty()) {
          reasons += (told == 0 ? ": " : "; ") + name(at) + ": " + why;
          ++told;
        }
    return fault(
        phrase("no cross fits within the pollen and the room there are, with what is pinned{}",
               reasons),
        "Unpin a cross, collect more pollen, take less for each cone, or "
        "say how much room there will be.");
  }

  /// Of all choices as good as `best`, the one in which the other values add up to most.
  Chosen among_equals(BinaryProgram& program, const Chosen& best,
                      const std::vector<double>& values) const {
    BinaryProgram::Limit equal{{}, best.value - rounding, BinaryProgram::no_limit};
    for (std::size_t at = 0; at < possible_.size(); ++at)
      equal.terms.emplace_back(at, program.values[at]);
    program.limits.push_back(std::move(equal));
    program.values = values;
    auto chosen = best;
    if (const auto again = choose(program, wish_.seconds); again && *again)
      chosen.chosen = (*again)->chosen; // else the one there is, which is as good in the aim
    return chosen;
  }

  std::vector<double> all_plants() const {
    std::vector<double> values;
    for (const auto& cross : possible_)
      values.push_back(plants_of(cross));
    return values;
  }
  /// The fresher the pollen, the better (common practice, no source).
  std::vector<double> freshness() const {
    std::vector<double> values;
    for (const auto& cross : possible_)
      values.push_back(-days_between(input_.pollen[cross.pollen].collected, input_.today) / 365.25);
    return values;
  }

  Proposal proposal(const Chosen& best, std::string measure, double sign) const {
    Proposal proposal;
    proposal.measure = std::move(measure);
    proposal.sum = sign * best.value;
    proposal.bound = sign * best.bound;
    proposal.gap = best.value == best.bound ? 0
                                            : std::abs(best.bound - best.value) /
                                                  std::max(rounding, std::abs(best.value));
    proposal.proven = best.proven;
    std::map<std::size_t, double> pollen;
    std::set<book::PlantId> founders;
    double kinship = 0;
    for (std::size_t at = 0; at < best.chosen.size(); ++at) {
      if (!best.chosen[at])
        continue;
      const auto& cross = possible_[at];
      proposal.chosen.push_back(at);
      proposal.plants += plants_of(cross);
      kinship += cross.mean_kinship;
      founders.insert(cross.founders.begin(), cross.founders.end());
      pollen[cross.pollen] += input_.millilitres_a_cone;
      for (const auto& [light, square_metres] : cross.room)
        proposal.room[light] += square_metres;
    }
    if (!proposal.chosen.empty())
      proposal.mean_kinship = kinship / static_cast<double>(proposal.chosen.size());
    proposal.founders = founders.size();
    for (const auto& [lot, taken] : pollen)
      proposal.pollen.push_back({lot, taken});
    return proposal;
  }

  const CrossingInput& input_;
  const std::vector<PossibleCross>& possible_;
  const CrossingWish& wish_;
  std::vector<bool> candidates_;
};

} // namespace

std::string why_not(const PossibleCross& cross, const CrossingWish& wish) {
  if (cross.hybrid && !wish.hybrids)
    return phrase("a hybrid, and hybrids were not asked for");
  if (cross.kinship > wish.most_kinship)
    return phrase("the parents' kinship {:.4g} is above {:.4g}", cross.kinship, wish.most_kinship);
  if (!cross.plants)
    return phrase("no plants can be reckoned for it");
  return {};
}

Result<Proposal> propose(const CrossingInput& input, const std::vector<PossibleCross>& possible,
                         const CrossingWish& wish) {
  return Propose(input, possible, wish).run();
}

} // namespace coneline::plan
