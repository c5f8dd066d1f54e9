// SPDX-License-Identifier: GPL-3.0-or-later
// target: seed to sow, cones and pollinations for so many plants of a cross by a month.
#include "core/base/month.h"
#include "core/base/near_words.h"
#include "core/commands/commands.h"
#include "core/commands/forecast_options.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"
#include "core/plan/fit.h"
#include "core/plan/target.h"
#include "core/report/targets.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

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

struct CrossMeant {
  std::string name;
  book::TaxonId taxon;
};

std::vector<CrossMeant> crosses_in_line(const plan::NeedsInput& standing) {
  std::vector<CrossMeant> crosses;
  for (const auto& tray : standing.trays)
    crosses.push_back({tray.cross, tray.taxon});
  for (const auto& group : standing.groups)
    crosses.push_back({group.cross, group.taxon});
  return crosses;
}

/// A cross typed with the letter of its sign.
std::string with_sign(std::string name) {
  const std::string letter = " x ";
  const std::string sign = " × ";
  for (auto at = name.find(letter); at != std::string::npos; at = name.find(letter, at))
    name.replace(at, letter.size(), sign);
  return name;
}

/// A cross that is in the line, or one of the taxon that was named.
Result<CrossMeant> cross_meant(const Asked& asked, const plan::ForecastInput& input) {
  const auto& standing = input.standing;
  const auto crosses = crosses_in_line(standing);
  auto known = std::ranges::find(crosses, asked.cross, &CrossMeant::name);
  if (known == crosses.end())
    known = std::ranges::find(crosses, with_sign(asked.cross), &CrossMeant::name);
  if (!asked.taxon.empty()) {
    const auto* taxon = book::named(standing.registers.taxa, asked.taxon);
    if (taxon == nullptr)
      return refuse(usage_fault(fmt::format("the book has no taxon '{}'", asked.taxon),
                                "Write its name as the book has it."));
    return CrossMeant{known == crosses.end() ? asked.cross : known->name, taxon->id};
  }
  if (known != crosses.end())
    return *known;
  std::set<std::string> names;
  for (const auto& cross : crosses)
    names.insert(cross.name);
  const auto near = near_words(with_sign(asked.cross), {names.begin(), names.end()});
  return refuse(fault(
      fmt::format("nothing of '{}' is in the line", asked.cross),
      near.empty() ? "Write the cross as the book names it, or name its --taxon as well."
                   : fmt::format("Is '{}' meant? Else name its --taxon as well.", near.front())));
}

Result<plan::Target> target_of(const Asked& asked, const plan::ForecastInput& input) {
  const auto cross = cross_meant(asked, input);
  if (!cross)
    return refuse(cross.error());
  const auto* pot = book::named(input.standing.registers.pots, asked.pot);
  if (pot == nullptr)
    return refuse(usage_fault(fmt::format("the book has no pot '{}'", asked.pot),
                              "Write its name as the book has it."));
  const auto by = Date::parse(asked.by + "-01");
  if (!by)
    return refuse(usage_fault(fmt::format("--by '{}' is no month", asked.by),
                              "Write a month such as 2029-10."));
  return plan::Target{{}, cross->name, cross->taxon, pot->id, asked.plants, *by, asked.assurance};
}

std::optional<std::string> iso(const std::optional<Date>& day) {
  return day ? std::optional(day->iso()) : std::nullopt;
}
Json json_of(const std::optional<std::string>& text) {
  return text ? Json(*text) : Json(nullptr);
}

