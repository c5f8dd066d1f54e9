// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/commands.h"
#include "core/commands/number_options.h"
#include "core/plan/space.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct SpaceOptions {
  plan::Bench bench;
  plan::Pattern pattern = plan::Pattern::square;
};

std::string table_of(const plan::Stand& stand, const SpaceOptions& options) {
  if (stand.pots == 0)
    return "0 pots: one is larger than the bench.\n";
  std::string text =
      fmt::format("{} pots, {:.1f} to the square metre.\n", stand.pots, stand.per_square_metre);
  const auto* along = stand.along == plan::RowsAlong::length ? "length" : "width";
  if (options.pattern == plan::Pattern::square || stand.rows == 1)
    text += fmt::format("Rows along the {}: {} of {}.\n", along, stand.rows, stand.in_a_row);
  else
    text += fmt::format("Rows along the {}: {}, with {} and {} in turn.\n", along, stand.rows,
                        stand.in_a_row, stand.in_the_next);
  return text;
}

Result<Answer> run(const SpaceOptions& options) {
  return plan::pots_on_bench(options.bench, options.pattern).transform([&](const auto& stand) {
    Answer answer;
    answer.json["pots"] = stand.pots;
    answer.json["per_square_metre"] = stand.per_square_metre;
    answer.table = table_of(stand, options);
    return answer;
  });
}

} // namespace

void add_space(CommandLine& line) {
  const auto options = std::make_shared<SpaceOptions>();
  auto& bench = options->bench;
  auto& command = line.add("space", "How many round pots stand on a bench",
                           [options] { return run(*options); });
  real_option(command, "--length", bench.length, "Length of the bench in mm").required();
  real_option(command, "--width", bench.width, "Width of the bench in mm").required();
  real_option(command, "--pot", bench.pot, "Largest outside diameter of a pot in mm").required();
  real_option(command, "--gap", bench.gap, "Gap between pots in mm; 0 unless said");
  const auto read = [options](const std::string& word) -> Result<void> {
    options->pattern = word == "square" ? plan::Pattern::square : plan::Pattern::staggered;
    return {};
  };
  command.add_read("--pattern", read, "square unless said, or staggered")
      .one_of({"square", "staggered"});
}

} // namespace coneline::commands
