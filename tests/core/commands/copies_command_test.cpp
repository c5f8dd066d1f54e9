// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/commands/run_command.h"
#include "tests/core/store/first_cone.h"

#include <fstream>

namespace coneline::commands {
namespace {

namespace fs = std::filesystem;

class CopiesCommands : public testing::Test {
 protected:
  CopiesCommands() {
    tests::FirstCone first;
    tests::make_first_cone(path, first);
  }
  [[nodiscard]] Ran run(const std::string& words, const std::string& more = "") const {
    return run_command(words + " --json --book " + path.string() + " " + more);
  }
  tests::Scratch scratch;
  fs::path path = scratch.at("t.coneline");
};

TEST_F(CopiesCommands, ListRestoreAndUndo) {
  EXPECT_TRUE(run("copies").json()["copies"].empty());
  { auto book = store::Book::open(path, store::Access::write); }
  const auto listed = run("copies").json()["copies"];
  ASSERT_EQ(listed.size(), 1U);
  EXPECT_TRUE(listed[0]["good"].get<bool>());
  EXPECT_EQ(listed[0]["entries"], 1);
  const auto restored = run("restore");
  ASSERT_EQ(restored.status, 0) << restored.err;
  EXPECT_EQ(restored.json()["from"], listed[0]["file"]);
  EXPECT_TRUE(fs::exists(restored.json()["replaced"].get<std::string>()));
  EXPECT_EQ(run("restore", "--undo").status, 0);
  EXPECT_EQ(run("check").status, 0);
  EXPECT_EQ(run("restore", "--undo --copy x").status, 2);
  EXPECT_EQ(run("restore", "--copy nothing.copy").status, 1);
}

TEST_F(CopiesCommands, CheckOffersTheNewestGoodCopy) {
  { auto book = store::Book::open(path, store::Access::write); }
  {
    std::fstream file(path, std::ios::in | std::ios::out | std::ios::binary);
    file.seekp(4096 * 3 + 8);
    file << std::string(2000, 'x');
  }
  const auto ran = run("check");
  EXPECT_EQ(ran.status, 1);
  EXPECT_NE((ran.out + ran.err).find(".copy"), std::string::npos) << ran.out << ran.err;
}

} // namespace
} // namespace coneline::commands
