// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/store/tables.h"
#include "core/store/writing.h"
#include "sql.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace coneline::store {

namespace {

/// Columns and values of one row, written as an insert or, when the row stands already, an update.
class RowToWrite {
 public:
  RowToWrite(Tables& tables, std::string table) : tables_(tables), table_(std::move(table)) {}

  template <class Value>
  RowToWrite& set(const std::string& column, const Value& value) {
    columns_.push_back(column);
    bind_.push_back([value](Statement& statement) { statement.with(value); });
    return *this;
  }
  template <class Set>
  RowToWrite& set_word(const std::string& column, Set value) {
    return set(column, std::string(book::word(value)));
  }
  template <class Value>
  RowToWrite& set_sourced(const std::string& column, const book::Sourced<Value>& value) {
    return set_word(column, value.value).set(column + "_source", value.source);
  }
  RowToWrite& set_range(const std::string& column,
                        const book::Sourced<std::optional<book::Range>>& range) {
    const auto end = [&](double book::Range::*which) {
      return range.value ? std::optional(*range.value.*which) : std::nullopt;
    };
    return set(column + "_low", end(&book::Range::low))
        .set(column + "_high", end(&book::Range::high))
        .set(column + "_source", range.source);
  }

  /// Returns the row's id.
  std::int64_t write(std::int64_t id) {
    auto statement = tables_.ask(id > 0 ? update() : insert());
    for (const auto& bind : bind_)
      bind(statement);
    if (id > 0)
      statement.with(id);
    return statement.number().value_or(id);
  }

 private:
  [[nodiscard]] std::string insert() const {
    std::string names;
    std::string places;
    for (const auto& column : columns_) {
      names += (names.empty() ? "" : ", ") + column;
      places += (places.empty() ? ":" : ", :") + column;
    }
    return fmt::format("INSERT INTO {} ({}) VALUES ({}) RETURNING id", table_, names, places);
  }
  [[nodiscard]] std::string update() const {
    std::string pairs;
    for (const auto& column : columns_)
      pairs += fmt::format("{}{} = :{}", pairs.empty() ? "" : ", ", column, column);
    return fmt::format("UPDATE {} SET {} WHERE id = :id RETURNING id", table_, pairs);
  }

