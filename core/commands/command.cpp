// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/command.h"

#include <CLI/CLI.hpp>

namespace coneline::commands {

Option Option::required() const {
  option_->required();
  return *this;
}

Option Option::told_default() const {
  option_->capture_default_str();
  return *this;
}

Option Option::one_of(const std::vector<std::string>& words) const {
  option_->check(CLI::IsMember(words));
  return *this;
}

Option Option::one_of_any_case(const std::vector<std::string>& words) const {
  option_->check(CLI::IsMember(words, CLI::ignore_case));
  return *this;
}

Option Option::between(int least, int most) const {
  option_->check(CLI::Range(least, most));
  return *this;
}

Option Option::needs(Option other) const {
  option_->needs(other.option_);
  return *this;
}

Option Option::excludes(Option other) const {
  option_->excludes(other.option_);
  return *this;
}

Option Option::separated_by(char between) const {
  option_->delimiter(between);
  return *this;
}

Option Option::or_variable(const std::string& name) const {
  option_->envname(name);
  return *this;
}

Option Option::value_called(const std::string& word) const {
  option_->type_name(word);
  return *this;
}

Option Option::when_given(std::function<void()> also) const {
  option_->each([also = std::move(also)](const std::string&) { also(); });
  return *this;
}

template <class Target>
Option Command::add_option(const std::string& name, Target& target, const std::string& help) {
  return Option(*command_->add_option(name, target, help));
}

Option Command::add_flag(const std::string& name, bool& target, const std::string& help) {
  return Option(*command_->add_flag(name, target, help));
}

Option Command::add_read(const std::string& name,
                         std::function<Result<void>(const std::string&)> read,
                         const std::string& help) {
  return Option(*command_->add_option_function<std::string>(
      name,
      [name, read = std::move(read)](const std::string& text) {
        if (const auto done = read(text); !done)
          throw CLI::ValidationError(name, done.error().text());
      },
      help));
}

// Every kind of target that an option of the program has; one more is a line here.
#define CONELINE_TARGET(...)                                                                       \
  template Option Command::add_option(const std::string&, __VA_ARGS__&, const std::string&)
CONELINE_TARGET(std::string);
CONELINE_TARGET(int);
CONELINE_TARGET(std::int64_t);
CONELINE_TARGET(unsigned);
CONELINE_TARGET(std::size_t);
CONELINE_TARGET(double);
CONELINE_TARGET(std::optional<std::string>);
CONELINE_TARGET(std::optional<int>);
CONELINE_TARGET(std::optional<std::int64_t>);
CONELINE_TARGET(std::optional<double>);
CONELINE_TARGET(std::vector<std::string>);
CONELINE_TARGET(std::vector<std::size_t>);
CONELINE_TARGET(std::vector<double>);
#undef CONELINE_TARGET

} // namespace coneline::commands
