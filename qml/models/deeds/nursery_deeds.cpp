// SPDX-License-Identifier: GPL-3.0-or-later
// The nursery itself, what it reckons with, and how its pollen keeps.
#include "../wording.h"
#include "common.h"
#include "core/book/names.h"

#include <array>

namespace coneline::window {

namespace {

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
      return in_the_book(phrase("what you reckon with"));
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
      return writing.put(title).map([&] { return in_the_book(title.name); });
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
  kept.years.value = answers.range("from", "to");
  return answers.then([&] {
    return book.write([&](store::Writing& writing) {
      return writing.put(kept).map([&](auto) { return in_the_book(kept.name); });
    });
  });
}

} // namespace

std::span<const Deed> nursery_deeds() {
  static const std::array deeds{
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