  Tables& tables_;
  std::string table_;
  std::vector<std::string> columns_;
  std::vector<std::function<void(Statement&)>> bind_;
};

/// A sentence for each, since their names have genders elsewhere.
std::string without_name(std::string_view table) {
  if (table == "taxon")
    return phrase("a taxon without a name");
  if (table == "place")
    return phrase("a place without a name");
  if (table == "pot")
    return phrase("a pot without a name");
  return phrase("a mix without a name");
}
std::string name_taken(std::string_view table, const std::string& name) {
  if (table == "taxon")
    return phrase("there is a taxon '{}' already", name);
  if (table == "place")
    return phrase("there is a place '{}' already", name);
  if (table == "pot")
    return phrase("there is a pot '{}' already", name);
  return phrase("there is a mix '{}' already", name);
}

Result<void> is_new_name(Tables& tables, const std::string& table, const std::string& name,
                         std::int64_t id) {
  if (name.empty())
    return refuse(fault(without_name(table), "Give it a name."));
  const auto other =
      tables.ask(fmt::format("SELECT id FROM {} WHERE name = :name", table)).with(name).number();
  if (other && *other != id)
    return refuse(fault(name_taken(table, name), "Choose another name."));
  return {};
}

Result<std::int64_t> new_number(Tables& tables, const std::string& table, const Code& code,
                                std::int64_t id) {
  if (auto ours = of_this_book(code, tables.series()); !ours)
    return refuse(ours.error());
  const auto number = code.number_in_series();
  const auto other = tables.ask(fmt::format("SELECT id FROM {} WHERE number = :number", table))
                         .with(number)
                         .number();
  if (other && *other != id)
    return refuse(fault(
        phrase("the code {} stands on another {} already", code.text(), kind_said(code.kind())),
        "Use the next free code."));
  return number;
}

Fault out_of_range(std::string_view what, double value, std::string_view expected) {
  return fault(phrase("{} of {}", what, value), phrase("It is {}.", expected));
}

Result<void> is_above_zero(std::string_view what, double value) {
  if (!std::isfinite(value) || value <= 0)
    return refuse(out_of_range(what, value, phrase("a number above 0")));
  return {};
}

Result<void> is_share(std::string_view what, double value) {
  if (!std::isfinite(value) || value <= 0 || value > 1)
    return refuse(out_of_range(what, value, phrase("a share above 0, at most 1")));
  return {};
}

/// As far as a file may say it, so that what goes out of the book comes in again.
Result<void> is_whole(std::string_view what, std::int64_t value, std::int64_t least) {
  if (value < least || value > most_whole)
    return refuse(out_of_range(what, static_cast<double>(value),
                               phrase("a whole number from {} to {}", least, most_whole)));
  return {};
}

Result<void> ripens(std::string_view what,
                    const book::Sourced<std::optional<book::Range>>& months) {
  if (!months.value)
    return {};
  if (auto range = book::Range::of(months.value->low, months.value->high); !range)
    return refuse(range.error());
  if (months.value->high > book::longest_months)
    return refuse(fault(phrase("{} of {} to {} months", what, write_real(months.value->low),
                               write_real(months.value->high)),
                        "Give months from low to high, at most 1200."));
  return {};
}

Result<void> sound(const book::Taxon& taxon) {
  if (auto does = ripens(phrase("a ripening"), taxon.ripening); !does)
    return does;
  return ripens(phrase("an after-ripening"), taxon.after_ripening);
}

Result<void> sound(const book::Pot& pot) {
  if (auto is = is_above_zero(phrase("litres"), pot.litres); !is)
    return is;
  if (auto is = is_above_zero(phrase("a length in mm"), pot.length_mm); !is)
    return is;
  if (auto is = is_above_zero(phrase("a width in mm"), pot.width_mm); !is)
    return is;
  if (pot.cells < 1)
    return refuse(out_of_range(phrase("cells"), pot.cells, phrase("1 for a pot, more for a tray")));
  if (pot.shape == book::Shape::round && pot.length_mm != pot.width_mm)
    return refuse(fault(phrase("a round pot of {} × {} mm", pot.length_mm, pot.width_mm),
                        "Give its diameter twice."));
  return is_whole("cells", pot.cells, 1);
}

/// Their names and parts, which is what another mix may lead to.
std::vector<book::Mix> mixes_beside(Tables& tables, book::MixId id) {
  std::vector<book::Mix> mixes;
  tables
      .ask("SELECT mix.id AS id, mix.name AS name, mix_part.name AS part, mix_part.share AS share "
           "FROM mix JOIN mix_part ON mix_part.mix_id = mix.id WHERE mix.id <> :id "
           "ORDER BY mix.id, mix_part.position")
      .with(id)
      .each([&](const Row& row) {
        if (mixes.empty() || mixes.back().id.value != row.whole("id")) {
          mixes.emplace_back().id = {row.whole("id")};
          mixes.back().name = row.text("name");
        }
        mixes.back().parts.push_back({row.text("part"), row.real("share")});
      });
  return mixes;
}

Result<void> sound(const book::Mix& mix) {
  if (mix.parts.empty())
    return refuse(fault(phrase("the mix '{}' has no parts", mix.name), "Name at least one part."));
  for (const auto& part : mix.parts) {
    if (auto is = is_above_zero(phrase("a share of '{}'", part.name), part.share); !is)
      return is;
    if (std::ranges::count(mix.parts, part.name, &book::MixPart::name) > 1)
      return refuse(fault(phrase("the part '{}' stands twice in the mix '{}'", part.name, mix.name),
                          "Add them up."));
  }
  if (!std::isfinite(mix.shrink) || mix.shrink < 0 || mix.shrink >= 1)
    return refuse(
        out_of_range(phrase("a shrink"), mix.shrink, phrase("a share from 0 to below 1")));
  if (!std::isfinite(mix.loss) || mix.loss < 0)
    return refuse(out_of_range(phrase("a loss"), mix.loss, phrase("a share of 0 or more")));
  return {};
}

Result<void> sound(Tables& tables, const book::Route& route) {
  if (route.steps.empty())
    return refuse(fault("a route without steps", "Give at least the tray."));
  if (auto is = is_share(phrase("a germination"), route.germination); !is)
    return is;
  for (const auto& step : route.steps)
    if (auto is = is_share(phrase("a survival"), step.survival); !is)
      return is;
  std::string taxon;
  tables.ask("SELECT name FROM taxon WHERE id = :id").with(route.taxon).each([&](const Row& row) {
    taxon = row.text("name");
  });
  return book::leads_to_an_end(route, taxon);
}

/// No place stands within itself, through whatever others.
Result<void> is_not_within_itself(Tables& tables, const book::Place& place) {
  constexpr std::int64_t outdoors = 0; // no row has it
  std::set<std::int64_t> passed;
  auto outer = place.within ? place.within->value : outdoors;
  while (place.id.stored() && outer != outdoors && passed.insert(outer).second) {
    if (outer == place.id.value)
      return refuse(fault(phrase("the place {} would be within itself", place.code.text()),
                          "A bay is within a bench, a bench within a house."));
    outer = tables.ask("SELECT within_id FROM place WHERE id = :id AND within_id IS NOT NULL")
                .with(outer)
                .number()
                .value_or(outdoors);
  }
  return {};
}

} // namespace

