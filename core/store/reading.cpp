// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/reading.h"

#include "core/base/phrase.h"
#include "core/store/tables.h"
#include "sql.h"

#include <fmt/format.h>

namespace coneline::store {

namespace {

/// Later than any date of a book: asking with it asks for everything.
constexpr std::string_view always = "9999-12-31";

std::string up_to(std::optional<Date> day) {
  return day ? day->iso() : std::string(always);
}

book::Origin origin_of(const Row& row) {
  if (const auto cone = row.maybe_id<book::ConeId>("cone_id"))
    return *cone;
  return book::PurchaseId{row.whole("purchase_id")};
}

book::Lot lot_of(const Row& row, const Tables& tables) {
  const auto kind = book::read_word<Kind>(row.text("kind"));
  return {book::LotId{row.whole("id")},
          tables.code(kind.value(), row.whole("number")),
          origin_of(row),
          row.one_of<book::Judged>("judged"),
          row.one_of<book::SeedTest>("judged_by"),
          row.maybe_id<book::PotId>("pot_id"),
          row.maybe_id<book::MixId>("mix_id"),
          row.text("note")};
}

Balance balance_of(const Row& row) {
  return {{book::LotId{row.whole("lot_id")}, row.one_of<book::State>("state")}, row.whole("count")};
}

} // namespace

Result<void> of_this_book(const Code& code, int series) {
  if (code.series() == series)
    return {};
  return refuse(fault(phrase("{} is the label of another book: its series is {}, this book's is {}",
                             code.text(), code.series(), series),
                      "Open the book it belongs to."));
}

book::Title Reading::title() {
  book::Title title;
  tables_.ask("SELECT name, series, invented, made_on, hemisphere FROM book")
      .each([&](const Row& row) {
        title = {row.text("name"), static_cast<int>(row.whole("series")),
                 row.whole("invented") != 0, row.date("made_on"),
                 row.one_of<book::Hemisphere>("hemisphere")};
      });
  return title;
}

std::vector<book::Lot> Reading::lots() {
  std::vector<book::Lot> lots;
  tables_.ask(sql::lots).each([&](const Row& row) { lots.push_back(lot_of(row, tables_)); });
  return lots;
}

book::Lot Reading::lot(book::LotId id) {
  std::optional<book::Lot> lot;
  tables_.ask(sql::lot_by_id).with(id).each([&](const Row& row) { lot = lot_of(row, tables_); });
  if (!lot)
    throw std::out_of_range(phrase("there is no lot {}", id.value));
  return *lot;
}

Result<book::Lot> Reading::lot(const Code& code) {
  if (auto ours = of_this_book(code, tables_.series()); !ours)
    return refuse(ours.error());
  std::optional<book::Lot> lot;
  tables_.ask(sql::lot_by_code)
      .with(kind_word(code.kind()))
      .with(code.number_in_series())
      .each([&](const Row& row) { lot = lot_of(row, tables_); });
  if (!lot)
    return refuse(
        fault(phrase("there is no {} {} in this book", kind_said(code.kind()), code.text()),
              "Check the code, or the book."));
  return *lot;
}

std::vector<Balance> Reading::balances(std::optional<Date> day) {
  std::vector<Balance> balances;
  tables_.ask(sql::balances).with(up_to(day)).each([&](const Row& row) {
    balances.push_back(balance_of(row));
  });
  return balances;
}

std::vector<Balance> Reading::balances_of(book::LotId lot, std::optional<Date> day) {
  std::vector<Balance> balances;
  tables_.ask(sql::balances_of_lot).with(lot).with(lot).with(up_to(day)).each([&](const Row& row) {
    balances.push_back(balance_of(row));
  });
  return balances;
}

book::Timeline Reading::timeline(book::Account account) {
  std::vector<book::Change> changes;
  const auto state = book::word(account.state);
  tables_.ask(sql::timeline_of_account)
      .with(account.lot)
      .with(state)
      .with(account.lot)
      .with(state)
      .each([&](const Row& row) {
        changes.push_back({row.date("date"), row.whole("change")});
      });
  return book::Timeline(std::move(changes));
}

std::unordered_map<book::LotId, book::PlaceId> Reading::places(std::optional<Date> day) {
  std::unordered_map<book::LotId, book::PlaceId> places;
  tables_.ask(sql::places_of_lots).with(up_to(day)).each([&](const Row& row) {
    places[book::LotId{row.whole("lot_id")}] = book::PlaceId{row.whole("place_id")};
  });
  return places;
}

std::vector<Flow> Reading::flows(const book::Origin& origin) {
  const auto* cone = std::get_if<book::ConeId>(&origin);
  const auto* purchase = std::get_if<book::PurchaseId>(&origin);
  std::vector<Flow> flows;
  tables_.ask(sql::flows_of_origin)
      .with(cone != nullptr ? std::optional(*cone) : std::nullopt)
      .with(purchase != nullptr ? std::optional(*purchase) : std::nullopt)
      .each([&](const Row& row) {
        flows.push_back(
            {{book::LotId{row.whole("from_lot")}, row.one_of<book::State>("from_state")},
             {book::LotId{row.whole("to_lot")}, row.one_of<book::State>("to_state")},
             row.date("first"),
             row.whole("count")});
      });
  return flows;
}

std::vector<Arrival> Reading::arrivals() {
  std::vector<Arrival> arrivals;
  tables_.ask(sql::arrivals).each([&](const Row& row) {
    arrivals.push_back({book::LotId{row.whole("lot_id")}, row.date("date"), row.whole("count")});
  });
  return arrivals;
}

std::vector<TraySown> Reading::trays_sown(std::optional<Date> day) {
  std::vector<TraySown> sown;
  tables_.ask(sql::trays_sown).with(up_to(day)).each([&](const Row& row) {
    sown.push_back({book::LotId{row.whole("lot_id")}, row.date("date"), row.whole("seeds")});
  });
  return sown;
}

std::vector<TrayLook> Reading::tray_looks(std::optional<Date> day) {
  std::vector<TrayLook> looks;
  tables_.ask(sql::tray_looks).with(up_to(day)).each([&](const Row& row) {
    looks.push_back({book::LotId{row.whole("lot_id")}, row.date("date"), row.whole("germinated"),
                     row.whole("leaves"), row.whole("straight_to_leaf"), row.whole("removed")});
  });
  return looks;
}

} // namespace coneline::store
