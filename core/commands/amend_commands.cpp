// SPDX-License-Identifier: GPL-3.0-or-later
// amend taxon, place, pot, mix, route: what was entered is put right, and only what is given
// changes. amended: what stood before.
#include "core/base/number.h"
#include "core/commands/commands.h"
#include "core/commands/first_fault.h"
#include "core/commands/number_options.h"
#include "core/commands/register_values.h"
#include "core/commands/table.h"
#include "core/commands/verb_command.h"
#include "core/work/amend.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

using book::Registers;

/// A member of a closed set, when its word is given.
template <class Set>
Result<void> change_word(Set& member, const std::optional<std::string>& word) {
  if (!word)
    return {};
  auto read = book::read_word<Set>(*word);
  if (!read)
    return refuse(read.error());
  member = *read;
  return {};
}

struct AmendTaxonOptions {
  std::string which;
  std::optional<std::string> name, leaf, light, frost, float_test, ripening, after_ripening, source;

  void define(Command& command) {
    command.add_option("taxon", which, "The taxon's name").required();
    command.add_option("--name", name, "What it is called from now on");
    command.add_option("--leaf", leaf, "green, grey, blue or 'not known'");
    command.add_option("--light", light, "sun, 'part shade' or shade");
    command.add_option("--frost", frost, "'no frost', 'light frost', 'hard frost' or 'not known'");
    command.add_option("--float-test", float_test, "reliable, unreliable or unknown");
    command.add_option("--ripening", ripening,
                       "Months from pollination to the ripe cone, such as 9-12; '' for not known");
    command.add_option("--after-ripening", after_ripening,
                       "Months the seed ripens on after harvest, such as 0-6; '' for not known");
    command.add_option("--source", source,
                       "Where what is given with it comes from; alone, where all of it does");
  }

  [[nodiscard]] bool nothing_but_source() const {
    return !leaf && !light && !frost && !float_test && !ripening && !after_ripening;
  }

  template <class Value>
  void change_source(book::Sourced<Value>& value, const std::optional<std::string>& given) const {
    if (source && (given || nothing_but_source()))
      value.source = *source;
  }

  Result<void> edit(book::Taxon& row) const {
    row.name = name.value_or(row.name);
    for (const auto& changed :
         {change_word(row.leaf_colour.value, leaf), change_word(row.light.value, light),
          change_word(row.frost.value, frost), change_word(row.float_test.value, float_test)})
      if (!changed)
        return changed;
    for (const auto& [given, value] :
         {std::pair(&ripening, &row.ripening), std::pair(&after_ripening, &row.after_ripening)})
      if (*given) {
        auto months = range_given(**given);
        if (!months)
          return refuse(months.error());
        value->value = *months;
      }
    change_source(row.leaf_colour, leaf);
    change_source(row.light, light);
    change_source(row.frost, frost);
    change_source(row.float_test, float_test);
    change_source(row.ripening, ripening);
    change_source(row.after_ripening, after_ripening);
    return {};
  }

  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    return work::amend(
        book, work::Amend<book::Taxon>{
                  which, [this](auto& row, const Registers&) { return edit(row); }, noted});
  }
};

struct AmendPlaceOptions {
  std::string which;
  std::optional<std::string> name, kind, within, light;
  std::optional<double> length, width;
  std::optional<int> walk;

  void define(Command& command) {
    command.add_option("place", which, "The place's name or code").required();
    command.add_option("--name", name, "What it is called from now on");
    command.add_option("--kind", kind, "house, bench or bay");
    command.add_option("--within", within, "The house of a bench, the bench of a bay; '' for none");
    real_option(command, "--length", length, "mm that pots can stand on; 0 for a house");
    real_option(command, "--width", width, "mm");
    command.add_option("--light", light, "sun, 'part shade' or shade");
    command.add_option("--walk", walk, "Its turn when walking through the nursery");
  }

