// SPDX-License-Identifier: GPL-3.0-or-later
// A program killed at a random moment, of opening, copying, writing or closing.
#include "tests/hard/hard.h"

#include <gtest/gtest.h>

#include <random>
#include <signal.h>

namespace coneline::hard {
namespace {

/// Opens the book and takes in movements without end; tells the number of each acknowledged one.
int take_in_without_end(const std::filesystem::path& path, const tests::FirstCone& first, int out) {
  auto book = store::Book::open(path, store::Access::write);
  if (!book || ::write(out, "r", 1) != 1)
    return 1;
  for (int n = 0;; ++n) {
    if (!take_in(*book, first) || ::write(out, "a", 1) != 1)
      return 1;
    if (n % 7 == 6) // and close it and open it again, for the moments between
      book = store::Book::open(path, store::Access::write);
  }
}

struct Told {
  bool ready = false;
  int acknowledged = 0;
};

Told killed_after(std::chrono::microseconds wait, const std::filesystem::path& path,
                  const tests::FirstCone& first) {
  std::array<int, 2> pipe{};
  EXPECT_EQ(::pipe(pipe.data()), 0);
  const auto child = begin([&] { return take_in_without_end(path, first, pipe[1]); });
  ::close(pipe[1]);
  ::usleep(static_cast<useconds_t>(wait.count()));
  ::kill(child, SIGKILL);
  EXPECT_TRUE(WIFSIGNALED(ended(child))) << "it stopped by itself";
  Told told;
  for (char said = 0; ::read(pipe[0], &said, 1) == 1;) {
    told.ready = true;
    told.acknowledged += said == 'a' ? 1 : 0;
  }
  ::close(pipe[0]);
  return told;
}

TEST(Kill, LosesNothingThatWasAcknowledged) {
  std::mt19937 random(20260101);
  // Every other kill falls into the first moments, of opening and copying.
  std::uniform_int_distribution<int> early(0, 12'000);
  std::uniform_int_distribution<int> later(0, 120'000);
  const int kills = times(25, 1000);
  std::int64_t acknowledged = 0;
  std::int64_t unacknowledged = 0;
  int before_ready = 0;
  std::optional<tests::Scratch> scratch;
  std::filesystem::path path;
  tests::FirstCone first;
  std::int64_t known = 0;
  for (int n = 0; n < kills; ++n) {
    if (n % 50 == 0) { // a new book, so that proving stays quick
      scratch.emplace();
      path = scratch->at("t.coneline");
      tests::make_first_cone(path, first);
      known = 1;
    }
    const auto moment = n % 2 == 0 ? early(random) : later(random);
    const auto told = killed_after(std::chrono::microseconds(moment), path, first);
    const auto there = proven_entries(path);
    ASSERT_GE(there, known + told.acknowledged) << "kill " << n;
    ASSERT_LE(there, known + told.acknowledged + 1) << "kill " << n;
    unacknowledged += there - known - told.acknowledged;
    acknowledged += told.acknowledged;
    before_ready += told.ready ? 0 : 1;
    known = there;
    if (n % 10 == 9) {
      for (const auto& copy : store::copies_of(path))
        ASSERT_TRUE(store::look_into(copy).good) << copy.path;
    }
  }
  fmt::print(
      "{} kills, {} of them while opening: {} movements acknowledged, none lost; {} more were "
      "in the book though the kill came before the answer\n",
      kills, before_ready, acknowledged, unacknowledged);
}

} // namespace
} // namespace coneline::hard
