// SPDX-License-Identifier: GPL-3.0-or-later
// The diary's forms: scales, male cones, pollen, labels, moves, and answers to what is due.
#include "../wording.h"
#include "common.h"
#include "core/work/cautions.h"
#include "core/work/cone_course.h"
#include "core/work/due.h"
#include "core/work/pollen.h"

#include <array>

namespace coneline::window {

namespace {

const QString put_off = to_phrase("put off until the day");
const QString strike = to_phrase("strike it, with a reason");

bool is_cone_on_plant(const Subject& subject) {
  const auto* cone = subject.standing->cone(subject.code);
  return cone && !cone->harvested_on;
}

bool may_be_male(const Subject& subject) {
  const auto* plant = book::coded(subject.registers().plants, subject.code);
  return plant && plant->sex != book::Sex::female;
}

bool is_plant(const Subject& subject) {
  return book::coded(subject.registers().plants, subject.code) != nullptr;
}

bool is_pollen(const Subject& subject) {
  return book::coded(subject.registers().pollen_lots, subject.code) != nullptr;
}

bool gives_pollen(const Subject& subject) {
  return may_be_male(subject) || is_pollen(subject);
}

bool has_label(const Subject& subject) {
  return subject.standing->cone(subject.code) || subject.standing->lot(subject.code);
}

std::vector<FieldSpec> scales_fields(const Subject& subject) {
  return with_day_and_note(
      subject,
      {choice_field("scales", "The scales are", all_words<book::Scales>(), QStringLiteral("tight")),
       decimal_field("fertile", "Fertile scales counted", {}, "empty if not counted")});
}
Result<work::Done> run_scales(store::Book& book, Answers& answers) {
  work::CheckScales wanted;
  wanted.cone = answers.subject().code;
  wanted.scales = answers.one_of<book::Scales>("scales");
  if (!answers.words("fertile").empty())
    wanted.fertile_scales = answers.count("fertile").value();
  wanted.noted = answers.noted();
  return answers.then([&] { return work::check_scales(book, wanted); });
}

std::vector<FieldSpec> male_cone_fields(const Subject& subject) {
  return with_day_and_note(subject,
                           {choice_field("state", "The male cone is", all_words<book::MaleCone>(),
                                         QStringLiteral("shedding"))});
}
Result<work::Done> run_male_cone(store::Book& book, Answers& answers) {
  const work::WatchMaleCone wanted{answers.subject().code, answers.one_of<book::MaleCone>("state"),
                                   answers.noted()};
  return answers.then([&] { return work::watch_male_cone(book, wanted); });
}

std::vector<FieldSpec> collect_fields(const Subject& subject) {
  std::vector<FieldSpec> fields{decimal_field("ml", "Millilitres")};
  if (!is_pollen(subject))
    fields.push_back(words_field("store", "Kept in", phrased("refrigerator, dry")));
  return with_day_and_note(subject, fields);
}
Result<work::Done> run_collect(store::Book& book, Answers& answers) {
  const work::CollectPollen wanted{answers.subject().code, answers.decimal("ml"),
                                   answers.words("store"), answers.noted()};
  return answers.then([&] { return work::collect_pollen(book, wanted); });
}

std::vector<FieldSpec> test_fields(const Subject& subject) {
  return with_day_and_note(subject, {count_field("counted", "Grains counted", 100),
                                     count_field("germinated", "of them germinated", 0),
                                     words_field("conditions", "Medium, hours, temperature")});
}
Result<work::Done> run_test(store::Book& book, Answers& answers) {
  const work::TestPollen wanted{answers.subject().code, answers.count("counted").value(),
                                answers.count("germinated").value(), answers.words("conditions"),
                                answers.noted()};
  return answers.then([&] { return work::test_pollen(book, wanted); });
}

std::vector<FieldSpec> discard_fields(const Subject& subject) {
  return with_day_and_note(subject,
                           {decimal_field("ml", "Millilitres thrown away", {}, "empty for all")});
}
Result<work::Done> run_discard(store::Book& book, Answers& answers) {
  const work::DiscardPollen wanted{answers.subject().code, answers.decimal("ml"), answers.noted()};
  return answers.then([&] { return work::discard_pollen(book, wanted); });
}

std::vector<FieldSpec> only_day_and_note(const Subject& subject) {
  return with_day_and_note(subject, {});
}
Result<work::Done> run_want_label(store::Book& book, Answers& answers) {
  const auto noted = answers.noted();
  return answers.then([&] { return work::want_label(book, answers.subject().code, noted); });
}

std::vector<FieldSpec> plan_move_fields(const Subject& subject) {
  return with_day_and_note(
      subject, {name_field("place", "Move it to", place_names(subject), place_now(subject))});
}
Result<work::Done> run_plan_move(store::Book& book, Answers& answers) {
  const auto place = answers.place("place");
  const auto noted = answers.noted();
  if (!place)
    return refuse(fault("no place to move it to", "Choose a place.").at({{}, 0, "place"}));
  return answers.then([&] { return work::plan_move(book, answers.subject().code, *place, noted); });
}

QString told_due(const work::Due& due) {
  return text(book::said(due.kind)) + ": " + text(due.told);
}

bool is_due(const Subject& subject) {
  return std::ranges::any_of(subject.standing->due,
                             [&](const auto& due) { return due.code == subject.code; });
}
std::vector<FieldSpec> later_fields(const Subject& subject) {
  QStringList what;
  for (const auto& due : subject.standing->due)
    if (due.code == subject.code)
      what << told_due(due);
  constexpr int in_a_few_days = 3;
  FieldSpec until{QStringLiteral("until"),
                  QStringLiteral("Put off until"),
                  FieldSpec::Kind::day,
                  shown(subject.today.plus_days(in_a_few_days)),
                  {},
                  {}};
  return {name_field("what", "What is due", what, what.value(0)),
          choice_field("answer", "Then", {put_off, strike}, put_off), until,
          words_field("reason", "Reason")};
}
Result<work::Done> run_later(store::Book& book, Answers& answers) {
  const auto& subject = answers.subject();
  const auto said = answers.words("what");
  work::AnswerDue wanted;
  for (const auto& due : subject.standing->due)
    if (due.code == subject.code && plain(told_due(due)) == said)
      wanted.key = due.key;
  if (text(answers.words("answer")) == put_off)
    wanted.until = answers.day("until");
  wanted.noted = {subject.today, {}, answers.words("reason")};
  return answers.then([&] { return work::answer_due(book, wanted); });
}

} // namespace

std::span<const Deed> diary_deeds() {
  static const std::array deeds{
      Deed{"check scales", "Check scales", is_cone_on_plant, scales_fields, nullptr, run_scales,
           work::cautions_of(book::Verb::check_scales)},
      Deed{"watch male cone",
           "Male cone",
           may_be_male,
           male_cone_fields,
           nullptr,
           run_male_cone,
           {work::caution::whole_stalk, work::caution::spines, work::caution::powders}},
      Deed{"collect pollen", "Collect pollen", gives_pollen, collect_fields, nullptr, run_collect,
           work::cautions_of(book::Verb::collect_pollen)},
      Deed{"test pollen", "Test pollen", is_pollen, test_fields, nullptr, run_test, {}},
      Deed{"discard pollen",
           "Throw pollen away",
           is_pollen,
           discard_fields,
           nullptr,
           run_discard,
           {}},
      Deed{"plan move", "Plan a move", is_plant, plan_move_fields, nullptr, run_plan_move,
           work::cautions_of(book::Verb::plan_move), is_plant},
      Deed{"want label",
           "Label wanted",
           has_label,
           only_day_and_note,
           nullptr,
           run_want_label,
           {},
           has_label},
      Deed{"later", "Put off or strike", is_due, later_fields, nullptr, run_later, {}, is_due}};
  return deeds;
}

} // namespace coneline::window
