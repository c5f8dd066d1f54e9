// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keep.h"

#include "core/base/phrase.h"
#include "core/base/quantity.h"
#include "core/book/names.h"
#include "core/work/resolve.h"
#include "core/work/stores.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

constexpr double coldest = -200;
constexpr double warmest = 40;
constexpr double hot = 32;

double from_fahrenheit(double degrees) {
  return from_units(UnitSystem::us, Quantity::celsius, degrees);
}

/// From the book's own seed of the taxon, or the taxon's after-ripening, counted from the harvest,
/// where the grower gave no dates.
void fill_in_dates(store::Reading& reading, const book::Lot& batch, book::Keeping& keeping,
                   Date day) {
  const auto* cone = std::get_if<book::ConeId>(&batch.origin);
  if (keeping.until_from || keeping.until_to || cone == nullptr)
    return;
  const auto registers = reading.registers();
  const auto taxon = registers.plant(registers.cone(*cone).plant).taxon;
  auto after = own_after_ripening(kept_batches(reading, registers, day), taxon);
  if (!after)
    after = registers.taxon(taxon).after_ripening.value;
  if (!after)
    return;
  Date ripe = day;
  for (const auto& entry : reading.entries_of(batch.id))
    if (entry.verb == book::Verb::harvest)
      ripe = std::min(ripe, entry.date);
  keeping.until_from = std::max(day, ripe.plus_part_months(after->low));
  keeping.until_to = std::max(day, ripe.plus_part_months(after->high));
}

Result<void> in_order(const book::Keeping& keeping, Date day) {
  for (const auto& end : {keeping.until_from, keeping.until_to})
    if (end && *end < day)
      return refuse(fault(phrase("kept from {} until {}, {} days earlier", day.said(), end->said(),
                                 days_between(*end, day)),
                          "Check the dates."));
  if (keeping.until_from && keeping.until_to && *keeping.until_to < *keeping.until_from)
    return refuse(fault(phrase("the end runs from {} back to {}", keeping.until_from->said(),
                               keeping.until_to->said()),
                        "Put the earlier date first."));
  return {};
}

/// A store is somewhere, and no colder than liquid nitrogen nor warmer than a hot day.
Result<void> can_be_kept_so(const std::string& store, const std::optional<double>& celsius) {
  if (book::squeezed(store).empty())
    return refuse(fault("seed put by, and not said where", "Say how it is kept: 'refrigerator'."));
  if (celsius && !(*celsius >= coldest && *celsius <= warmest))
    return refuse(fault(phrase("a store of {} °C", *celsius),
                        phrase("Give degrees Celsius, {} to {}: {} °F are {} °C.", coldest, warmest,
                               *celsius, decimal_said(from_fahrenheit(*celsius), 1))));
  return {};
}

/// What may have been read in °F, where it is warm in °C and usual in °F.
std::vector<std::string> doubts(const std::optional<double>& celsius) {
  if (!celsius || *celsius <= hot)
    return {};
  return {
      phrase("{} °C is hot for stored seed. If that was °F, it is {} °C: reverse this entry and "
             "put the seed by anew.",
             *celsius, decimal_said(from_fahrenheit(*celsius), 1))};
}

} // namespace

Result<Done> keep(store::Book& book, const Keep& wanted) {
  if (auto can = can_be_kept_so(wanted.store, wanted.celsius); !can)
    return refuse(can.error());
  return book.write([&](store::Writing& writing) -> Result<Done> {
    auto batch = lot_of_kind(writing, wanted.batch, Kind::batch);
    if (!batch)
      return refuse(batch.error());
    std::int64_t seeds = 0;
    for (const auto& balance : writing.balances_of(batch->id, wanted.noted.on))
      if (book::standing(balance.account.state) == book::Standing::on_hand)
        seeds += balance.count;
    if (seeds == 0)
      return refuse(
          fault(phrase("{} has no seed on {}", wanted.batch.text(), wanted.noted.on.said()),
                "Check code and day."));
    book::Keeping keeping{book::squeezed(wanted.store), wanted.celsius, wanted.until_from,
                          wanted.until_to};
    if (auto is = in_order(keeping, wanted.noted.on); !is)
      return refuse(is.error());
    fill_in_dates(writing, *batch, keeping, wanted.noted.on);
    auto place = place_coded(writing.registers(), wanted.place);
    if (!place)
      return refuse(place.error());
    auto entry = entry_for(book::Verb::store, wanted.noted);
    entry.lot = batch->id;
    entry.place = *place;
    entry.detail = keeping;
    auto done = entered(writing, entry,
                        phrase("{} of {} put by: {}{}", counted(seeds, "seed", "seeds"),
                               wanted.batch.text(), keeping.store,
                               keeping.until_from
                                   ? phrase(", to look at from {}", keeping.until_from->said())
                                   : std::string()));
    if (done)
      for (auto& doubt : doubts(wanted.celsius))
        done->cautions.push_back(std::move(doubt));
    return done;
  });
}

} // namespace coneline::work
