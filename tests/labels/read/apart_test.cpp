// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/apart.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <stdexcept>
#include <thread>

namespace coneline::labels {
namespace {

using namespace std::chrono_literals;

/// Behaves as the "file" is named.
ReadPicture act(const std::string& file) {
  if (file == "abort")
    std::abort();
  if (file == "hang")
    std::this_thread::sleep_for(10min);
  if (file == "throw")
    throw std::runtime_error("no such luck");
  if (file == "fill") {
    const std::vector<char> much(3'000'000'000, 'x');
    return {file, {{std::string(1, much.back()), "", 0, 0}}, std::nullopt};
  }
  if (file == "quit")
    std::_Exit(7);
  return {file, {{file + "\n\xFF", "QRCode", 3, 4}}, std::nullopt};
}

TEST(Apart, ABadPictureCostsItselfOnly) {
  const std::vector<std::string> files{"a", "abort", "b",    "throw", "c", "hang",
                                       "d", "fill",  "quit", "abort", "e"};
  std::size_t told = 0;
  const auto read =
      read_apart(files, act, {500ms, 1'000'000'000}, [&](std::size_t n) { told = n; });
  ASSERT_EQ(read.size(), files.size());
  EXPECT_EQ(told, files.size());
  for (std::size_t i = 0; i < files.size(); ++i) {
    EXPECT_EQ(read[i].file, files[i]);
    const bool good = files[i].size() == 1;
    EXPECT_EQ(read[i].error.has_value(), !good) << files[i];
    EXPECT_EQ(read[i].codes.size(), good ? 1U : 0U) << files[i];
  }
  EXPECT_EQ(read[0].codes[0].text, "a\n\uFFFD");
  EXPECT_EQ(read[0].codes[0].y, 4);
  EXPECT_NE(read[1].error->find("signal 6"), std::string::npos);
  EXPECT_NE(read[3].error->find("no such luck"), std::string::npos);
  EXPECT_NE(read[5].error->find("longer than 0.5 s"), std::string::npos);
  EXPECT_NE(read[7].error->find("1000 MB"), std::string::npos);
  EXPECT_NE(read[8].error->find("status 7"), std::string::npos);
}

TEST(Apart, NothingIsNothing) {
  EXPECT_TRUE(read_apart({}, act).empty());
}

} // namespace
} // namespace coneline::labels
