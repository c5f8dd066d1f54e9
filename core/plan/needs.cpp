// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/needs.h"

#include "core/base/phrase.h"
#include "core/plan/fit.h"
#include "core/plan/offered.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>
#include <set>

namespace coneline::plan {

namespace {

double per_plant(const book::Pot& pot) {
  return pot.litres / pot.cells;
}

/// Sums up what cohorts do along their stays.
class Sum {
 public:
  explicit Sum(const NeedsInput& input)
      : input_(input), months_(static_cast<std::size_t>(input.months)) {
    needs_.today = input.today;
    for (int month = 0; month < input.months; ++month)
      needs_.months.push_back(input.today.first_of_month().plus_months(month));
  }

  void tray(const TrayStanding& tray);
  void group(const PlantsStanding& group);
  Result<Needs> done();

 private:
  struct Cohort {
    double plants = 0;
    std::string cross;
    book::TaxonId taxon;
    std::vector<Stay> stays;
    enum class Here { today, to_come } here = Here::today;
    enum class Room { pots, tray } room = Room::pots; ///< of the first stay
  };
  /// Plants in a pot, and the pots they take of a bench; a tray takes its room as a whole.
  struct Stood {
    book::PotId pot;
    book::Light light = book::Light::part_shade;
    double plants = 0;
    double containers = 0;
  };

  void walk(const book::Route& route, const Cohort& cohort);
  void move_into(const book::Route& route, const Stay& before, const Stay& stay, double plants);
  void stand(const Stood& stood, std::size_t from, std::size_t until);
  void stand_today(const Stood& stood);
  void leave_out(const LeftOut& lot, book::TaxonId taxon, book::PotId pot, double containers);

  PotNeeds& pot(book::PotId id);
  SpaceNeeds& space(book::Light light);
  ByMonth& ready(const Cohort& cohort);
  /// The month of a day, at most the number of months: beyond them.
  [[nodiscard]] std::size_t month(Date day) const {
    return static_cast<std::size_t>(
        std::clamp(months_between(input_.today, day), 0, input_.months));
  }
  [[nodiscard]] ByMonth nothing() const { return ByMonth(months_, 0.0); }

