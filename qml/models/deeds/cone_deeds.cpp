// SPDX-License-Identifier: GPL-3.0-or-later
// Pollinate and harvest.
#include "../wording.h"
#include "common.h"
#include "core/book/cross.h"
#include "core/work/cautions.h"
#include "core/work/harvest.h"
#include "core/work/pollinate.h"

#include <array>

namespace coneline::window {

namespace {

const QString unknown_father = QStringLiteral("unknown father");
const QString no_more = QStringLiteral("none");

bool stands_on_plant(const Subject& subject) {
  const auto* cone = subject.standing->cone(subject.code);
  return cone && !cone->harvested_on;
}

bool can_take_pollen(const Subject& subject) {
  if (subject.code.kind() != Kind::plant) {
    const auto* course = subject.standing->cone_course(subject.code);
    return course && !course->line.harvested_on && !course->closed;
  }
  const auto* plant = book::coded(subject.registers().plants, subject.code);
  return plant && plant->sex != book::Sex::male;
}

/// Passes follow each other within days (common practice, no source); one entered a month after
/// the last is one that was forgotten.
bool last_pass_long_ago(const Subject& subject) {
  constexpr int a_month = 30;
  const auto* cone = subject.standing->cone(subject.code);
  return cone && !cone->passes.empty() &&
         days_between(cone->passes.back(), subject.today) > a_month;
}

QString pollen_words(const Subject& subject, const work::PollenLine& line) {
  auto words = text(line.lot.code.text()) + " " +
               text(book::plant_name(subject.registers().plant(line.lot.plant))) +
               phrased(", of {}", shown(line.lot.collected));
  if (line.left)
    words += phrased(", {} ml left", shown(*line.left, 1));
  return words;
}

std::optional<book::TaxonId> taxon_of(const Subject& subject) {
  const auto& registers = subject.registers();
  if (const auto* cone = subject.standing->cone(subject.code))
    return registers.plant(cone->cone.plant).taxon;
  if (const auto* plant = book::coded(registers.plants, subject.code))
    return plant->taxon;
  return std::nullopt;
}

/// Pollen that is there: of the cone's taxon first, and in it what should be used first.
std::vector<work::PollenLine> pollen_there(const Subject& subject) {
  auto lines = subject.standing->pollen;
  std::erase_if(lines, [](const auto& line) { return !line.there(); });
  const auto taxon = taxon_of(subject);
  std::ranges::stable_partition(lines, [&](const auto& line) {
    return subject.registers().plant(line.lot.plant).taxon == taxon;
  });
  return lines;
}

/// What the last pass on this cone used, share by share.
const book::PollenUsed* used_last(const Subject& subject, std::size_t share) {
  const auto* cone = subject.standing->cone(subject.code);
  return cone && cone->last_pollen.size() > share ? &cone->last_pollen[share] : nullptr;
}

/// The choice of one share's pollen and its amount, as in the last pass.
std::vector<FieldSpec> share_fields(const Subject& subject, std::size_t share, const char* pollen,
                                    const char* label, const QString& nothing,
                                    const char* millilitres) {
  QStringList choices;
  const auto* last = used_last(subject, share);
  QString chosen = last && !last->lot ? nothing : QString();
  for (const auto& line : pollen_there(subject)) {
    choices << pollen_words(subject, line);
    if (last && last->lot == line.lot.id)
      chosen = choices.back();
  }
  choices << nothing;
  if (chosen.isEmpty())
    chosen = share == 0 ? choices.first() : nothing;
  const auto amount = last && last->millilitres ? written(*last->millilitres) : QString();
  return {name_field(pollen, label, choices, chosen),
          decimal_field(millilitres, "Millilitres of it", amount, "empty if not measured")};
}

std::vector<FieldSpec> pollinate_fields(const Subject& subject) {
  auto fields = share_fields(subject, 0, "pollen", "Pollen", unknown_father, "ml");
  for (auto& field : share_fields(subject, 1, "second", "and also", no_more, "secondMl"))
    fields.push_back(std::move(field));
  fields.push_back(choice_field("method", "Put in", {"dry", "wet"}, QStringLiteral("dry")));
  return with_day_and_note(subject, std::move(fields));
}

Result<work::Done> run_pollinate(store::Book& book, Answers& answers) {
  work::Pollinate wanted{answers.subject().code,
                         answers.one_of<book::PollinationMethod>("method"),
                         {{answers.code("pollen"), answers.decimal("ml")}},
                         answers.noted()};
  if (const auto second = answers.code("second"))
    wanted.pollen.push_back({second, answers.decimal("secondMl")});
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
  static const std::array deeds{Deed{"pollinate", "Pollinate", can_take_pollen, pollinate_fields,
                                     nullptr, run_pollinate,
                                     work::cautions_of(book::Verb::pollinate), last_pass_long_ago},
                                Deed{"harvest", "Harvest", stands_on_plant, harvest_fields, nullptr,
                                     run_harvest, work::cautions_of(book::Verb::harvest)}};
  return deeds;
}

} // namespace coneline::window