Result<void> Writing::put(const book::Title& title) {
  if (title.series < 10 || title.series > 99)
    return refuse(out_of_range(phrase("a series"), title.series, phrase("10 to 99")));
  const auto there = tables().ask("SELECT id FROM book").number();
  RowToWrite row(tables(), "book");
  row.set("name", title.name)
      .set("series", title.series)
      .set("invented", title.invented ? 1 : 0)
      .set("made_on", title.made_on)
      .set_word("hemisphere", title.hemisphere);
  if (!there)
    row.set("id", 1);
  row.write(there.value_or(0));
  tables().set_series(title.series);
  return {};
}

Result<book::TaxonId> Writing::put(const book::Taxon& taxon) {
  if (auto fresh = is_new_name(tables(), "taxon", taxon.name, taxon.id.value); !fresh)
    return refuse(fresh.error());
  if (auto is = sound(taxon); !is)
    return refuse(is.error());
  return book::TaxonId{RowToWrite(tables(), "taxon")
                           .set("name", taxon.name)
                           .set_sourced("leaf_colour", taxon.leaf_colour)
                           .set_sourced("light", taxon.light)
                           .set_sourced("frost", taxon.frost)
                           .set_sourced("float_test", taxon.float_test)
                           .set_range("ripening", taxon.ripening)
                           .set_range("after_ripening", taxon.after_ripening)
                           .write(taxon.id.value)};
}

Result<book::PlaceId> Writing::put(const book::Place& place) {
  if (auto fresh = is_new_name(tables(), "place", place.name, place.id.value); !fresh)
    return refuse(fresh.error());
  auto number = new_number(tables(), "place", place.code, place.id.value);
  if (!number)
    return refuse(number.error());
  if (!(place.length_mm >= 0) || !(place.width_mm >= 0) || !std::isfinite(place.square_metres()))
    return refuse(
        fault(phrase("a place of {} × {} mm", place.length_mm, place.width_mm), "Give 0 or more."));
  if (auto is = is_whole("a turn", place.walk, -most_whole); !is)
    return refuse(is.error());
  if (auto is = is_not_within_itself(tables(), place); !is)
    return refuse(is.error());
  return book::PlaceId{RowToWrite(tables(), "place")
                           .set("number", *number)
                           .set("name", place.name)
                           .set_word("kind", place.kind)
                           .set("within_id", place.within)
                           .set("length_mm", place.length_mm)
                           .set("width_mm", place.width_mm)
                           .set_word("light", place.light)
                           .set("walk", place.walk)
                           .write(place.id.value)};
}

Result<book::PotId> Writing::put(const book::Pot& pot) {
  if (auto fresh = is_new_name(tables(), "pot", pot.name, pot.id.value); !fresh)
    return refuse(fresh.error());
  if (auto is = sound(pot); !is)
    return refuse(is.error());
  return book::PotId{RowToWrite(tables(), "pot")
                         .set("name", pot.name)
                         .set("litres", pot.litres)
                         .set_word("shape", pot.shape)
                         .set("length_mm", pot.length_mm)
                         .set("width_mm", pot.width_mm)
                         .set("cells", pot.cells)
                         .set("source", pot.source)
                         .write(pot.id.value)};
}

