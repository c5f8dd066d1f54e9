// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/command_words.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <sstream>

namespace coneline::commands {

namespace {

/// "TEXT:{square,staggered}" has the words in braces.
std::vector<std::string> choices_in(const std::string& type) {
  const auto from = type.find('{');
  const auto to = type.find('}', from);
  if (from == std::string::npos || to == std::string::npos)
    return {};
  std::istringstream inside(type.substr(from + 1, to - from - 1));
  std::vector<std::string> choices;
  for (std::string word; std::getline(inside, word, ',');)
    choices.push_back(word);
  return choices;
}

OptionWords option_words(const CLI::Option& option) {
  OptionWords words;
  for (const auto& name : option.get_lnames())
    words.names.push_back("--" + name);
  for (const auto& name : option.get_snames())
    words.names.push_back("-" + name);
  if (words.names.empty())
    words.placed = option.get_name(true);
  words.about = option.get_description();
  if (option.get_items_expected_max() > 0) {
    const auto type = option.get_type_name();
    words.value = type.substr(0, type.find(':'));
    words.choices = choices_in(type);
  }
  words.environment = option.get_envname();
  words.required = option.get_required();
  return words;
}

CommandWords command_words(const CLI::App& command, const std::string& name) {
  CommandWords words{name, command.get_description(), {}, {}};
  for (const auto* option : command.get_options([](const CLI::Option*) { return true; }))
    words.options.push_back(option_words(*option));
  for (const auto* below : command.get_subcommands([](const CLI::App*) { return true; }))
    words.commands.push_back(
        command_words(*below, name.empty() ? below->get_name() : name + " " + below->get_name()));
  std::ranges::sort(words.commands, {}, &CommandWords::name);
  return words;
}

} // namespace

CommandWords words_of(const CLI::App& program) {
  return command_words(program, {});
}

} // namespace coneline::commands
