// SPDX-License-Identifier: GPL-3.0-or-later
// Looking at the diary: parents, pollen, pollen by age, cones.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/table.h"
#include "core/work/cone_course.h"
#include "core/work/pollen.h"
#include "core/work/tell.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

Json day(const std::optional<Date>& date) {
  return date ? Json(date->iso()) : Json();
}

template <class Value>
Json maybe(const std::optional<Value>& value) {
  return value ? Json(*value) : Json();
}

std::string said(const std::optional<Date>& date) {
  return date ? date->iso() : "";
}

Json json_of(const std::optional<stats::Interval>& range) {
  return range ? Json{{"low", range->low}, {"high", range->high}} : Json();
}

std::string percent(const std::optional<stats::Interval>& range) {
  return range ? fmt::format("{:.0f}-{:.0f} %", 100 * range->low, 100 * range->high) : "-";
}

Json parent_json(const std::optional<book::PlantId>& id, const std::string& words,
                 const book::Registers& registers) {
  return id ? Json(registers.plant(*id).code.text()) : words.empty() ? Json() : Json(words);
}

std::string parent_text(const std::optional<book::PlantId>& id, const std::string& words,
                        const book::Registers& registers) {
  return id ? registers.plant(*id).code.text() : words.empty() ? "unknown" : words;
}

Json papers_json(const book::Plant& plant) {
  Json papers = Json::array();
  for (const auto& paper : plant.papers)
    papers.push_back({{"kind", paper.kind},
                      {"number", paper.number},
                      {"issued", day(paper.issued)},
                      {"authority", paper.authority},
                      {"note", paper.note}});
  return papers;
}

/// Cones and shedding in the order of their days.
std::vector<std::pair<Date, std::string>> coning(store::Reading& reading,
                                                 const std::vector<work::ConeCourse>& courses,
                                                 const book::Plant& plant) {
  std::vector<std::pair<Date, std::string>> history;
  for (const auto& course : courses)
    if (const auto& line = course.line; line.cone.plant == plant.id) {
      const auto first = line.cone.first_seen    ? line.cone.first_seen
                         : course.receptive_from ? course.receptive_from
                                                 : line.harvested_on;
      if (first)
        history.emplace_back(
            *first, fmt::format("cone {}, {} seeds", line.cone.code.text(), line.harvested));
    }
  for (const auto& entry : reading.entries_of(plant.id))
    if (entry.verb == book::Verb::watch_male_cone && !entry.reverses &&
        !reading.reversed_by(entry.id))
      history.emplace_back(
          entry.date, fmt::format("male cone {}",
                                  book::word(*std::get<book::PlantNote>(entry.detail).male_cone)));
  std::ranges::stable_sort(history, {}, [](const auto& each) { return each.first; });
  return history;
}

Answer parents_answer(store::Reading& reading, const book::Registers& registers) {
  Answer given;
  given.json = {{"parents", Json::array()}};
  Table table({"plant", "name", "taxon", "sex", "stands on", "papers", "seed parent",
               "pollen parent", "coned"});
  const auto courses = work::cone_courses(reading, registers);
  for (const auto& plant : registers.plants) {
    Json history = Json::array();
    std::string coned;
    for (const auto& [date, what] : coning(reading, courses, plant)) {
      history.push_back({{"date", date.iso()}, {"what", what}});
      const auto year = std::to_string(date.year());
      if (!coned.ends_with(year))
        coned += (coned.empty() ? "" : " ") + year;
    }
    Json corrected = Json::array();
    for (const auto& entry : reading.entries_of(plant.id))
      if (entry.verb == book::Verb::correct)
        corrected.push_back({{"date", entry.date.iso()}, {"told", work::tell(reading, entry)}});
    const auto& taxon = registers.taxon(plant.taxon).name;
    given.json["parents"].push_back(
        {{"code", plant.code.text()},
         {"name", plant.name},
         {"taxon", taxon},
         {"taxon_certainty", book::word(plant.taxon_certainty)},
         {"sex", book::word(plant.sex)},
         {"origin", plant.origin},
         {"acquired", day(plant.acquired)},
         {"place", plant.place ? Json(registers.place(*plant.place).name) : Json()},
         {"stands_in", book::word(plant.stands_in)},
         {"papers", papers_json(plant)},
         {"seed_parent", parent_json(plant.seed_parent, plant.seed_parent_said, registers)},
         {"pollen_parent", parent_json(plant.pollen_parent, plant.pollen_parent_said, registers)},
         {"parents_certainty", book::word(plant.parents_certainty)},
         {"coning", history},
         {"corrected", corrected}});
    table.row({plant.code.text(), plant.name,
               taxon + (plant.taxon_certainty == book::Certainty::certain
                            ? ""
                            : fmt::format(" ({})", book::word(plant.taxon_certainty))),
               std::string(book::word(plant.sex)),
               plant.place ? registers.place(*plant.place).name : "",
               std::to_string(plant.papers.size()),
               parent_text(plant.seed_parent, plant.seed_parent_said, registers),
               parent_text(plant.pollen_parent, plant.pollen_parent_said, registers), coned});
  }
  given.table = table.text();
  return given;
}

