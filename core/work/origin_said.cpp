// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/origin_said.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {
constexpr std::string_view of = " of ";
constexpr std::string_view from = ", from ";
constexpr std::string_view unnamed = "an unnamed supplier";
constexpr std::string_view no_name = " unknown"; // of the last father, by book::cross_name
constexpr std::size_t letters_of_day = 10;
} // namespace

std::string purchase_name(const book::Purchase& purchase) {
  return fmt::format("{}{}{}{}{}", purchase.code.text(), of, purchase.bought.iso(), from,
                     purchase.supplier.empty() ? unnamed : purchase.supplier);
}

std::string origin_said(const std::string& name, Days days) {
  if (name.ends_with(no_name))
    return name.substr(0, name.size() - no_name.size()) + " " + phrase("unknown");
  const auto day_at = name.find(of) + of.size();
  const auto code = Code::parse(name.substr(0, name.find(of)));
  if (name.find(of) == std::string::npos || !code || code->kind() != Kind::purchase ||
      name.size() < day_at + letters_of_day + from.size() ||
      name.substr(day_at + letters_of_day, from.size()) != from)
    return name;
  const auto bought = Date::parse(name.substr(day_at, letters_of_day));
  if (!bought)
    return name;
  const auto supplier = name.substr(day_at + letters_of_day + from.size());
  return phrase("{} of {}, from {}", code->text(),
                days == Days::iso ? bought->iso() : bought->said(),
                supplier == unnamed ? phrase("an unnamed supplier") : supplier);
}

} // namespace coneline::work
