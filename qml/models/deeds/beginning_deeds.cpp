// SPDX-License-Identifier: GPL-3.0-or-later
// What a line begins with: plants, pollen, cones, and what is bought in.
#include "../wording.h"
#include "common.h"
#include "core/work/harvest.h"

#include <array>

namespace coneline::window {

namespace {

const book::Plant* plant_of(const Subject& subject) {
  return subject.code.kind() == Kind::plant ? book::coded(subject.registers().plants, subject.code)
                                            : nullptr;
}
bool can_cone(const Subject& subject) {
  const auto* plant = plant_of(subject);
  return plant && plant->sex != book::Sex::male;
}
bool can_shed(const Subject& subject) {
  const auto* plant = plant_of(subject);
  return plant && plant->sex != book::Sex::female;
}

QString taxon_hint(const Subject& subject) {
  QStringList names;
  for (const auto& taxon : subject.registers().taxa)
    names << text(taxon.name);
  return names.isEmpty() ? QString() : phrased("in the book: {}", names.join(QStringLiteral(", ")));
}

Result<book::TaxonId> taxon_for(store::Writing& writing, const std::string& name) {
  const auto registers = writing.registers();
  if (const auto* known = book::named(registers.taxa, name))
    return known->id;
  book::Taxon taxon;
  taxon.name = name;
  return writing.put(taxon);
}

Result<Code> put_cone(store::Writing& writing, book::PlantId plant, std::optional<Date> seen,
                      const std::string& note) {
  const auto code = writing.next_code(Kind::cone);
  if (!code)
    return code;
  return writing.put(book::Cone{{}, *code, plant, seen, note}).map([&](auto) { return *code; });
}

work::Done made(const Code& code) {
  return {{}, {code}, phrase("{} {} is in the book", kind_said(code.kind()), code.text()), {}};
}

std::vector<FieldSpec> plant_fields(const Subject& subject) {
  auto taxon = words_field("taxon", "Kind of plant (botanical name)");
  taxon.hint = taxon_hint(subject);
  return {words_field("name", "What you call it"),
          taxon,
          choice_field("sex", "Sex", {"not known", "male", "female"}, QStringLiteral("female")),
          words_field("origin", "Where it came from"),
          name_field("place", "Place", place_names(subject), {}),
          words_field("note", "Note")};
}

Result<std::pair<book::PlantId, Code>> put_plant(store::Writing& writing, const Answers& answers,
                                                 const std::string& taxon, book::Sex sex) {
  const auto taxon_id = taxon_for(writing, taxon);
  if (!taxon_id)
    return refuse(taxon_id.error());
  const auto code = writing.next_code(Kind::plant);
  if (!code)
    return refuse(code.error());
  book::Plant plant;
  plant.code = *code;
  plant.name = answers.words("name");
  plant.taxon = *taxon_id;
  plant.sex = sex;
  plant.origin = answers.words("origin");
  plant.note = answers.words("note");
  const auto registers = writing.registers();
  if (const auto* place = book::named(registers.places, answers.words("place")))
    plant.place = place->id;
  return writing.put(plant).map([&](book::PlantId id) { return std::pair(id, *code); });
}

Result<work::Done> run_plant(store::Book& book, Answers& answers) {
  const auto taxon = answers.named("taxon");
  const auto sex = answers.one_of<book::Sex>("sex");
  return answers.then([&] {
    return book.write([&](store::Writing& writing) {
      return put_plant(writing, answers, taxon, sex).map([](const auto& put) {
        return made(put.second);
      });
    });
  });
}

std::vector<FieldSpec> cone_fields(const Subject& subject) {
  return {words_field("seen", "First seen", shown(subject.today)), words_field("note", "Note")};
}

Result<work::Done> run_cone(store::Book& book, Answers& answers) {
  const auto seen = answers.some_day("seen");
  const auto plant = plant_of(answers.subject())->id;
  return answers.then([&] {
    return book.write([&](store::Writing& writing) {
      return put_cone(writing, plant, seen, answers.words("note")).map([](const Code& code) {
        return made(code);
      });
    });
  });
}

std::vector<FieldSpec> pollen_fields(const Subject& subject) {
  return {words_field("collected", "Collected", shown(subject.today)),
          decimal_field("millilitres", "Millilitres", {}, "may stay empty"),
          words_field("store", "Kept in", phrased("refrigerator, dry")),
          words_field("note", "Note")};
}

Result<work::Done> run_pollen(store::Book& book, Answers& answers) {
  book::PollenLot lot;
  lot.plant = plant_of(answers.subject())->id;
  lot.collected = answers.day("collected");
  lot.millilitres = answers.decimal("millilitres");
  lot.store = answers.words("store");
  lot.note = answers.words("note");
  return answers.then([&] {
    return book.write([&](store::Writing& writing) -> Result<work::Done> {
      const auto code = writing.next_code(Kind::pollen);
      if (!code)
        return refuse(code.error());
      lot.code = *code;
      return writing.put(lot).map([&](auto) { return made(*code); });
    });
  });
}

std::vector<FieldSpec> buy_fields(const Subject& subject) {
  auto taxon = words_field("taxon", "Kind of plant (botanical name)");
  taxon.hint = taxon_hint(subject);
  auto pots = pot_names(subject, Cells::one);
  pots.prepend(QStringLiteral("none"));
  return with_day_and_note(
      subject, {taxon, words_field("supplier", "From whom"), count_field("count", "How many", 0),
                name_field("pot", "Plants in pots; none for seed", pots, QStringLiteral("none")),
                name_field("place", "Place", place_names(subject), {})});
}

Result<work::Done> run_buy(store::Book& book, Answers& answers) {
  const work::BuyIn wanted{answers.named("taxon"), answers.named("supplier"),
                           answers.count("count"), answers.chosen("pot"),
                           answers.place("place"), answers.noted()};
  return answers.then([&] { return work::buy_in(book, wanted); });
}

} // namespace

std::span<const Deed> beginning_deeds() {
  static const std::array deeds{
      Deed{"new cone", "New cone", can_cone, cone_fields, nullptr, run_cone, {caution::spines}},
      Deed{"new pollen",
           "New pollen lot",
           can_shed,
           pollen_fields,
           nullptr,
           run_pollen,
           {caution::spines}},
      Deed{"new plant", "New plant", nullptr, plant_fields, nullptr, run_plant, {caution::permit}},
      Deed{"buy in", "Buy in", nullptr, buy_fields, nullptr, run_buy, {caution::permit}}};
  return deeds;
}

} // namespace coneline::window