  Result<void> edit(book::Place& row, const Registers& registers) const {
    row.name = name.value_or(row.name);
    for (const auto& changed :
         {change_word(row.kind, kind), change_word(row.light, light),
          is_in_millimetres(length.value_or(0)), is_in_millimetres(width.value_or(0))})
      if (!changed)
        return changed;
    row.length_mm = length.value_or(row.length_mm);
    row.width_mm = width.value_or(row.width_mm);
    row.walk = walk.value_or(row.walk);
    if (within && within->empty())
      row.within.reset();
    else if (within) {
      const auto outer = book::row_said(registers.places, *within, "place");
      if (!outer)
        return refuse(outer.error());
      row.within = (*outer)->id;
    }
    return {};
  }

  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    return work::amend(
        book,
        work::Amend<book::Place>{
            which, [this](auto& row, const Registers& all) { return edit(row, all); }, noted});
  }
};

struct AmendPotOptions {
  std::string which;
  std::optional<std::string> name, shape, source;
  std::optional<double> litres, length, width;
  std::optional<int> cells;

  void define(Command& command) {
    command.add_option("pot", which, "The pot's or seed tray's name").required();
    command.add_option("--name", name, "What it is called from now on");
    real_option(command, "--litres", litres, "Mix it really holds, all cells together");
    command.add_option("--shape", shape, "round or rectangular");
    real_option(command, "--length", length, "mm outside; the diameter when round");
    real_option(command, "--width", width, "mm; of a round one the length when left out");
    command.add_option("--cells", cells, "Seeds or plants it takes");
    command.add_option("--source", source, "Measured, or where the figures come from");
  }

  Result<void> edit(book::Pot& row) const {
    row.name = name.value_or(row.name);
    if (auto changed = change_word(row.shape, shape); !changed)
      return changed;
    row.litres = litres.value_or(row.litres);
    row.length_mm = length.value_or(row.length_mm);
    row.width_mm =
        width.value_or(row.shape == book::Shape::round && length ? *length : row.width_mm);
    row.cells = cells.value_or(row.cells);
    row.source = source.value_or(row.source);
    return {};
  }

  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    return work::amend(
        book, work::Amend<book::Pot>{
                  which, [this](auto& row, const Registers&) { return edit(row); }, noted});
  }
};

struct AmendMixOptions {
  std::string which;
  std::optional<std::string> name, source;
  std::vector<std::string> parts;
  std::optional<double> shrink, loss;

  void define(Command& command) {
    command.add_option("mix", which, "The mix's name").required();
    command.add_option("--name", name, "What it is called from now on");
    command.add_option("--part", parts,
                       "All its parts anew, each with its share by volume, such as bark=4; repeat");
    real_option(command, "--shrink", shrink, "Share of the volume lost when the parts are mixed");
    real_option(command, "--loss", loss, "Finished mix spilt or left over, as a share");
    command.add_option("--source", source, "Measured, or where the figures come from");
  }

  Result<void> edit(book::Mix& row) const {
    row.name = name.value_or(row.name);
    row.shrink = shrink.value_or(row.shrink);
    row.loss = loss.value_or(row.loss);
    row.source = source.value_or(row.source);
    if (!parts.empty())
      row.parts.clear();
    for (const auto& text : parts) {
      auto part = part_given(text);
      if (!part)
        return refuse(part.error());
      row.parts.push_back(*part);
    }
    return {};
  }

  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    return work::amend(
        book, work::Amend<book::Mix>{
                  which, [this](auto& row, const Registers&) { return edit(row); }, noted});
  }
};

struct AmendRouteOptions {
  std::string which;
  std::optional<double> germination;
  std::optional<std::string> months, source;
  std::vector<std::string> steps;
  std::vector<std::string> changed_steps;

  void define(Command& command) {
    command.add_option("taxon", which, "The name of the taxon whose route it is").required();
    real_option(command, "--germination", germination, "Share of sown seed expected to come up");
    command.add_option("--germination-months", months, "From the first to the last, such as 1-9");
    const auto all = command.add_option(
        "--step", steps, "All steps anew, each as pot:mix:months:survival:light; repeat");
    command
        .add_option("--change-step", changed_steps,
                    "One step by its turn, such as '2=deep pot:seedling mix:6-12:0.9:part shade'; "
                    "repeat")
        .excludes(all);
    command.add_option("--source", source,
                       "Where steps given with it come from; alone, where all of it does");
  }

