// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/commands/run_command.h"

#include "core/commands/commands.h"

namespace coneline::commands {

Json Ran::json() const {
  return Json::parse(out);
}

Ran run_words(std::vector<std::string> words) {
  std::ostringstream out;
  std::ostringstream err;
  CommandLine line(out, err);
  add_core_commands(line);
  const auto status = line.run(std::move(words));
  return {status.value_or(-1), out.str(), err.str()};
}

Ran run_command(const std::string& arguments) {
  std::istringstream words(arguments);
  std::vector<std::string> list;
  for (std::string word; words >> word;)
    list.push_back(word);
  return run_words(std::move(list));
}

void expect_refused(const std::string& arguments, int status) {
  const auto ran = run_command(arguments);
  EXPECT_EQ(ran.status, status) << arguments << '\n' << ran.err;
  EXPECT_EQ(ran.out, "") << arguments;
  EXPECT_NE(ran.err, "") << arguments;
}

int RunsCommands::run(std::vector<std::string> words) {
  const auto ran = run_words(std::move(words));
  out_.str(ran.out);
  err_.str(ran.err);
  return ran.status;
}

Json RunsCommands::json() const {
  return Json::parse(out_.str());
}

} // namespace coneline::commands
