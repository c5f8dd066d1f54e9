// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/commands.h"
#include "core/commands/table.h"
#include "core/stats/coverage.h"

#include <fmt/format.h>

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

} // namespace

void add_coverage(CommandLine& line) {
  auto given = std::make_shared<stats::CoverageWanted>();
  auto& command = line.add("coverage", "How often the ranges of germination hold the truth",
                           [given]() -> Result<Answer> {
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
  command.add_option("--crosses", given->crosses, "Crosses to draw")
      ->check(CLI::Range(1, 1'000'000))
      ->capture_default_str();
  command.add_option("--seed", given->seed, "The same crosses for the same number")
      ->capture_default_str();
}

} // namespace coneline::commands