  const NeedsInput& input_;
  std::size_t months_;
  Needs needs_;
  std::map<book::PotId, PotNeeds> pots_;
  std::map<book::MixId, ByMonth> fill_; ///< litres that pots take
  std::map<book::Light, SpaceNeeds> space_;
  std::map<std::pair<std::string, std::string>, ByMonth> ready_;
  std::set<std::string> remarks_;
};

PotNeeds& Sum::pot(book::PotId id) {
  const auto [found, fresh] = pots_.try_emplace(id);
  if (fresh) {
    const auto& row = input_.registers.pot(id);
    found->second = {id, row.name, row.cells, nothing(), 0, nothing(), 0, nothing()};
  }
  return found->second;
}

SpaceNeeds& Sum::space(book::Light light) {
  const auto [found, fresh] = space_.try_emplace(light);
  if (fresh)
    found->second = {light, 0, 0, nothing(), {}, {}};
  return found->second;
}

ByMonth& Sum::ready(const Cohort& cohort) {
  const auto& taxon = input_.registers.taxon(cohort.taxon).name;
  return ready_.try_emplace({cohort.cross, taxon}, nothing()).first->second;
}

/// At the ends of the months from `from` to before `until`.
void Sum::stand(const Stood& stood, std::size_t from, std::size_t until) {
  auto& here = pot(stood.pot);
  auto& bench = space(stood.light);
  const double room = stood.containers * input_.registers.pot(stood.pot).square_metres();
  for (auto at = from; at < until; ++at) {
    here.standing[at] += stood.plants;
    here.containers[at] += stood.containers;
    bench.needed[at] += room;
  }
}

void Sum::stand_today(const Stood& stood) {
  auto& here = pot(stood.pot);
  here.standing_today += stood.plants;
  here.containers_today += stood.containers;
  space(stood.light).today += stood.containers * input_.registers.pot(stood.pot).square_metres();
}

void Sum::move_into(const book::Route& route, const Stay& before, const Stay& stay, double plants) {
  const auto at = month(stay.from);
  const auto& from = input_.registers.pot(before.pot);
  const auto& into = input_.registers.pot(stay.pot);
  pot(stay.pot).into[at] += plants;
  const double fresh = per_plant(into) - per_plant(from);
  if (fresh <= 0)
    remarks_.insert(phrase("'{}' holds no more than the root ball out of '{}': no mix is "
                           "counted for that move. Check the route.",
                           into.name, from.name));
  fill_.try_emplace(route.steps[stay.step].mix, nothing()).first->second[at] +=
      plants * std::max(0.0, fresh);
}

void Sum::walk(const book::Route& route, const Cohort& cohort) {
  double plants = cohort.plants;
  const bool here_today = cohort.here == Cohort::Here::today;
  (here_today ? needs_.sums.here : needs_.sums.come_up) += plants;
  for (std::size_t i = 0; i < cohort.stays.size(); ++i) {
    const auto& stay = cohort.stays[i];
    const bool first = i == 0;
    const bool last = i + 1 == cohort.stays.size();
    const auto from = month(stay.from);
    const auto until = month(stay.until);
    if (!first && from < months_)
      move_into(route, cohort.stays[i - 1], stay, plants);
    const bool in_tray = first && cohort.room == Cohort::Room::tray;
    const double taken = in_tray ? 0 : 1.0 / input_.registers.pot(stay.pot).cells;
    const auto stood = [&] {
      return Stood{stay.pot, route.steps[stay.step].light, plants, plants * taken};
    };
    stand(stood(), from, until);
    if (first && here_today)
      stand_today(stood());
    if (until == months_) {
      needs_.sums.growing += plants;
      return;
    }
    needs_.sums.lost += plants * (1 - stay.survival);
    plants *= stay.survival;
    if (last) {
      ready(cohort)[until] += plants;
      needs_.sums.ready += plants;
      stand(stood(), until, months_);
    }
  }
}

void Sum::tray(const TrayStanding& tray) {
  const auto* route = input_.registers.route(tray.taxon);
  if (route == nullptr) {
    leave_out({tray.code, tray.waiting + tray.seedlings, phrase("its taxon has no route")},
              tray.taxon, tray.pot, 1);
    return;
  }
  std::size_t until = 0;
  const auto cohort = [&](double plants, Date from, Cohort::Here here) {
    if (plants <= 0)
      return;
    auto way = stays(*route, 0, tray.pot, tray.sown_on, from);
    way.front().from = from;
    until = std::max(until, month(way.front().until));
    walk(*route, {plants, tray.cross, tray.taxon, std::move(way), here, Cohort::Room::tray});
  };
  cohort(static_cast<double>(tray.seedlings), input_.today, Cohort::Here::today);
  const auto sprouting = still_to_sprout(*route, tray, input_.today);
  for (const auto& first : needs_.months) {
    const auto next = first.plus_months(1);
    const auto opens = std::max(first, sprouting.from);
    const auto closes = std::min(next, std::max(sprouting.until, opens));
    cohort(sprouting.between(first, next), opens.plus_days(days_between(opens, closes) / 2),
           Cohort::Here::to_come);
  }
  const auto end = needs_.months.back().plus_months(1);
  if (sprouting.seeds > 0 && sprouting.until >= end)
    until = months_;
  const Stood whole{tray.pot, route->steps.front().light, 0, 1};
  stand_today(whole);
  stand(whole, 0, until);
}

void Sum::group(const PlantsStanding& group) {
  const auto plants = static_cast<double>(group.plants);
  const double containers = plants / input_.registers.pot(group.pot).cells;
  const auto* route = input_.registers.route(group.taxon);
  if (route == nullptr) {
    leave_out({group.code, group.plants, phrase("its taxon has no route")}, group.taxon, group.pot,
              containers);
    return;
  }
  const auto step = step_with(*route, input_.registers, group.pot);
  if (!step) {
    leave_out({group.code, group.plants,
               phrase("'{}' is larger than every pot of its route",
                      input_.registers.pot(group.pot).name)},
              group.taxon, group.pot, containers);
    return;
  }
  const auto& of_step = input_.registers.pot(route->steps[*step].pot);
  if (of_step.id != group.pot)
    remarks_.insert(phrase("{} stands in '{}', which is not on its route; it is taken to be "
                           "at the step of '{}'.",
                           group.code.text(), input_.registers.pot(group.pot).name, of_step.name));
  walk(*route, {plants, group.cross, group.taxon,
                stays(*route, *step, group.pot, group.since, input_.today)});
}

void Sum::leave_out(const LeftOut& lot, book::TaxonId taxon, book::PotId pot, double containers) {
  needs_.left_out.push_back(lot);
  auto& bench = space(input_.registers.taxon(taxon).light.value);
  const double room = containers * input_.registers.pot(pot).square_metres();
  bench.today += room;
  for (auto& needed : bench.needed)
    needed += room;
}

Result<Needs> Sum::done() {
  for (auto& [id, pot] : pots_)
    needs_.pots.push_back(std::move(pot));
  std::ranges::stable_sort(needs_.pots, {}, [&](const PotNeeds& pot) {
    return per_plant(input_.registers.pot(pot.pot));
  });
  std::map<std::string, ByMonth> parts;
  for (const auto& [id, fill] : fill_)
    if (auto added = add_mix(input_.registers.mix(id), fill, needs_.mixes, parts); !added)
      return refuse(added.error());
  for (auto& [name, litres] : parts)
    needs_.parts.push_back({name, std::move(litres)});
  for (const auto& [light, offered] : offered_square_metres(input_.registers.places))
    if (offered > 0)
      space(light).offered = offered;
  for (auto& [light, bench] : space_) {
    tell_fit(bench, needs_.months);
    needs_.space.push_back(std::move(bench));
  }
  for (auto& [of, plants] : ready_)
    needs_.ready.push_back({of.first, of.second, std::move(plants)});
  if (input_.seeds_not_sown > 0)
    remarks_.insert(not_sown_told(input_.seeds_not_sown));
  if (!needs_.left_out.empty())
    remarks_.insert(left_out_told(std::ssize(needs_.left_out)));
  needs_.remarks.assign(remarks_.begin(), remarks_.end());
  return std::move(needs_);
}

} // namespace

Result<Needs> needs(const NeedsInput& input) {
  if (input.months < 1 || input.months > 600)
    return refuse(
        usage_fault(phrase("needs of {} months", input.months), "Ask for 1 to 600 months."));
  Sum sum(input);
  for (const auto& tray : input.trays)
    sum.tray(tray);
  for (const auto& group : input.groups)
    sum.group(group);
  return sum.done();
}

} // namespace coneline::plan
