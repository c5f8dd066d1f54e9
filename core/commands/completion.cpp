// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/completion.h"

#include <algorithm>

namespace coneline::commands {

namespace {

/// The last word of "labels print".
std::string last_word(const std::string& name) {
  const auto blank = name.rfind(' ');
  return blank == std::string::npos ? name : name.substr(blank + 1);
}

std::string joined(const std::vector<std::string>& words) {
  std::string all;
  for (const auto& word : words)
    all += (all.empty() ? "" : " ") + word;
  return all;
}

std::string names_below(const CommandWords& command) {
  std::vector<std::string> names;
  for (const auto& below : command.commands)
    names.push_back(last_word(below.name));
  return joined(names);
}

/// The few words that a command's first word without an option may be.
std::string placed_choices(const CommandWords& command) {
  const auto placed =
      std::ranges::find_if(command.options, [](const auto& each) { return each.names.empty(); });
  return placed == command.options.end() ? "" : joined(placed->choices);
}

std::string option_names(const CommandWords& command) {
  std::vector<std::string> names;
  for (const auto& option : command.options)
    for (const auto& name : option.names)
      names.push_back(name);
  return joined(names);
}

/// In single quotes, as bash, zsh and fish all take it when it holds none itself.
std::string in_quotes(const std::string& text) {
  std::string out = "'";
  for (const char c : text) {
    if (c == '\'')
      out += "\xE2\x80\x99"; // a right quote reads the same and ends nothing
    else if (c != '\n')
      out += c;
  }
  return out + "'";
}

void each_command(const CommandWords& command, const auto& visit) {
  visit(command);
  for (const auto& below : command.commands)
    each_command(below, visit);
}

// ---- bash ---------------------------------------------------------------------------------------

/// The words that follow an option, or a mark for a file, a free word or none.
std::string bash_values(const CommandWords& command) {
  std::string cases;
  for (const auto& option : command.options) {
    if (option.names.empty() || option.value.empty())
      continue;
    std::string pattern;
    for (const auto& name : option.names)
      pattern += (pattern.empty() ? "" : "|") + in_quotes(command.name + " " + name);
    cases += "    " + pattern + ") ";
    cases += option.choices.empty() ? "files=1" : "values=" + in_quotes(joined(option.choices));
    cases += " ;;\n";
  }
  return cases;
}

constexpr auto bash_head = R"(# bash completion for coneline, made by "coneline completion bash"
_coneline() {
  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}
  local command='' commands='' options='' values='' files='' i
  COMPREPLY=()
  for ((i = 1; i < COMP_CWORD; i++)); do
    case "$command${command:+ }${COMP_WORDS[i]}" in
)";

constexpr auto bash_tail = R"(  if [[ -n $files ]]; then
    mapfile -t COMPREPLY < <(compgen -f -- "$word")
    compopt -o filenames 2> /dev/null
  elif [[ -n $values ]]; then
    mapfile -t COMPREPLY < <(compgen -W "$values" -- "$word")
  elif [[ $word == -* ]]; then
    mapfile -t COMPREPLY < <(compgen -W "$options" -- "$word")
  elif [[ -n $commands ]]; then
    mapfile -t COMPREPLY < <(compgen -W "$commands" -- "$word")
  else
    mapfile -t COMPREPLY < <(compgen -f -- "$word")
    compopt -o filenames 2> /dev/null
  fi
}
complete -F _coneline coneline
)";

// ---- zsh ----------------------------------------------------------------------------------------

/// A text inside an _arguments or _describe specification.
std::string zsh_text(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '[' || c == ']' || c == ':' || c == '\\')
      out += '\\';
    out += c;
  }
  return out;
}

std::string zsh_function(const std::string& name) {
  std::string out = "_coneline";
  for (const char c : name.empty() ? name : " " + name)
    out += c == ' ' || c == '-' ? '_' : c;
  return out;
}

std::string zsh_option(const OptionWords& option, const std::string& name) {
  auto spec = name + "[" + zsh_text(option.about) + "]";
  if (!option.value.empty())
    spec += option.choices.empty()
                ? ":" + zsh_text(option.value) + ":_files"
                : ":" + zsh_text(option.value) + ":(" + joined(option.choices) + ")";
  return in_quotes(spec);
}

