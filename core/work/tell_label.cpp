// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/tell_label.h"

#include "core/base/phrase.h"
#include "core/book/cross.h"
#include "core/work/find_code.h"
#include "core/work/lot_ended.h"
#include "core/work/one_reading.h"
#include "core/work/origin_said.h"
#include "core/work/round.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

ParentTold parent(const book::Registers& registers, book::PlantId id) {
  const auto& plant = registers.plant(id);
  return {plant.code,
          book::plant_name(plant),
          registers.taxon(plant.taxon).name,
          plant.taxon_certainty == book::Certainty::certain
              ? ""
              : std::string(book::word(plant.taxon_certainty)),
          std::string(book::word(plant.sex)),
          plant.origin,
          plant.acquired,
          plant.papers};
}

std::string bought_from(const book::Purchase& purchase) {
  return phrase("bought {} from {}{}", purchase.bought.said(),
                purchase.supplier.empty() ? phrase("an unnamed supplier") : purchase.supplier,
                purchase.note.empty() ? "" : ": " + purchase.note);
}

class Telling {
 public:
  Telling(store::Reading& reading, const book::Registers& registers, const Code& code, Date day)
      : reading_(reading), registers_(registers), once_(reading, registers, day) {
    told_.code = code;
    told_.what = kind_word(code.kind());
  }

  LabelTold made() {
    const auto& code = told_.code;
    auto all_due = due_on(once_); // first, so that the rest asks the same sweep
    switch (code.kind()) {
    case Kind::batch:
    case Kind::tray:
    case Kind::pot_group:
      tell(reading_.lot(code).value());
      break;
    case Kind::cone:
      tell(*book::coded(registers_.cones, code));
      break;
    case Kind::plant:
      tell(*book::coded(registers_.plants, code));
      break;
    case Kind::pollen:
      tell(*book::coded(registers_.pollen_lots, code));
      break;
    case Kind::purchase:
      tell(*book::coded(registers_.purchases, code));
      break;
    case Kind::place:
      tell(*book::coded(registers_.places, code));
      break;
    }
    for (auto& due : all_due)
      if (due.code == code || is_here(due.code))
        told_.due.push_back(std::move(due));
    return std::move(told_);
  }

 private:
  bool is_here(const Code& code) const {
    return std::ranges::any_of(told_.here, [&](const auto& each) { return each.first == code; });
  }

  void stands(std::optional<book::PlaceId> place) {
    if (!place)
      return;
    const auto& at = registers_.place(*place);
    told_.place = at.name + (at.within ? ", " + registers_.place(*at.within).name : "");
  }

  void parents_of(const book::Cross& cross) {
    told_.seed_parent = parent(registers_, cross.seed_parent);
    for (const auto& father : cross.pollen_parents)
      told_.pollen_parents.push_back(parent(registers_, father));
    told_.unknown_father = cross.unknown_father;
  }

  void tell(const book::Lot& lot) {
    const auto back = line_back(once_, lot);
    if (lot.pot)
      told_.what += ", " + registers_.pot(*lot.pot).name;
    told_.title = origin_said(back.origin);
    told_.taxon = back.taxon;
    told_.note = lot.note;
    told_.line = back.steps;
    for (const auto& balance : reading_.balances_of(lot.id))
      if (book::standing(balance.account.state) == book::Standing::on_hand)
        told_.holds.emplace_back(book::word(balance.account.state), balance.count);
    if (const auto ended = refuse_ended(reading_, lot); !ended)
      told_.ended = ended.error().what;
    stands(once_.sweep().of(lot.id).place);
    const auto seen = reading_.last_seen();
    if (const auto day = seen.find(lot.id); day != seen.end())
      told_.last_seen = day->second;
    if (back.cross)
      parents_of(*back.cross);
    if (const auto* purchase = std::get_if<book::PurchaseId>(&lot.origin))
      told_.bought = bought_from(registers_.purchase(*purchase));
  }

  void tell(const book::Cone& cone) {
    for (const auto& line : cone_lines(once_))
      if (line.cone.id == cone.id) {
        told_.title = origin_said(line.origin.name);
        told_.taxon = line.origin.taxon;
        if (line.harvested_on && line.harvested == 0)
          told_.ended = phrase("came off {} and gave no seed", line.harvested_on->said());
        if (line.harvested > 0)
          told_.ended = phrase("harvested {}: {} seeds", line.harvested_on->said(), line.harvested);
      }
    told_.note = cone.note;
    stands(registers_.plant(cone.plant).place);
    parents_of(
        book::cross_of(registers_, cone, by_cone(once_.standing(book::Verb::pollinate))[cone.id]));
  }

  void tell(const book::Plant& plant) {
    told_.itself = parent(registers_, plant.id);
    told_.what += ", " + told_.itself->sex;
    told_.title = told_.itself->name;
    told_.taxon = told_.itself->taxon;
    told_.note = plant.note;
    stands(plant.place);
    if (plant.seed_parent)
      told_.seed_parent = parent(registers_, *plant.seed_parent);
    if (plant.pollen_parent)
      told_.pollen_parents.push_back(parent(registers_, *plant.pollen_parent));
    for (const auto& [role, said] : {std::pair("seed parent", plant.seed_parent_said),
                                     std::pair("pollen parent", plant.pollen_parent_said)})
      if (!said.empty())
        told_.parents_said +=
            fmt::format("{}{} {}", told_.parents_said.empty() ? "" : ", ", role, said);
  }

  void tell(const book::PollenLot& pollen) {
    const auto& male = registers_.plant(pollen.plant);
    told_.title =
        phrase("pollen of {}, collected {}", book::plant_name(male), pollen.collected.said());
    told_.taxon = registers_.taxon(male.taxon).name;
    told_.note = pollen.note;
    if (!pollen.store.empty())
      told_.place = pollen.store;
    told_.pollen_parents.push_back(parent(registers_, male.id));
  }

  void tell(const book::Purchase& purchase) {
    told_.title = purchase.supplier;
    told_.taxon = registers_.taxon(purchase.taxon).name;
    told_.bought = bought_from(purchase);
  }

  void tell(const book::Place& place) {
    told_.what = book::word(place.kind);
    told_.title = place.name;
    if (place.within)
      stands(place.within);
    for (const auto& line : once_.lot_lines())
      if (line.total() > 0 && is_within(registers_, line.place, place.id))
        told_.here.emplace_back(line.lot.code, origin_said(line.origin.name));
  }

  store::Reading& reading_;
  const book::Registers& registers_;
  OneReading once_;
  LabelTold told_;
};

} // namespace

Result<LabelTold> tell_label(store::Reading& reading, const book::Registers& registers,
                             const Code& code, Date day) {
  if (!exists(reading, registers, code))
    return refuse(
        fault(phrase("there is no {} {} in this book", kind_said(code.kind()), code.text()),
              "Check the code, or the book."));
  return Telling(reading, registers, code, day).made();
}

std::string told(const book::Paper& paper) {
  std::string text;
  for (const auto& part : {paper.kind, paper.number, paper.authority,
                           paper.issued ? paper.issued->said() : std::string(), paper.note})
    if (!part.empty())
      text += (text.empty() ? "" : ", ") + part;
  return text;
}

} // namespace coneline::work
