// SPDX-License-Identifier: GPL-3.0-or-later
// What a nursery is made of: places, kinds of trays and pots, mixes.
#include "../wording.h"
#include "common.h"
#include "core/book/names.h"
#include "core/work/cautions.h"

#include <QRegularExpression>

#include <array>

namespace coneline::window {

namespace {

work::Done done(const std::string& what) {
  return {{}, {}, phrase("{} is in the book", what), {}};
}

/// As the book keeps names; fails at the field where another row has one that reads alike.
template <class Row>
Result<void> name_well(Row& row, const std::vector<Row>& rows) {
  auto name = book::name_for(rows, row.name);
  if (!name)
    return refuse(name.error().at({{}, 0, "name"}));
  row.name = *name;
  return {};
}

std::vector<FieldSpec> place_fields(const Subject& subject) {
  auto within = place_names(subject);
  within.prepend(QStringLiteral("none"));
  return {
      words_field("name", "Name", {}, "such as Bench 3"),
      choice_field("kind", "It is a", {"house", "bench", "bay"}, QStringLiteral("bench")),
      name_field("within", "in", within, QStringLiteral("none")),
      measure_field(Quantity::millimetres, "length", "Length to stand on, {}", 0.0),
      measure_field(Quantity::millimetres, "width", "Width, {}", 0.0),
      choice_field("light", "Light", {"sun", "part shade", "shade"}, QStringLiteral("part shade")),
      count_field("walk", "Its turn when walking through",
                  std::int64_t(subject.registers().places.size()) + 1)};
}

Result<work::Done> run_place(store::Book& book, Answers& answers) {
  book::Place place;
  place.name = answers.named("name");
  place.kind = answers.one_of<book::PlaceKind>("kind");
  if (const auto within = answers.place("within"))
    place.within = book::coded(answers.subject().registers().places, *within)->id;
  place.length_mm = answers.decimal("length", Quantity::millimetres).value_or(0);
  place.width_mm = answers.decimal("width", Quantity::millimetres).value_or(0);
  place.light = answers.one_of<book::Light>("light");
  place.walk = answers.whole("walk");
  return answers.then([&]() -> Result<work::Done> {
    if (auto named = name_well(place, answers.subject().registers().places); !named)
      return refuse(named.error());
    return book.write([&](store::Writing& writing) -> Result<work::Done> {
      const auto code = writing.next_code(Kind::place);
      if (!code)
        return refuse(code.error());
      place.code = *code;
      return writing.put(place).map([&](auto) { return done(place.name); });
    });
  });
}

std::vector<FieldSpec> pot_fields(const Subject&) {
  return {words_field("name", "Name", {}, "such as deep pot 2 L"),
          measure_field(Quantity::litres, "litres", "It really holds, {}", {},
                        "all cells together, measured"),
          choice_field("shape", "Shape", {"round", "rectangular"}, QStringLiteral("round")),
          measure_field(Quantity::millimetres, "length", "Outside length or diameter, {}"),
          measure_field(Quantity::millimetres, "width", "Outside width, {}", {},
                        "empty for a round one"),
          count_field("cells", "Seeds or plants it takes", 1)};
}

Result<work::Done> run_pot(store::Book& book, Answers& answers) {
  book::Pot pot;
  pot.name = answers.named("name");
  pot.litres = answers.measure("litres", Quantity::litres);
  pot.shape = answers.one_of<book::Shape>("shape");
  pot.length_mm = answers.measure("length", Quantity::millimetres);
  pot.width_mm = pot.shape == book::Shape::round ? pot.length_mm
                                                 : answers.measure("width", Quantity::millimetres);
  pot.cells = answers.whole("cells");
  pot.source = "measured"; // a record: the same in every language
  return answers.then([&]() -> Result<work::Done> {
    if (auto named = name_well(pot, answers.subject().registers().pots); !named)
      return refuse(named.error());
    return book.write([&](store::Writing& writing) {
      return writing.put(pot).map([&](auto) { return done(pot.name); });
    });
  });
}

std::vector<FieldSpec> mix_fields(const Subject&) {
  return {words_field("name", "Name"),
          words_field("parts", "Parts by volume", {}, "such as perlite 4, peat 3, sand 3"),
          decimal_field("shrink", "Volume lost in mixing, %", QStringLiteral("15")),
          words_field("source", "Where this comes from", phrased("own experience"))};
}

/// "perlite 4, peat 3": each part with its share.
Result<std::vector<book::MixPart>> read_parts(const std::string& written) {
  static const QRegularExpression one(QStringLiteral(R"(^\s*(.+?)\s+(\d+(?:\.\d+)?)\s*$)"));
  std::vector<book::MixPart> parts;
  for (const auto& piece : text(written).split(',')) {
    const auto match = one.match(piece);
    if (!match.hasMatch())
      return refuse(fault(phrase("'{}' is no part with its share", plain(piece)),
                          "Write it like: perlite 4, peat 3, sand 3."));
    parts.push_back({plain(match.captured(1)), match.captured(2).toDouble()});
  }
  return parts;
}

Result<work::Done> run_mix(store::Book& book, Answers& answers) {
  book::Mix mix;
  mix.name = answers.named("name");
  mix.shrink = answers.decimal("shrink").value_or(0) / 100;
  mix.source = answers.words("source");
  const auto parts = read_parts(answers.words("parts"));
  if (!parts)
    return refuse(parts.error().at({{}, 0, "parts"}));
  mix.parts = *parts;
  return answers.then([&]() -> Result<work::Done> {
    if (auto named = name_well(mix, answers.subject().registers().mixes); !named)
      return refuse(named.error());
    return book.write([&](store::Writing& writing) {
      return writing.put(mix).map([&](auto) { return done(mix.name); });
    });
  });
}

constexpr const char* in_own_money = to_phrase("in your own money");

struct FigureAsked {
  const char* key;
  const char* name; ///< as the book keeps it
  const char* label;
  const char* hint = in_own_money;
  double times = 1;             ///< what is asked, of what is kept
  std::optional<Quantity> of{}; ///< a price for one of it
};
constexpr std::array figures_asked{
    FigureAsked{"worth", book::figure::plant_worth, "A plant is worth"},
    FigureAsked{"seed", book::figure::seed_cost, "A sown seed costs"},
    FigureAsked{"litre", book::figure::litre_price, "or 1 {} of mix costs", in_own_money, 1,
                Quantity::litres},
    FigureAsked{"bench", book::figure::bench_price, "and 1 {} of bench a month", in_own_money, 1,
                Quantity::square_metres},
    FigureAsked{"keep", book::figure::keep_cost, "Keeping a seed costs"},
    FigureAsked{"done", book::figure::done_below,
                "A tray is done when one more comes in fewer of 100", "5 where nothing is said",
                100}};

/// What is kept, as it is asked for, and back.
double asked_for(const FigureAsked& asked, double kept) {
  return asked.times * (asked.of ? for_one_unit(language().units(), *asked.of, kept) : kept);
}
double kept_of(const FigureAsked& asked, double given) {
  const double once = given / asked.times;
  return asked.of ? for_one_kept(language().units(), *asked.of, once) : once;
}

std::vector<FieldSpec> figures_fields(const Subject& subject) {
  std::vector<FieldSpec> fields;
  for (const auto& asked : figures_asked) {
    const auto* kept = book::named(subject.registers().figures, asked.name);
    fields.push_back(decimal_field(asked.key, asked.label,
                                   kept ? written(asked_for(asked, kept->value)) : QString(),
                                   asked.hint));
    if (asked.of)
      fields.back().label = text(fmt::format(fmt::runtime(phrase_of(asked.label)),
                                             unit_word(language().units(), *asked.of)));
  }
  return fields;
}

Result<work::Done> run_figures(store::Book& book, Answers& answers) {
  std::vector<book::Figure> figures;
  for (const auto& asked : figures_asked)
    if (const auto given = answers.decimal(asked.key))
      figures.push_back({asked.name, kept_of(asked, *given)});
  return answers.then([&] {
    return book.write([&](store::Writing& writing) -> Result<work::Done> {
      for (const auto& figure : figures)
        if (auto put = writing.put(figure); !put)
          return refuse(put.error());
      return done(phrase("what you reckon with"));
    });
  });
}

std::vector<FieldSpec> title_fields(const Subject& subject) {
  const auto& title = subject.registers().title;
  return {words_field("name", "The nursery's name", text(title.name)),
          choice_field("half", "It lies in the hemisphere", all_words<book::Hemisphere>(),
                       text(book::word(title.hemisphere)))};
}

Result<work::Done> run_title(store::Book& book, Answers& answers) {
  auto title = answers.subject().registers().title;
  title.name = answers.named("name");
  title.hemisphere = answers.one_of<book::Hemisphere>("half");
  return answers.then([&] {
    return book.write([&](store::Writing& writing) {
      return writing.put(title).map([&] { return done(title.name); });
    });
  });
}

std::vector<FieldSpec> pollen_store_fields(const Subject& subject) {
  QStringList known;
  for (const auto& store : subject.registers().pollen_stores)
    known << text(store.name);
  auto name = words_field("name", "Way of keeping, as pollen lots name it", {}, "");
  name.hint = known.isEmpty() ? QStringLiteral("such as refrigerator, dry")
                              : phrased("in the book: {}", known.join(QStringLiteral("; ")));
  return {name, decimal_field("from", "Lasts years, at least", {}, "empty where nobody can say"),
          decimal_field("to", "at most"),
          words_field("source", "Where that comes from", phrased("own experience"))};
}

Result<work::Done> run_pollen_store(store::Book& book, Answers& answers) {
  book::PollenStore kept;
  kept.name = answers.named("name");
  if (const auto* known = book::named(answers.subject().registers().pollen_stores, kept.name))
    kept.id = known->id;
  kept.years.source = answers.named("source");
  const auto from = answers.decimal("from");
  const auto to = answers.decimal("to");
  if (from || to) {
    const auto range = book::Range::of(from ? *from : *to, to ? *to : *from);
    if (!range)
      return refuse(range.error().at({{}, 0, "to"}));
    kept.years.value = *range;
  }
  return answers.then([&] {
    return book.write([&](store::Writing& writing) {
      return writing.put(kept).map([&](auto) { return done(kept.name); });
    });
  });
}

} // namespace

std::span<const Deed> nursery_deeds() {
  static const std::array deeds{
      Deed{"new place", "New place", nullptr, place_fields, nullptr, run_place, {}},
      Deed{"new pot", "New tray or pot", nullptr, pot_fields, nullptr, run_pot, {}},
      Deed{"new mix", "New mix", nullptr, mix_fields, nullptr, run_mix, {work::caution::dust}},
      Deed{"figures", "What you reckon with", nullptr, figures_fields, nullptr, run_figures, {}},
      Deed{"nursery", "The nursery", nullptr, title_fields, nullptr, run_title, {}},
      Deed{"pollen store",
           "How pollen keeps",
           nullptr,
           pollen_store_fields,
           nullptr,
           run_pollen_store,
           {}}};
  return deeds;
}

} // namespace coneline::window
