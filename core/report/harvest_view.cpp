// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/harvest_view.h"

#include "core/base/phrase.h"
#include "core/stats/opening.h"
#include "core/stats/probability.h"
#include "core/work/cautions.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::report {

namespace {

using work::HarvestTable;

constexpr double further_cuts = 10;

PartView part_view(const work::JudgedPart& part, const stats::Filled& filled, double assurance) {
  PartView view{part, filled, 0, {}};
  if (part.seeds > 0)
    view.open_for_tenth =
        stats::seeds_to_open(part.seeds, (part.seeds + 9) / 10, assurance).value_or(part.seeds);
  if (filled.estimate && part.seeds > 0)
    view.filled_by_opening = std::min(further_cuts, static_cast<double>(part.on_hand)) *
                             *filled.estimate / static_cast<double>(part.seeds);
  return view;
}

/// Mix and bench that one seed takes until its seedling is potted.
std::optional<double> seed_cost(const GrowersFigures& figures, const book::Registers& registers,
                                book::TaxonId taxon) {
  if (figures.seed_cost)
    return figures.seed_cost;
  const auto* route = registers.route(taxon);
  if (route == nullptr || route->steps.empty() || !figures.litre_price || !figures.bench_price)
    return std::nullopt;
  const auto& step = route->steps.front();
  const auto& tray = registers.pot(step.pot);
  const double litres = tray.litres / tray.cells;
  const double square_metres = tray.square_metres() / tray.cells;
  return litres * *figures.litre_price +
         square_metres * step.months.middle() * *figures.bench_price;
}

struct PlantOfFilled {
  double middle = 0;
  stats::Interval range;
};

/// Coming up, as the book's own seed did or else as the route has it, and living through the pots.
std::optional<PlantOfFilled> plant_of_filled(const work::FloatHistory& history,
                                             const book::Registers& registers) {
  const auto* route = registers.route(history.taxon);
  if (route == nullptr)
    return std::nullopt;
  double survival = 1;
  for (const auto& step : route->steps)
    survival *= step.survival;
  if (history.sank.tried > 0) {
    const auto& up = history.learned.filled_comes_up;
    return PlantOfFilled{up.middle * survival, {up.range.low * survival, up.range.high * survival}};
  }
  // None of the grower's own seed yet: half to one and a half of the route's figure (common
  // practice, no source).
  const double middle = route->germination * survival;
  return PlantOfFilled{middle, {middle / 2, std::min(1.0, middle * 1.5)}};
}

plan::FloatKnown known(book::FloatTest test) {
  switch (test) {
  case book::FloatTest::reliable:
    return plan::FloatKnown::trusted;
  case book::FloatTest::unreliable:
    return plan::FloatKnown::not_trusted;
  case book::FloatTest::unknown:
    break;
  }
  return plan::FloatKnown::unknown;
}

/// Filled ones among the floaters on hand: from those cut open, or from the taxon's history.
void fill_in_filled(plan::FloatersAsked& asked, const HarvestView& view) {
  const auto& part = view.table.empty;
  const auto on_hand = static_cast<double>(part.on_hand);
  const auto gone = static_cast<double>(part.seeds - part.opened - part.on_hand);
  const auto& filled = view.judged.floated;
  const auto left = [&](double of_part) {
    return std::clamp(of_part - static_cast<double>(part.opened_filled), 0.0, on_hand);
  };
  if (part.opened > 0) {
    asked.filled_low = std::max(0.0, left(static_cast<double>(filled.low)) - gone);
    asked.filled_high = left(static_cast<double>(filled.high));
    asked.filled_middle =
        std::clamp(left(filled.estimate.value_or(0)), asked.filled_low, asked.filled_high);
    return;
  }
  const auto& learned = view.history.learned.floated_filled;
  asked.filled_low = learned.range.low * on_hand;
  asked.filled_middle = learned.middle * on_hand;
  asked.filled_high = learned.range.high * on_hand;
}

Result<void> decide(HarvestView& view, const book::Registers& registers,
                    const HarvestAsked& asked) {
  const auto& part = view.table.empty;
  if (part.on_hand == 0) {
    view.decision_told = phrase("No floaters on the table.");
    return {};
  }
  view.seed_cost = seed_cost(asked.figures, registers, view.history.taxon);
  const auto plant = plant_of_filled(view.history, registers);
  if (!plant) {
    view.decision_told = phrase("For the floaters' worth the taxon needs a route.");
    return {};
  }
  if (!asked.figures.plant_worth || !view.seed_cost) {
    view.decision_told =
        phrase("Say what a plant is worth and what a sown seed costs (or a litre of "
               "mix and a square metre of bench a month), and the break-even is "
               "reckoned.");
    return {};
  }
  plan::FloatersAsked floaters;
  floaters.seeds = part.on_hand;
  floaters.opened = part.opened;
  floaters.plant_of_filled = plant->range;
  floaters.plant_of_filled_middle = plant->middle;
  floaters.worth = *asked.figures.plant_worth;
  floaters.cost = *view.seed_cost;
  floaters.keep_cost = asked.figures.keep_cost;
  floaters.assurance = asked.assurance;
  floaters.known = known(view.float_test);
  fill_in_filled(floaters, view);
  auto decision = plan::decide_on_floaters(floaters);
  if (!decision)
    return refuse(decision.error());
  view.decision = *decision;
  view.decision_told = decision->why;
  return {};
}

std::string soak_step(const HarvestTable& table, Date today) {
  if (!table.soaks_until || *table.soaks_until < today || !table.floated.empty())
    return {};
  return *table.soaks_until == today
             ? phrase("They have soaked: take them out and float them.")
             : phrase("They soak until {}: change the water daily, float them then.",
                      table.soaks_until->said());
}

std::string next_step(const HarvestView& view, Date today, double assurance) {
  const auto& table = view.table;
  if (table.on_hand() == 0)
    return phrase("Nothing of it is left on the table.");
  if (!table.cleaned)
    return phrase("Take the fleshy coat off and soak the seed; put down what is lost.");
  if (auto soak = soak_step(table, today); !soak.empty())
    return soak;
  if (table.unsorted > 0)
    return phrase("Float the {} unsorted seeds: count what sinks and what floats.", table.unsorted);
  if (table.test == book::SeedTest::floating && table.floated.size() == 1 && !table.soaks_until &&
      table.empty.on_hand > 0)
    return phrase(
        "Dry seed floats falsely: soak the floaters for a day or more and float them again.");
  if (table.empty.on_hand > 0 && table.empty.opened == 0)
    return phrase("Cut some floaters open: {} show a tenth filled {:.0f} times in 100.",
                  view.floated.open_for_tenth, 100 * assurance);
  if (table.filled.on_hand > 0 && table.filled.opened == 0)
    return phrase("Cut a few of those judged filled open too, so that the batch can be reckoned.");
  if (table.empty.on_hand > 0 && view.decision)
    return view.decision->why;
  return table.kept ? phrase("Sow, or look at the stored seed again when it is due.")
                    : phrase("Store them to ripen on, or sow.");
}

} // namespace