Answer pollen_answer(store::Reading& reading, const book::Registers& registers) {
  Answer given;
  given.json = {{"pollen", Json::array()}};
  Table table({"lot", "of", "collected", "ml left", "passes", "store", "old from", "germinate"});
  for (const auto& line : work::pollen_lines(reading, registers)) {
    Json tests = Json::array();
    for (const auto& test : line.tests)
      tests.push_back({{"date", test.date.iso()},
                       {"counted", test.counted},
                       {"germinated", test.germinated},
                       {"low", test.range.low},
                       {"high", test.range.high},
                       {"conditions", test.conditions}});
    const auto of = book::plant_name(registers.plant(line.lot.plant));
    given.json["pollen"].push_back({{"code", line.lot.code.text()},
                                    {"of", of},
                                    {"collected", line.lot.collected.iso()},
                                    {"store", line.lot.store},
                                    {"millilitres", maybe(line.collected)},
                                    {"used", line.used},
                                    {"discarded", line.discarded},
                                    {"left", maybe(line.left)},
                                    {"passes", line.passes},
                                    {"passes_unmeasured", line.passes_unmeasured},
                                    {"gone", day(line.gone)},
                                    {"old_from", day(line.old_from)},
                                    {"old_to", day(line.old_to)},
                                    {"limit_source", line.years_source},
                                    {"tests", tests}});
    table.row({line.lot.code.text(), of, line.lot.collected.iso(),
               line.gone   ? "gone"
               : line.left ? fmt::format("{}{:.3g}", line.passes_unmeasured > 0 ? "at most " : "",
                                         *line.left)
                           : "not known",
               std::to_string(line.passes), line.lot.store, said(line.old_from),
               line.tests.empty() ? "not tested" : percent(line.tests.back().range)});
  }
  given.table = table.text() + "Those that should go first stand first. Age limits are the book's "
                               "data ('enter pollen-store'); sources disagree.\n";
  return given;
}

Answer by_age_answer(store::Reading& reading, const book::Registers& registers) {
  Answer given;
  given.json = {{"rows", Json::array()}};
  Table table({"store", "years old", "cones", "seeds", "of two a scale", "germinated"});
  for (const auto& row : work::pollen_by_age(reading, registers)) {
    given.json["rows"].push_back({{"store", row.store},
                                  {"years", row.years},
                                  {"cones", row.cones},
                                  {"seeds", row.seeds},
                                  {"ceiling", row.ceiling},
                                  {"seeds_of_ceiling", row.seeds_of_ceiling},
                                  {"set", json_of(row.set)},
                                  {"sown", row.sown},
                                  {"germinated", row.germinated},
                                  {"germination", json_of(row.germination)}});
    table.row({row.store, std::to_string(row.years), std::to_string(row.cones),
               std::to_string(row.seeds), percent(row.set), percent(row.germination)});
  }
  given.table = table.text() + "Ranges are for these seeds (Wilson, 95 %); cones differ more than "
                               "that. A cone with pollen of several ages is not in the table.\n";
  return given;
}

Answer cones_answer(store::Reading& reading, const book::Registers& registers) {
  Answer given;
  given.json = {{"cones", Json::array()}};
  Table table({"cone", "cross", "first seen", "receptive", "passes", "closed", "ripe",
               "seeds expected", "seeds"});
  for (const auto& course : work::cone_courses(reading, registers)) {
    Json looks = Json::array();
    for (const auto& look : course.looks)
      looks.push_back({{"date", look.date.iso()}, {"scales", book::word(look.scales)}});
    Json passes = Json::array();
    for (const auto& pass : course.line.passes)
      passes.push_back(pass.iso());
    const auto& line = course.line;
    given.json["cones"].push_back(
        {{"code", line.cone.code.text()},
         {"cross", line.origin.name},
         {"first_seen", day(line.cone.first_seen)},
         {"looks", looks},
         {"receptive_from", day(course.receptive_from)},
         {"receptive_to", day(course.receptive_to)},
         {"passes", passes},
         {"closed", day(course.closed)},
         {"ripe_from", day(course.ripe_from)},
         {"ripe_to", day(course.ripe_to)},
         {"ripe_basis", course.ripe_months.basis},
         {"fertile_scales", maybe(course.fertile_scales)},
         {"seeds_expected", course.seeds ? Json{{"low", course.seeds->low},
                                                {"high", course.seeds->high},
                                                {"basis", course.seeds->basis}}
                                         : Json()},
         {"harvested_on", day(line.harvested_on)},
         {"seeds", line.harvested_on ? Json(line.harvested) : Json()}});
    table.row(
        {line.cone.code.text(), line.origin.name, said(line.cone.first_seen),
         course.receptive_from
             ? fmt::format("{} to {}", said(course.receptive_from), said(course.receptive_to))
             : "",
         std::to_string(line.passes.size()), said(course.closed),
         line.harvested_on  ? "harvested " + said(line.harvested_on)
         : course.ripe_from ? fmt::format("{} to {}", said(course.ripe_from), said(course.ripe_to))
                            : "",
         course.seeds ? fmt::format("{:.0f}-{:.0f}", course.seeds->low, course.seeds->high) : "",
         line.harvested_on ? std::to_string(line.harvested) : ""});
  }
  given.table = table.text();
  return given;
}

using Look = Answer (*)(store::Reading&, const book::Registers&);

void add_look(CommandLine& line, const std::string& name, const std::string& help, Look look) {
  auto option = std::make_shared<BookOption>();
  option->add_to(line.add(name, help, [option, look]() -> Result<Answer> {
    auto book = option->open(store::Access::read);
    if (!book)
      return refuse(book.error());
    return book->read([&](store::Reading& reading) { return look(reading, reading.registers()); });
  }));
}

} // namespace

void add_diary_looks(CommandLine& line) {
  add_look(line, "parents", "The register of parent plants with their coning history",
           parents_answer);
  add_look(line, "pollen", "Pollen on hand, what should go first standing first", pollen_answer);
  add_look(line, "pollen-by-age", "Seed set and germination by age and store of the pollen",
           by_age_answer);
  add_look(line, "cones", "The diary of the female cones", cones_answer);
}

} // namespace coneline::commands
