// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/whole_file.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

#include <fstream>

namespace coneline::report {
namespace {

std::string contents(const std::filesystem::path& path) {
  std::ifstream file(path);
  return {std::istreambuf_iterator<char>(file), {}};
}

std::ptrdiff_t files_in(const std::filesystem::path& folder) {
  return std::distance(std::filesystem::directory_iterator(folder), {});
}

TEST(WholeFile, TakesThePlaceOfTheOldOneAndLeavesNothingElse) {
  const tests::Scratch scratch;
  const auto path = scratch.at("report.csv");
  ASSERT_TRUE(write_whole(path, "first, and longer"));
  ASSERT_TRUE(write_whole(path, "second"));
  EXPECT_EQ(contents(path), "second");
  EXPECT_EQ(files_in(path.parent_path()), 1);
}

TEST(WholeFile, InAFolderThatIsNotThereIsRefused) {
  const tests::Scratch scratch;
  const auto written = write_whole(scratch.at("missing") / "report.csv", "text");
  ASSERT_FALSE(written);
  EXPECT_NE(written.error().what.find("cannot be written"), std::string::npos);
}

TEST(WholeFile, InThePlaceOfAFolderIsRefusedAndLeavesNothing) {
  const tests::Scratch scratch;
  const auto folder = scratch.at("reports");
  std::filesystem::create_directory(folder);
  ASSERT_FALSE(write_whole(folder, "text"));
  EXPECT_EQ(files_in(folder.parent_path()), 1);
}

} // namespace
} // namespace coneline::report
