// SPDX-License-Identifier: GPL-3.0-or-later
// target: seed to sow, cones and pollinations for so many plants of a cross by a month.
#include "core/commands/commands.h"
#include "core/commands/forecast_options.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"
#include "core/plan/fit.h"
#include "core/plan/target.h"
#include "core/report/forecast_input.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct Asked {
  ForecastOptions plan;
  std::string cross;
  std::string taxon;
  std::string pot;
  std::string by;
  std::int64_t plants = 0;
  double assurance = 0.9;
  double seeds_a_cone = 0;
  double cone_gives = 0.8;
  std::int64_t passes = 3;
};

/// The taxon of a cross that is in the line or in store, or the one that was named.
Result<book::TaxonId> taxon_of(const Asked& asked, const plan::ForecastInput& input) {
  const auto& standing = input.standing;
  if (!asked.taxon.empty()) {
    const auto* taxon = book::named(standing.registers.taxa, asked.taxon);
    if (taxon == nullptr)
      return refuse(usage_fault(fmt::format("the book has no taxon '{}'", asked.taxon),
                                "Write its name as the book has it."));
    return taxon->id;
  }
  for (const auto& tray : standing.trays)
    if (tray.cross == asked.cross)
      return tray.taxon;
  for (const auto& group : standing.groups)
    if (group.cross == asked.cross)
      return group.taxon;
  return refuse(usage_fault(fmt::format("nothing of '{}' is in the line", asked.cross),
                            "Write the cross as the book names it, or name its --taxon as well."));
}

Result<plan::Target> target_of(const Asked& asked, const plan::ForecastInput& input) {
  const auto taxon = taxon_of(asked, input);
  if (!taxon)
    return refuse(taxon.error());
  const auto* pot = book::named(input.standing.registers.pots, asked.pot);
  if (pot == nullptr)
    return refuse(usage_fault(fmt::format("the book has no pot '{}'", asked.pot),
                              "Write its name as the book has it."));
  const auto by = Date::parse(asked.by + "-01");
  if (!by)
    return refuse(usage_fault(fmt::format("--by '{}' is no month", asked.by),
                              "Write a month such as 2029-10."));
  return plan::Target{asked.cross, *taxon, pot->id, asked.plants, *by, asked.assurance};
}

struct Needed {
  std::int64_t seeds = 0;
  std::int64_t at_hand = 0; ///< judged filled and unsorted
  std::int64_t lacking = 0;
  std::optional<plan::ConesNeeded> cones;
};

Result<Needed> needed(const Asked& asked, const plan::TargetPlan& plan,
                      const report::SeedAtHand& seed) {
  Needed needed;
  needed.seeds = plan.sowings[*plan.latest].seeds.value();
  needed.at_hand = seed.judged_filled + seed.unsorted;
  needed.lacking = std::max<std::int64_t>(0, needed.seeds - needed.at_hand);
  if (asked.seeds_a_cone > 0) {
    const auto cones =
        plan::cones_for(needed.lacking, asked.seeds_a_cone, asked.cone_gives, asked.assurance);
    if (!cones)
      return refuse(cones.error());
    needed.cones = *cones;
  }
  return needed;
}

std::optional<std::string> iso(const std::optional<Date>& day) {
  return day ? std::optional(day->iso()) : std::nullopt;
}
Json json_of(const std::optional<std::string>& text) {
  return text ? Json(*text) : Json(nullptr);
}

Json json_of(const plan::TargetPlan& plan, const std::optional<Needed>& needed,
             const Asked& asked) {
  Json json{{"cross", asked.cross},
            {"pot", asked.pot},
            {"plants", asked.plants},
            {"by", asked.by},
            {"assurance", asked.assurance},
            {"in_the_line",
             {{"low", plan.here.low}, {"middle", plan.here.middle}, {"high", plan.here.high}}},
            {"reached_without_sowing", plan.alone},
            {"sowings", Json::array()},
            {"sow_by", plan.latest ? Json(plan.sowings[*plan.latest].month.iso().substr(0, 7))
                                   : Json(nullptr)},
            {"harvest_by", json_of(iso(plan.harvest_by))},
            {"pollinate_by", json_of(iso(plan.pollinate_by))}};
  for (const auto& sowing : plan.sowings)
    json["sowings"].push_back(
        {{"month", sowing.month.iso().substr(0, 7)},
         {"share", sowing.share},
         {"seeds", sowing.seeds ? Json(*sowing.seeds) : Json(nullptr)},
         {"assured", sowing.assured ? Json(*sowing.assured) : Json(nullptr)}});
  json["seed_at_hand"] = needed ? Json(needed->at_hand) : Json(nullptr);
  json["seed_lacking"] = needed ? Json(needed->lacking) : Json(nullptr);
  const bool cones = needed && needed->cones;
  json["cones_with_seed"] = cones ? Json(needed->cones->with_seed) : Json(nullptr);
  json["cones_to_pollinate"] = cones ? Json(needed->cones->to_pollinate) : Json(nullptr);
  json["pollinations"] = cones ? Json(needed->cones->to_pollinate * asked.passes) : Json(nullptr);
  return json;
}

