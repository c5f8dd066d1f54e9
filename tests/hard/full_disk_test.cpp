// SPDX-License-Identifier: GPL-3.0-or-later
// A real small disk that fills up, and one that may only be read. Both need the right to mount;
// where it lacks the test says so and is skipped.
#include "tests/hard/hard.h"

#include <fstream>
#include <sched.h>
#include <sys/mount.h>

namespace coneline::hard {
namespace {

namespace fs = std::filesystem;

/// Its own view of mounts, which ends with the process.
bool may_mount(const fs::path& at, const char* size) {
  return ::unshare(CLONE_NEWNS) == 0 &&
         ::mount(nullptr, "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0 &&
         ::mount("tmpfs", at.c_str(), "tmpfs", 0, size) == 0;
}

constexpr int not_allowed = 77;

int fill_up(const fs::path& disk) {
  if (!may_mount(disk, "size=5m"))
    return not_allowed;
  const auto path = disk / "t.coneline";
  tests::FirstCone first;
  { tests::make_first_cone(path, first); }
  int acknowledged = 0;
  int refused = 0;
  for (int n = 0; n < 20000 && refused < 20; ++n) {
    auto book = store::Book::open(path, store::Access::write);
    if (!book) {
      ++refused;
      continue;
    }
    for (int entry = 0; entry < 50; ++entry)
      take_in(*book, first) ? ++acknowledged : ++refused;
  }
  EXPECT_GE(refused, 20) << "the disk never filled up";
  fs::remove_all(store::copies_folder(path)); // room again
  EXPECT_EQ(proven_entries(path), 1 + acknowledged);
  auto book = store::Book::open(path, store::Access::write);
  EXPECT_TRUE(book && take_in(*book, first));
  fmt::print("full disk: {} entries acknowledged and there, {} refused\n", acknowledged, refused);
  std::fflush(stdout);
  return testing::Test::HasFailure() ? 1 : 0;
}

int only_read(const fs::path& disk) {
  if (!may_mount(disk, "size=8m"))
    return not_allowed;
  const auto path = disk / "t.coneline";
  tests::FirstCone first;
  { tests::make_first_cone(path, first); }
  if (::mount(nullptr, disk.c_str(), nullptr, MS_REMOUNT | MS_RDONLY, nullptr) != 0)
    return not_allowed;
  EXPECT_EQ(proven_entries(path), 1);
  const auto written = store::Book::open(path, store::Access::write);
  EXPECT_FALSE(written);
  EXPECT_NE(written.error().what.find("may only be read"), std::string::npos);
  return testing::Test::HasFailure() ? 1 : 0;
}

void in_its_own_process(int (*act)(const fs::path&)) {
  const tests::Scratch scratch;
  fs::create_directory(scratch.at("disk"));
  const int status = ended(begin([&] { return act(scratch.at("disk")); }));
  ASSERT_TRUE(WIFEXITED(status));
  if (WEXITSTATUS(status) == not_allowed)
    GTEST_SKIP() << "a disk may not be mounted here";
  EXPECT_EQ(WEXITSTATUS(status), 0);
}

TEST(FullDisk, RefusesInWordsAndLosesNothing) {
  in_its_own_process(fill_up);
}

TEST(ReadOnlyDisk, IsReadAndRefusedToBeWritten) {
  in_its_own_process(only_read);
}

} // namespace
} // namespace coneline::hard
