// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/number_options.h"

#include "core/base/number.h"

#include <fmt/format.h>

#include <limits>

namespace coneline::commands {

namespace {

[[noreturn]] void wrong(const std::string& option, const std::string& why) {
  throw CLI::ValidationError(option, why);
}

std::int64_t whole(const std::string& option, std::string_view text) {
  const auto value = parse_whole(text);
  if (value)
    return *value;
  const bool minus = !text.empty() && text.front() == '-';
  const auto digits = text.substr(minus ? 1 : 0);
  if (digits.empty() || digits.find_first_not_of("0123456789") != std::string_view::npos)
    wrong(option, value.error().text());
  return minus ? std::numeric_limits<std::int64_t>::min()
               : std::numeric_limits<std::int64_t>::max();
}

} // namespace

CLI::Option* whole_option(CLI::App& command, const std::string& name, std::int64_t& target,
                          const std::string& help) {
  return command
      .add_option_function<std::string>(
          name, [&target, name](const std::string& text) { target = whole(name, text); }, help)
      ->type_name("NUMBER");
}

namespace {
template <class Target>
CLI::Option* add_real(CLI::App& command, const std::string& name, Target& target,
                      const std::string& help) {
  const auto read = [&target, name](const std::string& text) {
    const auto value = parse_real(text);
    if (!value)
      wrong(name, value.error().text());
    target = *value;
  };
  return command.add_option_function<std::string>(name, read, help)->type_name("NUMBER");
}
} // namespace

CLI::Option* real_option(CLI::App& command, const std::string& name, double& target,
                         const std::string& help) {
  return add_real(command, name, target, help);
}

CLI::Option* real_option(CLI::App& command, const std::string& name, std::optional<double>& target,
                         const std::string& help) {
  return add_real(command, name, target, help);
}

CLI::Option* pair_option(CLI::App& command, const std::string& name,
                         std::pair<std::int64_t, std::int64_t>& target, const std::string& help) {
  const auto read = [&target, name](const std::string& text) {
    const auto colon = text.find(':');
    if (colon == std::string::npos)
      wrong(name, fmt::format("'{}' has no colon. Write two numbers such as 10:9.", text));
    target = {whole(name, std::string_view(text).substr(0, colon)),
              whole(name, std::string_view(text).substr(colon + 1))};
  };
  return command.add_option_function<std::string>(name, read, help)->type_name("N:K");
}

std::vector<std::string> split_at_commas(std::string_view text) {
  std::vector<std::string> pieces;
  while (true) {
    const auto comma = text.find(',');
    pieces.emplace_back(text.substr(0, comma));
    if (comma == std::string_view::npos)
      return pieces;
    text.remove_prefix(comma + 1);
  }
}

} // namespace coneline::commands
