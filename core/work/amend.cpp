// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/amend.h"

#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/book/names.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace coneline::work {

namespace {

using book::Registers;

// ---- what a row says, field by field ------------------------------------------------------------

/// Fields with their values as they are kept. Rows of one kind have the same fields in the same
/// order; of a route the steps come last, as many as there are.
using Fields = std::vector<std::pair<std::string, std::string>>;

std::string months(const book::Range& range) {
  return write_real(range.low) + "-" + write_real(range.high);
}

template <class Value>
void add_sourced(Fields& fields, const std::string& field, const book::Sourced<Value>& value) {
  if constexpr (std::is_enum_v<Value>)
    fields.emplace_back(field, book::word(value.value));
  else
    fields.emplace_back(field, value.value ? months(*value.value) : "");
  fields.emplace_back(field + ", source", value.source);
}

Fields fields_of(const book::Taxon& taxon, const Registers&) {
  Fields fields{{"name", taxon.name}};
  add_sourced(fields, "leaf colour", taxon.leaf_colour);
  add_sourced(fields, "light", taxon.light);
  add_sourced(fields, "frost", taxon.frost);
  add_sourced(fields, "float test", taxon.float_test);
  add_sourced(fields, "months of ripening", taxon.ripening);
  add_sourced(fields, "months of after-ripening", taxon.after_ripening);
  return fields;
}

Fields fields_of(const book::Place& place, const Registers& registers) {
  return {{"name", place.name},
          {"kind", std::string(book::word(place.kind))},
          {"within", place.within ? registers.place(*place.within).name : ""},
          {"length in mm", write_real(place.length_mm)},
          {"width in mm", write_real(place.width_mm)},
          {"light", std::string(book::word(place.light))},
          {"walk", std::to_string(place.walk)}};
}

Fields fields_of(const book::Pot& pot, const Registers&) {
  return {{"name", pot.name},
          {"litres", write_real(pot.litres)},
          {"shape", std::string(book::word(pot.shape))},
          {"length in mm", write_real(pot.length_mm)},
          {"width in mm", write_real(pot.width_mm)},
          {"cells", std::to_string(pot.cells)},
          {"source", pot.source}};
}

Fields fields_of(const book::Mix& mix, const Registers&) {
  std::string parts;
  for (const auto& part : mix.parts)
    parts += fmt::format("{}{}={}", parts.empty() ? "" : ", ", part.name, write_real(part.share));
  return {{"name", mix.name},
          {"parts", parts},
          {"shrink", write_real(mix.shrink)},
          {"loss", write_real(mix.loss)},
          {"source", mix.source}};
}

Fields fields_of(const book::Route& route, const Registers& registers) {
  Fields fields{{"germination", write_real(route.germination)},
                {"months of germination", months(route.germination_months)},
                {"source", route.source}};
  for (std::size_t i = 0; i < route.steps.size(); ++i) {
    const auto& step = route.steps[i];
    fields.emplace_back(fmt::format("step {}", i + 1),
                        fmt::format("{}:{}:{}:{}:{}{}", registers.pot(step.pot).name,
                                    registers.mix(step.mix).name, months(step.months),
                                    write_real(step.survival), book::word(step.light),
                                    step.source.empty() ? "" : ", " + step.source));
  }
  return fields;
}

struct Change {
  std::string field;
  std::string stood;
  std::string stands;
};

std::vector<Change> changes_between(const Fields& stood, const Fields& stands) {
  std::vector<Change> changes;
  for (std::size_t i = 0; i < std::max(stood.size(), stands.size()); ++i) {
    const auto& field = i < stood.size() ? stood[i].first : stands[i].first;
    const auto before = i < stood.size() ? stood[i].second : std::string();
    const auto after = i < stands.size() ? stands[i].second : std::string();
    if (before != after)
      changes.push_back({field, before, after});
  }
  return changes;
}

// ---- which row, and what it may become ----------------------------------------------------------

Result<book::Taxon> row_meant(const Registers& registers, const Amend<book::Taxon>& wanted) {
  return book::row_said(registers.taxa, wanted.which, "taxon").map([](const auto* row) {
    return *row;
  });
}

Result<book::Place> row_meant(const Registers& registers, const Amend<book::Place>& wanted) {
  if (const auto code = Code::parse(wanted.which))
    if (const auto* place = book::coded(registers.places, *code))
      return *place;
  return book::row_said(registers.places, wanted.which, "place").map([](const auto* row) {
    return *row;
  });
}

Result<book::Pot> row_meant(const Registers& registers, const Amend<book::Pot>& wanted) {
  return book::row_said(registers.pots, wanted.which, "pot").map([](const auto* row) {
    return *row;
  });
}

Result<book::Mix> row_meant(const Registers& registers, const Amend<book::Mix>& wanted) {
  return book::row_said(registers.mixes, wanted.which, "mix").map([](const auto* row) {
    return *row;
  });
}

Result<book::Route> row_meant(const Registers& registers, const Amend<book::Route>& wanted) {
  const auto taxon = book::row_said(registers.taxa, wanted.which, "taxon");
  if (!taxon)
    return refuse(taxon.error());
  if (const auto* route = registers.route((*taxon)->id))
    return *route;
  return refuse(
      fault(phrase("'{}' has no route yet", (*taxon)->name), "Enter it with all its steps."));
}

const std::string& name_of(const Registers& registers, const book::Route& route) {
  return registers.taxon(route.taxon).name;
}
template <class Row>
const std::string& name_of(const Registers&, const Row& row) {
  return row.name;
}

/// A new name is squeezed and reads like no other row's.
template <class Row>
Result<void> name_well(Row& row, const Row& stood, const std::vector<Row>& rows) {
  if (row.name == stood.name)
    return {};
  auto name = book::name_for(rows, row.name, stood.id);
  if (!name)
    return refuse(name.error());
  row.name = *name;
  return {};
}

/// What stands within it or is pinned to it goes by the place's kind and size.
Result<void> fits_what_is_there(store::Reading& reading, const Registers& registers,
                                const book::Place& stood, const book::Place& place) {
  const auto inner =
      std::ranges::count(registers.places, std::optional(place.id), &book::Place::within);
  if (place.kind != stood.kind && inner > 0)
    return refuse(fault(phrase_n(inner, "'{1}' is a {2} with {0} place within it",
                                 "'{1}' is a {2} with {0} places within it", stood.name,
                                 book::said(stood.kind)),
                        "Put these within another place first."));
  if (place.square_metres() > 0)
    return {};
  const auto records = reading.plan_records();
  const auto pinned = std::ranges::count(records.pins, place.id, &book::Pin::place);
  if (pinned > 0)
    return refuse(
        fault(phrase_n(pinned, "{} lot is pinned to '{}', which would have no size",
                       "{} lots are pinned to '{}', which would have no size", stood.name),
              "Take the pins out first."));
  return {};
}

/// Makes the edited row fit for the book; fails where it cannot be.
template <class Row>
Result<void> make_fit(store::Writing& writing, const Registers& registers, const Row& stood,
                      Row& row) {
  if constexpr (std::is_same_v<Row, book::Taxon>)
    return name_well(row, stood, registers.taxa);
  else if constexpr (std::is_same_v<Row, book::Pot>)
    return name_well(row, stood, registers.pots);
  else if constexpr (std::is_same_v<Row, book::Mix>)
    return name_well(row, stood, registers.mixes);
  else if constexpr (std::is_same_v<Row, book::Place>) {
    if (auto named = name_well(row, stood, registers.places); !named)
      return named;
    return fits_what_is_there(writing, registers, stood, row);
  } else
    return {};
}

// ---- what follows -------------------------------------------------------------------------------

/// The mixes that have it as a part name it by its new name. Returns how many.
Result<std::size_t> rename_part(store::Writing& writing, const Registers& registers,
                                const std::string& stood, const std::string& stands) {
  std::size_t renamed = 0;
  for (auto mix : registers.mixes) {
    const auto part = std::ranges::find(mix.parts, stood, &book::MixPart::name);
    if (part == mix.parts.end())
      continue;
    part->name = stands;
    if (auto put = writing.put(mix); !put)
      return refuse(put.error());
    ++renamed;
  }
  return renamed;
}

std::size_t lots_standing_in(store::Reading& reading, book::PotId pot) {
  std::set<book::LotId> held;
  for (const auto& balance : reading.balances())
    if (book::standing(balance.account.state) == book::Standing::on_hand)
      held.insert(balance.account.lot);
  return static_cast<std::size_t>(std::ranges::count_if(
      reading.lots(), [&](const auto& lot) { return lot.pot == pot && held.contains(lot.id); }));
}

/// What else the amended row changes, told; empty where it is nothing.
template <class Row>
Result<std::string> follow_up(store::Writing& writing, const Registers& registers, const Row& stood,
                              const Row& row) {
  if constexpr (std::is_same_v<Row, book::Pot>) {
    if (const auto lots = lots_standing_in(writing, row.id); lots > 0)
      return phrase_n(static_cast<std::int64_t>(lots), "{} lot that stands in it goes by this now",
                      "{} lots that stand in it go by this now");
  } else if constexpr (std::is_same_v<Row, book::Mix>) {
    if (row.name != stood.name) {
      const auto renamed = rename_part(writing, registers, stood.name, row.name);
      if (!renamed)
        return refuse(renamed.error());
      if (*renamed > 0)
        return phrase_n(static_cast<std::int64_t>(*renamed), "{} mix names it so as its part, too",
                        "{} mixes name it so as their part, too");
    }
  }
  return std::string();
}

/// Into the book, the same in every language: "pot 'deep pot': litres '2.5' instead of '25'".
std::string kept(std::string_view kind, const std::string& name, const std::vector<Change>& changes,
                 const std::string& note) {
  std::string text;
  for (const auto& [field, stood, stands] : changes)
    text +=
        fmt::format("{}{} '{}' instead of '{}'", text.empty() ? "" : "; ", field, stands, stood);
  return fmt::format("{} '{}': {}{}{}", kind, name, text, note.empty() ? "" : ". ", note);
}

template <class Row>
Result<Done> amend_row(store::Book& book, const Amend<Row>& wanted, std::string_view kind) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    const auto stood = row_meant(registers, wanted);
    if (!stood)
      return refuse(stood.error());
    auto row = *stood;
    if (auto edited = wanted.edit(row, registers); !edited)
      return refuse(edited.error());
    if (auto fit = make_fit(writing, registers, *stood, row); !fit)
      return refuse(fit.error());
    const auto& name = name_of(registers, *stood);
    const auto changes = changes_between(fields_of(*stood, registers), fields_of(row, registers));
    if (changes.empty())
      return refuse(fault(phrase("nothing changes on {}", name), "Give what is to stand there."));
    if (auto put = writing.put(row); !put)
      return refuse(put.error());
    const auto followed = follow_up(writing, registers, *stood, row);
    if (!followed)
      return refuse(followed.error());
    auto entry = entry_for(book::Verb::correct, wanted.noted);
    entry.note = kept(kind, name, changes, wanted.noted.note);
    std::string told;
    for (const auto& [field, was, is] : changes)
      told += phrase("{}{} of {}: '{}' instead of '{}'", told.empty() ? "" : "; ", field, name, is,
                     was);
    return entered(writing, entry, followed->empty() ? told : told + "; " + *followed);
  });
}

} // namespace

Result<Done> amend(store::Book& book, const Amend<book::Taxon>& wanted) {
  return amend_row(book, wanted, "taxon");
}

Result<Done> amend(store::Book& book, const Amend<book::Place>& wanted) {
  return amend_row(book, wanted, "place");
}

Result<Done> amend(store::Book& book, const Amend<book::Pot>& wanted) {
  return amend_row(book, wanted, "pot");
}

Result<Done> amend(store::Book& book, const Amend<book::Mix>& wanted) {
  return amend_row(book, wanted, "mix");
}

Result<Done> amend(store::Book& book, const Amend<book::Route>& wanted) {
  return amend_row(book, wanted, "route");
}

} // namespace coneline::work