std::string zsh_arguments(const CommandWords& command) {
  std::string text = "_arguments";
  for (const auto& option : command.options)
    for (const auto& name : option.names)
      text += " \\\n    " + zsh_option(option, name);
  return text;
}

std::string zsh_command(const CommandWords& command) {
  auto text = zsh_function(command.name) + "() {\n";
  if (command.commands.empty()) {
    const auto choices = placed_choices(command);
    return text + "  " + zsh_arguments(command) + " \\\n    '" +
           (choices.empty() ? "*:file:_files" : "1:word:(" + choices + ")") + "'\n}\n";
  }
  text += "  local -a commands=(\n";
  for (const auto& below : command.commands)
    text +=
        "    " + in_quotes(zsh_text(last_word(below.name)) + ":" + zsh_text(below.about)) + "\n";
  text += "  )\n  if (( CURRENT == 2 )) && [[ $PREFIX == -* ]]; then " + zsh_arguments(command) +
          "; return; fi\n"
          "  if (( CURRENT == 2 )); then _describe command commands; return; fi\n"
          "  shift words; (( CURRENT-- ))\n  case $words[1] in\n";
  for (const auto& below : command.commands)
    text += "    " + last_word(below.name) + ") " + zsh_function(below.name) + " ;;\n";
  return text + "    *) _files ;;\n  esac\n}\n";
}

// ---- fish ---------------------------------------------------------------------------------------

std::string fish_option(const OptionWords& option, const std::string& condition) {
  auto line = "complete -c coneline -n " + in_quotes(condition);
  for (const auto& name : option.names)
    line += name.starts_with("--") ? " -l " + name.substr(2) : " -s " + name.substr(1);
  if (!option.value.empty())
    line += option.choices.empty() ? " -r" : " -x -a " + in_quotes(joined(option.choices));
  return line + " -d " + in_quotes(option.about) + "\n";
}

/// True where the commands named stand in the line, and none of those below was chosen yet.
std::string fish_condition(const CommandWords& command) {
  std::string seen;
  std::string rest = command.name;
  while (!rest.empty()) {
    const auto blank = rest.find(' ');
    seen +=
        (seen.empty() ? "" : "; and ") + ("__fish_seen_subcommand_from " + rest.substr(0, blank));
    rest = blank == std::string::npos ? "" : rest.substr(blank + 1);
  }
  if (seen.empty())
    return "__fish_use_subcommand";
  return command.commands.empty()
             ? seen
             : seen + "; and not __fish_seen_subcommand_from " + names_below(command);
}

} // namespace

std::string bash_completion(const CommandWords& program) {
  std::string script = bash_head;
  each_command(program, [&](const CommandWords& command) {
    if (!command.name.empty())
      script +=
          "      " + in_quotes(command.name) + ") command=" + in_quotes(command.name) + " ;;\n";
  });
  script += "    esac\n  done\n  case \"$command $before\" in\n";
  each_command(program, [&](const CommandWords& command) { script += bash_values(command); });
  script += "  esac\n  case \"$command\" in\n";
  each_command(program, [&](const CommandWords& command) {
    const auto words = command.commands.empty() ? placed_choices(command) : names_below(command);
    script += "    " + in_quotes(command.name) + ") commands=" + in_quotes(words) +
              " options=" + in_quotes(option_names(command)) + " ;;\n";
  });
  return script + "  esac\n" + bash_tail;
}

std::string zsh_completion(const CommandWords& program) {
  std::string script = "#compdef coneline\n# made by \"coneline completion zsh\"\n";
  each_command(program, [&](const CommandWords& command) { script += zsh_command(command); });
  return script + "_coneline \"$@\"\n";
}

std::string fish_completion(const CommandWords& program) {
  std::string script = "# made by \"coneline completion fish\"\n";
  each_command(program, [&](const CommandWords& command) {
    const auto condition = fish_condition(command);
    for (const auto& below : command.commands)
      script += "complete -c coneline -f -n " + in_quotes(condition) + " -a " +
                in_quotes(last_word(below.name)) + " -d " + in_quotes(below.about) + "\n";
    if (const auto choices = placed_choices(command); !choices.empty())
      script +=
          "complete -c coneline -f -n " + in_quotes(condition) + " -a " + in_quotes(choices) + "\n";
    for (const auto& option : command.options)
      if (!option.names.empty())
        script += fish_option(option, condition);
  });
  return script;
}

} // namespace coneline::commands
