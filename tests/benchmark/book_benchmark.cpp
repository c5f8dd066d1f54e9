// SPDX-License-Identifier: GPL-3.0-or-later
// A book of many movements beside the engine alone: taking them in, what every lot holds, opening
// the book and showing the line. At each size, so that growth shows; the largest makes the table.
//
//   benchmark_book [MOVEMENTS ...]     1000 10000 100000 1000000 when none is named
//   benchmark_book --open BOOK         opens it, shows the line, says how much memory that took
#include "core/base/number.h"
#include "core/exchange/export_season.h"
#include "core/exchange/import_season.h"
#include "core/work/one_reading.h"
#include "tests/benchmark/large_book_file.h"
#include "tests/benchmark/ratio.h"
#include "tests/benchmark/raw_book.h"
#include "tests/core/store/scratch.h"

#include <fmt/format.h>

#include <array>
#include <cstdio>
#include <cstring>
#include <fstream>

namespace coneline::tests {
namespace {

constexpr std::int64_t one_million = 1'000'000;
constexpr double most_megabytes = 200;
constexpr std::size_t few_entries = 20;
constexpr std::int64_t most_in_a_folder = 100'000; // all of a folder is in memory at once

const Date today = Date::of(2024, 3, 1).value();
const Date after_all = Date::of(2026, 6, 1).value(); ///< every entry has been made by then

/// As many trays as hold so many movements: one for the sowing and each look that found something,
/// and one for each harvest.
std::vector<stats::Tray> trays_with(std::int64_t movements) {
  constexpr std::int64_t least_of_a_tray = 8;
  auto trays = large_counts(static_cast<int>(movements / least_of_a_tray) + 1);
  std::int64_t sum = 0;
  std::size_t count = 0;
  for (; count < trays.size() && sum < movements; ++count) {
    sum += count % trays_of_a_cross == 0 ? 2 : 1;
    for (const auto& look : trays[count].looks)
      sum += look.germinated > 0 ? 1 : 0;
  }
  trays.resize(count);
  return trays;
}

/// What the window reads when it opens a book.
std::size_t show_line(store::Reading& reading) {
  const auto registers = reading.registers();
  work::OneReading once(reading, registers, today);
  const auto due = work::due_on(once);
  const auto sums = work::on_hand(once);
  const auto lots = once.take_lot_lines();
  const auto cones = once.take_cone_courses();
  const auto pollen = once.take_pollen_lines();
  return lots.size() + cones.size() + pollen.size() + due.size() +
         static_cast<std::size_t>(sums.in_trays);
}

std::size_t open_and_show(const std::filesystem::path& path) {
  auto book = store::Book::open(path, store::Access::write).value();
  return book.read(show_line).value();
}

/// Trays that have seed for all the times it is taken from them.
std::vector<book::LotId> trays_with_seed(const std::filesystem::path& path, std::size_t most) {
  constexpr std::int64_t enough = 10;
  auto book = store::Book::open(path, store::Access::read).value();
  std::vector<book::LotId> trays;
  const auto balances = book.read([](store::Reading& reading) { return reading.balances(); });
  for (const auto& [account, count] : balances.value())
    if (account.state == book::State::sown && count >= enough && trays.size() < most)
      trays.push_back(account.lot);
  return trays;
}

book::Entry came_up(book::LotId tray) {
  book::Entry entry;
  entry.verb = book::Verb::inspect;
  entry.date = after_all;
  entry.lot = tray;
  entry.movements.push_back({{tray, book::State::sown}, {tray, book::State::root}, Count::sure(1)});
  return entry;
}

double peak_megabytes() {
  std::ifstream status("/proc/self/status");
  for (std::string word; status >> word;)
    if (word == "VmHWM:") {
      double kilobytes = 0;
      status >> kilobytes;
      return kilobytes / 1024;
    }
  return 0;
}

/// Of a process of its own.
double megabytes_of(const std::string& way, const std::filesystem::path& path) {
  const auto command = fmt::format("/proc/{}/exe {} '{}'", getpid(), way, path.string());
  std::array<char, 64> said{};
  auto* pipe = popen(command.c_str(), "r");
  if (pipe == nullptr || std::fgets(said.data(), said.size(), pipe) == nullptr)
    throw std::runtime_error("the other process said nothing");
  pclose(pipe);
  return std::atof(said.data());
}

class Size {
 public:
  explicit Size(std::int64_t movements)
      : movements_(movements), trays_(trays_with(movements)), path_(scratch_.at("whole.coneline")) {
    auto book = make_empty_book(path_);
    enter(book, trays_);
  }

  void run(bool largest) {
    tables_ = RawSqlite(path_).tables();
    told(pairs_of_writing(), largest);
    tables_.clear();
    open_and_show(path_); // so that a copy stands beside it
    told(pairs_of_reading(), largest);
    told(pairs_of_entries(), largest);
    if (largest)
      write_amount("memory of opening and showing the line", megabytes_of("--open", path_),
                   megabytes_of("--raw", path_), most_megabytes, "MB");
  }

 private:
  [[nodiscard]] std::string named(const std::string& what) const {
    return fmt::format("{}, {} movements", what, movements_);
  }
  void told(const std::vector<Pair>& pairs, bool largest) const {
    const auto all = measure(pairs);
    for (std::size_t i = 0; i < pairs.size(); ++i) {
      const auto what = pairs[i].what.substr(0, pairs[i].what.rfind(", "));
      write_growth(what, movements_, all[i]);
      if (largest)
        write_line(pairs[i].what, all[i], pairs[i].goal);
    }
  }

