// SPDX-License-Identifier: GPL-3.0-or-later
// Move, sell, plant out, recount, lose, discard.
#include "../wording.h"
#include "common.h"
#include "core/work/cautions.h"
#include "core/work/leave.h"
#include "core/work/recount.h"
#include "core/work/relocate.h"

#include <array>

namespace coneline::window {

namespace {

using work::WayOut;

bool holds_something(const Subject& subject) {
  return subject.lot() && subject.lot()->total() > 0;
}

/// Whether something the lot holds can go this way at all: sown seed is not sold.
template <book::State end>
bool can_go(const Subject& subject) {
  return holds_something(subject) &&
         std::ranges::any_of(subject.lot()->on_hand,
                             [](const auto& held) { return book::leads_to(held.first, end); });
}

bool holds_plants(const Subject& subject) {
  return holds_something(subject) && subject.held(book::State::plant) > 0;
}

bool can_move(const Subject& subject) {
  return holds_something(subject) && !subject.registers().places.empty();
}

bool a_lot(const Subject& subject) {
  return subject.lot() != nullptr;
}

std::int64_t there(const Subject& subject, const Answers& answers) {
  const auto state = state_so_far(subject, answers);
  return state ? subject.held(*state) : subject.lot()->total();
}

std::vector<FieldSpec> leave_fields(const Subject& subject) {
  std::vector<FieldSpec> fields;
  add_state_choice(subject, fields, "Of those that are");
  fields.push_back(count_field("count", "How many", 1));
  return with_day_and_note(subject, fields);
}

const QString sure = QStringLiteral("throw them away all the same");

std::vector<FieldSpec> discard_fields(const Subject& subject) {
  auto fields = leave_fields(subject);
  if (subject.held(book::State::judged_empty) > 0)
    fields.insert(fields.end() - 2,
                  choice_field("sure", "Floaters of which none was cut open",
                               {QStringLiteral("keep them"), sure}, QStringLiteral("keep them")));
  return fields;
}

std::vector<FieldSpec> sell_fields(const Subject& subject) {
  auto fields = leave_fields(subject);
  fields.insert(fields.end() - 2,
                {words_field("buyer", "To"),
                 decimal_field("price", "For, all together", {}, "may stay empty")});
  return fields;
}

std::vector<Piece> lose_pieces(const Subject& subject, const Answers& answers) {
  const auto count = answers.so_far("count");
  return {{"going", count, "lost"}, {"staying", there(subject, answers) - count, "ink"}};
}

std::vector<Piece> give_pieces(const Subject& subject, const Answers& answers) {
  const auto count = answers.so_far("count");
  return {{"going", count, "act"}, {"staying", there(subject, answers) - count, "ink"}};
}

template <WayOut way>
Result<work::Done> run_leave(store::Book& book, Answers& answers) {
  work::Leave wanted{answers.subject().code,
                     way,
                     answers.state("state"),
                     answers.count("count"),
                     answers.words("buyer"),
                     answers.cents("price"),
                     answers.noted(),
                     answers.words("sure") == plain(sure) ? work::Floaters::grower_is_sure
                                                          : work::Floaters::ask_for_opened};
  return answers.then([&] { return work::leave(book, wanted); });
}

std::vector<FieldSpec> move_fields(const Subject& subject) {
  return with_day_and_note(subject,
                           {name_field("place", "To", place_names(subject), place_now(subject))});
}
Result<work::Done> run_move(store::Book& book, Answers& answers) {
  const auto place = answers.place("place");
  if (!place)
    return refuse(fault("no place is chosen", "Choose where it goes.").at({{}, 0, "place"}));
  const work::Relocate wanted{{answers.subject().code}, *place, answers.noted()};
  return answers.then([&] { return work::relocate(book, wanted); });
}

std::vector<FieldSpec> recount_fields(const Subject& subject) {
  std::vector<FieldSpec> fields;
  add_state_choice(subject, fields, "Counted those that are");
  fields.push_back(count_field("counted", "Counted", subject.lot()->total()));
  return with_day_and_note(subject, fields);
}
std::vector<Piece> recount_pieces(const Subject& subject, const Answers& answers) {
  const auto counted = answers.so_far("counted");
  return {{"counted", counted, "ink"},
          {"missing", std::max<std::int64_t>(0, there(subject, answers) - counted), "lost"}};
}
Result<work::Done> run_recount(store::Book& book, Answers& answers) {
  const work::Recount wanted{answers.subject().code, answers.state("state"),
                             answers.count("counted"), answers.noted()};
  return answers.then([&] { return work::recount(book, wanted); });
}

} // namespace

std::span<const Deed> leaving_deeds() {
  static const std::array deeds{
      Deed{"move", "Move", can_move, move_fields, nullptr, run_move,
           work::cautions_of(book::Verb::move)},
      Deed{"sell", "Sell", can_go<book::State::sold>, sell_fields, give_pieces,
           run_leave<WayOut::sold>, work::cautions_of(book::Verb::sell)},
      Deed{"plant out", "Plant out", holds_plants, leave_fields, give_pieces,
           run_leave<WayOut::planted_out>, work::cautions_of(book::Verb::plant_out)},
      Deed{"recount", "Recount", a_lot, recount_fields, recount_pieces, run_recount, {}},
      Deed{"lose",
           "Died",
           can_go<book::State::dead>,
           leave_fields,
           lose_pieces,
           run_leave<WayOut::dead>,
           {}},
      Deed{"discard", "Discard", can_go<book::State::discarded>, discard_fields, lose_pieces,
           run_leave<WayOut::discarded>, work::cautions_of(book::Verb::discard)}};
  return deeds;
}

} // namespace coneline::window