std::string dates_text(const plan::TargetPlan& plan, Date today) {
  std::string text;
  const auto add = [&](const char* what, const std::optional<Date>& day) {
    if (day)
      text += fmt::format("{} by {}{}.\n", what, day->iso(),
                          *day < today ? ": that day is over, so the seed has to be there already"
                                       : "");
  };
  add("The cone is harvested", plan.harvest_by);
  add("It is pollinated", plan.pollinate_by);
  return text;
}

std::string table_of(const plan::TargetPlan& plan, const std::optional<Needed>& needed,
                     const Asked& asked, Date today) {
  std::string text = fmt::format(
      "{} plants of {} in '{}' by the end of {}, {:g} % sure\n"
      "Of what is in the line {:.0f} - {:.0f} - {:.0f} will be there (10 - 50 - 90 %); that alone "
      "reaches it in {:.0f} of 100 futures.\n",
      asked.plants, asked.cross, asked.pot, plan::month_name(plan.target.by), 100 * asked.assurance,
      plan.here.low, plan.here.middle, plan.here.high, 100 * plan.alone);
  if (!plan.latest)
    return text + "No sowing from today on reaches it: choose a later month, a smaller pot, fewer "
                  "plants or less assurance.\n";
  Table table({"sow in", "gets there in time", "seeds to sow"});
  for (const auto& sowing : plan.sowings)
    table.row({sowing.month.iso().substr(0, 7), fmt::format("{:.1f} %", 100 * sowing.share),
               sowing.seeds ? std::to_string(*sowing.seeds) : "too late"});
  text += table.text();
  if (needed)
    text += fmt::format("At the latest sowing {} seeds: {} are at hand, {} are lacking.\n",
                        needed->seeds, needed->at_hand, needed->lacking);
  if (needed && needed->cones)
    text += fmt::format("That takes {} cones with {:g} seeds each: pollinate {}, in {} "
                        "applications.\n",
                        needed->cones->with_seed, asked.seeds_a_cone, needed->cones->to_pollinate,
                        needed->cones->to_pollinate * asked.passes);
  return text + dates_text(plan, today) +
         "Caution: seed is poisonous. Wear gloves; keep pets, livestock and children away.\n";
}

Result<Answer> run(const Asked& asked, std::ostream& messages) {
  const auto input = asked.plan.input();
  if (!input)
    return refuse(input.error());
  const auto target = target_of(asked, *input);
  if (!target)
    return refuse(target.error());
  auto runs = asked.plan.wanted(messages);
  runs.go_on = {}; // many short forecasts; none takes long
  const auto plan = plan::plan_target(*input, *target, runs);
  if (!plan)
    return refuse(plan.error());
  auto book = asked.plan.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  const auto at_hand = book->read([&](store::Reading& reading) {
    return report::seed_at_hand(reading, input->standing.registers, input->standing.today);
  });
  if (!at_hand)
    return refuse(at_hand.error());
  std::optional<Needed> seed;
  if (plan->latest) {
    const auto found = at_hand->find({asked.cross, target->taxon});
    const auto counted =
        needed(asked, *plan, found == at_hand->end() ? report::SeedAtHand{} : found->second);
    if (!counted)
      return refuse(counted.error());
    seed = *counted;
  }
  return Answer{json_of(*plan, seed, asked), table_of(*plan, seed, asked, input->standing.today)};
}

} // namespace

void add_target(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("target", "Seed, cones and latest days for so many plants by a month",
                           [asked, &line] { return run(*asked, line.messages()); });
  asked->plan.add_to(command, 36);
  command.add_option("--cross", asked->cross, "The cross as the book names it")->required();
  command.add_option("--taxon", asked->taxon, "Its taxon, where nothing of it is in the line");
  command.add_option("--pot", asked->pot, "The pot they are to be in, or further on")->required();
  command.add_option("--by", asked->by, "At the end of this month, as 2029-10")->required();
  whole_option(command, "--plants", asked->plants, "How many plants")->required();
  real_option(command, "--assurance", asked->assurance, "How sure, 0.9 unless said");
  real_option(command, "--seeds-a-cone", asked->seeds_a_cone, "Seeds that a good cone gives");
  real_option(command, "--cone-gives", asked->cone_gives,
              "Share of pollinated cones that give seed; 0.8 unless said (common practice)");
  whole_option(command, "--passes", asked->passes,
               "Applications to a cone while it is loose; 3 unless said (common practice)");
}

} // namespace coneline::commands