  Result<void> change_step(book::Route& row, const Registers& registers,
                           const std::string& text) const {
    const auto equals = text.find('=');
    const auto turn = parse_whole(text.substr(0, equals));
    if (equals == std::string::npos || !turn)
      return refuse(usage_fault(fmt::format("'{}' does not begin with the turn of a step", text),
                                "Write it such as 2=pot:mix:months:survival:light."));
    if (*turn < 1 || *turn > static_cast<std::int64_t>(row.steps.size()))
      return refuse(fault(fmt::format("there is no step {} of {}", *turn, row.steps.size()),
                          "Give its turn, from 1; --step gives all of them anew."));
    auto& there = row.steps[static_cast<std::size_t>(*turn - 1)];
    auto step = step_given(registers, text.substr(equals + 1), source.value_or(there.source));
    if (!step)
      return refuse(step.error());
    there = *step;
    return {};
  }

  Result<void> edit(book::Route& row, const Registers& registers) const {
    row.germination = germination.value_or(row.germination);
    if (months) {
      auto span = range_given(*months);
      if (!span)
        return refuse(span.error());
      if (!*span)
        return refuse(usage_fault("germination in no months", "Write them such as 1-9."));
      row.germination_months = **span;
    }
    const bool source_alone = steps.empty() && changed_steps.empty();
    if (source && source_alone) {
      row.source = *source;
      for (auto& step : row.steps)
        step.source = *source;
    }
    if (!steps.empty())
      row.steps.clear();
    for (const auto& text : steps) {
      auto step = step_given(registers, text, source.value_or(row.source));
      if (!step)
        return refuse(step.error());
      row.steps.push_back(*step);
    }
    for (const auto& text : changed_steps)
      if (auto changed = change_step(row, registers, text); !changed)
        return changed;
    return {};
  }

  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    return work::amend(
        book,
        work::Amend<book::Route>{
            which, [this](auto& row, const Registers& all) { return edit(row, all); }, noted});
  }
};

/// "plant P1716: sex 'male' instead of 'female'"; of other rows the note says it all.
std::string told(const book::Entry& entry, const Registers& registers) {
  const auto* correction = std::get_if<book::Correction>(&entry.detail);
  if (correction == nullptr || correction->changes.empty())
    return entry.note;
  std::string text;
  for (const auto& [plant, field, stood, stands] : correction->changes)
    text +=
        fmt::format("{}{} '{}' instead of '{}'", text.empty() ? "" : "; ", field, stands, stood);
  return fmt::format("plant {}: {}{}{}",
                     registers.plant(correction->changes.front().plant).code.text(), text,
                     entry.note.empty() ? "" : ". ", entry.note);
}

Result<Answer> amended(const BookOption& option) {
  auto book = option.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  return book->read([](store::Reading& reading) {
    const auto registers = reading.registers();
    Answer answer;
    answer.json = {{"amended", Json::array()}};
    Table table({"entry", "day", "who", "what"});
    for (const auto& entry : reading.standing_entries(book::Verb::correct)) {
      const auto what = told(entry, registers);
      answer.json["amended"].push_back({{"entry", entry.id.value},
                                        {"date", entry.date.iso()},
                                        {"who", entry.who},
                                        {"what", what}});
      table.row({std::to_string(entry.id.value), entry.date.iso(), entry.who, what});
    }
    answer.table = answer.json["amended"].empty() ? "Nothing was amended yet.\n" : table.text();
    return answer;
  });
}

} // namespace

void add_amends(CommandLine& line) {
  add_verb<AmendTaxonOptions>(line, "amend", "taxon", "What is held to be true of a taxon");
  add_verb<AmendPlaceOptions>(line, "amend", "place", "A house, bench or bay");
  add_verb<AmendPotOptions>(line, "amend", "pot", "A pot or seed tray");
  add_verb<AmendMixOptions>(line, "amend", "mix", "A potting mix and its parts");
  add_verb<AmendRouteOptions>(line, "amend", "route", "The steps a taxon goes through");

  const auto look = std::make_shared<BookOption>();
  auto& command = line.add("amended", "What was amended in the registers, and what stood before",
                           [look] { return amended(*look); });
  look->add_to(command);
}

} // namespace coneline::commands
