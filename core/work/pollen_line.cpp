// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/pollen_line.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace coneline::work {

namespace {

/// Sums of decimals such as 0.1 + 0.2 must not make a lot run out.
constexpr double hair = 1e-9;

const book::PollenStore* store_of(const book::Registers& registers, const std::string& said) {
  const book::PollenStore* found = nullptr;
  for (const auto& store : registers.pollen_stores)
    if (said.starts_with(store.name) && (!found || store.name.size() > found->name.size()))
      found = &store;
  return found;
}

/// The program itself wrote these into every book, in English; what a grower wrote stays as it is.
std::string source_said(const std::string& source) {
  static constexpr std::array our_own{
      to_phrase("common practice, no source: not frozen, better fresh"),
      to_phrase("common practice, no source: sources disagree about freezing")};
  return std::ranges::find(our_own, source) == our_own.end() ? source : phrase_of(source);
}

void read_notes(OneReading& once, book::Verb verb, PollenSteps& steps) {
  for (const auto& entry : once.standing(verb)) {
    const auto& note = std::get<book::PollenNote>(entry.detail);
    steps.of[note.lot].push_back({entry.date, verb, note.millilitres, note});
  }
}

} // namespace

PollenSteps pollen_steps(OneReading& once) {
  PollenSteps steps;
  for (const auto verb :
       {book::Verb::collect_pollen, book::Verb::discard_pollen, book::Verb::test_pollen})
    read_notes(once, verb, steps);
  for (const auto& entry : once.standing(book::Verb::pollinate))
    for (const auto& used : std::get<book::Pollination>(entry.detail).pollen)
      if (used.lot)
        steps.of[*used.lot].push_back(
            {entry.date, book::Verb::pollinate, used.millilitres, {*used.lot, {}, {}, {}, {}}});
  for (auto& [lot, list] : steps.of)
    std::ranges::stable_sort(list, {}, &PollenStep::date);
  // A lot whose first collection was made as an entry and reversed holds nothing.
  for (const auto& entry : once.sweep().reversed(book::Verb::collect_pollen)) {
    const auto& note = std::get<book::PollenNote>(entry.detail);
    const auto& lot = once.registers().pollen_lot(note.lot);
    if (!note.millilitres && entry.date == lot.collected)
      steps.taken_back[note.lot] = entry.date;
  }
  return steps;
}

std::vector<PollenLine> pollen_lines(store::Reading& reading, const book::Registers& registers) {
  OneReading once(reading, registers);
  return pollen_lines(once);
}

std::vector<PollenLine> pollen_lines(OneReading& once) {
  const auto& registers = once.registers();
  auto steps = pollen_steps(once);
  std::vector<PollenLine> lines;
  for (const auto& lot : registers.pollen_lots) {
    PollenLine line;
    line.lot = lot;
    line.collected = lot.millilitres;
    if (const auto taken = steps.taken_back.find(lot.id); taken != steps.taken_back.end())
      line.gone = taken->second;
    for (const auto& step : steps.of[lot.id]) {
      const auto amount = step.millilitres.value_or(0);
      if (step.verb == book::Verb::collect_pollen && step.millilitres)
        line.collected = line.collected.value_or(0) + amount;
      if (step.verb == book::Verb::pollinate) {
        ++line.passes;
        line.passes_unmeasured += step.millilitres ? 0 : 1;
        line.used += amount;
      }
      if (step.verb == book::Verb::discard_pollen) {
        line.discarded += amount;
        if (!step.millilitres)
          line.gone = step.date;
      }
      if (step.verb == book::Verb::test_pollen)
        line.tests.push_back(
            {step.date, *step.note.counted, *step.note.germinated,
             stats::wilson(*step.note.germinated, *step.note.counted, 0.95).value(),
             step.note.conditions});
    }
    if (line.collected) {
      const auto left = *line.collected - line.used - line.discarded;
      line.left = line.gone || left < hair ? 0 : left;
    }
    if (const auto* store = store_of(registers, lot.store)) {
      line.years = store->years.value;
      line.years_source = source_said(store->years.source);
    }
    if (line.years) {
      line.old_from = lot.collected.plus_part_months(12 * line.years->low);
      line.old_to = lot.collected.plus_part_months(12 * line.years->high);
    }
    lines.push_back(std::move(line));
  }
  std::ranges::stable_sort(lines, [](const PollenLine& a, const PollenLine& b) {
    const auto by = [](const PollenLine& line) {
      return std::tuple(!line.there(), line.old_from.value_or(line.lot.collected),
                        line.lot.collected);
    };
    return by(a) < by(b);
  });
  return lines;
}

