// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A subcommand while its options are added. The library that parses command lines is a header of
// thousands of lines that leaves three hundred functions in every source that reads it: three
// sources read it, and the others these few declarations.

#include "core/base/fault.h"

#include <cstdint>
#include <functional>
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace CLI {
class App;
class Option;
} // namespace CLI

namespace coneline::commands {

/// An option that was added; copied freely, good as long as its command. What is said of it returns
/// it, so that more can be said.
class Option {
 public:
  explicit Option(CLI::Option& option) : option_(&option) {}

  Option required() const;
  /// Help tells the value that its target has now.
  Option told_default() const;
  Option one_of(const std::vector<std::string>& words) const;
  /// The same with letters of either case; the target gets the word as it stands in `words`.
  Option one_of_any_case(const std::vector<std::string>& words) const;
  /// From `least` to `most`, both included.
  Option between(int least, int most) const;
  Option needs(Option other) const;
  Option excludes(Option other) const;
  /// One word holds several values, separated by this.
  Option separated_by(char between) const;
  /// A variable of the environment that stands in for it.
  Option or_variable(const std::string& name) const;
  /// What help calls its value.
  Option value_called(const std::string& word) const;
  /// Called when it is given, beside what it fills.
  Option when_given(std::function<void()> also) const;

 private:
  CLI::Option* option_;
};

class Command {
 public:
  Command(CLI::App& command, std::ostream& messages) : command_(&command), messages_(&messages) {}

  /// An option "--name" or "-n,--name", or without dashes a word by its place, that fills `target`,
  /// which outlives the command line. A target is a text, a number or a list of them, or one of
  /// those that stays empty where the option is left out. Numbers are read as everywhere in the
  /// program: digits and a point, nothing guessed (010 is ten, 0x10 no number); anything else, or
  /// one that the target cannot hold, makes the command line wrong.
  template <class Target>
  Option add_option(const std::string& name, Target& target, const std::string& help);
  /// True where it is given.
  Option add_flag(const std::string& name, bool& target, const std::string& help);
  /// An option whose text is read by `read`; its fault makes the command line wrong.
  Option add_read(const std::string& name, std::function<Result<void>(const std::string&)> read,
                  const std::string& help);

  /// Takes lines for the person waiting, as CommandLine::messages does.
  [[nodiscard]] std::ostream& messages() const { return *messages_; }

 private:
  CLI::App* command_;
  std::ostream* messages_;
};

} // namespace coneline::commands