GrowersFigures figures_in(const book::Registers& registers) {
  const auto kept = [&](const char* name) -> std::optional<double> {
    const auto* found = book::named(registers.figures, name);
    return found != nullptr ? std::optional(found->value) : std::nullopt;
  };
  return {kept(book::figure::plant_worth), kept(book::figure::seed_cost),
          kept(book::figure::litre_price), kept(book::figure::bench_price),
          kept(book::figure::keep_cost).value_or(0)};
}

Result<HarvestGround> harvest_ground(store::Reading& reading, const Code& batch, Date today) {
  HarvestGround ground;
  ground.registers = reading.registers();
  ground.today = today;
  auto table = work::harvest_table(reading, ground.registers, batch, today);
  if (!table)
    return refuse(table.error());
  const auto& taxon = ground.registers.taxon(table->origin.taxon_id).name;
  auto history = work::float_history(reading, ground.registers, taxon, today);
  if (!history)
    return refuse(history.error());
  ground.table = std::move(*table);
  ground.history = std::move(*history);
  return ground;
}

Result<HarvestView> harvest_view(const HarvestGround& ground, const HarvestAsked& asked) {
  if (auto is = stats::inside_0_and_1(asked.assurance, "assurance"); !is)
    return refuse(is.error());
  HarvestView view;
  view.table = ground.table;
  view.history = ground.history;
  view.float_test = ground.history.now.value;
  view.float_source = ground.history.now.source;
  if (asked.counting)
    if (auto counted = view.table.add(*asked.counting); !counted)
      return refuse(counted.error());
  auto judged = view.table.judged(asked.confidence);
  if (!judged)
    return refuse(judged.error());
  view.judged = *judged;
  view.sank = part_view(view.table.filled, judged->sank, asked.assurance);
  view.floated = part_view(view.table.empty, judged->floated, asked.assurance);
  if (auto decided = decide(view, ground.registers, asked); !decided)
    return refuse(decided.error());
  view.next = next_step(view, ground.today, asked.assurance);
  view.cautions = {phrase_of(work::caution::poison)};
  return view;
}

} // namespace coneline::report
