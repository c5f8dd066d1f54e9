// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/benchmark/raw_book.h"

#include <algorithm>
#include <sqlite3.h>
#include <unordered_map>
#include <unordered_set>

namespace coneline::tests {

namespace {

/// What every lot holds in every state up to a day, by the query a hand would write.
std::string balances_up_to(const std::string& day) {
  return "SELECT changes.lot_id, changes.state, sum(changes.change) "
         "FROM (SELECT entry_id, to_lot AS lot_id, to_state AS state, count AS change "
         "FROM movement UNION ALL "
         "SELECT entry_id, from_lot, from_state, -count FROM movement) AS changes "
         "JOIN entry ON entry.id = changes.entry_id WHERE entry.date <= '" +
         day + "' GROUP BY changes.lot_id, changes.state HAVING sum(changes.change) <> 0";
}

std::string account(sqlite3_stmt* row, int lot, int state) {
  std::string name = std::to_string(sqlite3_column_int64(row, lot));
  name += reinterpret_cast<const char*>(sqlite3_column_text(row, state));
  return name;
}

} // namespace

void insert_all(const std::filesystem::path& path, const std::vector<RawTable>& tables) {
  RawSqlite raw(path);
  raw.run("BEGIN IMMEDIATE");
  for (const auto& table : tables)
    raw.insert(table);
  raw.run("COMMIT");
}

void enter_each(RawSqlite& raw, const std::vector<std::int64_t>& trays) {
  const std::string entry = "INSERT INTO entry (verb, date, lot_id, who, note, entered) VALUES "
                            "('inspect', '2026-06-01', ?, '', '', '2026-06-01T12:00:00Z')";
  const std::string movement =
      "INSERT INTO movement (entry_id, from_lot, from_state, to_lot, to_state, count) "
      "VALUES (last_insert_rowid(), ?, 'sown', ?, 'root', 1)";
  const std::string link = "INSERT INTO entry_link (entry_id, hash) SELECT max(id), '" +
                           std::string(64, '0') + "' FROM entry";
  for (const auto tray : trays) {
    raw.run("BEGIN IMMEDIATE");
    raw.write(entry, {tray});
    raw.write(movement, {tray, tray});
    raw.write(link, {});
    raw.run("COMMIT");
  }
}

std::size_t sum_balances(RawSqlite& raw, const std::string& day) {
  std::unordered_set<std::int64_t> later;
  raw.each("SELECT id FROM entry WHERE date > '" + day + "'",
           [&](sqlite3_stmt* row) { later.insert(sqlite3_column_int64(row, 0)); });
  std::unordered_map<std::string, std::int64_t> sums;
  raw.each("SELECT from_lot, from_state, to_lot, to_state, count, entry_id FROM movement",
           [&](sqlite3_stmt* row) {
             if (later.contains(sqlite3_column_int64(row, 5)))
               return;
             const auto count = sqlite3_column_int64(row, 4);
             sums[account(row, 0, 1)] -= count;
             sums[account(row, 2, 3)] += count;
           });
  return sums.size();
}

std::size_t raw_line(const std::filesystem::path& path, const std::string& day) {
  RawSqlite raw(path);
  raw.run("BEGIN");
  std::int64_t rows = 0;
  for (const auto* table :
       {"book",  "taxon",       "place",      "pot",         "mix",        "mix_part",
        "route", "route_step",  "plant",      "paper",       "pollen_lot", "pollen_store",
        "cone",  "purchase",    "figure",     "lot",         "due_answer", "good",
        "offer", "label_print", "plant_note", "pollen_note", "cone_look"})
    rows += raw.read(std::string("SELECT * FROM ") + table);
  rows += raw.read(balances_up_to(day));
  for (const auto* query : {
           // What came in, and when first.
           "SELECT m.to_lot, min(e.date), sum(m.count) FROM movement AS m "
           "JOIN standing_entry AS e ON e.id = m.entry_id "
           "WHERE m.from_lot <> m.to_lot OR m.from_state IN ('cone', 'bought in') "
           "GROUP BY m.to_lot",
           // Where it stands.
           "SELECT lot_id, place_id, max(date) FROM standing_entry "
           "WHERE place_id IS NOT NULL GROUP BY lot_id",
           // What was done how often, and when last.
           "SELECT verb, lot_id, cone_id, count(*), max(date) FROM standing_entry "
           "GROUP BY verb, lot_id, cone_id",
           // When a lot was last touched.
           "SELECT lot, max(date) FROM (SELECT m.to_lot AS lot, e.date AS date FROM movement AS m "
           "JOIN standing_entry AS e ON e.id = m.entry_id UNION ALL "
           "SELECT m.from_lot, e.date FROM movement AS m "
           "JOIN standing_entry AS e ON e.id = m.entry_id) GROUP BY lot",
           "SELECT lot_id, max(date) FROM sighting GROUP BY lot_id",
           // Passes and harvests of the cones.
           "SELECT e.cone_id, e.date, p.pollen_lot_id, p.millilitres FROM standing_entry AS e "
           "JOIN pollination_pollen AS p ON p.entry_id = e.id",
           "SELECT l.cone_id, min(e.date), sum(m.count) FROM movement AS m "
           "JOIN standing_entry AS e ON e.id = m.entry_id JOIN lot AS l ON l.id = m.to_lot "
           "WHERE m.from_state = 'cone' GROUP BY l.cone_id",
       })
    rows += raw.read(query);
  raw.run("COMMIT");
  return static_cast<std::size_t>(rows);
}

namespace {

struct SweptEntry {
  std::string date;
  bool stands = false;
};

/// What is known of a lot after a sweep.
struct SweptLot {
  std::unordered_map<std::string, std::int64_t> holds; ///< by state
  std::unordered_map<std::string, std::int64_t> done;  ///< times, by verb
  std::string first;
  std::string last;

