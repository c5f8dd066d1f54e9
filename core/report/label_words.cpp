// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/label_words.h"

#include "core/base/phrase.h"
#include "core/work/find_code.h"
#include "core/work/origin_said.h"
#include "core/work/overview.h"

#include <fmt/format.h>

#include <map>

namespace coneline::report {

namespace {

/// Labels are paper: their days are those of ISO 8601.
std::string began(const book::Lot& lot, Date day) {
  const bool bought = std::holds_alternative<book::PurchaseId>(lot.origin);
  switch (lot.code.kind()) {
  case Kind::batch:
    return bought ? phrase("bought {}", day.iso()) : phrase("harvested {}", day.iso());
  case Kind::tray:
    return phrase("sown {}", day.iso());
  default:
    return phrase("potted {}", day.iso());
  }
}

LabelWords lot_words(const work::LotLine& line) {
  LabelWords words{line.lot.code, line.origin.taxon, "", "", ""};
  if (line.origin.name != line.origin.taxon)
    words.cross += " · " + work::origin_said(line.origin.name, work::Days::iso);
  words.cone = fmt::format("{} {}", kind_said(line.origin.code.kind()), line.origin.code.text());
  if (line.since)
    words.sown = began(line.lot, *line.since);
  words.count = line.lot.code.kind() == Kind::pot_group
                    ? phrase_n(line.came_in, "{} plant", "{} plants")
                    : phrase_n(line.came_in, "{} seed", "{} seeds");
  return words;
}

LabelWords register_words(const book::Registers& registers, const Code& code) {
  LabelWords words{code, "", "", "", ""};
  if (const auto* plant = book::coded(registers.plants, code)) {
    words.cross =
        registers.taxon(plant->taxon).name + (plant->name.empty() ? "" : " · " + plant->name);
    words.cone = plant->sex == book::Sex::not_known ? "" : book::said(plant->sex);
  } else if (const auto* pollen = book::coded(registers.pollen_lots, code)) {
    const auto& male = registers.plant(pollen->plant);
    words.cross =
        phrase("pollen · {} · {}", registers.taxon(male.taxon).name, book::plant_name(male));
    words.sown = phrase("collected {}", pollen->collected.iso());
  } else if (const auto* cone = book::coded(registers.cones, code)) {
    const auto& female = registers.plant(cone->plant);
    words.cross =
        phrase("cone · {} · {}", registers.taxon(female.taxon).name, book::plant_name(female));
    words.sown = cone->first_seen ? phrase("first seen {}", cone->first_seen->iso()) : "";
  } else if (const auto* place = book::coded(registers.places, code)) {
    words.cross = place->name;
    words.cone = book::said(place->kind);
  } else if (const auto* purchase = book::coded(registers.purchases, code)) {
    words.cross = registers.taxon(purchase->taxon).name;
    words.cone = phrase("from {}", purchase->supplier);
    words.sown = phrase("bought {}", purchase->bought.iso());
  }
  return words;
}

} // namespace

Result<std::vector<LabelWords>> label_words(store::Reading& reading,
                                            const book::Registers& registers,
                                            std::span<const Code> codes) {
  std::map<Code, LabelWords> lots;
  for (const auto& line : work::lot_lines(reading, registers))
    lots.emplace(line.lot.code, lot_words(line));
  std::vector<LabelWords> words;
  for (const auto& code : codes) {
    if (!work::exists(reading, registers, code))
      return refuse(
          fault(phrase("there is no {} {} in this book", kind_said(code.kind()), code.text()),
                "Check the code, or the book."));
    const auto lot = lots.find(code);
    words.push_back(lot != lots.end() ? lot->second : register_words(registers, code));
  }
  return words;
}

std::vector<Code> codes_on_hand(store::Reading& reading, const book::Registers& registers,
                                Kind kind) {
  std::vector<Code> codes;
  const auto add_all = [&](const auto& rows) {
    for (const auto& row : rows)
      codes.push_back(row.code);
  };
  switch (kind) {
  case Kind::plant:
    add_all(registers.plants);
    break;
  case Kind::pollen:
    add_all(registers.pollen_lots);
    break;
  case Kind::purchase:
    add_all(registers.purchases);
    break;
  case Kind::place:
    add_all(registers.places);
    break;
  case Kind::cone:
    for (const auto& line : work::cone_lines(reading, registers))
      if (!line.harvested_on)
        codes.push_back(line.cone.code);
    break;
  case Kind::batch:
  case Kind::tray:
  case Kind::pot_group:
    for (const auto& line : work::lot_lines(reading, registers))
      if (line.lot.code.kind() == kind && line.total() > 0)
        codes.push_back(line.lot.code);
  }
  std::ranges::sort(codes);
  return codes;
}

} // namespace coneline::report