Result<book::MixId> Writing::put(const book::Mix& mix) {
  if (auto fresh = is_new_name(tables(), "mix", mix.name, mix.id.value); !fresh)
    return refuse(fresh.error());
  if (auto is = sound(mix); !is)
    return refuse(is.error());
  if (auto can = book::can_be_mixed(mix, mixes_beside(tables(), mix.id)); !can)
    return refuse(can.error());
  const book::MixId id{RowToWrite(tables(), "mix")
                           .set("name", mix.name)
                           .set("shrink", mix.shrink)
                           .set("loss", mix.loss)
                           .set("source", mix.source)
                           .write(mix.id.value)};
  tables().ask("DELETE FROM mix_part WHERE mix_id = :mix").with(id).run();
  int position = 0;
  for (const auto& part : mix.parts)
    tables()
        .ask("INSERT INTO mix_part (mix_id, position, name, share) VALUES (:mix, :position, :name, "
             ":share)")
        .with(id)
        .with(++position)
        .with(part.name)
        .with(part.share)
        .run();
  return id;
}

Result<book::RouteId> Writing::put(const book::Route& route) {
  if (auto is = sound(tables(), route); !is)
    return refuse(is.error());
  const auto other =
      tables().ask("SELECT id FROM route WHERE taxon_id = :taxon").with(route.taxon).number();
  if (other && *other != route.id.value)
    return refuse(fault("this taxon has a route already", "Change that one."));
  const book::RouteId id{RowToWrite(tables(), "route")
                             .set("taxon_id", route.taxon.value)
                             .set("germination", route.germination)
                             .set("germination_low", route.germination_months.low)
                             .set("germination_high", route.germination_months.high)
                             .set("source", route.source)
                             .write(route.id.value)};
  tables().ask("DELETE FROM route_step WHERE route_id = :route").with(id).run();
  int position = 0;
  for (const auto& step : route.steps)
    tables()
        .ask("INSERT INTO route_step (route_id, position, pot_id, mix_id, months_low, months_high, "
             "survival, light, source) "
             "VALUES (:route, :position, :pot, :mix, :low, :high, :survival, :light, :source)")
        .with(id)
        .with(++position)
        .with(step.pot)
        .with(step.mix)
        .with(step.months.low)
        .with(step.months.high)
        .with(step.survival)
        .with(book::word(step.light))
        .with(step.source)
        .run();
  return id;
}

namespace {

/// A parent of a sex that can be one.
Result<void> may_be_parent(Tables& tables, const std::optional<book::PlantId>& parent,
                           book::Sex wrong) {
  Result<void> is;
  if (parent)
    tables.ask("SELECT number, sex FROM plant WHERE id = :id")
        .with(*parent)
        .each([&](const Row& row) {
          if (row.one_of<book::Sex>("sex") != wrong)
            return;
          const auto code = tables.code(Kind::plant, row.whole("number")).text();
          is = refuse(
              fault(wrong == book::Sex::male
                        ? phrase("{} is a male plant and cannot be the seed parent", code)
                        : phrase("{} is a female plant and cannot be the pollen parent", code),
                    "Name another plant, or correct the sex."));
        });
  return is;
}

} // namespace

Result<void> Writing::is_not_its_own_ancestor(const book::Plant& plant) {
  std::map<std::int64_t, std::int64_t> child_of; // the plants passed on the way up
  std::vector<std::int64_t> to_ask;
  const auto pass = [&](std::int64_t parent, std::int64_t child) {
    if (child_of.emplace(parent, child).second)
      to_ask.push_back(parent);
  };
  for (const auto& parent : {plant.seed_parent, plant.pollen_parent})
    if (parent)
      pass(parent->value, plant.id.value);
  while (!to_ask.empty() && !child_of.contains(plant.id.value)) {
    const auto next = to_ask.back();
    to_ask.pop_back();
    tables().ask(sql::parents_of_plant).with(next).with(next).each([&](const Row& row) {
      pass(row.whole("parent"), next);
    });
  }
  if (!plant.id.stored() || !child_of.contains(plant.id.value))
    return {};
  std::string line = plant.code.text();
  for (auto at = child_of.at(plant.id.value); at != plant.id.value; at = child_of.at(at)) {
    const auto number = tables().ask("SELECT number FROM plant WHERE id = :id").with(at).number();
    line += ", parent of " + tables().code(Kind::plant, number.value_or(at)).text();
  }
  return refuse(fault(phrase("{} would be its own ancestor: {}, parent of {}", plant.code.text(),
                             line, plant.code.text()),
                      "Check both parents."));
}

