// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/supposed.h"

#include "core/base/phrase.h"
#include "core/plan/fit.h"
#include "core/plan/forecast_pace.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace coneline::plan {

namespace {

using Told = Result<std::string>;

/// "March to May, July and October"
std::string listed(const std::vector<std::string>& texts) {
  std::string all;
  for (std::size_t at = 0; at < texts.size(); ++at)
    all += (at == 0 ? "" : at + 1 == texts.size() ? phrase(" and ") : ", ") + texts[at];
  return all;
}

/// "bark 4, sand 1"
std::string parts_words(const std::vector<book::MixPart>& parts) {
  std::string text;
  for (const auto& part : parts)
    text += phrase("{}{} {:g}", text.empty() ? "" : ", ", part.name, part.share);
  return text;
}

template <class Row>
std::string names_of(const std::vector<Row>& rows) {
  std::string text;
  for (const auto& row : rows)
    text += phrase("{}'{}'", text.empty() ? "" : ", ", row.name);
  return text.empty() ? phrase("none") : text;
}

template <class Row>
Fault no_such(const char* what, const std::string& name, const std::vector<Row>& rows) {
  return usage_fault(phrase("the book has no {} '{}'", phrase_of(what), name),
                     phrase("It has {}.", names_of(rows)));
}

/// Makes each kind of change to an input, and says it.
class Making {
 public:
  explicit Making(ForecastInput& input) : input_(input), registers_(input.standing.registers) {}

  Told operator()(const OtherSurvival& change);
  Told operator()(const OtherPace& change);
  Told operator()(const PlaceMore& change);
  Told operator()(const PlaceLess& change);
  Told operator()(const OtherMix& change);
  Told operator()(const OtherStepMix& change);
  Told operator()(const OtherRecipe& change);
  Told operator()(const NoCones&);
  Told operator()(const MoreSeed& change);
  Told operator()(const OtherPotting& change);
  Told operator()(const SoldAfter& change);

 private:
  Result<book::RouteStep*> step_of(const std::string& taxon, int step);
  [[nodiscard]] double reckoned(book::TaxonId taxon, std::size_t step, double share) const;
  template <class Takes>
  int take_pace_where(Takes takes, double factor);
  void take_out(book::PlaceId place);

