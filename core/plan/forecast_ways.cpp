// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_ways.h"

#include "core/base/month.h"
#include "core/base/phrase.h"
#include "core/plan/fit.h"
#include "core/plan/forecast_sowings.h"
#include "core/plan/offered.h"
#include "core/plan/stream_key.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

namespace coneline::plan {

namespace {

/// The month from which on the chance of even one more seedling is below `done_below`.
int kept_until(const CrossSprouting& cross, std::size_t tray, std::int64_t waiting,
               double done_below) {
  const auto months = static_cast<std::size_t>(std::max(cross.months, 0));
  if (waiting <= 0 || cross.draws.empty())
    return 0;
  std::vector<double> one_more(months + 1, 0.0);
  for (const auto& draw : cross.draws) {
    double later = 0;
    for (auto month = months; month-- > 0;) {
      later += draw[tray * months + month];
      one_more[month] +=
          -std::expm1(static_cast<double>(waiting) * std::log1p(-std::min(1.0, later)));
    }
  }
  const double limit = done_below * static_cast<double>(cross.draws.size());
  int kept = static_cast<int>(months);
  while (kept > 0 && one_more[static_cast<std::size_t>(kept) - 1] <= limit)
    --kept;
  return kept;
}

class Layout {
 public:
  explicit Layout(const ForecastInput& input)
      : input_(input),
        registers_(input.standing.registers), ways_{.calendar = Calendar(input.standing.today,
                                                                         input.standing.months,
                                                                         input.assumed.potting),
                                                    .sold_after = input.assumed.sold_after} {
    for (const auto& cross : input.sprouting)
      know(cross.cross, cross.taxon, cross.draws.size());
    for (std::size_t cross = 0; cross < input.sprouting.size(); ++cross)
      for (std::size_t tray = 0; tray < input.sprouting[cross].trays.size(); ++tray)
        sprouting_.insert_or_assign(input.sprouting[cross].trays[tray], std::pair{cross, tray});
  }

  void tray(const TrayStanding& tray);
  void group(const PlantsStanding& group);
  void sowing(const Sowing& sowing);
  Ways done();

 private:
  enum class Of { plants, tray, plants_in_tray };

  std::size_t series(Shown shown, const std::string& name);
  std::vector<Yield> standing(book::PotId pot, book::Light light,
                              std::optional<book::PlaceId> place, Of of);
  std::size_t spot(book::PotId pot, book::Light light, std::optional<book::PlaceId> place, Of of);
  std::size_t move(book::PotId from, book::PotId into, book::MixId mix);
  std::size_t ready(const std::string& cross);
  const std::vector<WayStep>& route(const book::Route& route);
  LotWay along(const book::Route& route, std::size_t step, book::PotId pot, const Code& code,
               const std::string& cross, Of now);
  void leave_out(LeftOut lot, book::TaxonId taxon, book::PotId pot, Of of);
  void sow(const Sowing& sowing, const book::Route& of_taxon, SownMonth month,
           const std::string& name);
  std::size_t know(const std::string& cross, book::TaxonId taxon, std::size_t draws);
  void tell_of_places();
  void tell_of_sowings();
  [[nodiscard]] std::optional<book::PlaceId> place_of(const Code& code) const {
    const auto found = input_.places.find(code);
    return found == input_.places.end() ? std::nullopt : std::optional(found->second);
  }
  [[nodiscard]] double time(Date day) const { return ways_.calendar.time(day); }

