// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The frame that every subcommand stands in: options by CLI11, an answer as a table or with --json
// as one document, messages on standard error, and the exit status.
//
//   0 done   1 the input or the book is at fault   2 the command line is wrong   3 a fault of the
//   program

#include "core/base/fault.h"
#include "core/commands/answer.h"
#include "core/commands/command.h"

#include <deque>
#include <functional>
#include <memory>
#include <ostream>
#include <string>

namespace coneline::commands {

struct CommandWords;

class CommandLine {
 public:
  /// `out` takes answers, `err` messages. Both outlive the object.
  CommandLine(std::ostream& out, std::ostream& err);
  ~CommandLine();
  CommandLine(const CommandLine&) = delete;
  CommandLine& operator=(const CommandLine&) = delete;

  /// Adds a subcommand with its own --json. `run` is called after the options were read, at most
  /// once. The returned object takes the command's options; it lives as long as this.
  Command& add(const std::string& name, const std::string& help,
               std::function<Result<Answer>()> run);
  /// The same below a group, such as "labels read". The group is made at its first use.
  Command& add(const std::string& group, const std::string& name, const std::string& help,
               std::function<Result<Answer>()> run);

  /// Reads the arguments (without the program's name), runs the subcommand, prints, and returns the
  /// exit status. With no argument at all it returns nothing: the front door opens the window.
  std::optional<int> run(std::vector<std::string> arguments);

  /// A line for the person waiting, on standard error.
  std::ostream& messages() { return err_; }

  /// What a group such as "labels" is for, where help lists it.
  void about_group(const std::string& group, const std::string& help);

  /// Every command with its options, as they stand when asked.
  [[nodiscard]] CommandWords words() const;

 private:
  Command& add_to(CLI::App& parent, const std::string& name, const std::string& help,
                  std::function<Result<Answer>()> run);
  int say(const Result<Answer>& result);
  /// What is wrong with the first word that no command takes, or with a group without a command;
  /// empty where it is neither.
  [[nodiscard]] std::string wrong_word_told() const;

  std::ostream& out_;
  std::ostream& err_;
  std::unique_ptr<CLI::App> app_;
  std::deque<Command> commands_; // as they were handed out
  bool json_ = false;
  std::function<Result<Answer>()> chosen_;
};

} // namespace coneline::commands
