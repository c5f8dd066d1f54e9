// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/folder.h"
#include "tests/core/exchange/small_season.h"

#include <gtest/gtest.h>

namespace coneline::exchange {
namespace {

using tests::contents;
namespace fs = std::filesystem;
using Texts = std::map<std::string, std::string>;

class Folder : public testing::Test {
 protected:
  Folder() { fs::create_directory(scratch_.at("home")); }
  [[nodiscard]] fs::path home() const { return scratch_.at("home"); }
  [[nodiscard]] fs::path target() const { return home() / "season"; }

  Result<void> write(const std::string& text, Existing existing = Existing::keep) const {
    return write_whole(target(), existing, {"a.csv", "b.csv"}, [&](const fs::path& unfinished) {
      return write_file(unfinished / "a.csv", text);
    });
  }
  /// Nothing but the folder itself lies around.
  void is_tidy(std::ptrdiff_t expected) const {
    EXPECT_EQ(std::distance(fs::directory_iterator(home()), {}), expected);
  }

  tests::Scratch scratch_;
};

TEST_F(Folder, IsMadeNew) {
  ASSERT_TRUE(write("one"));
  EXPECT_EQ(contents(target()), (Texts{{"a.csv", "one"}}));
  is_tidy(1);
}

TEST_F(Folder, MayBeEmpty) {
  fs::create_directory(target());
  ASSERT_TRUE(write("one"));
  EXPECT_EQ(contents(target()), (Texts{{"a.csv", "one"}}));
  is_tidy(1);
}

TEST_F(Folder, KeepsAnEarlierExportUnlessAsked) {
  ASSERT_TRUE(write("one"));
  tests::put(target() / "b.csv", "left over");
  EXPECT_FALSE(write("two"));
  EXPECT_EQ(contents(target()).at("a.csv"), "one");
  ASSERT_TRUE(write("two", Existing::replace));
  EXPECT_EQ(contents(target()), (Texts{{"a.csv", "two"}}));
  is_tidy(1);
}

TEST_F(Folder, IsLeftAloneWithOtherFilesInIt) {
  ASSERT_TRUE(write("one"));
  tests::put(target() / "thesis.txt", "dear");
  const auto refused = write("two", Existing::replace);
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.error().what.find("thesis.txt"), std::string::npos);
  EXPECT_EQ(contents(target()), (Texts{{"a.csv", "one"}, {"thesis.txt", "dear"}}));
}

TEST_F(Folder, IsNotHalfThereAfterAStop) {
  const auto stopped = write_whole(target(), Existing::keep, {}, [](const fs::path& unfinished) {
    return write_file(unfinished / "a.csv", "one").and_then([]() -> Result<void> {
      return refuse(fault("stopped"));
    });
  });
  EXPECT_FALSE(stopped);
  is_tidy(0);
}

TEST_F(Folder, NeedsAFolderToStandIn) {
  EXPECT_FALSE(write_whole(home() / "none" / "season", Existing::keep, {},
                           [](const fs::path&) { return Result<void>(); }));
}

TEST_F(Folder, LinksAreFollowedInside) {
  ASSERT_TRUE(write("one"));
  fs::create_symlink("a.csv", target() / "inside");
  tests::put(home() / "outside.csv", "x");
  fs::create_symlink(home() / "outside.csv", target() / "b.csv");
  fs::create_symlink("nowhere", target() / "dangling");
  EXPECT_TRUE(is_file_inside(target(), target() / "inside"));
  EXPECT_FALSE(is_file_inside(target(), target() / "b.csv"));
  EXPECT_FALSE(is_file_inside(target(), target() / "dangling"));
  EXPECT_FALSE(is_file_inside(target(), target()));
}

} // namespace
} // namespace coneline::exchange