Result<book::PollenStoreId> Writing::put(const book::PollenStore& store) {
  if (store.name.empty())
    return refuse(fault("a pollen store without a name", "Give it a name."));
  if (store.years.value) {
    const auto& [low, high] = *store.years.value;
    if (auto range = book::Range::of(low, high); !range)
      return refuse(range.error());
    if (high > book::longest_months / 12)
      return refuse(fault(phrase("pollen that lasts {} to {} years", low, high),
                          "Give years from low to high, at most 100."));
  }
  const auto there =
      tables().ask("SELECT id FROM pollen_store WHERE name = :name").with(store.name).number();
  return book::PollenStoreId{RowToWrite(tables(), "pollen_store")
                                 .set("name", store.name)
                                 .set_range("years", store.years)
                                 .write(there.value_or(store.id.value))};
}

Result<book::PlantId> Writing::put(const book::Plant& plant) {
  if (auto is = is_not_its_own_ancestor(plant); !is)
    return refuse(is.error());
  for (const auto& [parent, wrong] : {std::pair(plant.seed_parent, book::Sex::male),
                                      std::pair(plant.pollen_parent, book::Sex::female)})
    if (auto is = may_be_parent(tables(), parent, wrong); !is)
      return refuse(is.error());
  auto number = new_number(tables(), "plant", plant.code, plant.id.value);
  if (!number)
    return refuse(number.error());
  const book::PlantId id{RowToWrite(tables(), "plant")
                             .set("number", *number)
                             .set("name", plant.name)
                             .set("taxon_id", plant.taxon.value)
                             .set_word("taxon_certainty", plant.taxon_certainty)
                             .set_word("sex", plant.sex)
                             .set("origin", plant.origin)
                             .set("acquired", plant.acquired)
                             .set("place_id", plant.place)
                             .set("note", plant.note)
                             .set("seed_parent_id", plant.seed_parent)
                             .set("seed_parent_said", plant.seed_parent_said)
                             .set("pollen_parent_id", plant.pollen_parent)
                             .set("pollen_parent_said", plant.pollen_parent_said)
                             .set_word("parents_certainty", plant.parents_certainty)
                             .set_word("stands_in", plant.stands_in)
                             .write(plant.id.value)};
  tables().ask("DELETE FROM paper WHERE plant_id = :plant").with(id).run();
  for (const auto& paper : plant.papers)
    RowToWrite(tables(), "paper")
        .set("plant_id", id.value)
        .set("kind", paper.kind)
        .set("number", paper.number)
        .set("issued", paper.issued)
        .set("authority", paper.authority)
        .set("note", paper.note)
        .write(0);
  return id;
}

Result<book::PollenLotId> Writing::put(const book::PollenLot& lot) {
  auto number = new_number(tables(), "pollen_lot", lot.code, lot.id.value);
  if (!number)
    return refuse(number.error());
  if (lot.millilitres)
    if (auto is = is_above_zero("an amount of pollen in ml", *lot.millilitres); !is)
      return refuse(is.error());
  return book::PollenLotId{RowToWrite(tables(), "pollen_lot")
                               .set("number", *number)
                               .set("plant_id", lot.plant.value)
                               .set("collected", lot.collected)
                               .set("millilitres", lot.millilitres)
                               .set("store", lot.store)
                               .set("note", lot.note)
                               .write(lot.id.value)};
}

Result<book::ConeId> Writing::put(const book::Cone& cone) {
  auto number = new_number(tables(), "cone", cone.code, cone.id.value);
  if (!number)
    return refuse(number.error());
  return book::ConeId{RowToWrite(tables(), "cone")
                          .set("number", *number)
                          .set("plant_id", cone.plant.value)
                          .set("first_seen", cone.first_seen)
                          .set("note", cone.note)
                          .write(cone.id.value)};
}

Result<book::PurchaseId> Writing::put(const book::Purchase& purchase) {
  auto number = new_number(tables(), "purchase", purchase.code, purchase.id.value);
  if (!number)
    return refuse(number.error());
  return book::PurchaseId{RowToWrite(tables(), "purchase")
                              .set("number", *number)
                              .set("taxon_id", purchase.taxon.value)
                              .set("supplier", purchase.supplier)
                              .set("bought", purchase.bought)
                              .set("note", purchase.note)
                              .write(purchase.id.value)};
}

Result<void> Writing::put(const book::Figure& figure) {
  if (auto is = book::is_sound(figure); !is)
    return is;
  tables()
      .ask("INSERT INTO figure (name, value) VALUES (:name, :value) "
           "ON CONFLICT (name) DO UPDATE SET value = excluded.value")
      .with(figure.name)
      .with(figure.value)
      .run();
  return {};
}

} // namespace coneline::store
