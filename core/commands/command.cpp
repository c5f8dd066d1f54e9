// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/command.h"

#include "core/base/number.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <limits>
#include <type_traits>
#include <utility>

namespace coneline::commands {

namespace {

/// What one word of a target holds.
template <class Target>
struct ValueOf {
  using Type = Target;
};
template <class Value>
struct ValueOf<std::optional<Value>> {
  using Type = Value;
};
template <class Value>
struct ValueOf<std::vector<Value>> {
  using Type = Value;
};

/// As everywhere in the program: digits and a point, and 010 is ten.
template <class Number>
Result<Number> read_number(const std::string& text) {
  if constexpr (std::is_floating_point_v<Number>)
    return parse_real(text);
  else
    return parse_whole(text).and_then([&](std::int64_t value) -> Result<Number> {
      if (!std::in_range<Number>(value))
        return refuse(
            fault(fmt::format("{} is too {} a number", text, value < 0 ? "small" : "large"),
                  fmt::format("Write one from {} to {}.", std::numeric_limits<Number>::min(),
                              std::numeric_limits<Number>::max())));
      return static_cast<Number>(value);
    });
}

/// "--length" of "-l,--length".
std::string called(const std::string& name) {
  return name.substr(name.rfind(',') + 1);
}

[[noreturn]] void wrong(const std::string& name, const Fault& why) {
  throw CLI::ValidationError(called(name), why.text());
}

template <class Number>
Number number_in(const std::string& name, const std::string& text) {
  const auto number = read_number<Number>(text);
  if (!number)
    wrong(name, number.error());
  return *number;
}

/// What the library would add for the target, but that numbers are read here.
template <class Target>
CLI::Option* add_number(CLI::App& command, const std::string& name, Target& target,
                        const std::string& help) {
  using Number = typename ValueOf<Target>::Type;
  const auto fill = [name, &target](const CLI::results_t& words) {
    if constexpr (std::is_same_v<Target, std::vector<Number>>) {
      target.clear();
      for (const auto& word : words)
        target.push_back(number_in<Number>(name, word));
    } else {
      target = number_in<Number>(name, words.front());
    }
    return true;
  };
  auto* option = command.add_option(name, fill, help, false, [&target] {
    return CLI::detail::checked_to_string<Target, Target>(target);
  });
  option->type_name(CLI::detail::type_name<Target>());
  option->type_size(CLI::detail::type_count_min<Target>::value,
                    CLI::detail::type_count<Target>::value);
  option->expected(CLI::detail::expected_count<Target>::value);
  return option;
}

} // namespace

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
  if constexpr (std::is_arithmetic_v<typename ValueOf<Target>::Type>)
    return Option(*add_number(*command_, name, target, help));
  else
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
          wrong(name, done.error());
      },
      help));
}

// Every kind of target that an option of the program has; one more is a line here.
#define CONELINE_TARGET(...)                                                                       \
  template Option Command::add_option(const std::string&, __VA_ARGS__&, const std::string&)
CONELINE_TARGET(std::string);
CONELINE_TARGET(int);
CONELINE_TARGET(unsigned);
CONELINE_TARGET(std::int64_t);
CONELINE_TARGET(std::uint64_t);
CONELINE_TARGET(double);
CONELINE_TARGET(std::optional<std::string>);
CONELINE_TARGET(std::optional<int>);
CONELINE_TARGET(std::optional<std::int64_t>);
CONELINE_TARGET(std::optional<double>);
CONELINE_TARGET(std::vector<std::string>);
CONELINE_TARGET(std::vector<std::uint64_t>);
CONELINE_TARGET(std::vector<double>);
#undef CONELINE_TARGET

} // namespace coneline::commands
