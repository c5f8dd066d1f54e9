// SPDX-License-Identifier: GPL-3.0-or-later
// What loggers measured, and where lots stood meanwhile.
#include "core/base/phrase.h"
#include "core/store/tables.h"
#include "core/store/writing.h"
#include "sql.h"

#include <fmt/format.h>

#include <cmath>

namespace coneline::store {

namespace {

std::vector<book::Temperature> temperatures_of(Statement asked) {
  std::vector<book::Temperature> readings;
  asked.each([&](const Row& row) {
    const auto at = Moment::parse(row.text("at"));
    if (!at)
      throw std::runtime_error(at.error().what);
    readings.push_back({book::PlaceId{row.whole("place_id")}, *at, row.real("celsius")});
  });
  return readings;
}

} // namespace

std::vector<book::Temperature> Reading::temperatures() {
  return temperatures_of(tables_.ask(sql::temperatures));
}

std::vector<book::Temperature> Reading::temperatures(book::PlaceId place) {
  auto asked = tables_.ask(sql::temperatures_of_place);
  asked.with(place);
  return temperatures_of(std::move(asked));
}

std::vector<book::PlaceId> Reading::places_measured() {
  std::vector<book::PlaceId> places;
  tables_.ask(sql::places_measured).each([&](const Row& row) {
    places.push_back({row.whole("place_id")});
  });
  return places;
}

std::vector<book::Stay> Reading::stays() {
  std::vector<book::Stay> stays;
  tables_.ask(sql::stays_of_lots).each([&](const Row& row) {
    stays.push_back(
        {book::LotId{row.whole("lot_id")}, row.date("date"), book::PlaceId{row.whole("place_id")}});
  });
  return stays;
}

Result<void> Writing::add(const book::Temperature& reading) {
  if (!std::isfinite(reading.celsius))
    return refuse(fault(phrase("a temperature of {}", reading.celsius), "Give a number."));
  const auto at = reading.at.iso();
  if (tables()
          .ask("SELECT id FROM temperature WHERE place_id = :place AND at = :at")
          .with(reading.place)
          .with(at)
          .number())
    return refuse(fault(phrase("the place has a reading of {} already", at),
                        "A place has one reading a moment."));
  tables()
      .ask("INSERT INTO temperature (place_id, at, celsius) VALUES (:place, :at, :celsius)")
      .with(reading.place)
      .with(at)
      .with(reading.celsius)
      .run();
  return {};
}

std::int64_t Writing::take_out_temperatures(book::PlaceId place, Date first, Date last) {
  const auto from = Moment{first, 0}.iso();
  const auto to = Moment{last, 86399}.iso();
  const auto count = tables()
                         .ask("SELECT count(*) FROM temperature WHERE place_id = :place AND "
                              "at BETWEEN :from AND :to")
                         .with(place)
                         .with(from)
                         .with(to)
                         .number();
  tables()
      .ask("DELETE FROM temperature WHERE place_id = :place AND at BETWEEN :from AND :to")
      .with(place)
      .with(from)
      .with(to)
      .run();
  return count.value_or(0);
}

} // namespace coneline::store