Json json_of(const report::TargetTold& told, const Asked& asked) {
  const auto& [plan, needed, cone] = told;
  Json json{
      {"cross", plan.target.cross},
      {"pot", asked.pot},
      {"plants", asked.plants},
      {"by", asked.by},
      {"assurance", asked.assurance},
      {"in_the_line",
       {{"low", plan.here.low}, {"middle", plan.here.middle}, {"high", plan.here.high}}},
      {"reached_without_sowing", plan.alone},
      {"sowings", Json::array()},
      {"sow_by", plan.latest ? Json(iso_month(plan.sowings[*plan.latest].month)) : Json(nullptr)},
      {"harvest_by", json_of(iso(plan.harvest_by))},
      {"pollinate_by", json_of(iso(plan.pollinate_by))}};
  for (const auto& sowing : plan.sowings)
    json["sowings"].push_back(
        {{"month", iso_month(sowing.month)},
         {"share", sowing.share},
         {"seeds", sowing.seeds ? Json(*sowing.seeds) : Json(nullptr)},
         {"assured", sowing.assured ? Json(*sowing.assured) : Json(nullptr)}});
  json["seed_at_hand"] = needed ? Json(needed->at_hand) : Json(nullptr);
  json["seed_lacking"] = needed ? Json(needed->lacking) : Json(nullptr);
  const bool cones = needed && needed->cones;
  json["cones_with_seed"] = cones ? Json(needed->cones->with_seed) : Json(nullptr);
  json["cones_to_pollinate"] = cones ? Json(needed->cones->to_pollinate) : Json(nullptr);
  json["pollinations"] = cones ? Json(needed->cones->to_pollinate * cone.passes) : Json(nullptr);
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

std::string table_of(const report::TargetTold& told, const Asked& asked, Date today) {
  const auto& [plan, seed, cone] = told;
  std::string text = fmt::format(
      "{} plants of {} in '{}' by the end of {}, {:g} % sure\n"
      "Of what is in the line {:.0f} - {:.0f} - {:.0f} will be there (10 - 50 - 90 %); that alone "
      "reaches it in {:.0f} of 100 futures.\n",
      asked.plants, plan.target.cross, asked.pot, plan::month_name(plan.target.by),
      100 * asked.assurance, plan.here.low, plan.here.middle, plan.here.high, 100 * plan.alone);
  if (!plan.latest)
    return text + "No sowing from today on reaches it: choose a later month, a smaller pot, fewer "
                  "plants or less assurance.\n";
  Table table({"sow in", "gets there in time", "seeds to sow"});
  for (const auto& sowing : plan.sowings)
    table.row({iso_month(sowing.month), fmt::format("{:.1f} %", 100 * sowing.share),
               sowing.seeds ? std::to_string(*sowing.seeds) : "too late"});
  text += table.text();
  if (seed && seed->seeds == 0)
    return text + "Nothing has to be sown for it.\n";
  if (seed)
    text += fmt::format("At the latest sowing {} seeds: {} are at hand, {} are lacking.\n",
                        seed->seeds, seed->at_hand, seed->lacking);
  if (seed && seed->cones && seed->lacking > 0)
    text += fmt::format("That takes {} cones with {:.0f} seeds each{}: pollinate {}, in {} "
                        "applications.\n",
                        seed->cones->with_seed, cone.seeds,
                        cone.source.empty() ? "" : " (" + cone.source + ")",
                        seed->cones->to_pollinate, seed->cones->to_pollinate * cone.passes);
  return text + dates_text(plan, today) +
         "Caution: seed is poisonous. Wear gloves; keep pets, livestock and children away.\n";
}

/// As asked, with what the book's own cones gave where no number was.
Result<report::ConeGives> cone_of(store::Book& book, const Asked& asked,
                                  const plan::ForecastInput& input, book::TaxonId taxon) {
  report::ConeGives cone;
  if (asked.seeds_a_cone > 0) {
    cone.seeds = asked.seeds_a_cone;
  } else {
    const auto seen = book.read([&](store::Reading& reading) {
      return report::cone_gives(reading, input.standing.registers, taxon, input.standing.today);
    });
    if (!seen)
      return refuse(seen.error());
    cone = *seen;
  }
  cone.succeeds = asked.cone_gives;
  cone.passes = static_cast<int>(asked.passes);
  return cone;
}

using SeedHeld = std::map<std::pair<std::string, book::TaxonId>, report::SeedAtHand>;

Result<SeedHeld> seed_held(store::Book& book, const plan::ForecastInput& input) {
  return book.read([&](store::Reading& reading) {
    return report::seed_at_hand(reading, input.standing.registers, input.standing.today);
  });
}

Result<Answer> run(const Asked& asked, std::ostream& messages) {
  const auto input = asked.plan.input();
  if (!input)
    return refuse(input.error());
  const auto target = target_of(asked, *input);
  if (!target)
    return refuse(target.error());
  auto book = asked.plan.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  const auto cone = cone_of(*book, asked, *input, target->taxon);
  if (!cone)
    return refuse(cone.error());
  const auto held = seed_held(*book, *input);
  if (!held)
    return refuse(held.error());
  auto runs = asked.plan.wanted(messages);
  runs.go_on = {}; // many short forecasts; none takes long
  const auto told = report::told_of(*input, *target, *held, *cone, runs);
  if (!told)
    return refuse(told.error());
  return Answer{json_of(*told, asked), table_of(*told, asked, input->standing.today)};
}

// --- the targets that the book keeps ---

Result<Answer> enter_target(const Asked& asked) {
  const auto input = asked.plan.input();
  if (!input)
    return refuse(input.error());
  const auto target = target_of(asked, *input);
  if (!target)
    return refuse(target.error());
  auto book = asked.plan.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto put = book->write([&](store::Writing& writing) { return writing.put(*target); });
  if (!put)
    return refuse(put.error());
  return Answer{{{"entered", "target"}, {"number", put->value}},
                fmt::format("Entered: target {}\n", put->value)};
}

struct StrikeAsked {
  BookOption book;
  std::int64_t number = 0;
};

Result<Answer> strike_target(const StrikeAsked& asked) {
  auto book = asked.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto gone = book->write([&](store::Writing& writing) -> Result<void> {
    for (const auto& target : writing.plan_records().targets)
      if (target.id.value == asked.number) {
        writing.take_out(target.id);
        return {};
      }
    return refuse(
        fault(fmt::format("there is no target {}", asked.number), "See `coneline targets`."));
  });
  if (!gone)
    return refuse(gone.error());
  return Answer{{{"taken_out", asked.number}}, fmt::format("Target {} taken out.\n", asked.number)};
}

Result<std::vector<report::TargetTold>> all_told(store::Book& book, const Asked& asked,
                                                 const plan::ForecastInput& input,
                                                 const std::vector<book::Target>& targets,
                                                 const plan::ForecastRuns& runs) {
  const auto held = seed_held(book, input);
  if (!held)
    return refuse(held.error());
  std::vector<report::TargetTold> all;
  for (const auto& target : targets) {
    const auto cone = cone_of(book, asked, input, target.taxon);
    if (!cone)
      return refuse(cone.error());
    auto told = report::told_of(input, target, *held, *cone, runs);
    if (!told)
      return refuse(told.error());
    all.push_back(*std::move(told));
  }
  return all;
}

/// All that the book keeps, and where they want the same.
Result<Answer> show_targets(const Asked& asked, std::ostream& messages) {
  auto book = asked.plan.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  const auto records = book->read([](store::Reading& reading) { return reading.plan_records(); });
  if (!records)
    return refuse(records.error());
  if (records->targets.empty())
    return Answer{{{"targets", Json::array()}, {"conflicts", Json::array()}},
                  "No targets are kept. `coneline enter target` keeps one.\n"};
  const auto input = asked.plan.input();
  if (!input)
    return refuse(input.error());
  auto runs = asked.plan.wanted(messages);
  runs.go_on = {};
  const auto told = all_told(*book, asked, *input, records->targets, runs);
  if (!told)
    return refuse(told.error());
  const auto forecast = plan::forecast_of(*input, runs);
  if (!forecast)
    return refuse(forecast.error());
  const auto& registers = input->standing.registers;
  Answer answer;
  answer.json = {{"targets", Json::array()}, {"conflicts", Json::array()}};
  Table table({"no.", "plants", "cross", "pot", "by", "sure", "in the line", "sow by", "seeds"});
  for (const auto& one : *told) {
    const auto& target = one.plan.target;
    auto own = asked;
    own.pot = registers.pot(target.pot).name;
    own.plants = target.plants;
    own.by = iso_month(target.by);
    own.assurance = target.assurance;
    auto json = json_of(one, own);
    json["number"] = target.id.value;
    answer.json["targets"].push_back(std::move(json));
    table.row({std::to_string(target.id.value), std::to_string(target.plants), target.cross,
               own.pot, own.by, fmt::format("{:g} %", 100 * target.assurance),
               fmt::format("{:.0f} - {:.0f} - {:.0f}", one.plan.here.low, one.plan.here.middle,
                           one.plan.here.high),
               one.plan.latest ? iso_month(one.plan.sowings[*one.plan.latest].month) : "too late",
               one.seed ? std::to_string(one.seed->seeds) : "–"});
  }
  answer.table = table.text();
  for (const auto& conflict : report::conflicts(*told, *forecast, registers)) {
    answer.json["conflicts"].push_back(
        {{"of", conflict.of == report::Scarce::seed ? "seed" : "room"},
         {"name", conflict.name},
         {"wanted", conflict.wanted},
         {"there", conflict.there},
         {"told", conflict.told}});
    answer.table += conflict.told + "\n";
  }
  if (answer.json["conflicts"].empty())
    answer.table += "Seed and room are there for all of them.\n";
  return answer;
}

void add_cone_options(Command& command, Asked& asked) {
  real_option(command, "--seeds-a-cone", asked.seeds_a_cone,
              "Seeds that a good cone gives; as the book's own cones of the taxon did");
  real_option(command, "--cone-gives", asked.cone_gives,
              "Share of pollinated cones that give seed; 0.8 unless said (common practice)");
  whole_option(command, "--passes", asked.passes,
               "Applications to a cone while it is loose; 3 unless said (common practice)");
}

void add_target_options(Command& command, Asked& asked) {
  command.add_option("--cross", asked.cross, "The cross as the book names it").required();
  command.add_option("--taxon", asked.taxon, "Its taxon, where nothing of it is in the line");
  command.add_option("--pot", asked.pot, "The pot they are to be in, or further on").required();
  command.add_option("--by", asked.by, "At the end of this month, as 2029-10").required();
  whole_option(command, "--plants", asked.plants, "How many plants").required();
  real_option(command, "--assurance", asked.assurance, "How sure, 0.9 unless said");
}

} // namespace

void add_target(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("target", "Seed, cones and latest days for so many plants by a month",
                           [asked, &line] { return run(*asked, line.messages()); });
  asked->plan.add_to(command, 36);
  add_target_options(command, *asked);
  add_cone_options(command, *asked);
  auto kept = std::make_shared<Asked>();
  auto& enter = line.add("enter", "target", "Plants of a cross to have in a pot by a month",
                         [kept] { return enter_target(*kept); });
  kept->plan.add_to(enter, 36);
  add_target_options(enter, *kept);
  auto all = std::make_shared<Asked>();
  auto& show = line.add("targets", "The targets that the book keeps, and where they want the same",
                        [all, &line] { return show_targets(*all, line.messages()); });
  all->plan.add_to(show, 36);
  add_cone_options(show, *all);
  auto struck = std::make_shared<StrikeAsked>();
  auto& strike = line.add("strike-target", "Take a target out of the book",
                          [struck] { return strike_target(*struck); });
  struck->book.add_to(strike);
  strike.add_option("number", struck->number, "As `coneline targets` numbers them").required();
}

} // namespace coneline::commands