  ForecastInput& input_;
  book::Registers& registers_;
};

Result<book::RouteStep*> Making::step_of(const std::string& name, int step) {
  const auto* taxon = book::named(registers_.taxa, name);
  if (taxon == nullptr)
    return refuse(usage_fault(phrase("the book has no taxon '{}'", name),
                              "Write its name as the book has it."));
  const auto route = std::ranges::find(registers_.routes, taxon->id, &book::Route::taxon);
  if (route == registers_.routes.end())
    return refuse(usage_fault(phrase("'{}' has no route", name), "Enter its route first."));
  if (step < 1 || static_cast<std::size_t>(step) > route->steps.size())
    return refuse(usage_fault(phrase("the route of '{}' has no step {}", name, step),
                              phrase("Its steps are 1 (the tray) to {}.", route->steps.size())));
  return &route->steps[static_cast<std::size_t>(step) - 1];
}

/// The mean that the plan takes for a step whose route says `share`.
double Making::reckoned(book::TaxonId taxon, std::size_t step, double share) const {
  const double weight = input_.assumed.survival_weight;
  const auto seen = input_.history.find({taxon, step});
  if (!std::isfinite(weight) || seen == input_.history.end())
    return share;
  const auto& [alive, died] = seen->second;
  return (weight * share + alive) / (weight + alive + died);
}

Told Making::operator()(const OtherSurvival& change) {
  auto step = step_of(change.taxon, change.step);
  if (!step)
    return refuse(step.error());
  if (!(change.share > 0 && change.share <= 1))
    return refuse(
        usage_fault(phrase("a survival of {}", change.share), "Give a share above 0, at most 1."));
  const double stood = (*step)->survival;
  (*step)->survival = change.share;
  const auto taxon = book::named(registers_.taxa, change.taxon)->id;
  const auto at = static_cast<std::size_t>(change.step) - 1;
  auto text =
      phrase("Of {} in '{}' (step {}) {:.3g} % live instead of {:.3g} %.", change.taxon,
             registers_.pot((*step)->pot).name, change.step, 100 * change.share, 100 * stood);
  const double now = reckoned(taxon, at, change.share);
  if (std::abs(now - change.share) >= 0.0005)
    text += phrase(" The book's own history weighs in: the plan reckons with {:.3g} % instead "
                   "of {:.3g} %.",
                   100 * now, 100 * reckoned(taxon, at, stood));
  return text;
}

/// Trays in the line of which `takes` says so; returns how many.
template <class Takes>
int Making::take_pace_where(Takes takes, double factor) {
  const Calendar calendar(input_.standing.today, input_.standing.months, input_.assumed.potting);
  int trays = 0;
  for (const auto& tray : input_.standing.trays) {
    if (!takes(tray))
      continue;
    for (auto& cross : input_.sprouting) {
      const auto found = std::ranges::find(cross.trays, tray.code);
      if (found == cross.trays.end())
        continue;
      ++trays;
      if (factor != 1)
        take_pace(cross, static_cast<std::size_t>(found - cross.trays.begin()), tray.sown_on,
                  calendar, factor);
    }
  }
  return trays;
}

Told Making::operator()(const OtherPace& change) {
  if (!(change.factor > 0 && change.factor <= 10))
    return refuse(usage_fault(phrase("{} times the time to come up", change.factor),
                              "Give a factor above 0, at most 10: 0.7 on a hot bench that saves "
                              "three tenths of the time."));
  const auto told = [&](const std::string& whose, int trays, std::size_t sowings) {
    return phrase("Seed {} takes {:g} times as long to come up from now on: {} trays and {} "
                  "sowings to come.",
                  whose, change.factor, trays, sowings);
  };
  if (const auto* taxon = book::named(registers_.taxa, change.of)) {
    const auto trays = take_pace_where(
        [&](const TrayStanding& tray) { return tray.taxon == taxon->id; }, change.factor);
    std::size_t sowings = 0;
    for (auto& sowing : input_.sowings)
      if (sowing.taxon == taxon->id) {
        sowing.pace *= change.factor;
        ++sowings;
      }
    return told(phrase("of {}", change.of), trays, sowings);
  }
  const auto* place = book::named(registers_.places, change.of);
  if (place == nullptr)
    return refuse(usage_fault(phrase("the book has neither a taxon nor a place '{}'", change.of),
                              "Write its name as the book has it."));
  const auto id = place->id;
  const auto stands_there = [&](const TrayStanding& tray) {
    const auto found = input_.places.find(tray.code);
    std::optional<book::PlaceId> at =
        found == input_.places.end() ? std::nullopt : std::optional(found->second);
    while (at && *at != id)
      at = registers_.place(*at).within;
    return at.has_value();
  };
  const auto trays = take_pace_where(stands_there, change.factor);
  if (trays == 0)
    return refuse(usage_fault(phrase("no tray stands in '{}'", change.of),
                              "Name the place where they stand, or a taxon."));
  return told(phrase("in '{}'", change.of), trays, 0);
}

Told Making::operator()(const PlaceMore& change) {
  constexpr double longest = 1e6;
  if (change.name.empty() || book::named(registers_.places, change.name) != nullptr)
    return refuse(usage_fault(change.name.empty()
                                  ? phrase("a place without a name")
                                  : phrase("there is a place '{}' already", change.name),
                              "Give the place that is to be built another name."));
  for (const double side : {change.length_mm, change.width_mm})
    if (!(side > 0 && side <= longest))
      return refuse(usage_fault(phrase("'{}' with a side of {} mm", change.name, side),
                                "Give length and width in millimetres, as 6000x1500."));
  book::Place place;
  place.id = {registers_.places.empty() ? 1 : registers_.places.back().id.value + 1};
  place.name = change.name;
  place.length_mm = change.length_mm;
  place.width_mm = change.width_mm;
  place.light = change.light;
  registers_.places.push_back(place);
  return phrase("A place more: '{}', {}, {:g} × {:g} mm, {:.2f} m².", change.name,
                book::said(change.light), change.length_mm, change.width_mm, place.square_metres());
}

void Making::take_out(book::PlaceId place) {
  std::vector<book::PlaceId> inside;
  for (const auto& other : registers_.places)
    if (other.within == place)
      inside.push_back(other.id);
  for (const auto id : inside)
    take_out(id);
  std::erase_if(input_.places, [&](const auto& stands) { return stands.second == place; });
  std::erase_if(registers_.places, [&](const auto& other) { return other.id == place; });
}

Told Making::operator()(const PlaceLess& change) {
  const auto* place = book::named(registers_.places, change.name);
  if (place == nullptr)
    return refuse(no_such(to_phrase("place"), change.name, registers_.places));
  const auto before = input_.places.size();
  const auto places = registers_.places.size();
  const auto of_it = place->square_metres();
  take_out(place->id);
  const auto within = places - registers_.places.size() - 1;
  return phrase_n(static_cast<std::int64_t>(before - input_.places.size()),
                  "Without '{1}' ({2:.2f} m²{3}); {0} lot that stands there needs another place.",
                  "Without '{1}' ({2:.2f} m²{3}); {0} lots that stand there need another place.",
                  change.name, of_it,
                  within == 0 ? ""
                              : phrase_n(static_cast<std::int64_t>(within),
                                         ", and {} place within it", ", and {} places within it"));
}

Told Making::operator()(const OtherMix& change) {
  const auto* pot = book::named(registers_.pots, change.pot);
  const auto* mix = book::named(registers_.mixes, change.mix);
  if (pot == nullptr)
    return refuse(no_such(to_phrase("pot"), change.pot, registers_.pots));
  if (mix == nullptr)
    return refuse(no_such(to_phrase("mix"), change.mix, registers_.mixes));
  int steps = 0;
  std::set<std::string> stood;
  for (auto& route : registers_.routes)
    for (auto& step : route.steps)
      if (step.pot == pot->id) {
        stood.insert(registers_.mix(step.mix).name);
        step.mix = mix->id;
        ++steps;
      }
  if (steps == 0)
    return refuse(
        usage_fault(phrase("no route comes to '{}'", change.pot), "Name a pot of a route."));
  std::vector<std::string> before;
  for (const auto& name : stood)
    before.push_back(fmt::format("'{}'", name));
  return phrase("'{}' is filled with '{}' instead of {}, in {} steps of routes.", change.pot,
                change.mix, listed(before), steps);
}

Told Making::operator()(const OtherStepMix& change) {
  auto step = step_of(change.taxon, change.step);
  if (!step)
    return refuse(step.error());
  const auto* mix = book::named(registers_.mixes, change.mix);
  if (mix == nullptr)
    return refuse(no_such(to_phrase("mix"), change.mix, registers_.mixes));
  const auto stood = registers_.mix((*step)->mix).name;
  (*step)->mix = mix->id;
  return phrase("{} is potted into '{}' (step {}) with '{}' instead of '{}'.", change.taxon,
                registers_.pot((*step)->pot).name, change.step, change.mix, stood);
}

Told Making::operator()(const OtherRecipe& change) {
  if (change.mix.empty() || change.parts.empty())
    return refuse(usage_fault("a mix without a name or without parts",
                              "Write its name and its parts, as bark=4,sand=1."));
  for (const auto& part : change.parts)
    if (!(part.share > 0 && std::isfinite(part.share)) ||
        std::ranges::count(change.parts, part.name, &book::MixPart::name) > 1)
      return refuse(usage_fault(phrase("'{}' with {} of '{}'", change.mix, part.share, part.name),
                                "Name each part once, with a share above 0."));
  if (change.shrink && !(*change.shrink >= 0 && *change.shrink < 1))
    return refuse(
        usage_fault(phrase("a shrink of {}", *change.shrink), "Give a share from 0 to below 1."));
  const auto found = std::ranges::find(registers_.mixes, change.mix, &book::Mix::name);
  if (found != registers_.mixes.end()) {
    const auto stood = parts_words(found->parts);
    found->parts = change.parts;
    found->shrink = change.shrink.value_or(found->shrink);
    return phrase("'{}' is made of {} instead of {}.", change.mix, parts_words(change.parts),
                  stood);
  }
  const auto last = registers_.mixes.empty() ? 0 : registers_.mixes.back().id.value;
  registers_.mixes.push_back(
      {book::MixId{last + 1}, change.mix, change.shrink.value_or(0), 0, {}, change.parts});
  return phrase("A mix more: '{}' is made of {}.", change.mix, parts_words(change.parts));
}

Told Making::operator()(const NoCones&) {
  double seeds = 0;
  const auto cones = std::ranges::count(input_.sowings, SeedFrom::cone, &Sowing::from);
  for (const auto& sowing : input_.sowings)
    seeds += sowing.from == SeedFrom::cone ? sowing.mean_seeds() : 0;
  if (cones == 0)
    return refuse(usage_fault("the present plan counts on no cones",
                              "Count the seed of ripening cones in, then suppose there are none."));
  std::erase_if(input_.sowings, [](const Sowing& sowing) { return sowing.from == SeedFrom::cone; });
  return phrase_n(static_cast<std::int64_t>(cones),
                  "No cones: about {1:.0f} seeds of {0} cone are not sown.",
                  "No cones: about {1:.0f} seeds of {0} cones are not sown.", seeds);
}

Told Making::operator()(const MoreSeed& change) {
  auto sowing = told_sowing(input_, change.cross, change.seeds, change.month);
  if (!sowing)
    return refuse(sowing.error());
  input_.sowings.push_back(std::move(*sowing));
  return phrase_n(change.seeds, "{} seed of {} is sown in {} besides.",
                  "{} seeds of {} are sown in {} besides.", change.cross, month_name(change.month));
}

Told Making::operator()(const OtherPotting& change) {
  if (std::ranges::none_of(change.months, [](bool potted) { return potted; }))
    return refuse(usage_fault("no month of the year is a potting month",
                              "Name at least one month in which you pot."));
  const auto stood = potting_words(input_.assumed.potting);
  input_.assumed.potting = change.months;
  return phrase("Potting in {} instead of {}.", potting_words(change.months), stood);
}

Told Making::operator()(const SoldAfter& change) {
  if (change.months && (*change.months < 0 || *change.months > 1200))
    return refuse(
        usage_fault(phrase("sold after {} months", *change.months), "Give 0 to 1200 months."));
  const auto words = [](const std::optional<int>& months) {
    return months ? phrase_n(*months, "leave {} month after they are ready",
                             "leave {} months after they are ready")
                  : phrase("stay in their pots");
  };
  const auto stood = words(input_.assumed.sold_after);
  input_.assumed.sold_after = change.months;
  return phrase("Ready plants {} (in the present plan they {}).", words(change.months), stood);
}

} // namespace

