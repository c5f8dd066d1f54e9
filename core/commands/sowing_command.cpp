// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number.h"
#include "core/commands/commands.h"
#include "core/commands/number_options.h"
#include "core/stats/assured.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct SowingOptions {
  std::int64_t plants = 0;
  std::string stages;
  double assurance = 0.95;
};

Result<std::vector<double>> shares_of(const std::string& stages) {
  std::vector<double> shares;
  for (const auto& piece : split_at_commas(stages)) {
    const auto share = parse_real(piece);
    if (!share)
      return refuse(usage_fault("--stages: " + share.error().what,
                                "Write the share that survives each stage, as 0.75,0.8,0.9."));
    shares.push_back(*share);
  }
  return shares;
}

Result<Answer> run(const SowingOptions& options) {
  const auto shares = shares_of(options.stages);
  if (!shares)
    return refuse(shares.error());
  const auto sowing = stats::seeds_to_sow(options.plants, *shares, options.assurance);
  if (!sowing)
    return refuse(sowing.error());
  Answer answer;
  answer.json["expected"] = sowing->expected;
  answer.json["assured"] = sowing->assured;
  answer.table = fmt::format(
      "Sow {} to have {} or more in {:.6g} of 100 seasons.\n"
      "{} would give {} on average{}.\n"
      "Seeds are taken to fare independently; a bad cone is bad in all of "
      "its seeds.\n",
      work::counted(sowing->assured, "seed", "seeds"),
      work::counted(options.plants, "plant", "plants"), 100 * options.assurance,
      work::counted(sowing->expected, "seed", "seeds"), options.plants,
      sowing->assured > sowing->expected ? ", so too few in about every second season" : "");
  return answer;
}

} // namespace

void add_sowing(CommandLine& line) {
  const auto options = std::make_shared<SowingOptions>();
  auto& command = line.add("sowing", "How many seeds to sow for so many plants",
                           [options] { return run(*options); });
  whole_option(command, "--plants", options->plants, "Plants wanted").required();
  command.add_option("--stages", options->stages, "Share surviving each stage, as 0.75,0.8,0.9")
      .required();
  real_option(command, "--assurance", options->assurance,
              "How sure the plants are to be had; 0.95 unless said");
}

} // namespace coneline::commands
