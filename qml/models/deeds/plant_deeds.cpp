// SPDX-License-Identifier: GPL-3.0-or-later
// A plant's row in the register: setting it right, and its papers.
#include "../wording.h"
#include "common.h"
#include "core/work/cautions.h"
#include "core/work/correct.h"

#include <array>

namespace coneline::window {

namespace {

const book::Plant* plant_of(const Subject& subject) {
  return book::coded(subject.registers().plants, subject.code);
}

bool is_plant(const Subject& subject) {
  return plant_of(subject) != nullptr;
}

bool has_papers(const Subject& subject) {
  const auto* plant = plant_of(subject);
  return plant && !plant->papers.empty();
}

QString parent_written(const Subject& subject, const std::optional<book::PlantId>& id,
                       const std::string& said) {
  return text(id ? subject.registers().plant(*id).code.text() : said);
}

std::vector<FieldSpec> correct_fields(const Subject& subject) {
  const auto& plant = *plant_of(subject);
  const auto& registers = subject.registers();
  QStringList taxa;
  for (const auto& taxon : registers.taxa)
    taxa << text(taxon.name);
  auto places = place_names(subject);
  places.prepend(QStringLiteral("none"));
  std::vector<FieldSpec> fields{
      words_field("name", "What you call it", text(plant.name)),
      name_field("taxon", "Kind of plant", taxa, text(registers.taxon(plant.taxon).name)),
      word_choice("sure", "The kind is", plant.taxon_certainty),
      word_choice("sex", "Sex", plant.sex),
      words_field("origin", "Where it came from", text(plant.origin)),
      day_field("acquired", "Since", plant.acquired ? shown(*plant.acquired) : QString(),
                "the day; may stay empty"),
      name_field("place", "Place", places,
                 plant.place ? place_name(registers, plant.place) : places.first()),
      word_choice("stands", "Stands in", plant.stands_in),
      words_field("seed_parent", "Its seed parent",
                  parent_written(subject, plant.seed_parent, plant.seed_parent_said),
                  "a code such as P1742, or words"),
      words_field("pollen_parent", "Its pollen parent",
                  parent_written(subject, plant.pollen_parent, plant.pollen_parent_said),
                  "a code such as P1742, or words"),
      word_choice("parents", "The parents are", plant.parents_certainty),
      words_field("remark", "Remark in the register", text(plant.note))};
  fields = with_day_and_note(subject, std::move(fields));
  fields.back().label = QStringLiteral("Why it is set right");
  return fields;
}

Result<void> edit(book::Plant& plant, const book::Registers& registers, Answers& answers) {
  plant.name = answers.words("name");
  if (const auto* taxon = book::named(registers.taxa, answers.words("taxon")))
    plant.taxon = taxon->id;
  plant.taxon_certainty = answers.one_of<book::Certainty>("sure");
  plant.sex = answers.one_of<book::Sex>("sex");
  plant.origin = answers.words("origin");
  plant.acquired = answers.some_day("acquired");
  const auto* place = book::named(registers.places, answers.words("place"));
  plant.place = place ? std::optional(place->id) : std::nullopt;
  plant.stands_in = answers.one_of<book::StandsIn>("stands");
  plant.parents_certainty = answers.one_of<book::Certainty>("parents");
  plant.note = answers.words("remark");
  if (auto given = work::give_parent(answers.words("seed_parent"), registers, plant.seed_parent,
                                     plant.seed_parent_said);
      !given)
    return refuse(given.error().at({{}, 0, "seed_parent"}));
  if (auto given = work::give_parent(answers.words("pollen_parent"), registers, plant.pollen_parent,
                                     plant.pollen_parent_said);
      !given)
    return refuse(given.error().at({{}, 0, "pollen_parent"}));
  return answers.fault() ? refuse(*answers.fault()) : Result<void>();
}

Result<work::Done> run_correct(store::Book& book, Answers& answers) {
  const auto noted = answers.noted();
  return answers.then([&] {
    return work::correct(book, {answers.subject().code,
                                [&](book::Plant& plant, const book::Registers& registers) {
                                  return edit(plant, registers, answers);
                                },
                                noted});
  });
}

std::vector<FieldSpec> paper_fields(const Subject& subject) {
  return with_day_and_note(
      subject, {words_field("kind", "Kind of paper", {}, "such as import permit, receipt"),
                words_field("number", "Its number"),
                day_field("issued", "Issued on", {}, "the day; may stay empty"),
                words_field("authority", "By whom"), words_field("remark", "What it says of it")});
}

Result<work::Done> run_paper(store::Book& book, Answers& answers) {
  const book::Paper paper{answers.named("kind"), answers.words("number"),
                          answers.some_day("issued"), answers.words("authority"),
                          answers.words("remark")};
  const auto noted = answers.noted();
  return answers.then([&] {
    return work::correct(book, {answers.subject().code,
                                [&](book::Plant& plant, const book::Registers&) -> Result<void> {
                                  plant.papers.push_back(paper);
                                  return {};
                                },
                                noted});
  });
}

QStringList papers_there(const Subject& subject) {
  QStringList papers;
  for (const auto& paper : plant_of(subject)->papers)
    papers << QString::number(papers.size() + 1) + ": " + text(paper.kind) + " " +
                  text(paper.number);
  return papers;
}

std::vector<FieldSpec> strike_paper_fields(const Subject& subject) {
  const auto papers = papers_there(subject);
  return with_day_and_note(subject,
                           {name_field("paper", "Paper to strike", papers, papers.first())});
}

Result<work::Done> run_strike_paper(store::Book& book, Answers& answers) {
  const auto at = papers_there(answers.subject()).indexOf(text(answers.words("paper")));
  const auto noted = answers.noted();
  return answers.then([&] {
    return work::correct(book, {answers.subject().code,
                                [&](book::Plant& plant, const book::Registers&) -> Result<void> {
                                  if (at < 0 || at >= static_cast<qsizetype>(plant.papers.size()))
                                    return refuse(
                                        fault("that paper is not there any more", "Choose again."));
                                  plant.papers.erase(plant.papers.begin() + at);
                                  return {};
                                },
                                noted});
  });
}

} // namespace

std::span<const Deed> plant_deeds() {
  static const std::array deeds{
      Deed{"correct plant", "Set right", is_plant, correct_fields, nullptr, run_correct, {}},
      Deed{"add paper",
           "Add a paper",
           is_plant,
           paper_fields,
           nullptr,
           run_paper,
           {work::caution::permit}},
      Deed{"strike paper",
           "Strike a paper",
           has_papers,
           strike_paper_fields,
           nullptr,
           run_strike_paper,
           {}}};
  return deeds;
}

} // namespace coneline::window
