// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/command_line.h"

#include "core/commands/command_words.h"
#include "core/commands/unknown_word.h"

#include <CLI/CLI.hpp>

namespace coneline::commands {

namespace {
constexpr int done = 0;
constexpr int input_at_fault = 1;
constexpr int command_line_wrong = 2;
constexpr int program_at_fault = 3;

int status_of(Blame blame) {
  switch (blame) {
  case Blame::input:
  case Blame::book:
    return input_at_fault;
  case Blame::usage:
    return command_line_wrong;
  case Blame::program:
    return program_at_fault;
  }
  return program_at_fault;
}
} // namespace

CommandLine::CommandLine(std::ostream& out, std::ostream& err)
    : out_(out), err_(err),
      app_(std::make_unique<CLI::App>(
          "Keeps the line from a pollinated cone to a plant in its pot.", "coneline")) {
  app_->require_subcommand(1);
  app_->set_version_flag("--version", "coneline " CONELINE_VERSION);
}

Command& CommandLine::add_to(CLI::App& parent, const std::string& name, const std::string& help,
                             std::function<Result<Answer>()> run) {
  auto* command = parent.add_subcommand(name, help);
  command->add_flag("--json", json_, "One JSON document instead of a table");
  command->callback([this, run = std::move(run)] { chosen_ = run; });
  return commands_.emplace_back(*command, err_);
}

CommandLine::~CommandLine() = default;

Command& CommandLine::add(const std::string& name, const std::string& help,
                          std::function<Result<Answer>()> run) {
  return add_to(*app_, name, help, std::move(run));
}

Command& CommandLine::add(const std::string& group, const std::string& name,
                          const std::string& help, std::function<Result<Answer>()> run) {
  const auto groups =
      app_->get_subcommands([&](CLI::App* command) { return command->get_name() == group; });
  auto* parent = groups.empty() ? app_->add_subcommand(group) : groups.front();
  parent->require_subcommand(1);
  return add_to(*parent, name, help, std::move(run));
}

void CommandLine::about_group(const std::string& group, const std::string& help) {
  app_->get_subcommand(group)->description(help);
}

CommandWords CommandLine::words() const {
  return words_of(*app_);
}

std::string CommandLine::wrong_word_told() const {
  const auto* at = app_.get();
  for (auto called = at->get_name();; called += " " + at->get_name()) {
    for (const auto& word : at->remaining())
      if (word != "--")
        return commands::unknown_told(called, words_of(*at), word);
    const auto below = at->get_subcommands(); // those that were given
    if (below.empty())
      return at == app_.get() ? std::string() : missing_told(called, words_of(*at));
    at = below.front();
  }
}

std::optional<int> CommandLine::run(std::vector<std::string> arguments) {
  if (arguments.empty())
    return std::nullopt;
  std::ranges::reverse(arguments); // the order in which CLI11 takes a vector
  try {
    app_->parse(std::move(arguments));
  } catch (const CLI::ParseError& error) {
    // A word that is not known is said before what else is missing because of it.
    const auto wrong = error.get_exit_code() == 0 ? std::string() : wrong_word_told();
    if (wrong.empty())
      return app_->exit(error, out_, err_) == 0 ? done : command_line_wrong;
    err_ << wrong << '\n';
    return command_line_wrong;
  }
  try {
    return say(chosen_());
  } catch (const std::exception& error) {
    err_ << "A fault of the program: " << error.what()
         << ". In the book it is done in full or not at all: look there before doing it again.\n";
    return program_at_fault;
  }
}

int CommandLine::say(const Result<Answer>& result) {
  if (!result) {
    err_ << result.error().text() << '\n';
    return status_of(result.error().blame);
  }
  if (json_)
    // A file's name may hold bytes that are no UTF-8; they are replaced.
    out_ << result->json.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
  else
    out_ << result->table;
  out_.flush();
  if (!out_) {
    err_ << "The answer could not be written. Check where it was sent to.\n";
    return input_at_fault;
  }
  return result->at_fault ? input_at_fault : done;
}

} // namespace coneline::commands
