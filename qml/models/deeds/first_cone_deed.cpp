// SPDX-License-Identifier: GPL-3.0-or-later
// The first cone of a book, asked step by step.
#include "../wording.h"
#include "common.h"
#include "core/work/cautions.h"
#include "core/work/first_cone.h"

#include <array>

namespace coneline::window {

namespace {

const QString not_yet = to_phrase("not yet");
const QString of_a_male = to_phrase("of a male plant I know");
const QString not_known = to_phrase("of a father nobody knows");

std::vector<FieldSpec> fields(const Subject& subject) {
  const auto today = shown(subject.today);
  return {
      words_field("name", "What you call it", {}, "such as Old Sentinel"),
      words_field("taxon", "Kind of plant (botanical name)", {}, "such as Cycas revoluta"),
      words_field("origin", "Where the plant came from", {}, "may stay empty"),
      day_field("seen", "Cone first seen", today),
      choice_field("scales", "The scales are", all_words<book::Scales>(), QStringLiteral("tight")),
      choice_field("pollen", "Has it had pollen?", {not_yet, of_a_male, not_known}, not_yet),
      words_field("male", "The male plant, as you call it"),
      day_field("pollinated", "Pollen put in on", today),
      day_field("collected", "Pollen collected on", {}, "empty: on the same day"),
      choice_field("method", "Put in", all_words<book::PollinationMethod>(),
                   QStringLiteral("dry"))};
}

work::FirstCone::Pass read_pass(Answers& answers, bool known) {
  work::FirstCone::Pass pass;
  if (known)
    pass.male = answers.named("male");
  pass.day = answers.day("pollinated");
  pass.collected = known ? answers.some_day("collected").value_or(pass.day) : pass.day;
  pass.method = answers.one_of<book::PollinationMethod>("method");
  return pass;
}

work::FirstCone read(Answers& answers) {
  work::FirstCone cone;
  cone.plant = answers.words("name");
  cone.taxon = answers.named("taxon");
  cone.origin = answers.words("origin");
  cone.seen = answers.day("seen");
  cone.scales = answers.one_of<book::Scales>("scales");
  cone.today = answers.subject().today;
  // A cone that is tight has had none.
  const auto pollen = text(answers.words("pollen"));
  if (cone.scales != book::Scales::tight && pollen != not_yet)
    cone.pass = read_pass(answers, pollen == of_a_male);
  return cone;
}

Result<work::Done> run(store::Book& book, Answers& answers) {
  const auto cone = read(answers);
  return answers.then([&] { return work::first_cone(book, cone); });
}

} // namespace

std::span<const Deed> first_cone_deeds() {
  static const std::array deeds{Deed{"first cone",
                                     "First cone",
                                     nullptr,
                                     fields,
                                     nullptr,
                                     run,
                                     {work::caution::spines},
                                     nullptr,
                                     [](Answers& answers) { static_cast<void>(read(answers)); }}};
  return deeds;
}

} // namespace coneline::window
