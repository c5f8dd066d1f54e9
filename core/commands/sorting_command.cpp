// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/commands.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"
#include "core/stats/sorting.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

using stats::CutTest;
using stats::Filled;

struct SortingOptions {
  std::int64_t sank = 0;
  std::int64_t floated = 0;
  std::pair<std::int64_t, std::int64_t> opened_sank; ///< opened, filled
  std::pair<std::int64_t, std::int64_t> opened_floated;
  double confidence = 0.95;
};

Json json_of(const Filled& filled) {
  Json json;
  json["estimate"] = filled.estimate ? Json(*filled.estimate) : Json(nullptr);
  json["low"] = filled.low;
  json["high"] = filled.high;
  return json;
}

Json json_of(const CutTest& part, const Filled& filled) {
  return {{"seeds", part.seeds},
          {"opened", part.opened},
          {"filled_opened", part.filled},
          {"filled", json_of(filled)}};
}

std::vector<std::string> row(const char* name, const CutTest& part, const Filled& filled) {
  return {name,
          fmt::format("{}", part.seeds),
          fmt::format("{}", part.opened),
          fmt::format("{}", part.filled),
          shown(filled.estimate, 1),
          fmt::format("{}", filled.low),
          fmt::format("{}", filled.high)};
}

std::string table_of(const CutTest& sank, const CutTest& floated, const stats::Sorted& sorted,
                     double confidence) {
  const CutTest both{sank.seeds + floated.seeds, sank.opened + floated.opened,
                     sank.filled + floated.filled};
  const CutTest left{both.seeds - both.opened, 0, 0};
  Table table({"", "seeds", "cut open", "filled of them", "filled", "from", "to"});
  table.row(row("sank", sank, sorted.sank));
  table.row(row("floated", floated, sorted.floated));
  table.row(row("batch", both, sorted.batch));
  auto last = row("left", left, sorted.left);
  last[2] = last[3] = "";
  table.row(last);
  std::string text = table.text();
  text += fmt::format("From and to hold the true number in at least {:.6g} of 100 cases.\n",
                      100 * confidence);
  for (const auto& [part, did] : {std::pair{&sank, "sank"}, {&floated, "floated"}})
    if (part->seeds > 0 && part->opened == 0)
      text += fmt::format("Of those that {} none was cut open: any number of them can be filled.\n",
                          did);
  if (both.opened > 0)
    text += "Caution: seed is poisonous. Wear gloves to cut it; keep cut seed from children, pets "
            "and livestock.\n";
  return text;
}

Result<Answer> run(const SortingOptions& options) {
  const CutTest sank{options.sank, options.opened_sank.first, options.opened_sank.second};
  const CutTest floated{options.floated, options.opened_floated.first,
                        options.opened_floated.second};
  const auto sorted = stats::sort_by_water(sank, floated, options.confidence);
  if (!sorted)
    return refuse(sorted.error());
  Answer answer;
  answer.json["confidence"] = options.confidence;
  answer.json["sank"] = json_of(sank, sorted->sank);
  answer.json["floated"] = json_of(floated, sorted->floated);
  answer.json["batch"] = {{"seeds", sank.seeds + floated.seeds},
                          {"filled", json_of(sorted->batch)},
                          {"filled_left", json_of(sorted->left)}};
  answer.table = table_of(sank, floated, *sorted, options.confidence);
  return answer;
}

} // namespace

void add_sorting(CommandLine& line) {
  const auto options = std::make_shared<SortingOptions>();
  auto& command = line.add("sorting", "How many seeds of a sorted batch are filled",
                           [options] { return run(*options); });
  whole_option(command, "--sank", options->sank, "Seeds that sank").required();
  whole_option(command, "--floated", options->floated, "Seeds that floated").required();
  pair_option(command, "--opened-sank", options->opened_sank,
              "Of those that sank, so many cut open : so many of them filled");
  pair_option(command, "--opened-floated", options->opened_floated,
              "Of those that floated, so many cut open : so many of them filled");
  real_option(command, "--confidence", options->confidence,
              "How sure the ranges are to hold the true number; 0.95 unless said");
}

} // namespace coneline::commands
