// SPDX-License-Identifier: GPL-3.0-or-later
// The harvest table: the batch as it is split, its filled seed, and what to do with the floaters.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"
#include "core/report/harvest_view.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

using report::HarvestView;

struct TableOptions {
  BookOption book;
  std::string batch;
  std::string on;
  report::HarvestAsked asked;
  report::GrowersFigures given;

  void define(Command& command) {
    book.add_to(command);
    command.add_option("batch", batch, "The batch").required();
    command.add_option("--on", on, "As of this day; today when left out");
    real_option(command, "--confidence", asked.confidence,
                "How sure the ranges are; 0.95 unless said");
    real_option(command, "--assurance", asked.assurance,
                "How sure opening is to show filled seed; 0.95 unless said");
    command.add_option("--plant-worth", given.plant_worth, "What a plant is worth");
    command.add_option("--seed-cost", given.seed_cost, "What a sown seed costs in mix and bench");
    command.add_option("--litre-price", given.litre_price,
                       "Of a litre of mix, to reckon that cost");
    command.add_option("--bench-price", given.bench_price,
                       "Of a square metre of bench for a month, to reckon that cost");
    real_option(command, "--keep-cost", given.keep_cost,
                "What keeping a seed costs until it is decided");
  }
};

/// What was given goes before what the book keeps.
report::GrowersFigures over(const report::GrowersFigures& given,
                            const report::GrowersFigures& kept) {
  const auto first = [](const auto& a, const auto& b) { return a ? a : b; };
  return {first(given.plant_worth, kept.plant_worth), first(given.seed_cost, kept.seed_cost),
          first(given.litre_price, kept.litre_price), first(given.bench_price, kept.bench_price),
          given.keep_cost > 0 ? given.keep_cost : kept.keep_cost};
}

Json json_of(const stats::Filled& filled) {
  return {{"estimate", filled.estimate ? Json(*filled.estimate) : Json(nullptr)},
          {"low", filled.low},
          {"high", filled.high}};
}

Json json_of(const report::PartView& view) {
  return {{"seeds", view.part.seeds},
          {"on_hand", view.part.on_hand},
          {"opened", view.part.opened},
          {"filled_opened", view.part.opened_filled},
          {"filled", json_of(view.filled)},
          {"open_for_a_tenth", view.open_for_tenth},
          {"filled_lost_by_ten_more",
           view.filled_by_opening ? Json(*view.filled_by_opening) : Json(nullptr)}};
}

Json json_of(const plan::Choice& choice) {
  return {{"plants", choice.plants},
          {"plants_low", choice.plants_low},
          {"plants_high", choice.plants_high},
          {"cost", choice.cost},
          {"gain", choice.gain},
          {"gain_low", choice.gain_low},
          {"gain_high", choice.gain_high}};
}

const char* word_of(plan::FloatersAdvice advice) {
  switch (advice) {
  case plan::FloatersAdvice::sow:
    return "sow";
  case plan::FloatersAdvice::open_more:
    return "open more";
  case plan::FloatersAdvice::keep:
    return "keep";
  case plan::FloatersAdvice::discard:
    return "discard";
  }
  return "";
}

Json json_of(const std::optional<plan::FloatersDecision>& decision) {
  if (!decision)
    return nullptr;
  return {{"break_even", decision->break_even},
          {"sow", json_of(decision->sow)},
          {"keep", json_of(decision->keep)},
          {"discard", json_of(decision->discard)},
          {"open_more", decision->open_more},
          {"advice", word_of(decision->advice)},
          {"why", decision->why}};
}

Json json_of(const HarvestView& view) {
  const auto& table = view.table;
  Json json;
  json["batch"] = table.batch.code.text();
  json["origin"] = table.origin.name;
  json["taxon"] = table.origin.taxon;
  json["counted"] = table.counted;
  json["unsorted"] = table.unsorted;
  json["judged_filled"] = table.filled.on_hand;
  json["judged_empty"] = table.empty.on_hand;
  json["opened"] = table.opened();
  json["lost_in_cleaning"] = table.lost;
  json["sown"] = table.sown;
  json["discarded"] = table.discarded;
  json["other"] = table.other;
  json["not_accounted_for"] = table.not_accounted_for();
  json["sank"] = json_of(view.sank);
  json["floated"] = json_of(view.floated);
  json["filled"] = json_of(view.judged.batch);
  json["filled_left"] = json_of(view.judged.left);
  json["float_test"] = {{"setting", book::word(view.float_test)},
                        {"source", view.float_source},
                        {"told", view.history.told}};
  json["decision"] = json_of(view.decision);
  json["decision_told"] = view.decision_told;
  json["next"] = view.next;
  json["cautions"] = view.cautions;
  return json;
}

