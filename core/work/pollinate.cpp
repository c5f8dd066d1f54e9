// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/pollinate.h"

#include "core/base/phrase.h"
#include "core/work/cautions.h"
#include "core/work/cone_course.h"
#include "core/work/correct.h"
#include "core/work/pollen.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

Result<book::Cone> cone_meant(store::Writing& writing, const book::Registers& registers,
                              const Pollinate& wanted, Done& done) {
  if (wanted.target.kind() == Kind::cone) {
    if (const auto* cone = book::coded(registers.cones, wanted.target))
      return *cone;
    return refuse(fault(phrase("there is no cone {}", wanted.target.text()),
                        "Give a cone, or the female plant of a new one."));
  }
  const auto* plant = book::coded(registers.plants, wanted.target);
  if (plant == nullptr)
    return refuse(fault(phrase("there is no plant {}", wanted.target.text()),
                        "Give a cone, or the female plant of a new one."));
  if (plant->sex == book::Sex::male)
    return refuse(
        fault(phrase("{} is a male plant: it has no cone to pollinate", wanted.target.text()),
              "Give the female plant, or correct the sex."));
  // A cone that takes pollen shows what the plant is.
  if (plant->sex == book::Sex::not_known) {
    auto female = *plant;
    female.sex = book::Sex::female;
    if (auto put = correct_to(writing, registers, female, wanted.noted); !put)
      return refuse(put.error());
  }
  auto code = writing.next_code(Kind::cone);
  if (!code)
    return refuse(code.error());
  book::Cone cone{{}, *code, plant->id, wanted.noted.on, {}};
  auto id = writing.put(cone);
  if (!id)
    return refuse(id.error());
  cone.id = *id;
  done.made.push_back(*code);
  return cone;
}

Result<book::PollenUsed> pollen_used(store::Reading& reading, const book::Registers& registers,
                                     const PollenGiven& given, const Noted& noted) {
  if (!given.lot)
    return book::PollenUsed{std::nullopt, given.millilitres};
  const auto* lot = book::coded(registers.pollen_lots, *given.lot);
  if (lot == nullptr)
    return refuse(fault(phrase("there is no pollen lot {}", given.lot->text()),
                        "Enter the pollen lot first."));
  if (lot->collected > noted.on)
    return refuse(
        fault(phrase("{} was collected on {}, {} days after this pollination", given.lot->text(),
                     lot->collected.said(), days_between(noted.on, lot->collected)),
              "Check the day or the pollen lot."));
  if (registers.plant(lot->plant).sex == book::Sex::female)
    return refuse(fault(phrase("{} is said to come from a female plant", given.lot->text()),
                        "Correct the plant's sex."));
  if (auto is = pollen_suffices(reading, registers, *lot, noted.on, given.millilitres); !is)
    return refuse(is.error());
  return book::PollenUsed{lot->id, given.millilitres};
}

Result<void> not_harvested_before(store::Reading& reading, const book::Cone& cone, Date day) {
  for (const auto& entry : reading.standing_entries(book::Verb::harvest))
    if (entry.date < day &&
        (entry.cone == cone.id ||
         (entry.lot && reading.lot(*entry.lot).origin == book::Origin{cone.id})))
      return refuse(fault(phrase("{} was harvested on {}, before this pollination",
                                 cone.code.text(), entry.date.said()),
                          "Check the cone and the day."));
  return {};
}

/// The gaps close, and then it is too late.
Result<void> not_closed_before(store::Reading& reading, const book::Registers& registers,
                               const book::Cone& cone, Date day) {
  for (const auto& course : cone_courses(reading, registers))
    if (course.line.cone.id == cone.id && course.closed && *course.closed < day)
      return refuse(fault(phrase_n(days_between(*course.closed, day),
                                   "{1} closed on {2}, {0} day before this pass",
                                   "{1} closed on {2}, {0} days before this pass", cone.code.text(),
                                   course.closed->said()),
                          "Check the day, or reverse the look that found it closed."));
  return {};
}

} // namespace

Result<Done> pollinate(store::Writing& writing, const Pollinate& wanted) {
  Done done;
  const auto registers = writing.registers();
  auto cone = cone_meant(writing, registers, wanted, done);
  if (!cone)
    return refuse(cone.error());
  if (auto fresh = not_harvested_before(writing, *cone, wanted.noted.on); !fresh)
    return refuse(fresh.error());
  if (auto open = not_closed_before(writing, writing.registers(), *cone, wanted.noted.on); !open)
    return refuse(open.error());
  book::Pollination pass{wanted.method, {}};
  for (const auto& given : wanted.pollen) {
    auto used = pollen_used(writing, registers, given, wanted.noted);
    if (!used)
      return refuse(used.error());
    pass.pollen.push_back(*used);
  }
  auto entry = entry_for(book::Verb::pollinate, wanted.noted);
  entry.cone = cone->id;
  entry.detail = pass;
  auto id = writing.enter(entry);
  if (!id)
    return refuse(id.error());
  const auto all = writing.entries_of(cone->id);
  const auto earlier = std::ranges::count_if(all, [&](const book::Entry& each) {
    return each.verb == book::Verb::pollinate && !writing.reversed_by(each.id);
  });
  done.entries = {*id};
  done.told = phrase("pass {} on {}", earlier, cone->code.text());
  done.cautions = cautions_told(entry.verb);
  return done;
}

Result<Done> pollinate(store::Book& book, const Pollinate& wanted) {
  return book.write([&](store::Writing& writing) { return pollinate(writing, wanted); });
}

} // namespace coneline::work
