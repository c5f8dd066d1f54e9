// SPDX-License-Identifier: GPL-3.0-or-later
// Trays and pots: inspect, pot, pot on.
#include "../wording.h"
#include "common.h"
#include "core/work/cautions.h"
#include "core/work/inspect.h"
#include "core/work/pot.h"

#include <array>

namespace coneline::window {

namespace {

using book::State;

bool is_tray(const Subject& subject) {
  return subject.code.kind() == Kind::tray && subject.lot() && subject.lot()->total() > 0;
}

bool is_pots(const Subject& subject) {
  return subject.code.kind() == Kind::pot_group && subject.lot() && subject.lot()->total() > 0;
}

std::int64_t up(const Subject& subject) {
  return subject.held(State::root) + subject.held(State::leaf);
}

bool has_seedlings(const Subject& subject) {
  return is_tray(subject) && up(subject) > 0;
}

std::vector<FieldSpec> inspect_fields(const Subject& subject) {
  return with_day_and_note(subject, {count_field("roots", "New roots", 0),
                                     count_field("leaves", "New leaves", 0),
                                     count_field("dead", "Taken out dead", 0)});
}
Result<work::Done> run_inspect(store::Book& book, Answers& answers) {
  const work::Inspect wanted{answers.subject().code, answers.count("roots"),
                             answers.count("leaves"), answers.count("dead"), answers.noted()};
  return answers.then([&] { return work::inspect(book, wanted); });
}

std::vector<FieldSpec> pot_fields(const Subject& subject) {
  const auto* step = next_step(subject);
  const auto pots = pot_names(subject, Cells::one);
  const auto count = is_tray(subject) ? up(subject) : subject.lot()->total();
  return with_day_and_note(
      subject,
      {count_field("count", "Plants", count),
       name_field("pot", "Pot", pots,
                  step             ? text(subject.registers().pot(step->pot).name)
                  : pots.isEmpty() ? QString()
                                   : pots.last()),
       name_field("mix", "Mix", mix_names(subject),
                  step ? text(subject.registers().mix(step->mix).name) : QStringLiteral("none")),
       name_field("place", "Place", place_names(subject), place_now(subject))});
}
std::vector<Piece> pot_pieces(const Subject& subject, const Answers& answers) {
  const auto count = answers.so_far("count");
  const auto there = is_tray(subject) ? up(subject) : subject.lot()->total();
  return {{"potted", count, "act"}, {"left as they are", there - count, "quiet"}};
}
Result<work::Done> run_pot(store::Book& book, Answers& answers) {
  const work::PotUp wanted{answers.subject().code, std::nullopt,          answers.count("count"),
                           answers.named("pot"),   answers.chosen("mix"), std::nullopt,
                           answers.place("place"), answers.noted()};
  return answers.then([&] { return work::pot_up(book, wanted); });
}

} // namespace

std::span<const Deed> growing_deeds() {
  static const std::array deeds{
      Deed{"inspect", "Inspect", is_tray, inspect_fields, nullptr, run_inspect, {}},
      Deed{"pot", "Pot", has_seedlings, pot_fields, pot_pieces, run_pot,
           work::cautions_of(book::Verb::pot)},
      Deed{"pot on", "Pot on", is_pots, pot_fields, pot_pieces, run_pot,
           work::cautions_of(book::Verb::pot_on)}};
  return deeds;
}

} // namespace coneline::window