  std::vector<Pair> pairs_of_writing() {
    const int times = movements_ < one_million ? 3 : 1;
    const auto ours = [this](benchmark::State& state) {
      const auto path = scratch_.at("ours.coneline");
      for (auto round : state) {
        state.PauseTiming();
        {
          auto book = make_empty_book(path);
          state.ResumeTiming();
          enter(book, trays_);
        }
        state.PauseTiming();
        std::filesystem::remove(path);
        state.ResumeTiming();
      }
    };
    const auto bare = [this](benchmark::State& state) {
      const auto path = scratch_.at("bare.coneline");
      for (auto round : state) {
        state.PauseTiming();
        static_cast<void>(make_empty_book(path));
        RawSqlite(path).make_bare();
        state.ResumeTiming();
        insert_all(path, tables_);
        state.PauseTiming();
        std::filesystem::remove(path);
        state.ResumeTiming();
      }
    };
    std::vector<Pair> pairs{{named("taking in"), ours, bare, 3, times}};
    if (movements_ <= most_in_a_folder)
      pairs.push_back({named("taking in from a season folder"), from_folder(), bare, 0, 3});
    return pairs;
  }

  /// What `coneline import` does: read and check the CSV files, and enter what stands in them.
  std::function<void(benchmark::State&)> from_folder() {
    const auto folder = scratch_.at("season");
    auto book = store::Book::open(path_, store::Access::read).value();
    exchange::export_season(book, folder, exchange::Existing::keep).value();
    return [this, folder](benchmark::State& state) {
      const auto path = scratch_.at("imported.coneline");
      for (auto round : state) {
        state.PauseTiming();
        {
          auto imported = make_empty_book(path);
          state.ResumeTiming();
          if (!exchange::import_season(folder, imported, exchange::Import::write)
                   .value()
                   .faults.none())
            throw std::runtime_error("the season folder was not taken in");
        }
        state.PauseTiming();
        std::filesystem::remove(path);
        state.ResumeTiming();
      }
    };
  }

  std::vector<Pair> pairs_of_reading() {
    const int times = movements_ < one_million ? 5 : 3;
    const auto balances = [this](benchmark::State& state) {
      auto book = store::Book::open(path_, store::Access::read).value();
      for (auto round : state)
        benchmark::DoNotOptimize(
            book.read([](store::Reading& reading) { return reading.balances(after_all); }));
    };
    const auto bare_balances = [this](benchmark::State& state) {
      RawSqlite raw(path_);
      for (auto round : state)
        benchmark::DoNotOptimize(sum_balances(raw, after_all.iso()));
    };
    const auto shown = [this](benchmark::State& state) {
      for (auto round : state)
        benchmark::DoNotOptimize(open_and_show(path_));
    };
    const auto swept = [this](benchmark::State& state) {
      for (auto round : state)
        benchmark::DoNotOptimize(swept_line(path_));
    };
    const auto bare_shown = [this](benchmark::State& state) {
      for (auto round : state)
        benchmark::DoNotOptimize(raw_line(path_, today.iso()));
    };
    return {{named("balances of all lots"), balances, bare_balances, 2, times},
            {named("opening and showing the line"), shown, bare_shown, 3, times},
            {named("opening and showing the line, beside sums in memory"), shown, swept, 0, times}};
  }

  /// An inspection a time, as at the bench.
  std::vector<Pair> pairs_of_entries() {
    std::filesystem::copy_file(path_, scratch_.at("raw.coneline"));
    const auto trays = trays_with_seed(path_, few_entries);
    const auto ours = [this, trays](benchmark::State& state) {
      auto book = store::Book::open(path_, store::Access::write).value();
      for (auto round : state)
        for (const auto& tray : trays)
          book.write([&](store::Writing& writing) { return writing.enter(came_up(tray)); }).value();
    };
    const auto bare = [this, trays](benchmark::State& state) {
      std::vector<std::int64_t> ids;
      for (const auto& tray : trays)
        ids.push_back(tray.value);
      RawSqlite raw(scratch_.at("raw.coneline"));
      for (auto round : state)
        enter_each(raw, ids);
    };
    return {
        {named(fmt::format("{} entries, each kept by itself", trays.size())), ours, bare, 0, 3}};
  }

  std::int64_t movements_;
  std::vector<stats::Tray> trays_;
  Scratch scratch_;
  std::filesystem::path path_;
  std::vector<RawTable> tables_;
};

int run(int count, char** words) {
  if (count == 3 && (std::strcmp(words[1], "--open") == 0 || std::strcmp(words[1], "--raw") == 0)) {
    const bool ours = std::strcmp(words[1], "--open") == 0;
    benchmark::DoNotOptimize(ours ? open_and_show(words[2]) : raw_line(words[2], today.iso()));
    std::printf("%.1f\n", peak_megabytes());
    return 0;
  }
  std::vector<std::int64_t> sizes;
  for (int i = 1; i < count; ++i)
    sizes.push_back(parse_whole(words[i]).value());
  if (sizes.empty())
    sizes = {1000, 10'000, 100'000, one_million};
  for (const auto size : sizes)
    Size(size).run(size == sizes.back());
  return 0;
}

} // namespace
} // namespace coneline::tests

int main(int count, char** words) {
  return coneline::tests::run(count, words);
}
