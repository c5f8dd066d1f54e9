// SPDX-License-Identifier: GPL-3.0-or-later
// Rounds and sightings, read and written.
#include "core/base/phrase.h"
#include "core/store/tables.h"
#include "core/store/writing.h"
#include "sql.h"

#include <fmt/format.h>

namespace coneline::store {

namespace {

constexpr std::string_view always = "9999-12-31";

book::Round round_of(const Row& row) {
  return {book::RoundId{row.whole("id")},
          row.date("began"),
          row.maybe_id<book::PlaceId>("place_id"),
          row.text("who"),
          row.maybe_id<book::PlaceId>("bench_id"),
          row.maybe_id<book::LotId>("in_hand_id"),
          {row.whole("roots"), row.whole("leaves"), row.whole("dead")},
          row.maybe_date("ended"),
          {}};
}

Result<void> sound(const book::Round& round) {
  const auto& [roots, leaves, dead] = round.tapped;
  if (roots < 0 || leaves < 0 || dead < 0)
    return refuse(fault("a count below 0", "Give 0 or more."));
  if (!round.in_hand && !round.tapped.none())
    return refuse(fault("counts without a tray in the hand", "Scan the tray first."));
  if (round.ended && round.in_hand)
    return refuse(fault("a round that has ended with a tray still in the hand",
                        "Enter the look at it, or put it down."));
  if (round.ended && *round.ended < round.began)
    return refuse(
        fault(phrase("a round that began on {} and ended on {}, {} days before", round.began.said(),
                     round.ended->said(), days_between(*round.ended, round.began)),
              "Check the day."));
  return {};
}

} // namespace

std::vector<book::Round> Reading::rounds() {
  std::vector<book::Round> rounds;
  std::unordered_map<book::RoundId, std::size_t> at;
  tables_.ask(sql::rounds).each([&](const Row& row) {
    rounds.push_back(round_of(row));
    at[rounds.back().id] = rounds.size() - 1;
  });
  tables_.ask(sql::round_stops).each([&](const Row& row) {
    rounds[at.at(book::RoundId{row.whole("round_id")})].stops.push_back(
        {book::LotId{row.whole("lot_id")}, row.maybe_id<book::PlaceId>("place_id")});
  });
  return rounds;
}

std::vector<book::RoundEntry> Reading::round_entries() {
  std::vector<book::RoundEntry> entries;
  tables_.ask(sql::round_entries).each([&](const Row& row) {
    entries.push_back({book::EntryId{row.whole("entry_id")}, book::RoundId{row.whole("round_id")}});
  });
  return entries;
}

std::vector<book::Sighting> Reading::sightings() {
  std::vector<book::Sighting> sightings;
  tables_.ask(sql::sightings).each([&](const Row& row) {
    sightings.push_back({book::SightingId{row.whole("id")}, book::LotId{row.whole("lot_id")},
                         row.maybe_id<book::PlaceId>("place_id"), row.date("date"),
                         row.one_of<book::SeenBy>("how"), row.text("source"),
                         row.maybe_id<book::RoundId>("round_id")});
  });
  return sightings;
}

std::unordered_map<book::LotId, Date> Reading::last_seen(std::optional<Date> day) {
  std::unordered_map<book::LotId, Date> seen;
  tables_.ask(sql::last_seen)
      .with(day ? day->iso() : std::string(always))
      .each([&](const Row& row) { seen[book::LotId{row.whole("lot_id")}] = row.date("date"); });
  return seen;
}

Result<book::RoundId> Writing::put(const book::Round& round) {
  if (auto is = sound(round); !is)
    return refuse(is.error());
  const bool stands = round.id.stored();
  auto asked = tables().ask(
      stands ? "UPDATE round SET began = :began, place_id = :place, who = :who, bench_id = "
               ":bench, in_hand_id = :hand, roots = :roots, leaves = :leaves, dead = :dead, "
               "ended = :ended WHERE id = :id RETURNING id"
             : "INSERT INTO round (began, place_id, who, bench_id, in_hand_id, roots, "
               "leaves, dead, ended) VALUES (:began, :place, :who, :bench, :hand, :roots, "
               ":leaves, :dead, :ended) RETURNING id");
  asked.with(round.began)
      .with(round.place)
      .with(round.who)
      .with(round.bench)
      .with(round.in_hand)
      .with(round.tapped.roots)
      .with(round.tapped.leaves)
      .with(round.tapped.dead)
      .with(round.ended);
  if (stands)
    asked.with(round.id);
  const auto written = asked.number();
  if (!written)
    return refuse(book_fault(phrase("there is no round {}", round.id.value)));
  if (!stands)
    for (int position = 0; const auto& stop : round.stops)
      tables()
          .ask("INSERT INTO round_stop (round_id, position, lot_id, place_id) VALUES (:round, "
               ":position, :lot, :place)")
          .with(*written)
          .with(++position)
          .with(stop.lot)
          .with(stop.place)
          .run();
  return book::RoundId{*written};
}

Result<void> Writing::add(const book::RoundEntry& made) {
  tables()
      .ask("INSERT INTO round_entry (entry_id, round_id) VALUES (:entry, :round)")
      .with(made.entry)
      .with(made.round)
      .run();
  return {};
}

Result<bool> Writing::see(const book::Sighting& sighting) {
  const auto how = book::word(sighting.how);
  const auto there = tables()
                         .ask(sql::same_sighting)
                         .with(sighting.lot)
                         .with(sighting.place ? sighting.place->value : 0)
                         .with(sighting.date)
                         .with(how)
                         .with(sighting.source)
                         .with(sighting.round ? sighting.round->value : 0)
                         .number();
  if (there)
    return false;
  tables()
      .ask("INSERT INTO sighting (lot_id, place_id, date, how, source, round_id) VALUES (:lot, "
           ":place, :date, :how, :source, :round)")
      .with(sighting.lot)
      .with(sighting.place)
      .with(sighting.date)
      .with(how)
      .with(sighting.source)
      .with(sighting.round)
      .run();
  return true;
}

} // namespace coneline::store
