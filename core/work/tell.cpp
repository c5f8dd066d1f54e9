// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/tell.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

/// What an entry noted besides its movements.
struct TellDetail {
  std::string operator()(std::monostate) const { return {}; }
  std::string operator()(const book::Pollination& detail) const {
    return phrase("{} pollen, {}", book::said(detail.method),
                  detail.pollen.size() == 1 ? phrase("one lot")
                                            : phrase("{} lots", detail.pollen.size()));
  }
  std::string operator()(const book::Weighing& detail) const {
    return phrase("by weight, {} g", detail.grams);
  }
  std::string operator()(const book::Cleaning& detail) const {
    return detail.soak_days == 0 ? std::string() : phrase("soaked {} days", detail.soak_days);
  }
  std::string operator()(const book::Sorting& detail) const {
    return phrase("by {}", book::said(detail.test));
  }
  std::string operator()(const book::Keeping& detail) const {
    return detail.store + (detail.celsius ? phrase(" at {} °C", *detail.celsius) : "") +
           (detail.until_from ? phrase(", to look at from {}", detail.until_from->said()) : "");
  }
  std::string operator()(const book::Sale& detail) const {
    return phrase("to {}", detail.buyer.empty() ? phrase("nobody named") : detail.buyer) +
           (detail.cents ? phrase(" for {}.{:02}", *detail.cents / 100, *detail.cents % 100) : "");
  }
  std::string operator()(const book::ConeLook& detail) const {
    return book::said(detail.scales) +
           (detail.fertile_scales ? phrase(", {} fertile scales", *detail.fertile_scales) : "");
  }
  std::string operator()(const book::PlantNote& detail) const {
    return detail.male_cone ? book::said(*detail.male_cone) : phrase("to another place");
  }
  std::string operator()(const book::PollenNote& detail) const {
    std::string text = detail.millilitres ? phrase("{} ml", *detail.millilitres) : "";
    if (detail.counted)
      text += phrase("{} of {} grains germinated", *detail.germinated, *detail.counted);
    return text + (detail.conditions.empty() ? "" : (text.empty() ? "" : ", ") + detail.conditions);
  }
  std::string operator()(const book::Correction& detail) const {
    std::string text;
    for (const auto& change : detail.changes)
      text += phrase("{}{} was '{}', is '{}'", text.empty() ? "" : "; ", change.field, change.stood,
                     change.stands);
    return text;
  }
  std::string operator()(const book::DueAnswer& detail) const {
    return detail.due + (detail.until ? phrase(", until {}", detail.until->said()) : "");
  }
};

std::string tell(store::Reading& reading, const book::Movement& movement) {
  const auto& [from, to, count] = movement;
  if (book::standing(from.state) == book::Standing::beginning)
    return phrase("{} came in", count.value());
  if (from.lot == to.lot)
    return fmt::format("{} {} → {}", count.value(), book::said(from.state), book::said(to.state));
  return phrase("{} {} of {} → {} in {}", count.value(), book::said(from.state),
                reading.lot(from.lot).code.text(), book::said(to.state),
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
    add(phrase("nothing new"));
  if (entry.verb == book::Verb::harvest &&
      entry.cone) // it is about a cone only where that gave none
    add(phrase("no seed"));
  add(std::visit(TellDetail{}, entry.detail));
  if (entry.verb == book::Verb::correct && entry.detail.index() == 0)
    add(entry.note); // of a row that is no plant's; see amend.h
  if (entry.reverses)
    add(phrase("takes back entry {}", entry.reverses->value));
  return book::said(entry.verb) + text;
}

} // namespace coneline::work