Result<void> pollen_suffices(store::Reading& reading, const book::Registers& registers,
                             const book::PollenLot& lot, Date day,
                             std::optional<double> millilitres) {
  const auto& code = lot.code.text();
  if (day < lot.collected)
    return refuse(fault(phrase("{} was collected on {}, {} days after this", code,
                               lot.collected.said(), days_between(day, lot.collected)),
                        "Check the day or the pollen lot."));
  OneReading once(reading, registers);
  auto steps = pollen_steps(once);
  if (steps.taken_back.contains(lot.id))
    return refuse(
        fault(phrase("the collection of {} was taken back", code), "Name another pollen lot."));
  std::map<Date, double> by_day{{lot.collected, lot.millilitres.value_or(0)}};
  bool measured = lot.millilitres.has_value();
  for (const auto& step : steps.of[lot.id]) {
    if (step.verb == book::Verb::discard_pollen && !step.millilitres && step.date <= day)
      return refuse(fault(phrase("{} was thrown away on {}", code, step.date.said()),
                          "Name another pollen lot, or reverse that entry."));
    if (step.verb == book::Verb::collect_pollen && step.millilitres)
      measured = true;
    if (step.millilitres)
      by_day[step.date] +=
          step.verb == book::Verb::collect_pollen ? *step.millilitres : -*step.millilitres;
  }
  if (!measured)
    return {};
  double sum = 0;
  double before = 0; // what is there on the day
  double least = 0;  // the least there is from that day on
  bool reached = false;
  for (const auto& [date, amount] : by_day) {
    if (date > day && !reached) {
      least = before = sum;
      reached = true;
    }
    sum += amount;
    least = reached ? std::min(least, sum) : sum;
    before = reached ? before : sum;
  }
  // An amount nobody measured still needs something there.
  if (least + hair < millilitres.value_or(2 * hair))
    return refuse(
        fault(phrase("{} has {:.3g} ml on {}, {}", code, least < hair ? 0 : least, day.said(),
                     millilitres ? phrase("{:.3g} ml less than wanted", *millilitres - least)
                                 : phrase("it ran out")),
              "Name another pollen lot, or enter the collection that is missing."));
  return {};
}

namespace {

bool collects(const PollenStep& step) {
  return step.verb == book::Verb::collect_pollen;
}

/// The register row has the amount of the first collection, so that its entry has none.
bool is_first(const PollenStep& step, const book::PollenLot& lot) {
  return collects(step) && !step.millilitres && step.date == lot.collected;
}

/// Without its first collection a lot is gone, with what was added to it.
Result<void> was_not_used(const book::PollenLot& lot, const std::vector<PollenStep>& steps) {
  for (const auto& step : steps)
    if (step.verb == book::Verb::pollinate || step.verb == book::Verb::discard_pollen)
      return refuse(fault(phrase("pollen of {} was used on {}", lot.code.text(), step.date.said()),
                          "Reverse that entry first."));
  return {};
}

/// Whether what was used is covered on every day by what was collected.
Result<void> uses_are_covered(const book::PollenLot& lot, const std::vector<PollenStep>& steps) {
  struct OfDay {
    double came = 0;
    double went = 0;
    bool unmeasured = false; ///< a pass without an amount still needs something there
  };
  std::map<Date, OfDay> days;
  days[lot.collected].came = lot.millilitres.value_or(0);
  for (const auto& step : steps) {
    auto& of = days[step.date];
    (collects(step) ? of.came : of.went) += step.millilitres.value_or(0);
    of.unmeasured |= step.verb == book::Verb::pollinate && !step.millilitres;
  }
  double left = 0;
  for (const auto& [date, of] : days) {
    left += of.came;
    const auto missing = of.went - left;
    if (missing > hair || (of.unmeasured && left < hair))
      return refuse(fault(missing > hair
                              ? phrase("without this collection {} has {:.3g} ml too little on {}",
                                       lot.code.text(), missing, date.said())
                              : phrase("without this collection nothing of {} is left on {}, when "
                                       "some was used",
                                       lot.code.text(), date.said()),
                          "Reverse first what used it."));
    left -= of.went;
  }
  return {};
}

} // namespace

Result<void> collection_is_not_needed(store::Reading& reading, const book::Registers& registers,
                                      const book::Entry& collection) {
  const auto& note = std::get<book::PollenNote>(collection.detail);
  const auto& lot = registers.pollen_lot(note.lot);
  OneReading once(reading, registers);
  auto steps = pollen_steps(once).of[lot.id];
  const auto own = std::ranges::find_if(steps, [&](const PollenStep& step) {
    return collects(step) && step.date == collection.date && step.millilitres == note.millilitres;
  });
  if (own != steps.end() && is_first(*own, lot))
    return was_not_used(lot, steps);
  if (own != steps.end())
    steps.erase(own);
  const bool measured = lot.millilitres || std::ranges::any_of(steps, [](const PollenStep& step) {
                          return collects(step) && step.millilitres;
                        });
  return measured ? uses_are_covered(lot, steps) : Result<void>{};
}

} // namespace coneline::work
