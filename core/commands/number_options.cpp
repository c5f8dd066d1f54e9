// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/number_options.h"

#include "core/base/number.h"

#include <fmt/format.h>

#include <limits>

namespace coneline::commands {

namespace {

Result<std::int64_t> whole(std::string_view text) {
  const auto value = parse_whole(text);
  if (value)
    return *value;
  const bool minus = !text.empty() && text.front() == '-';
  const auto digits = text.substr(minus ? 1 : 0);
  if (digits.empty() || digits.find_first_not_of("0123456789") != std::string_view::npos)
    return refuse(value.error());
  return minus ? std::numeric_limits<std::int64_t>::min()
               : std::numeric_limits<std::int64_t>::max();
}

} // namespace

Option whole_option(Command& command, const std::string& name, std::int64_t& target,
                    const std::string& help) {
  const auto read = [&target](const std::string& text) {
    return whole(text).map([&](std::int64_t value) { target = value; });
  };
  return command.add_read(name, read, help).value_called("NUMBER");
}

Option real_option(Command& command, const std::string& name, double& target,
                   const std::string& help) {
  return command.add_option(name, target, help).value_called("NUMBER");
}

Option real_option(Command& command, const std::string& name, std::optional<double>& target,
                   const std::string& help) {
  return command.add_option(name, target, help).value_called("NUMBER");
}

Option pair_option(Command& command, const std::string& name,
                   std::pair<std::int64_t, std::int64_t>& target, const std::string& help) {
  const auto read = [&target](const std::string& text) -> Result<void> {
    const auto colon = text.find(':');
    if (colon == std::string::npos)
      return refuse(
          usage_fault(fmt::format("'{}' has no colon", text), "Write two numbers such as 10:9."));
    const auto first = whole(std::string_view(text).substr(0, colon));
    if (!first)
      return refuse(first.error());
    const auto second = whole(std::string_view(text).substr(colon + 1));
    if (!second)
      return refuse(second.error());
    target = {*first, *second};
    return {};
  };
  return command.add_read(name, read, help).value_called("N:K");
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
