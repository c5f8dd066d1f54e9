// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/target.h"

#include "core/base/phrase.h"
#include "core/plan/fit.h"
#include "core/plan/forecast_sprouting.h"
#include "core/plan/posterior_sprouting.h"
#include "core/stats/assured.h"
#include "core/stats/probability.h"

#include <boost/math/distributions/binomial.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace coneline::plan {

namespace {

/// Seeds of the supposed sowing: so many that their share is the probability of one.
constexpr std::int64_t many = 200'000;

/// One future: what the line brings, and what share of a sowing.
struct Future {
  double here = 0;
  double share = 0;
};

/// The line of one cross, cut out of the plan.
ForecastInput of_cross(const ForecastInput& input, const Target& target, int months) {
  ForecastInput own;
  own.assumed = input.assumed;
  own.assumed.sold_after.reset(); // what is sold has reached its pot
  own.history = input.history;
  own.standing.today = input.standing.today;
  own.standing.months = months;
  own.standing.registers = input.standing.registers;
  const auto is_own = [&](const auto& lot) {
    return lot.cross == target.cross && lot.taxon == target.taxon;
  };
  std::ranges::copy_if(input.standing.trays, std::back_inserter(own.standing.trays), is_own);
  std::ranges::copy_if(input.standing.groups, std::back_inserter(own.standing.groups), is_own);
  for (const auto& cross : input.sprouting)
    if (cross.cross == target.cross && cross.taxon == target.taxon)
      own.sprouting.push_back(cross);
  own.next_cross = input.next_cross;
  return own;
}

/// Plants at the target's step or beyond, by run, at the end of the last month.
std::vector<double> arrived(const Forecast& forecast, const book::Route& route, std::size_t step,
                            const book::Registers& registers) {
  std::set<std::string> pots;
  for (auto at = step; at < route.steps.size(); ++at)
    pots.insert(registers.pot(route.steps[at].pot).name);
  std::vector<double> plants(static_cast<std::size_t>(forecast.runs()), 0);
  const auto last = forecast.months().size() - 1;
  for (const auto& pot : pots)
    if (const auto at = forecast.find({Shown::standing, pot}))
      for (int run = 0; run < forecast.runs(); ++run)
        plants[static_cast<std::size_t>(run)] +=
            static_cast<double>(forecast.value(*at, run, last));
  return plants;
}

/// A tray of many seeds, sown on a day to come, in place of the line. A run draws first what is
/// shared, from the same random numbers: its seasons and the share of its cross are those that the
/// same run of the line has.
ForecastInput of_sowing(const ForecastInput& line, const book::Route& route, const Target& target,
                        Date sown_on) {
  auto own = line;
  const auto code = Code::of(Kind::tray, 99, 999'999).value();
  const TrayStanding tray{
      code, target.cross, target.taxon, route.steps.front().pot, sown_on, many, 0, many, 0};
  own.standing.trays = {tray};
  own.standing.groups.clear();
  const int months = own.standing.months;
  auto fresh = [&] {
    const CountedTray counted{code, sown_on, {target.cross, code.text(), many, {}}};
    if (!line.sprouting.empty() && !line.sprouting.front().points.empty())
      return posterior_sprouting(line.sprouting.front().points, {counted}, own.standing.today,
                                 months); // the points of its draws are those of the line's
    if (const auto next = line.next_cross.find(target.taxon); next != line.next_cross.end())
      return posterior_sprouting(next->second, {counted}, own.standing.today, months);
    return route_sprouting(route, {{tray, 0, sown_on}}, own.standing.today, months,
                           own.assumed.germination_weight);
  }();
  fresh.cross = target.cross;
  fresh.taxon = target.taxon;
  own.sprouting = {std::move(fresh)};
  return own;
}

double tail(double seeds, const std::vector<Future>& futures, std::int64_t plants) {
  double sum = 0;
  for (const auto& future : futures) {
    const double wanted = static_cast<double>(plants) - std::floor(future.here);
    if (wanted <= 0)
      sum += 1;
    else if (future.share > 0 && seeds >= wanted)
      sum += future.share >= 1
                 ? 1
                 : boost::math::cdf(boost::math::complement(
                       boost::math::binomial_distribution<>(seeds, future.share), wanted - 1));
  }
  return sum / static_cast<double>(futures.size());
}

/// The fewest seeds, up to a hundred times what is wanted.
void find_seeds(SowingChance& chance, const std::vector<Future>& futures, const Target& target) {
  const std::int64_t most = 100 * std::max<std::int64_t>(target.plants, 10);
  if (tail(static_cast<double>(most), futures, target.plants) < target.assurance)
    return;
  std::int64_t low = 0;
  std::int64_t high = most;
  while (low < high) {
    const auto middle = low + (high - low) / 2;
    if (tail(static_cast<double>(middle), futures, target.plants) >= target.assurance)
      high = middle;
    else
      low = middle + 1;
  }
  chance.seeds = high;
  chance.assured = tail(static_cast<double>(high), futures, target.plants);
}

} // namespace

Result<ConesNeeded> cones_for(std::int64_t seeds, double seeds_a_cone, double succeeds,
                              double assurance) {
  if (!(seeds_a_cone > 0) || !std::isfinite(seeds_a_cone))
    return refuse(fault(phrase("{} seeds a cone cannot be", seeds_a_cone),
                        "Give the seeds that a good cone has, above 0."));
  const auto with_seed =
      static_cast<std::int64_t>(std::ceil(static_cast<double>(seeds) / seeds_a_cone - 1e-9));
  if (with_seed <= 0)
    return ConesNeeded{};
  const std::array<double, 1> share{succeeds};
  const auto needed = stats::seeds_to_sow(with_seed, share, assurance);
  if (!needed)
    return refuse(needed.error());
  return ConesNeeded{with_seed, needed->assured};
}

Result<TargetPlan> plan_target(const ForecastInput& input, const Target& target,
                               const ForecastRuns& runs) {
  if (target.plants < 1)
    return refuse(fault(phrase("a target of {} plants", target.plants), "Want 1 or more."));
  if (auto inside = stats::inside_0_and_1(target.assurance, "the assurance"); !inside)
    return refuse(inside.error());
  const auto& registers = input.standing.registers;
  const auto today = input.standing.today;
  const int months = months_between(today, target.by) + 1;
  if (months < 1 || months > 120)
    return refuse(fault(
        phrase("{} is not in the 120 months from {}", month_name(target.by), month_name(today)),
        "Name a month to come."));
  const auto* route = registers.route(target.taxon);
  if (route == nullptr)
    return refuse(book_fault(phrase("'{}' has no route", registers.taxon(target.taxon).name),
                             "Enter its route."));
  const auto step = std::ranges::find(route->steps, target.pot, &book::RouteStep::pot);
  if (step == route->steps.end())
    return refuse(
        book_fault(phrase("the route of '{}' does not come to '{}'",
                          registers.taxon(target.taxon).name, registers.pot(target.pot).name),
                   "Name a pot of its route, or add the step."));
  const auto at = static_cast<std::size_t>(step - route->steps.begin());

  const auto own = of_cross(input, target, months);
  const auto line = forecast_of(own, runs);
  if (!line)
    return refuse(line.error());
  const auto here = arrived(*line, *route, at, registers);
  TargetPlan plan;
  plan.target = target;
  std::vector<float> sorted(here.begin(), here.end());
  plan.here = likely(sorted);
  std::vector<Future> futures(here.size());
  for (std::size_t run = 0; run < here.size(); ++run)
    futures[run].here = here[run];
  plan.alone = tail(0, futures, target.plants);
  for (int month = 0; month < months; ++month) {
    const auto first = today.first_of_month().plus_months(month);
    const auto sown_on = std::max(today, first.plus_days(14));
    const auto sowing = forecast_of(of_sowing(own, *route, target, sown_on), runs);
    if (!sowing)
      return refuse(sowing.error());
    const auto there = arrived(*sowing, *route, at, registers);
    SowingChance chance{first, 0, {}, {}};
    for (std::size_t run = 0; run < there.size(); ++run) {
      futures[run].share = there[run] / static_cast<double>(many);
      chance.share += futures[run].share / static_cast<double>(there.size());
    }
    find_seeds(chance, futures, target);
    if (chance.seeds)
      plan.latest = plan.sowings.size();
    plan.sowings.push_back(chance);
    if (!chance.seeds && plan.latest)
      break; // later is no better
  }
  if (plan.latest) {
    const auto& taxon = registers.taxon(target.taxon);
    const auto sow_by = plan.sowings[*plan.latest].month;
    if (taxon.after_ripening.value)
      plan.harvest_by = sow_by.plus_part_months(-taxon.after_ripening.value->high);
    if (taxon.ripening.value)
      plan.pollinate_by =
          plan.harvest_by.value_or(sow_by).plus_part_months(-taxon.ripening.value->high);
  }
  return plan;
}

} // namespace coneline::plan
