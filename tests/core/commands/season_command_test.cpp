// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/commands/run_command.h"
#include "tests/core/exchange/small_season.h"

#include <gtest/gtest.h>

#include <sstream>

namespace coneline::commands {
namespace {

namespace fs = std::filesystem;

class SeasonCommand : public RunsCommands {
 protected:
  SeasonCommand() {
    EXPECT_TRUE(exchange::write_season(tests::small_season(), folder_, exchange::Existing::keep));
  }

  int import(std::vector<std::string> more = {}) {
    std::vector<std::string> arguments{"import", "--book", book_, folder_};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return run(arguments);
  }

  tests::Scratch scratch_;
  std::string folder_ = scratch_.at("season").string();
  std::string book_ = scratch_.at("book").string();
};

TEST_F(SeasonCommand, GoesInAndOut) {
  ASSERT_EQ(import(), 0) << err_.str();
  ASSERT_EQ(run({"check", "--book", book_}), 0) << out_.str();
  const auto out = scratch_.at("out").string();
  ASSERT_EQ(run({"export", "--book", book_, out}), 0) << err_.str();
  auto came_out = tests::contents(out);
  EXPECT_EQ(came_out.erase("links.csv"), 1U) << "the chain was begun with the import";
  EXPECT_EQ(came_out, tests::contents(folder_));
  EXPECT_EQ(run({"export", "--book", book_, out}), 1);
  EXPECT_NE(err_.str().find("--replace"), std::string::npos);
  EXPECT_EQ(run({"export", "--book", book_, out, "--replace"}), 0) << err_.str();
}

TEST_F(SeasonCommand, DryRunMakesNoBook) {
  ASSERT_EQ(import({"--dry-run", "--json"}), 0) << err_.str();
  const auto json = Json::parse(out_.str());
  EXPECT_EQ(json["imported"], false);
  EXPECT_EQ(json["faults"].size(), 0U);
  EXPECT_EQ(json["files"][14]["rows"], 22);
  EXPECT_FALSE(fs::exists(book_));
}

TEST_F(SeasonCommand, FaultsAreListedAndNoBookIsLeft) {
  fs::remove(fs::path(folder_) / "sales.csv");
  EXPECT_EQ(import({"--json"}), 1);
  const auto json = Json::parse(out_.str());
  ASSERT_EQ(json["faults"].size(), 1U);
  EXPECT_EQ(json["faults"][0]["file"], "sales.csv");
  EXPECT_EQ(json["faults"][0]["line"], nullptr);
  EXPECT_FALSE(fs::exists(book_));
  EXPECT_FALSE(fs::exists(book_ + "-wal"));
}

TEST_F(SeasonCommand, ABookWithSomethingInItIsRefused) {
  ASSERT_EQ(import(), 0);
  const auto before = tests::content(book_);
  EXPECT_EQ(import(), 1);
  EXPECT_NE(err_.str().find("holds something already"), std::string::npos) << err_.str();
  EXPECT_EQ(tests::content(book_), before);
}

TEST_F(SeasonCommand, WantsItsArguments) {
  EXPECT_EQ(run({"import", "--book", book_}), 2);
  EXPECT_EQ(run({"export", folder_}), 2);
}

} // namespace
} // namespace coneline::commands
