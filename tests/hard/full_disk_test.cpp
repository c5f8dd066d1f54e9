// SPDX-License-Identifier: GPL-3.0-or-later
// A small disk that fills up, and one that may only be read. A disk of its own is mounted where
// that is allowed, as it is to root and, in a user's own namespace, to most others. Where it is
// not, no file may grow beyond a size, and the folder loses its right to be written: the book has
// to do the same with both.
#include "tests/hard/hard.h"

#include <csignal>
#include <fstream>
#include <sched.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>

namespace coneline::hard {
namespace {

namespace fs = std::filesystem;

constexpr unsigned nobody = 65534;

/// Its own view of mounts, which ends with the process.
bool has_own_mounts() {
  const auto user = ::getuid();
  const auto group = ::getgid();
  if (::unshare(CLONE_NEWNS) != 0) {
    if (::unshare(CLONE_NEWUSER | CLONE_NEWNS) != 0)
      return false;
    std::ofstream("/proc/self/setgroups") << "deny";
    std::ofstream("/proc/self/uid_map") << fmt::format("0 {} 1", user);
    std::ofstream("/proc/self/gid_map") << fmt::format("0 {} 1", group);
  }
  return ::mount(nullptr, "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0;
}

bool may_mount(const fs::path& at, const char* size) {
  return has_own_mounts() && ::mount("tmpfs", at.c_str(), "tmpfs", 0, size) == 0;
}

/// No file of this process may grow beyond this; `endless` lifts it again.
void let_files_grow_to(rlim_t bytes) {
  std::signal(SIGXFSZ, SIG_IGN); // a write that is too much then fails, as on a full disk
  rlimit limit{};
  ::getrlimit(RLIMIT_FSIZE, &limit);
  limit.rlim_cur = std::min(bytes, limit.rlim_max);
  ::setrlimit(RLIMIT_FSIZE, &limit);
}

/// The folder and the book in it may be read alone, by a user that cannot change that.
bool take_the_right_to_write(const fs::path& folder, const fs::path& book) {
  ::chmod(book.c_str(), S_IRUSR | S_IRGRP | S_IROTH);
  ::chmod(folder.parent_path().c_str(), S_IRWXU | S_IXGRP | S_IXOTH);
  ::chmod(folder.c_str(), S_IRUSR | S_IXUSR | S_IRGRP | S_IXGRP | S_IROTH | S_IXOTH);
  if (::getuid() == 0 && ::setuid(nobody) != 0)
    return false;
  return ::access(book.c_str(), W_OK) != 0;
}

int fill_up(const fs::path& disk) {
  const bool mounted = may_mount(disk, "size=5m");
  const auto path = disk / "t.coneline";
  tests::FirstCone first;
  { tests::make_first_cone(path, first); }
  if (!mounted)
    let_files_grow_to(fs::file_size(path) + 64 * 1024);
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
  if (!mounted)
    let_files_grow_to(RLIM_INFINITY);
  EXPECT_EQ(proven_entries(path), 1 + acknowledged);
  auto book = store::Book::open(path, store::Access::write);
  EXPECT_TRUE(book && take_in(*book, first));
  fmt::print("full disk: {} entries acknowledged and there, {} refused\n", acknowledged, refused);
  std::fflush(stdout);
  return testing::Test::HasFailure() ? 1 : 0;
}

int only_read(const fs::path& disk) {
  const bool mounted = may_mount(disk, "size=8m");
  const auto path = disk / "t.coneline";
  tests::FirstCone first;
  { tests::make_first_cone(path, first); }
  EXPECT_TRUE(mounted
                  ? ::mount(nullptr, disk.c_str(), nullptr, MS_REMOUNT | MS_RDONLY, nullptr) == 0
                  : take_the_right_to_write(disk, path));
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
  std::error_code none;
  fs::permissions(scratch.at("disk"), fs::perms::owner_all, none); // to be cleared away
  ASSERT_TRUE(WIFEXITED(status));
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
