// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number.h"

#include "core/base/count.h"

#include <fmt/format.h>

#include <charconv>
#include <cmath>
#include <stdexcept>

namespace coneline {

Result<std::int64_t> parse_whole(std::string_view text) {
  std::int64_t value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (text.empty() || end != text.data() + text.size() || error == std::errc::invalid_argument)
    return refuse(
        fault(fmt::format("'{}' is no whole number", text), "Write digits alone, such as 42."));
  if (error == std::errc::result_out_of_range)
    return refuse(fault(fmt::format("{} is too large a number", text), "Check the digits."));
  return value;
}

Result<double> parse_real(std::string_view text) {
  if (text.find(',') != std::string_view::npos)
    return refuse(
        fault(fmt::format("'{}' has a comma", text), "Write decimals with a point, such as 22.5."));
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (text.empty() || error != std::errc{} || end != text.data() + text.size() ||
      !std::isfinite(value))
    return refuse(fault(fmt::format("'{}' is no number", text), "Write a number such as 22.5."));
  return value;
}

std::string write_real(double value) {
  if (value == 0)
    return "0";
  char buffer[40];
  const auto [end, error] = std::to_chars(std::begin(buffer), std::end(buffer), value);
  return {std::begin(buffer), end};
}

Result<Count> Count::of(std::int64_t value) {
  constexpr std::int64_t most = 1'000'000'000;
  if (value < 0)
    return refuse(fault(fmt::format("a count cannot be below zero, and this is {}", value),
                        "Write how many there are."));
  if (value > most)
    return refuse(
        fault(fmt::format("{} is more than any nursery counts", value), "Check the digits."));
  return Count(value);
}

Result<Count> Count::parse(std::string_view text) {
  return parse_whole(text).and_then([](std::int64_t value) { return Count::of(value); });
}

Count Count::sure(std::int64_t value) {
  if (value < 0)
    throw std::out_of_range(fmt::format("a count below zero: {}", value));
  return Count(value);
}

} // namespace coneline
