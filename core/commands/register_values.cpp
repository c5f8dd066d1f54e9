// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/register_values.h"

#include "core/base/number.h"
#include "core/commands/first_fault.h"

#include <fmt/format.h>

namespace coneline::commands {

Result<book::MixPart> part_given(const std::string& text) {
  const auto equals = text.rfind('=');
  if (equals == std::string::npos)
    return refuse(usage_fault(fmt::format("'{}' is not of the form name=number", text),
                              "Write it such as bark=4."));
  auto number = parse_real(text.substr(equals + 1));
  if (!number)
    return refuse(number.error());
  auto name = book::squeezed(text.substr(0, equals));
  if (name.empty())
    return refuse(fault(fmt::format("'{}' names no part", text), "Write it such as bark=4."));
  return book::MixPart{std::move(name), *number};
}

Result<std::optional<book::Range>> range_given(const std::string& text) {
  if (text.empty())
    return std::nullopt;
  const auto dash = text.find('-');
  auto low = parse_real(text.substr(0, dash));
  auto high = dash == std::string::npos ? low : parse_real(text.substr(dash + 1));
  if (const auto wrong = first_fault(low, high))
    return refuse(*wrong);
  return book::Range::of(*low, *high).map([](const book::Range& range) {
    return std::optional(range);
  });
}

Result<book::RouteStep> step_given(const book::Registers& registers, const std::string& text,
                                   const std::string& source) {
  std::vector<std::string> fields{""};
  for (const char c : text)
    if (c == ':')
      fields.emplace_back();
    else
      fields.back() += c;
  if (fields.size() != 5)
    return refuse(usage_fault(fmt::format("'{}' has {} parts", text, fields.size()),
                              "A step is pot:mix:months:survival:light."));
  const auto pot = book::row_said(registers.pots, fields[0], "pot");
  const auto mix = book::row_said(registers.mixes, fields[1], "mix");
  auto stay = range_given(fields[2]);
  auto survival = parse_real(fields[3]);
  auto cloth = book::read_word<book::Light>(fields[4]);
  if (const auto wrong = first_fault(pot, mix, stay, survival, cloth))
    return refuse(*wrong);
  if (!*stay)
    return refuse(
        usage_fault(fmt::format("'{}' says no months", text), "Write them such as 6-12."));
  return book::RouteStep{(*pot)->id, (*mix)->id, **stay, *survival, *cloth, source};
}

Result<void> is_in_millimetres(double side) {
  constexpr double shortest = 50;
  constexpr double a_metre = 1000;
  if (side > 0 && side < shortest)
    return refuse(fault(fmt::format("a side of {:g} mm: no pot stands on that", side),
                        fmt::format("Give millimetres: {:g} m are {:g}.", side, side * a_metre)));
  return {};
}

} // namespace coneline::commands