  void on(const std::string& date) {
    if (first.empty() || date < first)
      first = date;
    last = std::max(last, date);
  }
};

std::string text(sqlite3_stmt* row, int column) {
  return reinterpret_cast<const char*>(sqlite3_column_text(row, column));
}

} // namespace

std::size_t swept_line(const std::filesystem::path& path) {
  RawSqlite raw(path);
  raw.run("BEGIN");
  std::unordered_set<std::int64_t> reversed;
  raw.each("SELECT reverses FROM entry WHERE reverses IS NOT NULL",
           [&](sqlite3_stmt* row) { reversed.insert(sqlite3_column_int64(row, 0)); });
  std::unordered_map<std::int64_t, SweptEntry> entries;
  std::unordered_map<std::int64_t, SweptLot> lots;
  raw.each("SELECT id, verb, date, lot_id, place_id, reverses FROM entry", [&](sqlite3_stmt* row) {
    const auto id = sqlite3_column_int64(row, 0);
    const bool stands =
        sqlite3_column_type(row, 5) == SQLITE_NULL && (reversed.empty() || !reversed.contains(id));
    const auto& entry = entries.emplace(id, SweptEntry{text(row, 2), stands}).first->second;
    if (!stands || sqlite3_column_type(row, 3) == SQLITE_NULL)
      return;
    auto& lot = lots[sqlite3_column_int64(row, 3)];
    ++lot.done[text(row, 1)];
    lot.on(entry.date);
  });
  raw.each("SELECT entry_id, from_lot, from_state, to_lot, to_state, count FROM movement",
           [&](sqlite3_stmt* row) {
             const auto& entry = entries.at(sqlite3_column_int64(row, 0));
             const auto count = sqlite3_column_int64(row, 5);
             for (const auto& [at, by] : {std::pair(1, -count), {3, count}}) {
               auto& lot = lots[sqlite3_column_int64(row, at)];
               lot.holds[text(row, at + 1)] += by;
               if (entry.stands)
                 lot.on(entry.date);
             }
           });
  raw.read("SELECT * FROM lot");
  raw.run("COMMIT");
  return lots.size();
}

} // namespace coneline::tests
