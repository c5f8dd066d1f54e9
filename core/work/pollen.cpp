// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/pollen.h"

#include "core/base/phrase.h"
#include "core/book/cross.h"
#include "core/work/cautions.h"
#include "core/work/correct.h"
#include "core/work/pollen_line.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

/// The plant, male from now on where nobody knew.
Result<book::Plant> male_plant(store::Writing& writing, const book::Registers& registers,
                               const Code& code, const Noted& noted) {
  const auto* plant = book::coded(registers.plants, code);
  if (plant == nullptr)
    return refuse(fault(phrase("there is no plant {}", code.text()), "Check the code."));
  if (plant->sex == book::Sex::female)
    return refuse(fault(phrase("{} is a female plant: it gives no pollen", code.text()),
                        "Check the code, or correct the sex."));
  if (plant->sex == book::Sex::not_known) {
    auto male = *plant;
    male.sex = book::Sex::male;
    if (auto put = correct_to(writing, registers, male, noted); !put)
      return refuse(put.error());
  }
  return *plant;
}

Result<book::PollenLot> pollen_lot(const book::Registers& registers, const Code& code) {
  if (const auto* lot = book::coded(registers.pollen_lots, code))
    return *lot;
  return refuse(fault(phrase("there is no pollen lot {}", code.text()), "Check the code."));
}

} // namespace

Result<Done> watch_male_cone(store::Book& book, const WatchMaleCone& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    auto plant = male_plant(writing, registers, wanted.plant, wanted.noted);
    if (!plant)
      return refuse(plant.error());
    auto entry = entry_for(book::Verb::watch_male_cone, wanted.noted);
    entry.detail = book::PlantNote{plant->id, wanted.state, {}};
    auto done =
        entered(writing, entry,
                phrase("male cone of {}: {}", book::plant_name(*plant), book::said(wanted.state)));
    if (done && wanted.state == book::MaleCone::removed)
      done->cautions = {phrase_of(caution::whole_stalk), phrase_of(caution::spines),
                        phrase_of(caution::powders)};
    return done;
  });
}

namespace {

Result<Done> collect_more(store::Writing& writing, const book::Registers& registers,
                          const CollectPollen& wanted) {
  auto lot = pollen_lot(registers, wanted.source);
  if (!lot)
    return refuse(lot.error());
  if (wanted.noted.on < lot->collected)
    return refuse(
        fault(phrase("{} was begun on {}, after this day", lot->code.text(), lot->collected.said()),
              "Check the day, or collect into a lot of its own."));
  if (!wanted.millilitres)
    return refuse(
        fault(phrase("no amount collected into {}", lot->code.text()), "Give the millilitres."));
  // What is collected into a lot that was thrown away would count as thrown away with it.
  if (auto is = pollen_suffices(writing, registers, *lot, wanted.noted.on, 0); !is)
    return refuse(is.error());
  auto entry = entry_for(book::Verb::collect_pollen, wanted.noted);
  entry.detail = book::PollenNote{lot->id, wanted.millilitres, {}, {}, {}};
  return entered(writing, entry, phrase("collected into {}", lot->code.text()));
}

} // namespace

Result<Done> collect_pollen(store::Writing& writing, const CollectPollen& wanted) {
  const auto registers = writing.registers();
  if (wanted.source.kind() == Kind::pollen)
    return collect_more(writing, registers, wanted);
  auto plant = male_plant(writing, registers, wanted.source, wanted.noted);
  if (!plant)
    return refuse(plant.error());
  auto code = writing.next_code(Kind::pollen);
  if (!code)
    return refuse(code.error());
  auto lot = writing.put(book::PollenLot{
      {}, *code, plant->id, wanted.noted.on, wanted.millilitres, wanted.store, wanted.lot_note});
  if (!lot)
    return refuse(lot.error());
  // The register row has the first amount, so that no number is kept twice.
  auto entry = entry_for(book::Verb::collect_pollen, wanted.noted);
  entry.detail = book::PollenNote{*lot, {}, {}, {}, {}};
  auto done = entered(writing, entry,
                      phrase("{} collected from {}", code->text(), book::plant_name(*plant)));
  if (done)
    done->made = {*code};
  return done;
}

Result<Done> collect_pollen(store::Book& book, const CollectPollen& wanted) {
  return book.write([&](store::Writing& writing) { return collect_pollen(writing, wanted); });
}

Result<Done> test_pollen(store::Book& book, const TestPollen& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    auto lot = pollen_lot(registers, wanted.lot);
    if (!lot)
      return refuse(lot.error());
    if (wanted.noted.on < lot->collected)
      return refuse(fault(phrase("{} was collected on {}, after this test", lot->code.text(),
                                 lot->collected.said()),
                          "Check the day or the pollen lot."));
    auto range = stats::wilson(wanted.germinated, wanted.counted, 0.95);
    if (!range)
      return refuse(fault(phrase("{} germinated of {} counted", wanted.germinated, wanted.counted),
                          "Count at least one grain, and no more germinated than counted."));
    auto entry = entry_for(book::Verb::test_pollen, wanted.noted);
    entry.detail =
        book::PollenNote{lot->id, {}, wanted.counted, wanted.germinated, wanted.conditions};
    return entered(writing, entry,
                   phrase("{}: {:.0f}-{:.0f} % of the grains germinate, {} of {} did",
                          lot->code.text(), 100 * range->low, 100 * range->high, wanted.germinated,
                          wanted.counted));
  });
}

Result<Done> discard_pollen(store::Book& book, const DiscardPollen& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    auto lot = pollen_lot(registers, wanted.lot);
    if (!lot)
      return refuse(lot.error());
    if (auto is = pollen_suffices(writing, registers, *lot, wanted.noted.on, wanted.millilitres);
        !is)
      return refuse(is.error());
    auto entry = entry_for(book::Verb::discard_pollen, wanted.noted);
    entry.detail = book::PollenNote{lot->id, wanted.millilitres, {}, {}, {}};
    return entered(writing, entry,
                   wanted.millilitres
                       ? phrase("{} ml of {} thrown away", *wanted.millilitres, lot->code.text())
                       : phrase("the rest of {} thrown away", lot->code.text()));
  });
}

} // namespace coneline::work
