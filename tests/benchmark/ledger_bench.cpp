// SPDX-License-Identifier: GPL-3.0-or-later
// A book of many movements against the bare engine with the same rows, keys and indexes: taking
// them in, the balances of all lots, opening it and showing the line. Prints one line of ratios for
// each.
//
//   bench_ledger [--movements=1000000] [--benchmark_…]
#include "core/store/book.h"
#include "core/work/overview.h"
#include "tests/benchmark/raw_sqlite.h"
#include "tests/core/store/scratch.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <map>

namespace coneline::tests {
namespace {

namespace fs = std::filesystem;

constexpr int movements_of_a_tray = 40;
constexpr int trays_of_a_batch = 16;

constexpr const char* balances_sql =
    "SELECT lot_id, state, sum(change) AS count FROM (SELECT to_lot AS lot_id, to_state AS state, "
    "count AS change FROM movement UNION ALL SELECT from_lot, from_state, -count FROM movement) AS "
    "changes GROUP BY lot_id, state HAVING sum(change) <> 0 ORDER BY lot_id, state";

Date first_day() {
  return Date::of(2024, 1, 1).value();
}

book::LotId new_lot(store::Writing& writing, Kind kind, book::ConeId cone, book::PotId pot) {
  book::Lot lot;
  lot.code = writing.next_code(kind).value();
  lot.origin = cone;
  if (kind == Kind::tray)
    lot.pot = pot;
  return writing.add(lot).value();
}

book::Entry entry_of(book::Verb verb, int day, book::LotId lot, book::Account from,
                     book::Account to, int count) {
  book::Entry entry;
  entry.verb = verb;
  entry.date = first_day().plus_days(day);
  entry.lot = lot;
  entry.entered = "2026-01-01T10:00:00Z";
  entry.movements = {{from, to, Count::sure(count)}};
  return entry;
}

/// Lots without anything in them, and the entries that will fill them, in the order of their days.
std::vector<book::Entry> prepare(store::Writing& writing, int movements) {
  using enum book::State;
  const auto taxon = writing.put(book::Taxon{{}, "Cycas revoluta", {}, {}, {}, {}, {}, {}}).value();
  const auto pot =
      writing.put(book::Pot{{}, "tray", 5, book::Shape::rectangular, 400, 300, 50, "invented"})
          .value();
  std::vector<book::Entry> entries;
  book::ConeId cone;
  book::LotId batch;
  const int trays = movements / movements_of_a_tray;
  for (int n = 0; n < trays; ++n) {
    if (n % trays_of_a_batch == 0) {
      book::Plant plant;
      plant.code = writing.next_code(Kind::plant).value();
      plant.taxon = taxon;
      plant.sex = book::Sex::female;
      const auto mother = writing.put(plant).value();
      cone = writing.put(book::Cone{{}, writing.next_code(Kind::cone).value(), mother, {}, ""})
                 .value();
      batch = new_lot(writing, Kind::batch, cone, pot);
      entries.push_back(entry_of(book::Verb::harvest, -30, batch, {batch, book::State::cone},
                                 {batch, unsorted}, 4000));
    }
    const auto tray = new_lot(writing, Kind::tray, cone, pot);
    entries.push_back(entry_of(book::Verb::sow, 0, tray, {batch, unsorted}, {tray, sown}, 100));
    for (int look = 1; look < movements_of_a_tray; ++look)
      entries.push_back(
          entry_of(book::Verb::inspect, 7 * look, tray, {tray, sown}, {tray, root}, 1 + look % 2));
  }
  std::ranges::stable_sort(entries, {}, &book::Entry::date);
  return entries;
}

store::Book new_book(const fs::path& path, int movements, std::vector<book::Entry>& entries) {
  auto book = store::Book::make(path, {"Large book", 17, true, first_day()}).value();
  entries = book.write([&](store::Writing& writing) -> Result<std::vector<book::Entry>> {
                  return prepare(writing, movements);
                })
                .value();
  return book;
}

/// What the runs share: a book without entries, the rows of one with them, and both files.
struct Books {
  explicit Books(int count) : movements(count) {
    std::vector<book::Entry> entries;
    { auto made = new_book(empty, movements, entries); }
    all_entries = std::move(entries);
    fs::copy_file(empty, full);
    auto book = store::Book::open(full, store::Access::write, store::Copying::never).value();
    take_in(book);
  }
  void take_in(store::Book& book) const {
    book.write([&](store::Writing& writing) -> Result<int> {
          for (const auto& entry : all_entries)
            static_cast<void>(writing.enter(entry).value());
          return 0;
        })
        .value();
  }
  int movements;
  Scratch scratch;
  fs::path empty = scratch.at("empty.coneline");
  fs::path full = scratch.at("full.coneline");
  std::vector<book::Entry> all_entries;
};

void fresh(const fs::path& from, const fs::path& to) {
  for (const auto* end : {"", "-wal", "-shm"})
    fs::remove(to.string() + end);
  fs::copy_file(from, to);
}

void raw_take_in(benchmark::State& state, const Books& books) {
  RawSqlite::Rows entries;
  RawSqlite::Rows movements;
  RawSqlite::Rows links;
  {
    RawSqlite full(books.full);
    entries = full.all("SELECT * FROM entry ORDER BY id");
    movements = full.all("SELECT * FROM movement ORDER BY id");
    links = full.all("SELECT * FROM entry_link ORDER BY entry_id");
  }
  const auto path = books.scratch.at("raw.coneline");
  for (auto round : state) {
    state.PauseTiming();
    fresh(books.empty, path);
    RawSqlite raw(path);
    raw.run("DROP TRIGGER movement_one_origin"); // a check of the book's own
    state.ResumeTiming();
    raw.run("BEGIN IMMEDIATE");
    raw.insert("entry", entries);
    raw.insert("movement", movements);
    raw.insert("entry_link", links);
    raw.run("COMMIT");
  }
}

void take_in(benchmark::State& state, const Books& books) {
  const auto path = books.scratch.at("taken.coneline");
  for (auto round : state) {
    state.PauseTiming();
    fresh(books.empty, path);
    auto book = store::Book::open(path, store::Access::write, store::Copying::never).value();
    state.ResumeTiming();
    books.take_in(book);
  }
}

void raw_balances(benchmark::State& state, const Books& books) {
  RawSqlite raw(books.full);
  for (auto round : state)
    benchmark::DoNotOptimize(raw.all(balances_sql));
}

void balances(benchmark::State& state, const Books& books) {
  auto book = store::Book::open(books.full, store::Access::read).value();
  for (auto round : state)
    benchmark::DoNotOptimize(book.read([](store::Reading& reading) { return reading.balances(); }));
}

/// The rows that the line needs: registers, lots, balances, places, what came in, the harvests.
void raw_line(benchmark::State& state, const Books& books) {
  for (auto round : state) {
    RawSqlite raw(books.full);
    for (const auto* sql :
         {"SELECT * FROM taxon", "SELECT * FROM place", "SELECT * FROM pot", "SELECT * FROM plant",
          "SELECT * FROM cone", "SELECT * FROM pollen_lot", "SELECT * FROM lot ORDER BY id",
          balances_sql,
          "SELECT to_lot, date, sum(count) FROM movement JOIN standing_entry AS entry ON entry.id "
          "= "
          "entry_id WHERE from_lot <> to_lot OR from_state IN ('cone', 'bought in') GROUP BY "
          "to_lot, date",
          "SELECT lot_id, place_id FROM standing_entry WHERE place_id IS NOT NULL",
          "SELECT * FROM standing_entry JOIN movement ON entry_id = standing_entry.id WHERE verb = "
          "'harvest'"})
      benchmark::DoNotOptimize(raw.all(sql));
  }
}

void line(benchmark::State& state, const Books& books) {
  for (auto round : state) {
    auto book = store::Book::open(books.full, store::Access::read).value();
    benchmark::DoNotOptimize(book.read([](store::Reading& reading) {
      const auto registers = reading.registers();
      return std::pair(work::lot_lines(reading, registers), work::on_hand(reading, registers));
    }));
  }
}

struct Ratio {
  const char* what;
  const char* part;
  const char* raw;
  double at_most;
};
constexpr std::array ratios{
    Ratio{"movements taken in", "take in", "raw take in", 3},
    Ratio{"balances of all lots", "balances", "raw balances", 2},
    Ratio{"opening and showing the line", "line", "raw line", 3},
};

class Times : public benchmark::ConsoleReporter {
 public:
  void ReportRuns(const std::vector<Run>& runs) override {
    ConsoleReporter::ReportRuns(runs);
    for (const auto& run : runs)
      seconds_[run.run_name.function_name] =
          run.cpu_accumulated_time / static_cast<double>(run.iterations);
  }
  [[nodiscard]] std::string text(int movements) const {
    std::string text;
    for (const auto& ratio : ratios)
      if (seconds_.contains(ratio.part) && seconds_.contains(ratio.raw))
        text += fmt::format("{:<30} {:>9} {:>10.4f} s {:>10.4f} s {:>6.2f} x   at most {:g} x\n",
                            ratio.what, movements, seconds_.at(ratio.part), seconds_.at(ratio.raw),
                            seconds_.at(ratio.part) / seconds_.at(ratio.raw), ratio.at_most);
    return text;
  }

 private:
  std::map<std::string, double> seconds_;
};

int run(int count, char** arguments) {
  int movements = 1'000'000;
  constexpr const char* option = "--movements=";
  for (int i = 1; i < count; ++i)
    if (std::strncmp(arguments[i], option, std::strlen(option)) == 0) {
      movements = std::atoi(arguments[i] + std::strlen(option));
      std::swap(arguments[i], arguments[--count]);
      break;
    }
  const Books books(movements);
  benchmark::Initialize(&count, arguments);
  const auto once = [&](const char* name, void (*what)(benchmark::State&, const Books&)) {
    benchmark::RegisterBenchmark(name, what, std::cref(books))->Unit(benchmark::kMillisecond);
  };
  once("line", line);
  once("raw line", raw_line);
  once("balances", balances);
  once("raw balances", raw_balances);
  once("take in", take_in);
  once("raw take in", raw_take_in);
  Times times;
  benchmark::RunSpecifiedBenchmarks(&times);
  std::fputs(("\n" + times.text(movements)).c_str(), stdout);
  return 0;
}

} // namespace
} // namespace coneline::tests

int main(int count, char** arguments) {
  return coneline::tests::run(count, arguments);
}