std::string potting_words(const std::array<bool, 12>& months) {
  if (std::ranges::all_of(months, [](bool potted) { return potted; }))
    return phrase("every month of the year");
  const auto name = [](std::size_t month) { return month_said(static_cast<unsigned>(month) + 1); };
  std::vector<std::string> runs;
  for (std::size_t month = 0; month < 12; ++month) {
    if (!months.at(month) || months.at((month + 11) % 12))
      continue; // no run begins here
    std::size_t last = month;
    while (months.at((last + 1) % 12))
      last = (last + 1) % 12;
    runs.push_back(last == month ? name(month) : phrase("{} to {}", name(month), name(last)));
  }
  return listed(runs);
}

Result<Sowing> told_sowing(const ForecastInput& input, const std::string& cross, std::int64_t seeds,
                           Date month) {
  constexpr std::int64_t most = 1'000'000;
  if (seeds < 1 || seeds > most)
    return refuse(usage_fault(phrase("a sowing of {} seeds", seeds), "Give 1 to 1 000 000 seeds."));
  const auto today = input.standing.today;
  if (const int ahead = months_between(today, month); ahead < 0 || ahead >= input.standing.months)
    return refuse(usage_fault(
        phrase("{} is no month of this plan", month_name(month)),
        phrase("It runs from {} to {}.", month_name(today),
               month_name(today.first_of_month().plus_months(input.standing.months - 1)))));
  Sowing sowing;
  sowing.cross = cross;
  sowing.draws = {{std::max(today, month.first_of_month()), seeds}};
  sowing.basis = "as told";
  const auto is_it = [&](const auto& known) { return known.cross == cross; };
  const auto take = [&](const auto& list) {
    const auto found = std::ranges::find_if(list, is_it);
    if (found != list.end())
      sowing.taxon = found->taxon;
    return found != list.end();
  };
  if (take(input.sprouting) || take(input.standing.trays) || take(input.standing.groups) ||
      take(input.sowings))
    return sowing;
  const auto* taxon = book::named(input.standing.registers.taxa, cross);
  if (taxon == nullptr)
    return refuse(usage_fault(phrase("the book has no cross '{}'", cross),
                              "Write the cross as the book names it, or a taxon for a cross that "
                              "is not in the book yet."));
  sowing.taxon = taxon->id;
  return sowing;
}

Result<Supposed> suppose(const ForecastInput& present, const Supposition& supposition) {
  Supposed supposed{present, {}};
  Making making(supposed.input);
  for (const auto& change : supposition) {
    auto told = std::visit(making, change);
    if (!told)
      return refuse(told.error());
    supposed.told.push_back(std::move(*told));
  }
  if (auto can = can_be_planned(supposed.input); !can)
    return refuse(can.error());
  return supposed;
}

} // namespace coneline::plan
