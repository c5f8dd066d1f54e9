// SPDX-License-Identifier: GPL-3.0-or-later
// A program killed while it brings a book up to date.
#include "core/store/engine/sqlite.h"
#include "core/store/migrations.h"
#include "tests/core/store/raw.h"
#include "tests/hard/hard.h"

#include <random>
#include <signal.h>

namespace coneline::hard {
namespace {

/// A book of the first version, with a title.
void make_old(const std::filesystem::path& path) {
  {
    soci::session session;
    store::engine::open(session, path, store::engine::Mode::make);
    ASSERT_TRUE(store::bring_up_to_date(session, path, std::span(store::migrations()).first(1)));
  }
  ASSERT_EQ(tests::run_raw(path,
                           "INSERT INTO book (id, name, series, invented, made_on) VALUES (1, "
                           "'old', 17, 1, '2020-01-01')"),
            "");
}

TEST(MigrationStopped, LeavesABookThatComesUpToDate) {
  std::mt19937 random(20260102);
  std::uniform_int_distribution<int> moment(0, 40'000);
  const int stops = times(15, 300);
  int stopped_before_done = 0;
  for (int n = 0; n < stops; ++n) {
    const tests::Scratch scratch;
    const auto path = scratch.at("t.coneline");
    make_old(path);
    const auto child = begin([&] {
      const auto book = store::Book::open(path, store::Access::write);
      return book ? 0 : 1;
    });
    ::usleep(static_cast<useconds_t>(moment(random)));
    ::kill(child, SIGKILL);
    stopped_before_done += WIFSIGNALED(ended(child)) ? 1 : 0;
    auto book = store::Book::open(path, store::Access::write);
    ASSERT_TRUE(book) << book.error().text();
    const auto proof = store::prove(*book);
    ASSERT_TRUE(proof && proof->holds()) << (proof ? proof->faults.front() : proof.error().text());
    bool copied = false;
    for (const auto& copy : store::copies_of(path))
      copied = copied || (copy.kind == store::Copy::Kind::before_migration && look_into(copy).good);
    ASSERT_TRUE(copied) << "stop " << n;
  }
  fmt::print("{} stops, {} before it was done: each book came up to date, with a good copy of the "
             "old one\n",
             stops, stopped_before_done);
}

} // namespace
} // namespace coneline::hard
