// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/commands.h"
#include "core/commands/table.h"
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

} // namespace

void add_coverage(CommandLine& line) {
  auto given = std::make_shared<stats::CoverageWanted>();
  auto what = std::make_shared<std::string>("germination");
  auto& command = line.add("coverage", "How often the ranges of germination hold the truth",
                           [given, what]() -> Result<Answer> {
                             if (*what == "sorting")
                               return sorting_answer();
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
  command.add_option("what", *what, "germination, or sorting: the interval of a whole batch")
      ->check(CLI::IsMember({"germination", "sorting"}))
      ->capture_default_str();
  command.add_option("--crosses", given->crosses, "Crosses to draw")
      ->check(CLI::Range(1, 1'000'000))
      ->capture_default_str();
  command.add_option("--seed", given->seed, "The same crosses for the same number")
      ->capture_default_str();
}

} // namespace coneline::commands
