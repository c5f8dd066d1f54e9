// SPDX-License-Identifier: GPL-3.0-or-later
// What is done with a batch: clean, sort, open, store, sow.
#include "../wording.h"
#include "common.h"
#include "core/work/cautions.h"
#include "core/work/clean.h"
#include "core/work/keep.h"
#include "core/work/recheck.h"
#include "core/work/sort.h"
#include "core/work/sow.h"

#include <array>

namespace coneline::window {

namespace {

using book::State;

bool has_seed(const Subject& subject) {
  return subject.code.kind() == Kind::batch && subject.lot() && subject.lot()->total() > 0;
}

bool has_unsorted(const Subject& subject) {
  return has_seed(subject) && subject.held(State::unsorted) > 0;
}

/// The state that is worked on: the chosen one, or all that is there.
std::int64_t there(const Subject& subject, const Answers& answers) {
  const auto state = state_so_far(subject, answers);
  return state ? subject.held(*state) : 0;
}

std::vector<FieldSpec> clean_fields(const Subject& subject) {
  return with_day_and_note(subject,
                           {count_field("soak", "Days soaked", 2), count_field("lost", "Lost", 0)});
}
std::vector<Piece> clean_pieces(const Subject& subject, const Answers& answers) {
  const auto lost = answers.so_far("lost");
  return {{"cleaned", subject.lot()->total() - lost, "ink"}, {"lost", lost, "lost"}};
}
Result<work::Done> run_clean(store::Book& book, Answers& answers) {
  const work::Clean wanted{answers.subject().code, answers.whole("soak"), answers.count("lost"),
                           answers.noted()};
  return answers.then([&] { return work::clean(book, wanted); });
}

bool is_soaking(const Subject& subject) {
  return std::ranges::any_of(subject.standing->due, [&](const work::Due& due) {
    return due.code == subject.code && due.kind == work::DueKind::water;
  });
}
std::vector<FieldSpec> water_fields(const Subject& subject) {
  return with_day_and_note(subject, {});
}
Result<work::Done> run_water(store::Book& book, Answers& answers) {
  const work::ChangeWater wanted{answers.subject().code, answers.noted()};
  return answers.then([&] { return work::change_water(book, wanted); });
}

bool is_stored(const Subject& subject) {
  return has_seed(subject) && std::ranges::any_of(subject.standing->due, [&](const work::Due& due) {
           return due.code == subject.code && due.kind == work::DueKind::sow;
         });
}
std::vector<FieldSpec> recheck_fields(const Subject& subject) {
  std::vector<FieldSpec> fields{count_field("dead", "Dead, taken out", 0)};
  add_state_choice(subject, fields, "They were");
  fields.push_back(day_field("next", "Look again on", {}, "empty: in a month"));
  return with_day_and_note(subject, fields);
}
std::vector<Piece> recheck_pieces(const Subject& subject, const Answers& answers) {
  const auto dead = answers.so_far("dead");
  return {{"sound", subject.lot()->total() - dead, "ink"}, {"dead", dead, "lost"}};
}
Result<work::Done> run_recheck(store::Book& book, Answers& answers) {
  const work::Recheck wanted{answers.subject().code, answers.count("dead"),
                             state_so_far(answers.subject(), answers), answers.some_day("next"),
                             answers.noted()};
  return answers.then([&] { return work::recheck(book, wanted); });
}

std::vector<FieldSpec> sort_fields(const Subject& subject) {
  std::vector<FieldSpec> fields;
  add_state_choice(subject, fields, "Sort those that are");
  if (!fields.empty() && subject.held(State::unsorted) > 0)
    fields.front().value = text(book::word(State::unsorted));
  fields.push_back(
      choice_field("test", "Test", {"float", "shake", "eye", "x-ray"}, QStringLiteral("float")));
  fields.push_back(count_field("filled", "Filled (sank)", 0));
  fields.push_back(count_field("empty", "Empty (floated)", 0));
  return with_day_and_note(subject, fields);
}
std::vector<Piece> sort_pieces(const Subject& subject, const Answers& answers) {
  const auto filled = answers.so_far("filled");
  const auto empty = answers.so_far("empty");
  return {{"filled", filled, "act"},
          {"empty", empty, "lost"},
          {"still to sort", there(subject, answers) - filled - empty, "quiet"}};
}
Result<work::Done> run_sort(store::Book& book, Answers& answers) {
  const work::Sort wanted{answers.subject().code,
                          state_so_far(answers.subject(), answers).value_or(State::unsorted),
                          answers.one_of<book::SeedTest>("test"),
                          answers.count("filled"),
                          answers.count("empty"),
                          answers.noted()};
  return answers.then([&] { return work::sort(book, wanted); });
}

std::vector<FieldSpec> open_fields(const Subject& subject) {
  std::vector<FieldSpec> fields;
  add_state_choice(subject, fields, "Open some that are");
  fields.push_back(count_field("opened", "Cut open", 0));
  fields.push_back(count_field("filled", "of them filled", 0));
  return with_day_and_note(subject, fields);
}
std::vector<Piece> open_pieces(const Subject& subject, const Answers& answers) {
  const auto opened = answers.so_far("opened");
  const auto filled = answers.so_far("filled");
  return {{"opened, filled", filled, "act"},
          {"opened, empty", opened - filled, "lost"},
          {"left whole", there(subject, answers) - opened, "ink"}};
}
Result<work::Done> run_open(store::Book& book, Answers& answers) {
  const work::Open wanted{answers.subject().code,
                          state_so_far(answers.subject(), answers).value_or(State::judged_filled),
                          answers.count("opened"), answers.count("filled"), answers.noted()};
  return answers.then([&] { return work::open(book, wanted); });
}

std::vector<FieldSpec> store_fields(const Subject& subject) {
  return with_day_and_note(subject, {words_field("store", "Kept in", phrased("box of dry perlite")),
                                     measure_field(Quantity::celsius, "celsius", "at {}"),
                                     day_field("from", "May be ready from", {},
                                               "empty: what the book holds of the taxon"),
                                     day_field("to", "or as late as")});
}
Result<work::Done> run_store(store::Book& book, Answers& answers) {
  const work::Keep wanted{answers.subject().code,
                          answers.named("store"),
                          answers.decimal("celsius", Quantity::celsius),
                          answers.some_day("from"),
                          answers.some_day("to"),
                          std::nullopt,
                          answers.noted()};
  return answers.then([&] { return work::keep(book, wanted); });
}

std::vector<FieldSpec> sow_fields(const Subject& subject) {
  std::vector<FieldSpec> fields;
  add_state_choice(subject, fields, "Sow those that are");
  const auto filled = subject.held(State::judged_filled);
  const auto state = filled > 0 ? State::judged_filled : State::unsorted;
  if (!fields.empty() && subject.held(state) > 0)
    fields.front().value = text(book::word(state));
  const auto seeds = subject.held(state);
  const auto* step = next_step(subject);
  const auto& pots = subject.registers().pots;
  const auto* pot = step           ? &subject.registers().pot(step->pot)
                    : pots.empty() ? nullptr
                                   : &pots.front();
  const auto cells = pot ? std::max(1, pot->cells) : 1;
  const auto places = place_names(subject);
  fields.push_back(count_field("seeds", "Seeds", seeds));
  fields.push_back(
      count_field("trays", "in trays", std::max<std::int64_t>(1, (seeds + cells - 1) / cells)));
  fields.push_back(name_field("pot", "Kind of tray", pot_names(subject, Cells::several),
                              pot ? text(pot->name) : QString()));
  fields.push_back(
      name_field("mix", "Mix", mix_names(subject),
                 step ? text(subject.registers().mix(step->mix).name) : QStringLiteral("none")));
  fields.push_back(name_field("place", "Place", places, place_now(subject)));
  return with_day_and_note(subject, fields);
}
std::vector<Piece> sow_pieces(const Subject& subject, const Answers& answers) {
  const auto seeds = answers.so_far("seeds");
  return {{"sown", seeds, "act"}, {"left in the batch", there(subject, answers) - seeds, "quiet"}};
}
Result<work::Done> run_sow(store::Book& book, Answers& answers) {
  const work::Sow wanted{answers.subject().code, state_so_far(answers.subject(), answers),
                         answers.count("seeds"), answers.whole("trays"),
                         answers.named("pot"),   answers.chosen("mix"),
                         answers.place("place"), answers.noted()};
  return answers.then([&] { return work::sow(book, wanted); });
}

} // namespace

std::span<const Deed> seed_deeds() {
  static const std::array deeds{
      Deed{"clean", "Clean", has_unsorted, clean_fields, clean_pieces, run_clean,
           work::cautions_of(book::Verb::clean)},
      Deed{"water", "Water changed", is_soaking, water_fields, nullptr, run_water, {}},
      Deed{"recheck", "Looked at again", is_stored, recheck_fields, recheck_pieces, run_recheck,
           work::cautions_of(book::Verb::store)},
      Deed{"sort", "Sort", has_seed, sort_fields, sort_pieces, run_sort,
           work::cautions_of(book::Verb::sort)},
      Deed{"sow", "Sow", has_seed, sow_fields, sow_pieces, run_sow,
           work::cautions_of(book::Verb::sow)},
      Deed{"open", "Open some", has_seed, open_fields, open_pieces, run_open,
           work::cautions_of(book::Verb::open)},
      Deed{"store", "Store", has_seed, store_fields, nullptr, run_store,
           work::cautions_of(book::Verb::store)}};
  return deeds;
}

} // namespace coneline::window
