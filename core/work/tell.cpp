// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/tell.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

/// What an entry noted besides its movements.
struct TellDetail {
  std::string operator()(std::monostate) const { return {}; }
  std::string operator()(const book::Pollination& detail) const {
    return fmt::format("{} pollen, {}", book::word(detail.method),
                       detail.pollen.size() == 1 ? "one lot"
                                                 : fmt::format("{} lots", detail.pollen.size()));
  }
  std::string operator()(const book::Weighing& detail) const {
    return fmt::format("by weight, {} g", detail.grams);
  }
  std::string operator()(const book::Cleaning& detail) const {
    return detail.soak_days == 0 ? std::string() : fmt::format("soaked {} days", detail.soak_days);
  }
  std::string operator()(const book::Sorting& detail) const {
    return fmt::format("by {}", book::word(detail.test));
  }
  std::string operator()(const book::Keeping& detail) const {
    return detail.store + (detail.celsius ? fmt::format(" at {} °C", *detail.celsius) : "") +
           (detail.until_from ? fmt::format(", to look at from {}", detail.until_from->iso()) : "");
  }
  std::string operator()(const book::Sale& detail) const {
    return "to " + (detail.buyer.empty() ? std::string("nobody named") : detail.buyer) +
           (detail.cents ? fmt::format(" for {}.{:02}", *detail.cents / 100, *detail.cents % 100)
                         : "");
  }
  std::string operator()(const book::ConeLook& detail) const {
    return std::string(book::word(detail.scales)) +
           (detail.fertile_scales ? fmt::format(", {} fertile scales", *detail.fertile_scales)
                                  : "");
  }
  std::string operator()(const book::PlantNote& detail) const {
    return detail.male_cone ? std::string(book::word(*detail.male_cone)) : "to another place";
  }
  std::string operator()(const book::PollenNote& detail) const {
    std::string text = detail.millilitres ? fmt::format("{} ml", *detail.millilitres) : "";
    if (detail.counted)
      text += fmt::format("{} of {} grains germinated", *detail.germinated, *detail.counted);
    return text + (detail.conditions.empty() ? "" : (text.empty() ? "" : ", ") + detail.conditions);
  }
  std::string operator()(const book::Correction& detail) const {
    std::string text;
    for (const auto& change : detail.changes)
      text += fmt::format("{}{} was '{}', is '{}'", text.empty() ? "" : "; ", change.field,
                          change.stood, change.stands);
    return text;
  }
  std::string operator()(const book::DueAnswer& detail) const {
    return detail.due + (detail.until ? ", until " + detail.until->iso() : "");
  }
};

std::string tell(store::Reading& reading, const book::Movement& movement) {
  const auto& [from, to, count] = movement;
  if (book::standing(from.state) == book::Standing::beginning)
    return fmt::format("{} came in", count.value());
  if (from.lot == to.lot)
    return fmt::format("{} {} → {}", count.value(), book::word(from.state), book::word(to.state));
  return fmt::format("{} {} of {} → {} in {}", count.value(), book::word(from.state),
                     reading.lot(from.lot).code.text(), book::word(to.state),
                     reading.lot(to.lot).code.text());
}

} // namespace

std::string tell(store::Reading& reading, const book::Entry& entry) {
  std::string text;
  const auto add = [&](const std::string& part) {
    if (!part.empty())
      text += (text.empty() ? ": " : "; ") + part;
  };
  for (const auto& movement : entry.movements)
    add(tell(reading, movement));
  if (entry.verb == book::Verb::inspect && entry.movements.empty())
    add("nothing new");
  add(std::visit(TellDetail{}, entry.detail));
  if (entry.reverses)
    add(fmt::format("takes back entry {}", entry.reverses->value));
  return std::string(book::word(entry.verb)) + text;
}

} // namespace coneline::work
