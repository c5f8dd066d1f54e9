// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/unknown_word.h"

#include "core/base/near_words.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace coneline::commands {

namespace {

std::vector<std::string> options_of(const CommandWords& command) {
  std::vector<std::string> names;
  for (const auto& option : command.options)
    names.insert(names.end(), option.names.begin(), option.names.end());
  return names;
}

/// Whether a command below takes the option.
bool taken_below(const CommandWords& command, const std::string& option) {
  return std::ranges::any_of(command.commands, [&](const CommandWords& below) {
    const auto names = options_of(below);
    return std::ranges::find(names, option) != names.end() || taken_below(below, option);
  });
}

/// Where a group has a command of that name: "labels print" for "print".
std::vector<std::string> in_groups(const CommandWords& command, const std::string& word) {
  std::vector<std::string> found;
  for (const auto& group : command.commands)
    for (const auto& below : group.commands)
      if (below.name.ends_with(" " + word))
        found.push_back(below.name);
  return found;
}

std::string asked_for(const std::vector<std::string>& near) {
  return near.empty() ? "" : fmt::format(" Did you mean {}?", fmt::join(near, " or "));
}

} // namespace

std::string unknown_told(const std::string& called, const CommandWords& command,
                         const std::string& word) {
  if (word.starts_with('-')) {
    const auto option = word.substr(0, word.find('='));
    return fmt::format(
        "'{}' is no option of '{}'.{} '{} --help' lists all there are.", option, called,
        taken_below(command, option) ? " It stands behind the command that takes it."
                                     : asked_for(near_words(option, options_of(command))),
        called);
  }
  if (command.commands.empty())
    return fmt::format("'{}' is one word too many for '{}'; a value of several words stands in "
                       "quotes. '{} --help' tells what it takes.",
                       word, called, called);
  std::vector<std::string> names;
  for (const auto& below : command.commands)
    names.push_back(below.name);
  auto near = near_words(word, names);
  if (near.empty())
    near = in_groups(command, word);
  return fmt::format("'{}' is no command of '{}'.{} '{} --help' lists all there are.", word, called,
                     asked_for(near), called);
}

std::string missing_told(const std::string& called, const CommandWords& command) {
  if (command.commands.empty())
    return {};
  std::vector<std::string> names;
  for (const auto& below : command.commands)
    names.push_back(below.name);
  return fmt::format("'{}' wants one of its commands: {}. '{} --help' tells what they do.", called,
                     fmt::join(names, ", "), called);
}

} // namespace coneline::commands
