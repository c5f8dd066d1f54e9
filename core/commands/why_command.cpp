// SPDX-License-Identifier: GPL-3.0-or-later
// why: germination against what may explain it.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"
#include "core/work/temperature.h"
#include "core/work/why.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

struct Asked {
  BookOption book;
  std::string as_of;
  std::string by;
  std::string taxon;
  double by_day = 0;
  bool at_one_day = false;
  double confidence = 0.95;
};

Json json_of(const std::optional<work::ShareDifference>& found) {
  if (!found)
    return nullptr;
  return {{"difference", found->difference},
          {"low", found->low},
          {"high", found->high},
          {"p_value", found->p_value}};
}

Json json_of(const work::WhyCondition& condition) {
  Json json{{"condition", work::condition_word(condition.condition)},
            {"title", work::condition_title(condition.condition)},
            {"trays_known", condition.trays_known},
            {"levels", Json::array()},
            {"slope", nullptr},
            {"told", condition.told}};
  for (const auto& level : condition.levels)
    json["levels"].push_back({{"level", level.level},
                              {"trays", level.trays},
                              {"cones", level.cones},
                              {"sown", level.sown},
                              {"germinated", level.germinated},
                              {"share", level.share},
                              {"low", level.range.low},
                              {"high", level.range.high},
                              {"reference", level.reference},
                              {"alone", json_of(level.alone)},
                              {"together", json_of(level.together)}});
  if (condition.slope)
    json["slope"] = {{"each", condition.slope->each},
                     {"alone", json_of(condition.slope->alone)},
                     {"together", json_of(condition.slope->together)}};
  return json;
}

std::string range_text(const std::optional<work::ShareDifference>& found) {
  return found ? fmt::format("{:+.1f} to {:+.1f}", 100 * found->low, 100 * found->high) : "–";
}

std::string middle_text(const std::optional<work::ShareDifference>& found) {
  return found ? fmt::format("{:+.1f}", 100 * found->difference) : "–";
}

void rows_of(Table& table, const work::WhyCondition& condition) {
  table.row({std::string(work::condition_title(condition.condition)), "", "", "", "", "", "", "",
             condition.told});
  for (const auto& level : condition.levels)
    table.row({"  " + level.level, std::to_string(level.cones), std::to_string(level.trays),
               std::to_string(level.sown),
               fmt::format("{:.1f}–{:.1f}", 100 * level.range.low, 100 * level.range.high),
               level.reference ? "compared with" : range_text(level.alone),
               level.reference ? "" : middle_text(level.alone), range_text(level.together), ""});
  if (condition.slope)
    table.row({"  " + condition.slope->each, "", "", "", "", range_text(condition.slope->alone),
               middle_text(condition.slope->alone), range_text(condition.slope->together), ""});
}

Answer answer_of(const work::Why& why) {
  Answer answer;
  answer.json = {{"as_of", why.as_of.iso()},
                 {"confidence", why.confidence},
                 {"trays", why.trays.size()},
                 {"trays_together", why.trays_together},
                 {"rho", why.rho ? Json(*why.rho) : Json(nullptr)},
                 {"conditions", Json::array()},
                 {"told", why.told}};
  const auto range = fmt::format("{:g} % range", 100 * why.confidence);
  Table table({"", "cones", "trays", "sown", "% up, " + range, "difference in % up, alone",
               "middle", "together with the others", ""});
  for (const auto& condition : why.conditions) {
    answer.json["conditions"].push_back(json_of(condition));
    rows_of(table, condition);
  }
  answer.table = fmt::format("Germination against what may explain it, as of {}: {} trays\n",
                             why.as_of.iso(), why.trays.size());
  if (!why.trays.empty())
    answer.table += table.text();
  answer.table += why.told + "\n";
  return answer;
}

Result<std::set<work::Condition>> conditions_given(const std::string& text) {
  std::set<work::Condition> chosen;
  if (text.empty())
    return std::set<work::Condition>{work::all_conditions.begin(), work::all_conditions.end()};
  for (const auto& piece : split_at_commas(text)) {
    const auto condition = work::condition_named(piece);
    if (!condition) {
      std::string all;
      for (const auto each : work::all_conditions)
        all += fmt::format("{}{}", all.empty() ? "" : ", ", work::condition_word(each));
      return refuse(usage_fault(fmt::format("--by: '{}' is no condition", piece),
                                "Write some of " + all + "."));
    }
    chosen.insert(*condition);
  }
  return chosen;
}

Result<Answer> run(const Asked& asked) {
  const auto as_of = date_or_today(asked.as_of, "--as-of");
  if (!as_of)
    return refuse(as_of.error());
  const auto conditions = conditions_given(asked.by);
  if (!conditions)
    return refuse(conditions.error());
  auto book = asked.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  work::WhyAsked wanted;
  wanted.as_of = *as_of;
  wanted.confidence = asked.confidence;
  wanted.conditions = *conditions;
  if (asked.at_one_day)
    wanted.by_day = asked.by_day;
  return book->read([&](store::Reading& reading) -> Result<Answer> {
    if (!asked.taxon.empty()) {
      const auto registers = reading.registers();
      const auto* taxon = book::named(registers.taxa, asked.taxon);
      if (taxon == nullptr)
        return refuse(fault(fmt::format("no taxon '{}' in the book", asked.taxon),
                            "Write its name as the book has it."));
      wanted.taxon = taxon->id;
    }
    const auto registers = reading.registers();
    const auto trays = work::observed_trays(reading, registers, *as_of);
    wanted.celsius = work::celsius_of_trays(work::Warmth(reading, registers, {}), trays);
    return work::why(reading, wanted).map(answer_of);
  });
}

} // namespace

void add_why(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command =
      line.add("why", "Germination against what may explain it", [asked] { return run(*asked); });
  asked->book.add_to(command);
  command.add_option("--as-of", asked->as_of, "As it was known on that day; today when left out");
  command.add_option("--by", asked->by,
                     "Only these conditions, as in judged,after-ripening; all when left out");
  command.add_option("--taxon", asked->taxon, "Only trays of this taxon");
  real_option(command, "--by-day", asked->by_day,
              "Compare what was up so many days after sowing, in trays looked at later")
      .when_given([asked] { asked->at_one_day = true; });
  real_option(command, "--confidence", asked->confidence,
              "Confidence of every range; 0.95 unless said");
}

} // namespace coneline::commands
