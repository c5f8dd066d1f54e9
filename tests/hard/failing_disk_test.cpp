// SPDX-License-Identifier: GPL-3.0-or-later
// Every write, sync, truncation and deletion fails in turn while a book is opened (with its copy),
// written and closed.
#include "tests/hard/failing_disk.h"
#include "tests/hard/hard.h"

namespace coneline::hard {
namespace {

namespace fs = std::filesystem;

struct Case {
  Failure failure;
  bool lasting;
};

class FailingDisk : public testing::TestWithParam<Case> {};

TEST_P(FailingDisk, LosesNothingAtAnyWrite) {
  const tests::Scratch scratch;
  tests::FirstCone first;
  const auto base = scratch.at("base");
  { tests::make_first_cone(base, first); }
  int tried = 0;
  int refused = 0;
  int refused_yet_there = 0;
  const int step = times(5, 1);
  for (int nth = 1;; nth += step) {
    const auto path = scratch.at("t.coneline");
    fs::copy_file(base, path);
    int acknowledged = 0;
    fail_at(nth, GetParam().failure, GetParam().lasting);
    if (auto book = store::Book::open(path, store::Access::write)) {
      for (int n = 0; n < 3; ++n)
        acknowledged += take_in(*book, first) ? 1 : 0;
    }
    const bool failed = work_again();
    const auto there = proven_entries(path);
    ASSERT_GE(there, 1 + acknowledged) << "write " << nth;
    ASSERT_LE(there, 1 + 3) << "write " << nth;
    refused += 3 - acknowledged;
    refused_yet_there += static_cast<int>(there) - 1 - acknowledged;
    for (const auto& copy : store::copies_of(path))
      ASSERT_TRUE(store::look_into(copy).good) << "write " << nth;
    fs::remove_all(store::copies_folder(path));
    for (const auto* end : {"", "-wal", "-shm"})
      fs::remove(path.string() + end);
    if (!failed)
      break;
    ++tried;
    ASSERT_LT(tried, 5000);
  }
  EXPECT_GT(tried, times(3, 30));
  fmt::print(
      "{}{}: {} places of failure; {} entries refused, {} of them in the book all the same\n",
      GetParam().failure == Failure::full ? "disk full" : "I/O error",
      GetParam().lasting ? " that stays" : " once", tried, refused, refused_yet_there);
}

INSTANTIATE_TEST_SUITE_P(Disks, FailingDisk,
                         testing::Values(Case{Failure::io_error, false},
                                         Case{Failure::io_error, true}, Case{Failure::full, false},
                                         Case{Failure::full, true}));

} // namespace
} // namespace coneline::hard
