// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/trays_done.h"

#include "core/base/money.h"
#include "core/base/phrase.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::work {

namespace {

Result<void> sound(const DoneHabits& habits) {
  if (!(habits.done_below > 0 && habits.done_below < 1))
    return refuse(usage_fault(phrase("done below {}", habits.done_below),
                              "Write a chance between 0 and 1, such as 0.05."));
  if (habits.cents_a_square_metre_month && *habits.cents_a_square_metre_month < 0)
    return refuse(usage_fault("a price below 0", "Write what a square metre costs a month."));
  return {};
}

std::string chance_text(double chance) {
  if (chance < 0.001)
    return phrase("less than 1 in 1000");
  return chance > 0.995 ? phrase("all but certain") : phrase("{:.2g} in 100", 100 * chance);
}

std::string count_text(const stats::CountRange& seeds) {
  return seeds.low == seeds.high ? std::to_string(seeds.low)
                                 : phrase("{} to {}", seeds.low, seeds.high);
}

std::string told_of(const TrayDone& tray) {
  const auto& coming = tray.tray.coming;
  const auto chance = chance_text(coming.chance_of_one);
  const auto month = count_text(coming.within.front().seeds);
  auto text =
      tray.done
          ? phrase("Done. Chance of even one more: {}. Another month brings {}", chance, month)
          : phrase("Chance of even one more: {}. Another month brings {}", chance, month);
  if (tray.cents_a_month)
    text += phrase(" and costs {:.2f} of bench", *tray.cents_a_month / 100);
  text += ".";
  if (tray.done && tray.seedlings > 0)
    text += phrase_n(tray.seedlings, " {} seedling still stands in it: pot it first.",
                     " {} seedlings still stand in it: pot them first.");
  // Reckoning this for the list of what is due would take longer than all the list.
  if (tray.done)
    text += phrase(" Looks stay due until it is emptied.");
  return text;
}

/// Where trays stand, how many seedlings are in them, and how large they are.
class Standing {
 public:
  Standing(store::Reading& reading, Date as_of)
      : registers_(reading.registers()), places_(reading.places(as_of)) {
    for (const auto& balance : reading.balances(as_of))
      if (balance.account.state == book::State::root || balance.account.state == book::State::leaf)
        seedlings_[balance.account.lot] += balance.count;
  }

  void fill(TrayDone& tray, const DoneHabits& habits) const {
    const auto& lot = tray.tray.seen.lot;
    if (const auto place = places_.find(lot.id); place != places_.end())
      tray.place = place->second;
    if (const auto held = seedlings_.find(lot.id); held != seedlings_.end())
      tray.seedlings = held->second;
    if (lot.pot)
      tray.square_metres = registers_.pot(*lot.pot).square_metres();
    if (!habits.cents_a_square_metre_month || tray.square_metres == 0)
      return;
    tray.cents_a_month =
        tray.square_metres * static_cast<double>(*habits.cents_a_square_metre_month);
    constexpr double next_to_none = 0.05;
    if (const double mean = tray.tray.coming.within.front().seeds.mean; mean > next_to_none)
      tray.cents_a_seedling = *tray.cents_a_month / mean;
  }

 private:
  book::Registers registers_;
  std::unordered_map<book::LotId, book::PlaceId> places_;
  std::unordered_map<book::LotId, std::int64_t> seedlings_;
};

} // namespace

DoneHabits done_habits(const book::Registers& registers) {
  DoneHabits habits;
  if (const auto* below = book::named(registers.figures, book::figure::done_below);
      below != nullptr && below->value > 0 && below->value < 1)
    habits.done_below = below->value;
  if (const auto* price = book::named(registers.figures, book::figure::bench_price))
    // One that cannot be is refused where it is used.
    habits.cents_a_square_metre_month = cents_of(price->value).value_or(-1);
  return habits;
}

Result<std::vector<TrayDone>> trays_done(store::Reading& reading, Date as_of,
                                         const DoneHabits& habits,
                                         const std::optional<Code>& only) {
  if (const auto good = sound(habits); !good)
    return refuse(good.error());
  const auto book = coming(reading, as_of, {habits.confidence, {days_of_another_month}}, only);
  if (!book)
    return refuse(book.error());
  const Standing standing(reading, as_of);
  std::vector<TrayDone> all;
  for (const auto& cross : book->crosses)
    for (const auto& waiting : cross.trays) {
      if (only && waiting.seen.lot.code != *only)
        continue;
      TrayDone tray;
      tray.tray = waiting;
      tray.cross = cross.name;
      standing.fill(tray, habits);
      tray.done = waiting.coming.chance_of_one < habits.done_below;
      tray.told = told_of(tray);
      all.push_back(std::move(tray));
    }
  std::ranges::stable_sort(all, {},
                           [](const TrayDone& tray) { return tray.tray.coming.chance_of_one; });
  return all;
}

} // namespace coneline::work
