// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/correct.h"

#include "core/base/phrase.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

std::string papers_told(const book::Plant& plant) {
  std::string text;
  for (const auto& paper : plant.papers) {
    text += fmt::format("{}{} {}", text.empty() ? "" : "; ", paper.kind, paper.number);
    if (paper.issued)
      text += " of " + paper.issued->iso();
    if (!paper.authority.empty())
      text += ", " + paper.authority;
    if (!paper.note.empty())
      text += " (" + paper.note + ")";
  }
  return text;
}

std::string parent_told(const std::optional<book::PlantId>& id, const std::string& said,
                        const book::Registers& registers) {
  return id ? registers.plant(*id).code.text() : said;
}

std::vector<std::pair<std::string, std::string>> told(const book::Plant& plant,
                                                      const book::Registers& registers) {
  return {{"name", plant.name},
          {"taxon", registers.taxon(plant.taxon).name},
          {"taxon certainty", std::string(book::word(plant.taxon_certainty))},
          {"sex", std::string(book::word(plant.sex))},
          {"origin", plant.origin},
          {"acquired", plant.acquired ? plant.acquired->iso() : ""},
          {"place", plant.place ? registers.place(*plant.place).name : ""},
          {"note", plant.note},
          {"papers", papers_told(plant)},
          {"seed parent", parent_told(plant.seed_parent, plant.seed_parent_said, registers)},
          {"pollen parent", parent_told(plant.pollen_parent, plant.pollen_parent_said, registers)},
          {"parents' certainty", std::string(book::word(plant.parents_certainty))},
          {"stands in", std::string(book::word(plant.stands_in))}};
}

/// A plant that has coned cannot be what its cones deny.
Result<void> agrees_with_cones(const book::Registers& registers, const book::Plant& plant) {
  if (plant.sex == book::Sex::male)
    for (const auto& cone : registers.cones)
      if (cone.plant == plant.id)
        return refuse(fault(phrase("{} cannot be male: {} is a female cone of it",
                                   plant.code.text(), cone.code.text()),
                            "Check the plant's code."));
  if (plant.sex == book::Sex::female)
    for (const auto& lot : registers.pollen_lots)
      if (lot.plant == plant.id)
        return refuse(fault(phrase("{} cannot be female: the pollen {} came from it",
                                   plant.code.text(), lot.code.text()),
                            "Check the plant's code."));
  return {};
}

/// "P1742" and the like are meant as codes, and a mistyped one must not become a word.
bool looks_like_a_code(const std::string& text) {
  constexpr std::string_view digits = "0123456789";
  return text.size() > 2 && (text[0] == 'P' || text[0] == 'p') &&
         digits.find(text[1]) != std::string_view::npos &&
         digits.find(text[2]) != std::string_view::npos && text.find(' ') == std::string::npos;
}

} // namespace

Result<void> give_parent(const std::string& written, const book::Registers& registers,
                         std::optional<book::PlantId>& id, std::string& said) {
  id.reset();
  said.clear();
  const auto code = Code::parse(written);
  if (!code && looks_like_a_code(written))
    return refuse(code.error());
  if (!code || code->kind() != Kind::plant) {
    said = written;
    return {};
  }
  const auto* plant = book::coded(registers.plants, *code);
  if (plant == nullptr)
    return refuse(fault(phrase("there is no plant {}", code->text()),
                        "Enter it first, or say the parent in words."));
  id = plant->id;
  return {};
}

std::vector<book::FieldChange> changes_between(const book::Plant& before, const book::Plant& after,
                                               const book::Registers& registers) {
  std::vector<book::FieldChange> changes;
  const auto stood = told(before, registers);
  const auto stands = told(after, registers);
  for (std::size_t i = 0; i < stood.size(); ++i)
    if (stood[i].second != stands[i].second)
      changes.push_back({before.id, stood[i].first, stood[i].second, stands[i].second});
  return changes;
}

Result<book::EntryId> correct_to(store::Writing& writing, const book::Registers& registers,
                                 const book::Plant& plant, const Noted& noted) {
  auto changes = changes_between(registers.plant(plant.id), plant, registers);
  if (changes.empty())
    return book::EntryId{};
  if (auto agrees = agrees_with_cones(registers, plant); !agrees)
    return refuse(agrees.error());
  if (auto put = writing.put(plant); !put)
    return refuse(put.error());
  auto entry = entry_for(book::Verb::correct, noted);
  entry.detail = book::Correction{std::move(changes)};
  return writing.enter(entry);
}

Result<Done> correct(store::Book& book, const Correct& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    const auto* stands = book::coded(registers.plants, wanted.plant);
    if (stands == nullptr)
      return refuse(fault(phrase("there is no plant {}", wanted.plant.text()), "Check the code."));
    auto plant = *stands;
    if (auto edited = wanted.edit(plant, registers); !edited)
      return refuse(edited.error());
    auto id = correct_to(writing, registers, plant, wanted.noted);
    if (!id)
      return refuse(id.error());
    if (!id->stored())
      return refuse(fault(phrase("nothing changes on {}", wanted.plant.text()),
                          "Give what is to stand there."));
    Done done;
    done.entries = {*id};
    for (const auto& change : changes_between(*stands, plant, registers))
      done.told += phrase("{}{} of {}: '{}' instead of '{}'", done.told.empty() ? "" : "; ",
                          change.field, wanted.plant.text(), change.stands, change.stood);
    return done;
  });
}

} // namespace coneline::work