  const ForecastInput& input_;
  const book::Registers& registers_;
  Ways ways_;
  std::map<Code, std::pair<std::size_t, std::size_t>> sprouting_;
  std::map<std::tuple<book::PotId, book::Light, std::optional<book::PlaceId>, Of>, std::size_t>
      spots_;
  std::map<std::tuple<book::PotId, book::PotId, book::MixId>, std::size_t> moves_;
  std::map<std::string, std::size_t> ready_;
  std::map<book::RouteId, const std::vector<WayStep>*> routes_;
  std::map<std::pair<std::string, book::TaxonId>, std::size_t> crosses_;
  std::map<std::string, int> sown_alike_; ///< how many sowings of one name there are
  std::set<std::string> remarks_;
};

std::size_t Layout::series(Shown shown, const std::string& name) {
  const SeriesName wanted{shown, name};
  const auto found = std::ranges::find(ways_.series, wanted);
  if (found == ways_.series.end()) {
    ways_.series.push_back(wanted);
    ways_.always.push_back(0);
    return ways_.series.size() - 1;
  }
  return static_cast<std::size_t>(found - ways_.series.begin());
}

std::vector<Yield> Layout::standing(book::PotId id, book::Light light,
                                    std::optional<book::PlaceId> place, Of of) {
  const auto& pot = registers_.pot(id);
  std::vector<Yield> yields;
  if (of != Of::tray)
    yields.push_back({series(Shown::standing, pot.name), 1});
  if (of == Of::plants_in_tray)
    return yields; // the tray takes the room
  const double containers = of == Of::tray ? 1 : 1.0 / pot.cells;
  const double metres = containers * pot.square_metres();
  const double kilograms = containers * pot.litres * input_.assumed.wet_kilograms_a_litre;
  const auto class_name = std::string(book::word(light));
  yields.push_back({series(Shown::square_metres, class_name), metres});
  yields.push_back({series(Shown::load, class_name), kilograms}); // by m² once a run is done
  if (!place) {
    yields.push_back({series(Shown::unplaced_metres, class_name), metres});
    return yields;
  }
  const auto& stands = registers_.place(*place);
  yields.push_back({series(Shown::place_metres, stands.name), metres});
  if (stands.square_metres() > 0)
    yields.push_back({series(Shown::place_load, stands.name), kilograms / stands.square_metres()});
  return yields;
}

std::size_t Layout::spot(book::PotId pot, book::Light light, std::optional<book::PlaceId> place,
                         Of of) {
  const auto [found, fresh] = spots_.try_emplace({pot, light, place, of}, ways_.spots.size());
  if (fresh)
    ways_.spots.push_back({standing(pot, light, place, of)});
  return found->second;
}

std::size_t Layout::move(book::PotId from, book::PotId into, book::MixId mix_id) {
  const auto [found, fresh] = moves_.try_emplace({from, into, mix_id}, ways_.events.size());
  if (!fresh)
    return found->second;
  const auto& pot = registers_.pot(into);
  const auto& before = registers_.pot(from);
  const double litres = pot.litres / pot.cells - before.litres / before.cells;
  if (litres <= 0)
    remarks_.insert(phrase("'{}' holds no more than the root ball out of '{}': no mix is "
                           "counted for that move. Check the route.",
                           pot.name, before.name));
  const auto& mix = registers_.mix(mix_id);
  const double finished = std::max(0.0, litres) * (1 + mix.loss) / (1 - input_.assumed.settling);
  const double shares =
      std::accumulate(mix.parts.begin(), mix.parts.end(), 0.0,
                      [](double sum, const book::MixPart& part) { return sum + part.share; });
  Event event{{{series(Shown::into, pot.name), 1}, {series(Shown::mix, mix.name), finished}}};
  for (const auto& part : mix.parts)
    event.yields.push_back(
        {series(Shown::part, part.name), finished / (1 - mix.shrink) * part.share / shares});
  ways_.events.push_back(std::move(event));
  return found->second;
}

std::size_t Layout::ready(const std::string& cross) {
  const auto [found, fresh] = ready_.try_emplace(cross, ways_.events.size());
  if (fresh)
    ways_.events.push_back({{{series(Shown::ready, cross), 1}}});
  return found->second;
}

const std::vector<WayStep>& Layout::route(const book::Route& route) {
  const auto [found, fresh] = routes_.try_emplace(route.id, nullptr);
  if (!fresh)
    return *found->second;
  auto steps = std::make_unique<std::vector<WayStep>>();
  for (std::size_t at = 0; at < route.steps.size(); ++at) {
    const auto& step = route.steps[at];
    const double weight = input_.assumed.survival_weight;
    const auto survival_key = stream_key(fmt::format("survival {} {}", route.taxon.value, at));
    Survival survival{step.survival, 1 - step.survival, survival_key};
    if (std::isfinite(weight)) {
      const auto seen = input_.history.find({route.taxon, at});
      const auto history = seen == input_.history.end() ? StepHistory{} : seen->second;
      survival = {weight * step.survival + history.alive,
                  weight * (1 - step.survival) + history.died, survival_key};
    }
    WayStep way{ways_.survivals.size(), {}};
    ways_.survivals.push_back(survival);
    const auto leaving = at + 1 == route.steps.size() ? Leaving::when_ready : Leaving::by_potting;
    for (int month = 0; at > 0 && month < ways_.calendar.months(); ++month)
      way.leave.push_back(
          leave_months(ways_.calendar, step.months, month + 0.5, month + 0.5, leaving));
    steps->push_back(std::move(way));
  }
  found->second = steps.get();
  ways_.routes.push_back(std::move(steps));
  return *found->second;
}

LotWay Layout::along(const book::Route& of_taxon, std::size_t step, book::PotId pot,
                     const Code& code, const std::string& cross, Of now) {
  const auto& steps = route(of_taxon);
  const auto place = place_of(code);
  LotWay way;
  way.code = code;
  way.name = code.text();
  way.key = stream_key(way.name);
  way.first_step = step;
  auto before = pot;
  for (auto at = step; at < steps.size(); ++at) {
    const auto& here = of_taxon.steps[at];
    const bool first = at == step;
    const auto in = first ? pot : here.pot;
    const bool stays = place && (first || registers_.place(*place).light == here.light);
    way.steps.push_back(&steps[at]);
    way.spots.push_back(
        spot(in, here.light, stays ? place : std::nullopt, first ? now : Of::plants));
    way.events.push_back(first ? 0 : move(before, in, here.mix));
    before = in;
  }
  way.ready_event = ready(cross);
  return way;
}

void Layout::tray(const TrayStanding& tray) {
  const auto* of_taxon = registers_.route(tray.taxon);
  if (of_taxon == nullptr) {
    leave_out({tray.code, tray.waiting + tray.seedlings, phrase("its taxon has no route")},
              tray.taxon, tray.pot, Of::tray);
    return;
  }
  auto way = along(*of_taxon, 0, tray.pot, tray.code, tray.cross, Of::plants_in_tray);
  const auto leaving = of_taxon->steps.size() == 1 ? Leaving::when_ready : Leaving::by_potting;
  way.leave = leave_months(ways_.calendar, of_taxon->steps.front().months, time(tray.sown_on),
                           ways_.calendar.now(), leaving);
  way.plants = tray.seedlings;
  way.waiting = tray.waiting;
  way.tray_spot = spot(tray.pot, of_taxon->steps.front().light, place_of(tray.code), Of::tray);
  if (const auto found = sprouting_.find(tray.code); found != sprouting_.end()) {
    std::tie(way.cross, way.tray) = found->second;
    way.sprouts_until = std::min(kept_until(input_.sprouting[*way.cross], way.tray, tray.waiting,
                                            input_.assumed.tray_done_below),
                                 ways_.calendar.months());
  }
  ways_.lots.push_back(std::move(way));
}

void Layout::group(const PlantsStanding& group) {
  const auto* of_taxon = registers_.route(group.taxon);
  const auto step =
      of_taxon == nullptr ? std::nullopt : step_with(*of_taxon, registers_, group.pot);
  if (!step) {
    leave_out({group.code, group.plants,
               of_taxon == nullptr ? phrase("its taxon has no route")
                                   : phrase("'{}' is larger than every pot of its route",
                                            registers_.pot(group.pot).name)},
              group.taxon, group.pot, Of::plants);
    return;
  }
  const auto& here = of_taxon->steps[*step];
  if (here.pot != group.pot)
    remarks_.insert(phrase("{} stands in '{}', which is not on its route; it is taken to be "
                           "at the step of '{}'.",
                           group.code.text(), registers_.pot(group.pot).name,
                           registers_.pot(here.pot).name));
  auto way = along(*of_taxon, *step, group.pot, group.code, group.cross, Of::plants);
  way.leave =
      leave_months(ways_.calendar, here.months, time(group.since), ways_.calendar.now(),
                   *step + 1 == of_taxon->steps.size() ? Leaving::when_ready : Leaving::by_potting);
  way.plants = group.plants;
  ways_.lots.push_back(std::move(way));
}

std::size_t Layout::know(const std::string& cross, book::TaxonId taxon, std::size_t draws) {
  const auto [found, fresh] = crosses_.try_emplace({cross, taxon}, ways_.crosses.size());
  if (fresh || ways_.crosses.size() < input_.sprouting.size())
    ways_.crosses.push_back({draws, stream_key(fmt::format("cross {} {}", taxon.value, cross))});
  return found->second;
}

void Layout::sowing(const Sowing& sowing) {
  const auto* of_taxon = registers_.route(sowing.taxon);
  if (of_taxon == nullptr) {
    remarks_.insert(phrase("'{}' has no route: its seed to be sown is not in the plan.",
                           registers_.taxon(sowing.taxon).name));
    return;
  }
  // Random numbers know a thing by a name of its own, which no language changes.
  const auto known_by = sowing.code ? sowing.code->text() : fmt::format("seed of {}", sowing.cross);
  const auto alike = ++sown_alike_[known_by];
  const auto key = stream_key(fmt::format("sowing {} {}", known_by, alike));
  auto name = sowing.code ? sowing.code->text() : phrase("seed of {}", sowing.cross);
  if (alike > 1 && !sowing.code)
    name += fmt::format(" ({})", alike);
  ways_.sowings.push_back({sowing.draws.size(), key});
  for (auto& month : sown_months(sowing, ways_.calendar, input_.standing.today))
    sow(sowing, *of_taxon, std::move(month), name);
}

void Layout::sow(const Sowing& sowing, const book::Route& of_taxon, SownMonth month,
                 const std::string& name) {
  const auto& first = of_taxon.steps.front();
  auto way = along(of_taxon, 0, first.pot, Code(), sowing.cross, Of::plants_in_tray);
  way.code = sowing.code.value_or(Code());
  way.name = phrase("{}, sown in {}", name, iso_month(month.sown_on));
  way.key = stream_key(fmt::format("sown {} {}", ways_.sowings.back().key, month.sown_on.iso()));
  way.sowing = ways_.sowings.size() - 1;
  way.sown_in = month.month;
  way.cells = registers_.pot(first.pot).cells;
  const double sown = time(month.sown_on);
  way.leave = leave_months(ways_.calendar, first.months, sown, std::max(sown, ways_.calendar.now()),
                           of_taxon.steps.size() == 1 ? Leaving::when_ready : Leaving::by_potting);
  way.tray_spot = spot(first.pot, first.light, std::nullopt, Of::tray);
  // Of those runs in which it is made in this month.
  std::int64_t most = 0;
  std::int64_t trays = 0;
  std::int64_t made = 0;
  for (const auto seeds : month.seeds) {
    most = std::max(most, seeds);
    trays += way.trays_of(seeds);
    made += seeds > 0 ? 1 : 0;
  }
  const auto usual =
      std::max<std::int64_t>(1, (trays + made / 2) / std::max<std::int64_t>(1, made));
  const auto found = crosses_.find({sowing.cross, sowing.taxon});
  const auto* known = found != crosses_.end() && found->second < input_.sprouting.size()
                          ? &input_.sprouting[found->second]
                          : nullptr;
  auto sprouting = sprouting_of(input_, sowing, known, of_taxon, month.sown_on, usual);
  way.cross = know(sowing.cross, sowing.taxon, sprouting.draws.size());
  way.sprouts_until = std::min(kept_until(sprouting, 0, std::min<std::int64_t>(most, way.cells),
                                          input_.assumed.tray_done_below),
                               ways_.calendar.months());
  way.seeds = std::move(month.seeds);
  way.chances = std::move(sprouting.draws);
  ways_.lots.push_back(std::move(way));
}

void Layout::leave_out(LeftOut lot, book::TaxonId taxon, book::PotId pot, Of of) {
  const auto light = registers_.taxon(taxon).light.value;
  const double counted = of == Of::tray ? 1 : static_cast<double>(lot.count);
  for (const auto& yield : standing(pot, light, place_of(lot.code), of)) {
    if (ways_.series[yield.series].shown != Shown::standing)
      ways_.always[yield.series] += counted * yield.by_plant;
  }
  ways_.left_out.push_back(std::move(lot));
}

void Layout::tell_of_places() {
  std::set<book::PlaceId> used;
  for (const auto& [code, place] : input_.places)
    used.insert(place);
  for (const auto id : used)
    if (const auto& place = registers_.place(id); place.square_metres() <= 0)
      remarks_.insert(phrase("'{}' has no size, though lots stand there. Measure its length "
                             "and width, or say which bench of it they stand on.",
                             place.name));
  for (const auto& route : registers_.routes)
    for (const auto& step : route.steps) {
      const auto& pot = registers_.pot(step.pot);
      const bool any = std::ranges::any_of(
          registers_.places, [&](const book::Place& place) { return place.square_metres() > 0; });
      const bool fits = std::ranges::any_of(registers_.places, [&](const book::Place& place) {
        return std::min(place.length_mm, place.width_mm) >= std::min(pot.length_mm, pot.width_mm) &&
               std::max(place.length_mm, place.width_mm) >= std::max(pot.length_mm, pot.width_mm);
      });
      if (any && !fits)
        remarks_.insert(phrase("'{}' ({:g} × {:g} mm) is larger than every measured place. "
                               "Check the pot's measures or measure a larger place.",
                               pot.name, pot.length_mm, pot.width_mm));
    }
}

void Layout::tell_of_sowings() {
  std::map<SeedFrom, double> seeds;
  for (const auto& sowing : input_.sowings)
    seeds[sowing.from] += sowing.mean_seeds();
  const auto tell = [&](SeedFrom from, const char* text) {
    if (const auto found = seeds.find(from); found != seeds.end())
      remarks_.insert(fmt::format(fmt::runtime(phrase_of(text)), found->second));
  };
  tell(SeedFrom::at_hand,
       to_phrase("Counted in: {:.0f} seeds at hand that are judged filled, sown in the "
                 "next month in which you pot once they have ripened."));
  tell(SeedFrom::cone,
       to_phrase("Counted in: the seed of ripening cones, about {:.0f}; how much and when is "
                 "drawn."));
  tell(SeedFrom::told, to_phrase("Counted in: {:.0f} seeds that you say you will sow."));
  const auto sown =
      seeds.contains(SeedFrom::at_hand) ? std::llround(seeds.at(SeedFrom::at_hand)) : 0;
  if (const auto left = input_.standing.seeds_not_sown - sown; left > 0)
    remarks_.insert(not_sown_told(left));
}

Ways Layout::done() {
  for (const auto& [light, offered] : offered_square_metres(registers_.places))
    if (offered > 0)
      series(Shown::square_metres, std::string(book::word(light)));
  tell_of_places();
  tell_of_sowings();
  if (!ways_.left_out.empty())
    remarks_.insert(left_out_told(std::ssize(ways_.left_out)));
  remarks_.insert(input_.remarks.begin(), input_.remarks.end());
  ways_.remarks.assign(remarks_.begin(), remarks_.end());
  return std::move(ways_);
}

} // namespace

Ways ways_of(const ForecastInput& input) {
  Layout layout(input);
  for (const auto& tray : input.standing.trays)
    layout.tray(tray);
  for (const auto& group : input.standing.groups)
    layout.group(group);
  for (const auto& sowing : input.sowings)
    layout.sowing(sowing);
  return layout.done();
}

} // namespace coneline::plan
