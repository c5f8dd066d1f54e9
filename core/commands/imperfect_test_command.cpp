// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number.h"
#include "core/commands/commands.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"
#include "core/stats/imperfect_test.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct ImperfectOptions {
  std::int64_t called_filled = 0;
  std::int64_t tested = 0;
  std::optional<double> sensitivity;
  std::optional<double> specificity;
  std::string cut;
  std::string uncut;
};

Result<std::vector<std::int64_t>> counts(const std::string& text, std::size_t wanted,
                                         std::string_view option) {
  std::vector<std::int64_t> found;
  for (const auto& piece : split_at_commas(text)) {
    auto count = parse_whole(piece);
    if (!count)
      return refuse(usage_fault(fmt::format("{} '{}': {}", option, text, count.error().what),
                                "Write whole numbers with commas between them."));
    found.push_back(*count);
  }
  if (found.size() != wanted)
    return refuse(
        usage_fault(fmt::format("{} has {} numbers, {} are wanted", option, found.size(), wanted),
                    "See --help for what they are."));
  return found;
}

Result<stats::ShareEstimate> estimate(const ImperfectOptions& options) {
  if (options.cut.empty() != options.uncut.empty())
    return refuse(usage_fault("--cut and --uncut go together", "Give both."));
  if (!options.cut.empty()) {
    auto cut = counts(options.cut, 4, "--cut");
    if (!cut)
      return refuse(cut.error());
    auto uncut = counts(options.uncut, 2, "--uncut");
    if (!uncut)
      return refuse(uncut.error());
    return stats::tenenbein({(*cut)[0], (*cut)[1], (*cut)[2], (*cut)[3], (*uncut)[0], (*uncut)[1]});
  }
  if (!options.sensitivity || !options.specificity)
    return refuse(usage_fault("how the test errs is not said",
                              "Give --sensitivity and --specificity, or --cut and --uncut."));
  return stats::rogan_gladen(options.called_filled, options.tested,
                             {*options.sensitivity, *options.specificity});
}

Result<Answer> run(const ImperfectOptions& options) {
  auto found = estimate(options);
  if (!found)
    return refuse(found.error());
  Answer answer;
  const char* method = options.cut.empty() ? "Rogan-Gladen" : "Tenenbein";
  answer.json = {
      {"share", found->share}, {"standard_error", found->standard_error}, {"method", method}};
  Table table({"share filled", "standard error", "method"});
  table.row(
      {fmt::format("{:.4f}", found->share), fmt::format("{:.4f}", found->standard_error), method});
  answer.table = table.text();
  if (found->share < 0 || found->share > 1)
    answer.table +=
        "A share outside 0 to 1 says that the sample or what is known of the test is off.\n";
  return answer;
}

} // namespace

void add_imperfect_test(CommandLine& line) {
  const auto options = std::make_shared<ImperfectOptions>();
  auto& command =
      line.add("imperfect-test", "The share filled, from a test that errs such as floating",
               [options] { return run(*options); });
  whole_option(command, "--called-filled", options->called_filled,
               "Seeds that the test calls filled: those that sank");
  whole_option(command, "--tested", options->tested, "Seeds tested");
  command.add_option("--sensitivity", options->sensitivity,
                     "Share of the filled that it calls filled");
  command.add_option("--specificity", options->specificity,
                     "Share of the empty that it calls empty");
  command.add_option("--cut", options->cut,
                     "Of those cut open as well: filled and sank, filled and floated, empty and "
                     "sank, empty and floated, as 45,5,3,20");
  command.add_option("--uncut", options->uncut, "Of the others: sank, floated, as 130,50");
}

} // namespace coneline::commands
