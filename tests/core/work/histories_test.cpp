// SPDX-License-Identifier: GPL-3.0-or-later
// Random histories of verbs on one cone's seed and a purchase, dates in any order. After every step
// the seeds add up; a refused verb leaves the book's files byte for byte as they were. RC_PARAMS
// sets how many histories are tried.
#include "core/store/proof.h"
#include "core/store/sweep.h"
#include "core/work/clean.h"
#include "core/work/harvest.h"
#include "core/work/inspect.h"
#include "core/work/keep.h"
#include "core/work/leave.h"
#include "core/work/pot.h"
#include "core/work/recount.h"
#include "core/work/relocate.h"
#include "core/work/reverse.h"
#include "core/work/sort.h"
#include "core/work/sow.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <fstream>
#include <iostream>
#include <iterator>
#include <map>

namespace coneline::work {
namespace {

using book::State;
using tests::day;

std::string bytes(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

/// The file and its write-ahead log, which together are the book.
std::string bytes_of_book(const std::filesystem::path& path) {
  return bytes(path) + bytes(path.string() + "-wal");
}

class History {
 public:
  History(const std::filesystem::path& path, const tests::FirstCone& first)
      : path_(path), first_(first), book_(store::Book::open(path, store::Access::write).value()) {
    batches_ = {first.batch};
    in_ = {{first.cone, 500}};
  }

  void step() {
    const auto before = bytes_of_book(path_);
    const auto done = any_verb();
    if (!done) {
      RC_ASSERT(done.error().blame != Blame::program);
      RC_ASSERT(bytes_of_book(path_) == before);
      ++refused;
      return;
    }
    ++admitted;
    entries_.insert(entries_.end(), done->entries.begin(), done->entries.end());
    for (const auto& code : done->made) {
      if (code.kind() == Kind::batch)
        batches_.push_back(code);
      if (code.kind() == Kind::tray)
        trays_.push_back(code);
      if (code.kind() == Kind::pot_group)
        groups_.push_back(code);
    }
    seeds_add_up();
    one_pass_agrees();
  }

  std::int64_t admitted = 0;
  std::int64_t refused = 0;

  void prove() {
    const auto proof = store::prove(book_).value();
    if (!proof.holds())
      RC_FAIL(proof.faults.front());
  }

 private:
  static Count few() { return Count::sure(*rc::gen::inRange(0, 40)); }
  static Count many() { return Count::sure(*rc::gen::inRange(0, 600)); }
  static Noted some_day() {
    return {day("2026-01-25").plus_days(*rc::gen::inRange(0, 60)), "", ""};
  }
  Code one_of(const std::vector<Code>& codes) const {
    return codes.empty() ? first_.batch : *rc::gen::elementOf(codes);
  }
  Code any_lot() const {
    std::vector<Code> all = batches_;
    all.insert(all.end(), trays_.begin(), trays_.end());
    all.insert(all.end(), groups_.begin(), groups_.end());
    return *rc::gen::elementOf(all);
  }
  static std::optional<State> any_state() {
    return *rc::gen::weightedOneOf<std::optional<State>>(
        {{3, rc::gen::just(std::optional<State>())},
         {1, rc::gen::map(rc::gen::inRange(0, 17),
                          [](int state) { return std::optional(static_cast<State>(state)); })}});
  }

  Result<Done> any_verb() {
    switch (*rc::gen::weightedElement<int>({{1, 0},
                                            {2, 1},
                                            {3, 2},
                                            {2, 3},
                                            {4, 4},
                                            {6, 5},
                                            {4, 6},
                                            {3, 7},
                                            {2, 8},
                                            {3, 9},
                                            {1, 10},
                                            {1, 11}})) {
    case 0: {
      const auto seeds = many();
      auto done = harvest(book_, {first_.cone, seeds, some_day()});
      if (done)
        in_[first_.cone] += seeds.value();
      return done;
    }
    case 1:
      return clean(book_, {one_of(batches_), 2, few(), some_day()});
    case 2:
      return sort(book_, {one_of(batches_), any_state().value_or(State::unsorted),
                          book::SeedTest::floating, many(), few(), some_day()});
    case 3:
      return open(book_, {one_of(batches_), any_state().value_or(State::judged_filled), few(),
                          few(), some_day()});
    case 4:
      return sow(book_, {one_of(batches_),
                         any_state(),
                         few(),
                         *rc::gen::inRange(0, 4),
                         "seed tray",
                         {},
                         first_.bench,
                         some_day()});
    case 5:
      return inspect(book_, {one_of(trays_), few(), few(), few(), some_day()});
    case 6:
      return pot_up(book_, {*rc::gen::arbitrary<bool>() ? one_of(trays_) : one_of(groups_),
                            {},
                            few(),
                            "1 L deep",
                            {},
                            groups_.empty() || *rc::gen::arbitrary<bool>()
                                ? std::nullopt
                                : std::optional(one_of(groups_)),
                            {},
                            some_day()});
    case 7:
      return leave(book_, {any_lot(),
                           *rc::gen::element(WayOut::dead, WayOut::discarded, WayOut::sold,
                                             WayOut::planted_out),
                           any_state(),
                           few(),
                           "",
                           {},
                           some_day()});
    case 8:
      return recount(book_, {any_lot(), any_state(), few(), some_day()});
    case 9: {
      const auto entry =
          *rc::gen::inRange<std::int64_t>(1, static_cast<std::int64_t>(entries_.size()) + 3);
      const auto harvested = harvested_by({entry});
      auto done = reverse(book_, {{entry}, "", ""});
      if (done)
        in_[first_.cone] -= harvested;
      return done;
    }
    case 10:
      return relocate(book_, {{any_lot(), any_lot()}, first_.bench, some_day()});
    default:
      return keep(book_, {one_of(batches_), "tin", {}, {}, {}, {}, some_day()});
    }
  }

  std::int64_t harvested_by(book::EntryId id) {
    const auto entry = book_.read([&](store::Reading& reading) { return reading.entry(id); });
    return entry && entry->verb == book::Verb::harvest ? entry->movements.front().count.value() : 0;
  }

  void seeds_add_up() {
    const auto balances =
        book_.read([](store::Reading& reading) { return reading.balances(); }).value();
    std::int64_t given = 0;
    std::int64_t there = 0;
    for (const auto& [account, count] : balances) {
      if (book::standing(account.state) == book::Standing::beginning)
        given -= count;
      else
        there += count;
      RC_ASSERT(count >= 0 || book::standing(account.state) == book::Standing::beginning ||
                account.state == State::unexplained);
    }
    RC_ASSERT(given == in_.at(first_.cone));
    RC_ASSERT(there == given);
  }

  /// The sums of one pass against the queries that ask for each of them.
  void one_pass_agrees() {
    book_
        .read([](store::Reading& reading) {
          const std::vector<book::Verb> kept{book::Verb::sow, book::Verb::inspect,
                                             book::Verb::sort};
          const store::Sweep sweep(reading, day("2026-02-20"), kept);
          std::map<book::Account, std::int64_t> left;
          std::map<book::LotId, std::int64_t> came_in;
          for (const auto& lot : reading.lots())
            for (const auto& [state, word] : book::Words<State>::all)
              if (const auto count = sweep.of(lot.id).of(state); count != 0)
                left[{lot.id, state}] = count;
          for (const auto& [account, count] : reading.balances())
            RC_ASSERT(left[account] == count);
          RC_ASSERT(left.size() == reading.balances().size());
          for (const auto& arrival : reading.arrivals()) {
            came_in[arrival.lot] += arrival.count;
            RC_ASSERT(sweep.of(arrival.lot).since <= arrival.date);
          }
          const auto places = reading.places();
          for (const auto& lot : reading.lots()) {
            const auto& sums = sweep.of(lot.id);
            const auto place = places.find(lot.id);
            RC_ASSERT(sums.came_in == came_in[lot.id]);
            RC_ASSERT(sums.place ==
                      (place == places.end() ? std::nullopt : std::optional(place->second)));
          }
          for (const auto verb : kept) {
            const auto asked = reading.standing_entries(verb);
            const auto& swept = sweep.standing(verb);
            RC_ASSERT(std::ranges::equal(asked, swept, {}, &book::Entry::id, &book::Entry::id));
            for (std::size_t i = 0; i < asked.size(); ++i) {
              RC_ASSERT(asked[i].movements == swept[i].movements);
              RC_ASSERT(asked[i].detail.index() == swept[i].detail.index());
            }
          }
          return 0;
        })
        .value();
  }

  std::filesystem::path path_;
  tests::FirstCone first_;
  store::Book book_;
  std::vector<Code> batches_;
  std::vector<Code> trays_;
  std::vector<Code> groups_;
  std::vector<book::EntryId> entries_;
  std::map<Code, std::int64_t> in_;
};

TEST(Histories, SeedsAddUpAfterEveryStepAndRefusalsLeaveNoTrace) {
  const tests::Scratch scratch;
  tests::FirstCone first;
  const auto fresh = scratch.at("fresh.coneline");
  { tests::make_first_cone(fresh, first); }
  const auto path = scratch.at("t.coneline");
  std::int64_t admitted = 0;
  std::int64_t refused = 0;
  EXPECT_TRUE(rc::check("histories of verbs", [&] {
    std::filesystem::remove(path.string() + "-wal");
    std::filesystem::remove(path.string() + "-shm");
    std::filesystem::copy_file(fresh, path, std::filesystem::copy_options::overwrite_existing);
    {
      History history(path, first);
      const auto steps = *rc::gen::inRange(1, 25);
      for (int i = 0; i < steps; ++i)
        history.step();
      history.prove();
      admitted += history.admitted;
      refused += history.refused;
    }
  }));
  std::cout << admitted << " verbs admitted, " << refused << " refused\n";
  // Histories in which nearly all or nearly nothing is refused would try little.
  EXPECT_GT(admitted, refused / 4);
  EXPECT_GT(refused, admitted / 4);
}

} // namespace
} // namespace coneline::work
