// SPDX-License-Identifier: GPL-3.0-or-later
// Pollinate and harvest.
#include "../wording.h"
#include "common.h"
#include "core/book/cross.h"
#include "core/work/harvest.h"
#include "core/work/pollinate.h"

#include <array>

namespace coneline::window {

namespace {

const QString unknown_father = QStringLiteral("unknown father");
const QString no_more = QStringLiteral("none");

bool stands_on_plant(const Subject& subject) {
  const auto* cone = subject.standing->cone(subject.code);
  return cone && cone->harvested == 0;
}

bool can_take_pollen(const Subject& subject) {
  if (subject.code.kind() != Kind::plant)
    return stands_on_plant(subject);
  const auto* plant = book::coded(subject.registers().plants, subject.code);
  return plant && plant->sex != book::Sex::male;
}

QStringList pollen_choices(const Subject& subject) {
  QStringList choices;
  for (const auto& lot : subject.registers().pollen_lots)
    choices.prepend(text(lot.code.text()) + " " +
                    text(book::plant_name(subject.registers().plant(lot.plant))) + ", " +
                    shown(lot.collected));
  return choices;
}

std::vector<FieldSpec> pollinate_fields(const Subject& subject) {
  auto first = pollen_choices(subject) << unknown_father;
  auto second = pollen_choices(subject) << no_more;
  return with_day_and_note(
      subject, {choice_field("pollen", "Pollen", first, first.first()),
                choice_field("second", "and also", second, no_more),
                choice_field("method", "Put in", {"dry", "wet"}, QStringLiteral("dry"))});
}

Result<work::Done> run_pollinate(store::Book& book, Answers& answers) {
  work::Pollinate wanted{answers.subject().code,
                         answers.one_of<book::PollinationMethod>("method"),
                         {{answers.code("pollen"), std::nullopt}},
                         answers.noted()};
  if (const auto second = answers.code("second"))
    wanted.pollen.push_back({second, std::nullopt});
  return answers.then([&] { return work::pollinate(book, wanted); });
}

std::vector<FieldSpec> harvest_fields(const Subject& subject) {
  return with_day_and_note(subject, {count_field("seeds", "Seeds counted", 0),
                                     words_field("hundreds", "or by weight: grams of 100 seeds", {},
                                                 "eight weighings: 15.0 15.4 15.2 …"),
                                     decimal_field("grams", "grams of all the seed")});
}

Result<work::Done> run_harvest(store::Book& book, Answers& answers) {
  work::Harvest wanted{answers.subject().code, answers.count("seeds"), answers.noted(),
                       answers.weighing("hundreds", "grams")};
  return answers.then([&] { return work::harvest(book, wanted); });
}

} // namespace

std::span<const Deed> cone_deeds() {
  static const std::array deeds{Deed{"pollinate",
                                     "Pollinate",
                                     can_take_pollen,
                                     pollinate_fields,
                                     nullptr,
                                     run_pollinate,
                                     {caution::spines}},
                                Deed{"harvest",
                                     "Harvest",
                                     stands_on_plant,
                                     harvest_fields,
                                     nullptr,
                                     run_harvest,
                                     {caution::poison, caution::powders}}};
  return deeds;
}

} // namespace coneline::window
