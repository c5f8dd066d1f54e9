// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/commands.h"
#include "core/commands/number_options.h"
#include "core/stats/opening.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct OpeningOptions {
  std::int64_t seeds = 0;
  std::int64_t filled = 0;
  double assurance = 0.95;
  std::int64_t opened = 0;
  bool some_opened = false; ///< --opened was given
};

Result<Answer> run(const OpeningOptions& options) {
  const auto open = stats::seeds_to_open(options.seeds, options.filled, options.assurance);
  if (!open)
    return refuse(open.error());
  Answer answer;
  answer.json["open"] = *open;
  answer.table = fmt::format("Cut {} of the {} seeds. If at least {} of them are filled, at least "
                             "one filled one is found in {:.6g} of 100 cases.\n",
                             *open, options.seeds, options.filled, 100 * options.assurance);
  if (options.some_opened) {
    const auto more =
        stats::more_to_open(options.seeds, options.filled, options.assurance, options.opened);
    if (!more)
      return refuse(more.error());
    answer.json["more"] = *more;
    answer.table +=
        fmt::format("With {} cut and none filled: cut {} more.\n", options.opened, *more);
  }
  answer.table += "Caution: seed is poisonous. Wear gloves to cut it; keep cut seed from children, "
                  "pets and livestock.\n";
  return answer;
}

} // namespace

void add_opening(CommandLine& line) {
  const auto options = std::make_shared<OpeningOptions>();
  auto& command = line.add("opening", "How many seeds to cut open to find a filled one",
                           [options] { return run(*options); });
  whole_option(command, "--seeds", options->seeds, "Seeds there are").required();
  whole_option(command, "--filled-at-least", options->filled, "Filled ones worth finding")
      .required();
  real_option(command, "--assurance", options->assurance,
              "How sure one of them is to be found; 0.95 unless said");
  whole_option(command, "--opened", options->opened, "Seeds cut open already, none of them filled")
      .when_given([options] { options->some_opened = true; });
}

} // namespace coneline::commands
