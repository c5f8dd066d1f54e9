// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/first_cone.h"

#include "core/base/phrase.h"
#include "core/book/cross.h"
#include "core/work/cone_course.h"
#include "core/work/known_or_new.h"
#include "core/work/pollen.h"
#include "core/work/pollinate.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

/// What can be told before anything is written.
Result<void> can_be(const FirstCone& wanted) {
  if (auto is = not_ahead(wanted.seen, wanted.today); !is || !wanted.pass)
    return is;
  const auto& pass = *wanted.pass;
  for (const auto day : {pass.collected, pass.day})
    if (auto is = not_ahead(day, wanted.today); !is)
      return is;
  if (pass.day < wanted.seen)
    return refuse(fault(phrase_n(days_between(pass.day, wanted.seen),
                                 "this pass is {} day before the cone was seen",
                                 "this pass is {} days before the cone was seen"),
                        "Check both days."));
  if (!pass.male.empty() && pass.male == wanted.plant)
    return refuse(fault(phrase("'{}' is named as both parents", pass.male),
                        "Name the male plant, or say that nobody knows the father."));
  return {};
}

Result<book::Plant> bearer(KnownOrNew& known, const FirstCone& wanted) {
  const auto taxon = known.taxon(wanted.taxon);
  if (!taxon)
    return refuse(taxon.error());
  auto plant = known.plant(
      {wanted.plant, wanted.taxon, book::Sex::female, book::Certainty::certain, wanted.origin});
  if (plant && plant->taxon != *taxon)
    return refuse(fault(phrase("{} is in the book as {}", book::plant_name(*plant),
                               known.registers().taxon(plant->taxon).name),
                        "Write that botanical name, or give a new plant another name."));
  return plant;
}

/// What was said of the origin of a plant that the book has already with other words. A record.
std::string unlike_origin(const book::Plant& plant, const FirstCone& wanted) {
  return wanted.origin.empty() || wanted.origin == plant.origin
             ? std::string()
             : fmt::format("origin of the plant: {}", wanted.origin);
}

Result<Done> give_pollen(store::Writing& writing, KnownOrNew& known, const Code& cone,
                         const FirstCone& wanted) {
  const auto& pass = *wanted.pass;
  PollenGiven given;
  Done collected;
  if (!pass.male.empty()) {
    // Nobody said which taxon the father is of; the seed parent's is a guess, and marked so.
    const auto male =
        known.plant({pass.male, wanted.taxon, book::Sex::male, book::Certainty::unsure});
    if (!male)
      return refuse(male.error());
    auto lot = collect_pollen(writing, {male->code, {}, {}, {pass.collected, {}, {}}});
    if (!lot)
      return lot;
    given.lot = lot->made.front();
    collected.entries = lot->entries;
  }
  auto passed = pollinate(writing, {cone, pass.method, {given}, {pass.day, {}, {}}});
  if (passed)
    passed->entries.insert(passed->entries.begin(), collected.entries.begin(),
                           collected.entries.end());
  return passed;
}

} // namespace

Result<Done> first_cone(store::Book& book, const FirstCone& wanted) {
  if (auto is = can_be(wanted); !is)
    return refuse(is.error());
  return book.write([&](store::Writing& writing) -> Result<Done> {
    KnownOrNew known(writing, {});
    const auto plant = bearer(known, wanted);
    if (!plant)
      return refuse(plant.error());
    const auto code = writing.next_code(Kind::cone);
    if (!code)
      return refuse(code.error());
    if (auto cone = writing.put(
            book::Cone{{}, *code, plant->id, wanted.seen, unlike_origin(*plant, wanted)});
        !cone)
      return refuse(cone.error());
    Done done{{}, {*code}, phrase("cone {} is in the book", code->text()), {}};
    if (wanted.pass) {
      const auto passed = give_pollen(writing, known, *code, wanted);
      if (!passed)
        return refuse(passed.error());
      done.entries = passed->entries;
    }
    const auto looked =
        check_scales(writing, {*code, wanted.scales, std::nullopt, {wanted.today, {}, {}}});
    if (!looked)
      return refuse(looked.error());
    done.entries.insert(done.entries.end(), looked->entries.begin(), looked->entries.end());
    done.cautions = looked->cautions;
    return done;
  });
}

} // namespace coneline::work
