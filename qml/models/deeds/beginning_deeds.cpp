// SPDX-License-Identifier: GPL-3.0-or-later
// What a line begins with: plants, pollen, cones, and what is bought in.
#include "../wording.h"
#include "common.h"
#include "core/work/cautions.h"
#include "core/work/harvest.h"
#include "core/work/new_plant.h"
#include "core/work/pollen.h"

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

Result<work::Done> run_plant(store::Book& book, Answers& answers) {
  const work::NewPlant wanted{
      answers.words("name"),   answers.named("taxon"), answers.one_of<book::Sex>("sex"),
      answers.words("origin"), answers.place("place"), answers.words("note")};
  return answers.then([&] { return work::new_plant(book, wanted); });
}

std::vector<FieldSpec> cone_fields(const Subject& subject) {
  return {day_field("seen", "First seen", shown(subject.today)), words_field("note", "Note")};
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
  return {day_field("collected", "Collected", shown(subject.today)),
          decimal_field("millilitres", "Millilitres", {}, "may stay empty"),
          words_field("store", "Kept in", phrased("refrigerator, dry")),
          words_field("note", "Note")};
}

Result<work::Done> run_pollen(store::Book& book, Answers& answers) {
  const work::CollectPollen wanted{answers.subject().code,
                                   answers.decimal("millilitres"),
                                   answers.words("store"),
                                   {answers.day("collected"), {}, {}},
                                   answers.words("note")};
  return answers.then([&] { return work::collect_pollen(book, wanted); });
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
  static const std::array deeds{Deed{"new cone",
                                     "New cone",
                                     can_cone,
                                     cone_fields,
                                     nullptr,
                                     run_cone,
                                     {work::caution::spines}},
                                Deed{"new pollen", "New pollen lot", can_shed, pollen_fields,
                                     nullptr, run_pollen,
                                     work::cautions_of(book::Verb::collect_pollen)},
                                Deed{"new plant",
                                     "New plant",
                                     nullptr,
                                     plant_fields,
                                     nullptr,
                                     run_plant,
                                     {work::caution::permit}},
                                Deed{"buy in", "Buy in", nullptr, buy_fields, nullptr, run_buy,
                                     work::cautions_of(book::Verb::buy_in)}};
  return deeds;
}

} // namespace coneline::window
