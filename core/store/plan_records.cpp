// SPDX-License-Identifier: GPL-3.0-or-later
// Offers, goods and pins, read and written.
#include "core/base/phrase.h"
#include "core/store/tables.h"
#include "core/store/writing.h"

#include <fmt/format.h>

namespace coneline::store {

book::PlanRecords Reading::plan_records() {
  book::PlanRecords records;
  tables_.ask("SELECT * FROM offer ORDER BY id").each([&](const Row& row) {
    records.offers.push_back({{row.whole("id")},
                              row.text("good"),
                              row.text("supplier"),
                              row.one_of<book::Form>("form"),
                              row.real("litres"),
                              row.real("expansion"),
                              row.whole("cents"),
                              row.whole("delivery_cents"),
                              static_cast<int>(row.whole("lead_days")),
                              row.whole("least"),
                              row.maybe_real("kilograms")});
  });
  tables_.ask("SELECT * FROM good ORDER BY id").each([&](const Row& row) {
    const auto keeps = row.maybe_whole("keeps");
    records.goods.push_back({{row.whole("id")},
                             row.text("name"),
                             row.real("on_hand"),
                             row.maybe_date("counted"),
                             row.maybe_real("room"),
                             keeps ? std::optional(static_cast<int>(*keeps)) : std::nullopt,
                             row.real("cents_a_litre_and_month")});
  });
  tables_.ask("SELECT * FROM target ORDER BY id").each([&](const Row& row) {
    records.targets.push_back({{row.whole("id")},
                               row.text("cross_name"),
                               {row.whole("taxon_id")},
                               {row.whole("pot_id")},
                               row.whole("plants"),
                               row.date("by_day"),
                               row.real("assurance")});
  });
  tables_.ask("SELECT * FROM pin ORDER BY lot_id").each([&](const Row& row) {
    records.pins.push_back(
        {book::LotId{row.whole("lot_id")}, book::PlaceId{row.whole("place_id")}});
  });
  tables_.ask("SELECT * FROM place_limits ORDER BY place_id").each([&](const Row& row) {
    records.limits.push_back({{row.whole("place_id")},
                              row.maybe_real("kilograms_a_square_metre"),
                              row.one_of<book::Frost>("frost")});
  });
  return records;
}

Result<book::OfferId> Writing::put(const book::Offer& offer) {
  if (auto sound = book::is_sound(offer); !sound)
    return refuse(sound.error());
  return book::OfferId{
      tables()
          .ask("INSERT INTO offer (good, supplier, form, litres, expansion, cents, delivery_cents, "
               "lead_days, least, kilograms) VALUES (:good, :supplier, :form, :litres, "
               ":expansion, :cents, :delivery, :lead, :least, :kilograms) "
               "ON CONFLICT (good, supplier, form, litres) DO UPDATE SET expansion = "
               "excluded.expansion, cents = excluded.cents, delivery_cents = "
               "excluded.delivery_cents, lead_days = excluded.lead_days, least = excluded.least, "
               "kilograms = excluded.kilograms RETURNING id")
          .with(offer.good)
          .with(offer.supplier)
          .with(book::word(offer.form))
          .with(offer.litres)
          .with(offer.expansion)
          .with(offer.cents)
          .with(offer.delivery_cents)
          .with(offer.lead_days)
          .with(offer.least)
          .with(offer.kilograms)
          .number()
          .value()};
}

void Writing::take_out(book::OfferId offer) {
  tables().ask("DELETE FROM offer WHERE id = :id").with(offer).run();
}

Result<book::GoodId> Writing::put(const book::Good& good) {
  if (auto sound = book::is_sound(good); !sound)
    return refuse(sound.error());
  return book::GoodId{
      tables()
          .ask("INSERT INTO good (name, on_hand, counted, room, keeps, cents_a_litre_and_month) "
               "VALUES (:name, :on_hand, :counted, :room, :keeps, :cents) ON CONFLICT (name) DO "
               "UPDATE SET on_hand = excluded.on_hand, counted = excluded.counted, room = "
               "excluded.room, keeps = excluded.keeps, cents_a_litre_and_month = "
               "excluded.cents_a_litre_and_month RETURNING id")
          .with(good.name)
          .with(good.on_hand)
          .with(good.counted)
          .with(good.room)
          .with(good.keeps)
          .with(good.cents_a_litre_and_month)
          .number()
          .value()};
}

Result<book::TargetId> Writing::put(const book::Target& target) {
  if (auto sound = book::is_sound(target); !sound)
    return refuse(sound.error());
  auto asked = tables().ask(
      target.id.stored()
          ? "UPDATE target SET cross_name = :cross, taxon_id = :taxon, pot_id = :pot, plants = "
            ":plants, by_day = :by, assurance = :assurance WHERE id = :id RETURNING id"
          : "INSERT INTO target (cross_name, taxon_id, pot_id, plants, by_day, assurance) VALUES "
            "(:cross, :taxon, :pot, :plants, :by, :assurance) RETURNING id");
  asked.with(target.cross)
      .with(target.taxon)
      .with(target.pot)
      .with(target.plants)
      .with(target.by)
      .with(target.assurance);
  if (target.id.stored())
    asked.with(target.id);
  const auto id = asked.number();
  if (!id)
    return refuse(fault("that target is not there any more", "Enter it anew."));
  return book::TargetId{*id};
}

void Writing::take_out(book::TargetId target) {
  tables().ask("DELETE FROM target WHERE id = :id").with(target).run();
}

Result<void> Writing::put(const book::PlaceLimits& limits) {
  if (auto sound = book::is_sound(limits); !sound)
    return sound;
  tables()
      .ask("INSERT INTO place_limits (place_id, kilograms_a_square_metre, frost) VALUES (:place, "
           ":load, :frost) ON CONFLICT (place_id) DO UPDATE SET kilograms_a_square_metre = "
           "excluded.kilograms_a_square_metre, frost = excluded.frost")
      .with(limits.place)
      .with(limits.kilograms_a_square_metre)
      .with(book::word(limits.frost))
      .run();
  return {};
}

Result<void> Writing::put(const book::Pin& pin) {
  const auto registers = this->registers();
  if (const auto& place = registers.place(pin.place); place.square_metres() <= 0)
    return refuse(
        fault(phrase("'{}' has no size, so that nothing can be told to stand there", place.name),
              "Measure its length and width, or pin to a bench of it."));
  tables()
      .ask("INSERT INTO pin (lot_id, place_id) VALUES (:lot, :place) ON CONFLICT (lot_id) DO "
           "UPDATE SET place_id = excluded.place_id")
      .with(pin.lot)
      .with(pin.place)
      .run();
  return {};
}

bool Writing::take_out_pin(book::LotId lot) {
  return tables()
      .ask("DELETE FROM pin WHERE lot_id = :lot RETURNING lot_id")
      .with(lot)
      .number()
      .has_value();
}

} // namespace coneline::store
