// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/first_cone.h"

#include "core/base/phrase.h"
#include "core/work/cone_course.h"
#include "core/work/pollinate.h"

namespace coneline::work {

namespace {

Result<book::TaxonId> taxon_of(store::Writing& writing, const std::string& name) {
  if (name.empty())
    return refuse(fault("the plant's taxon is not given", "Write its botanical name."));
  const auto registers = writing.registers();
  if (const auto* known = book::named(registers.taxa, name))
    return known->id;
  book::Taxon taxon;
  taxon.name = name;
  return writing.put(taxon);
}

Result<book::PlantId> put_plant(store::Writing& writing, const std::string& name,
                                book::TaxonId taxon, book::Sex sex, const std::string& origin) {
  const auto code = writing.next_code(Kind::plant);
  if (!code)
    return refuse(code.error());
  book::Plant plant;
  plant.code = *code;
  plant.name = name;
  plant.taxon = taxon;
  plant.sex = sex;
  plant.origin = origin;
  return writing.put(plant);
}

Result<Code> put_pollen(store::Writing& writing, const FirstCone::Pass& pass, book::TaxonId taxon) {
  const auto male = put_plant(writing, pass.male, taxon, book::Sex::male, {});
  if (!male)
    return refuse(male.error());
  const auto code = writing.next_code(Kind::pollen);
  if (!code)
    return code;
  book::PollenLot lot;
  lot.code = *code;
  lot.plant = *male;
  lot.collected = pass.collected;
  return writing.put(lot).map([&](auto) { return *code; });
}

Result<Done> give_pollen(store::Writing& writing, const Code& cone, const FirstCone& wanted,
                         book::TaxonId taxon) {
  const auto& pass = *wanted.pass;
  if (pass.day < wanted.seen)
    return refuse(fault(phrase("this pass is {} days before the cone was seen",
                               days_between(pass.day, wanted.seen)),
                        "Check both days."));
  PollenGiven given;
  if (!pass.male.empty()) {
    const auto lot = put_pollen(writing, pass, taxon);
    if (!lot)
      return refuse(lot.error());
    given.lot = *lot;
  }
  return pollinate(writing, {cone, pass.method, {given}, {pass.day, {}, {}}});
}

} // namespace

Result<Done> first_cone(store::Book& book, const FirstCone& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto taxon = taxon_of(writing, wanted.taxon);
    if (!taxon)
      return refuse(taxon.error());
    const auto plant = put_plant(writing, wanted.plant, *taxon, book::Sex::female, wanted.origin);
    if (!plant)
      return refuse(plant.error());
    const auto code = writing.next_code(Kind::cone);
    if (!code)
      return refuse(code.error());
    if (auto cone = writing.put(book::Cone{{}, *code, *plant, wanted.seen, {}}); !cone)
      return refuse(cone.error());
    Done done{{}, {*code}, phrase("cone {} is in the book", code->text()), {}};
    if (wanted.pass) {
      const auto passed = give_pollen(writing, *code, wanted, *taxon);
      if (!passed)
        return refuse(passed.error());
      done.entries = passed->entries;
    }
    const auto looked =
        check_scales(writing, {*code, wanted.scales, std::nullopt, {wanted.today, {}, {}}});
    if (!looked)
      return refuse(looked.error());
    done.entries.insert(done.entries.end(), looked->entries.begin(), looked->entries.end());
    return done;
  });
}

} // namespace coneline::work
