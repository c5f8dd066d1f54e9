// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/commands.h"
#include "core/commands/table.h"
#include "core/plan/plan_coverage.h"
#include "core/stats/coverage.h"
#include "core/stats/sorting_coverage.h"

#include <fmt/format.h>

#include <array>
#include <cstdio>
#include <unistd.h>

namespace coneline::commands {

namespace {

double share(int held, int crosses) {
  return static_cast<double>(held) / crosses;
}

Json json_of(const stats::Held& held, int crosses) {
  return {{"held_80", share(held.at_80, crosses)}, {"held_95", share(held.at_95, crosses)}};
}

Json json_of(const stats::CoverageRow& row) {
  return {{"crosses_of", row.of},
          {"crosses", row.crosses},
          {"still_expected", json_of(row.still_expected, row.crosses)},
          {"share_in_end", json_of(row.share_in_end, row.crosses)},
          {"share_now", json_of(row.share_now, row.crosses)},
          {"width", row.width}};
}

std::string held_text(const stats::Held& held, int crosses) {
  return fmt::format("{:.1f}  {:.1f}", 100 * share(held.at_80, crosses),
                     100 * share(held.at_95, crosses));
}

Answer answer_of(const std::vector<stats::CoverageRow>& rows) {
  Answer answer;
  Table table({"crosses", "drawn", "still to come: 80 95", "share in the end: 80 95",
               "share up now: 80 95", "width of 95 %"});
  for (const auto& row : rows) {
    answer.json["rows"].push_back(json_of(row));
    table.row({row.of, std::to_string(row.crosses), held_text(row.still_expected, row.crosses),
               held_text(row.share_in_end, row.crosses), held_text(row.share_now, row.crosses),
               fmt::format("{:.2f}", row.width)});
  }
  answer.table = table.text() +
                 "\nHow often in 100 the ranges of 80 and 95 % held what was true. Width: of the "
                 "seed sown.\n";
  return answer;
}

/// Batches small and large, a few seeds of each part opened.
constexpr std::array sorted_ways{stats::SortedHow{20, 5, 10, 5}, stats::SortedHow{90, 10, 30, 10},
                                 stats::SortedHow{180, 10, 60, 10},
                                 stats::SortedHow{400, 15, 100, 15},
                                 stats::SortedHow{1500, 20, 500, 20}};
constexpr int steps_of_share = 20;

Answer sorting_answer() {
  Answer answer;
  Table table({"sank", "opened", "floated", "opened", "confidence", "least held", "mean held",
               "mean width", "parts added up"});
  for (const auto& how : sorted_ways)
    for (const double confidence : {0.80, 0.95}) {
      const auto found = stats::sorting_coverage(how, steps_of_share, confidence);
      answer.json["rows"].push_back({{"sank", how.sank},
                                     {"opened_sank", how.opened_sank},
                                     {"floated", how.floated},
                                     {"opened_floated", how.opened_floated},
                                     {"confidence", confidence},
                                     {"least", found.least},
                                     {"mean", found.mean},
                                     {"width", found.width},
                                     {"width_of_parts", found.width_of_parts}});
      table.row({std::to_string(how.sank), std::to_string(how.opened_sank),
                 std::to_string(how.floated), std::to_string(how.opened_floated),
                 fmt::format("{:.2f}", confidence), fmt::format("{:.4f}", found.least),
                 fmt::format("{:.4f}", found.mean), fmt::format("{:.1f}", found.width),
                 fmt::format("{:.1f}", found.width_of_parts)});
    }
  answer.table = table.text() + "\nExact, over true shares of 0, 0.05 … 1 in each part. Least and "
                                "mean: how often the interval of the batch held the truth.\n";
  return answer;
}

Result<Answer> plan_answer(const plan::PlanCoverageWanted& wanted) {
  const bool watched = isatty(fileno(stderr)) != 0;
  const auto rows = plan::plan_coverage(wanted, [&](int done) {
    if (watched && done % 10 == 0)
      fmt::print(stderr, "\r{} of {} nurseries", done, wanted.nurseries);
    return true;
  });
  if (watched)
    fmt::print(stderr, "\n");
  if (!rows)
    return refuse(rows.error());
  Answer answer;
  Table table({"forecast", "months or years", "held by 80 %", "inclusive"});
  for (const auto& row : *rows) {
    answer.json["rows"].push_back(
        {{"of", row.of}, {"cells", row.cells}, {"held", row.held}, {"inclusive", row.inclusive}});
    table.row({row.of, fmt::format("{:.0f}", row.cells), fmt::format("{:.1f}", 100 * row.held),
               fmt::format("{:.1f}", 100 * row.inclusive)});
  }
  answer.table = fmt::format("{}\n{} nurseries run forward. Held: a truth that many futures share "
                             "counts by the part of them inside; inclusive: as inside.\n",
                             table.text(), wanted.nurseries);
  return answer;
}

} // namespace

void add_coverage(CommandLine& line) {
  auto given = std::make_shared<stats::CoverageWanted>();
  auto what = std::make_shared<std::string>("germination");
  auto of_plan = std::make_shared<plan::PlanCoverageWanted>();
  auto& command = line.add("coverage", "How often the ranges of germination hold the truth",
                           [given, what, of_plan]() -> Result<Answer> {
                             if (*what == "sorting")
                               return sorting_answer();
                             if (*what == "plan")
                               return plan_answer({of_plan->nurseries, of_plan->runs, given->seed});
                             const bool watched = isatty(fileno(stderr)) != 0;
                             const auto rows = stats::germination_coverage(*given, [&](int done) {
                               if (watched && done % 50 == 0)
                                 fmt::print(stderr, "\r{} of {} crosses", done, given->crosses);
                               return true;
                             });
                             if (watched)
                               fmt::print(stderr, "\n");
                             return answer_of(rows);
                           });
  command
      .add_option("what", *what,
                  "germination; sorting: the interval of a whole batch; plan: whole nurseries")
      .one_of({"germination", "sorting", "plan"})
      .told_default();
  command.add_option("--crosses", given->crosses, "Crosses to draw")
      .between(1, 1'000'000)
      .told_default();
  command.add_option("--nurseries", of_plan->nurseries, "Nurseries to draw, for plan")
      .between(1, 1'000'000)
      .told_default();
  command.add_option("--seed", given->seed, "The same crosses for the same number").told_default();
}

} // namespace coneline::commands