std::string split_table(const HarvestView& view) {
  const auto& table = view.table;
  Table split({"", "seeds"});
  const auto row = [&](const char* what, std::int64_t seeds) {
    split.row({what, std::to_string(seeds)});
  };
  row("counted in", table.counted);
  row("unsorted", table.unsorted);
  row("judged filled", table.filled.on_hand);
  row("judged empty", table.empty.on_hand);
  row("opened", table.opened());
  row("lost in cleaning", table.lost);
  if (table.sown > 0)
    row("sown", table.sown);
  if (table.discarded > 0)
    row("discarded", table.discarded);
  if (table.other != 0)
    row("dead, sold or missing", table.other);
  return split.text();
}

std::string filled_table(const HarvestView& view, double confidence) {
  Table table({"part", "seeds", "opened", "filled",
               fmt::format("filled, {:g} % range", 100 * confidence), "likely", "cut for a tenth"});
  const auto part = [&](const char* what, const report::PartView& of) {
    table.row({what, std::to_string(of.part.seeds), std::to_string(of.part.opened),
               std::to_string(of.part.opened_filled),
               fmt::format("{}–{}", of.filled.low, of.filled.high), shown(of.filled.estimate, 0),
               std::to_string(of.open_for_tenth)});
  };
  part("judged filled", view.sank);
  part("judged empty", view.floated);
  const auto& left = view.judged.left;
  table.row({"filled ones left",
             std::to_string(view.table.filled.seeds + view.table.empty.seeds -
                            view.table.filled.opened - view.table.empty.opened),
             "", "", fmt::format("{}–{}", left.low, left.high), shown(left.estimate, 0), ""});
  return table.text();
}

std::string decision_table(const plan::FloatersDecision& decision) {
  Table table({"floaters", "plants", "range", "cost", "gain", "range"});
  const auto row = [&](const char* what, const plan::Choice& choice) {
    table.row({what, fmt::format("{:.1f}", choice.plants),
               fmt::format("{:.1f}–{:.1f}", choice.plants_low, choice.plants_high),
               fmt::format("{:.2f}", choice.cost), fmt::format("{:.2f}", choice.gain),
               fmt::format("{:.2f} to {:.2f}", choice.gain_low, choice.gain_high)});
  };
  row("sow", decision.sow);
  row("keep", decision.keep);
  row("discard", decision.discard);
  return table.text();
}

Result<Answer> run(const TableOptions& options) {
  auto day = date_or_today(options.on, "--on");
  if (!day)
    return refuse(day.error());
  auto book = options.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  auto code = code_given(*book, options.batch);
  if (!code)
    return refuse(code.error());
  auto asked = options.asked;
  auto view = book->read([&](store::Reading& reading) {
    return report::harvest_ground(reading, *code, *day)
        .and_then([&](const report::HarvestGround& ground) {
          asked.figures = over(options.given, report::figures_in(ground.registers));
          return report::harvest_view(ground, asked);
        });
  });
  if (!view)
    return refuse(view.error());
  Answer answer;
  answer.json = json_of(*view);
  answer.table = fmt::format("{}, {} ({})\n\n{}\n{}", view->table.batch.code.text(),
                             view->table.origin.name, view->table.origin.taxon, split_table(*view),
                             filled_table(*view, asked.confidence));
  if (view->decision)
    answer.table += '\n' + decision_table(*view->decision);
  answer.table += fmt::format("\nFloat test: {}. {}\nFloaters: {}\nNext: {}\nCaution: {}\n",
                              book::word(view->float_test), view->history.told, view->decision_told,
                              view->next, view->cautions.front());
  return answer;
}

} // namespace

void add_table(CommandLine& line) {
  const auto options = std::make_shared<TableOptions>();
  auto& command =
      line.add("table", "A batch on the harvest table: its split, its filled seed, its floaters",
               [options] { return run(*options); });
  options->define(command);
}

} // namespace coneline::commands
