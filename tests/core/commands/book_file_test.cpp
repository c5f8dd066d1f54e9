// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/commands/with_nursery.h"

#include <fstream>

namespace coneline::commands {
namespace {

class BookFileCommand : public WithNursery {
 protected:
  std::string write(const char* name, const char* text) {
    const auto path = nursery_.at(name).string();
    std::ofstream(path) << text;
    return path;
  }
};

constexpr auto list = "Species,Seeds,Sown on,Tray\n"
                      "Cycas revoluta,40,2024-03-01,tray of 50\n"
                      "Cycas revoluta,51,2024-03-01,tray of 50\n";

TEST_F(BookFileCommand, ATableIsShownThenTriedThenTakenIn) {
  const auto file = write("old.csv", list);
  ASSERT_EQ(run({"take-in-table", file, "--json"}), 0) << err_.str();
  EXPECT_EQ(json()["columns"][1]["perhaps"], "count");
  const std::vector<std::string> match{"take-in-table", file,       "--json",      "--column",
                                       "Species=taxon", "--column", "Seeds=count", "--column",
                                       "Sown on=since", "--column", "Tray=pot",    "--all",
                                       "kind=tray",     "--on",     "2024-11-20"};
  EXPECT_EQ(run(match), 1);
  EXPECT_EQ(json()["taken_in"], false);
  ASSERT_EQ(json()["faults"].size(), 1U);
  EXPECT_EQ(json()["faults"][0]["line"], 3);
  EXPECT_EQ(json()["faults"][0]["column"], "Seeds");

  write("old.csv", "Species,Seeds,Sown on,Tray\nCycas revoluta,40,2024-03-01,tray of 50\n");
  auto tried = match;
  tried.emplace_back("--dry-run");
  ASSERT_EQ(run(tried), 0) << err_.str();
  EXPECT_EQ(json()["taken_in"], false);
  ASSERT_EQ(run(match), 0) << err_.str();
  EXPECT_EQ(json()["taken_in"], true);
  const std::string code = json()["rows"][0]["made"][0];
  ASSERT_EQ(run({"show", code, "--json"}), 0) << err_.str();
  ASSERT_EQ(run({"check"}), 0) << out_.str();
}

TEST_F(BookFileCommand, AMatchThatCannotBeIsRefused) {
  const auto file = write("old.csv", list);
  EXPECT_EQ(run({"take-in-table", file, "--column", "Species"}), 2);
  EXPECT_EQ(run({"take-in-table", file, "--column", "Species=no such field"}), 2);
  EXPECT_EQ(run({"take-in-table", file, "--column", "No such=taxon", "--all", "kind=seed"}), 1);
  EXPECT_NE(err_.str().find("Species, Seeds"), std::string::npos);
  EXPECT_EQ(run({"take-in-table", nursery_.at("none.csv").string()}), 1);
}

TEST_F(BookFileCommand, TheBookIsNamedCopiedAndMoved) {
  ASSERT_EQ(run({"book", "name", "Amber Hill"}), 0) << err_.str();
  EXPECT_EQ(nursery_.ask([](store::Reading& reading) { return reading.registers().title.name; }),
            "Amber Hill");
  EXPECT_EQ(run({"book", "name", " "}), 1);
  const auto copy = nursery_.at("copy.coneline");
  ASSERT_EQ(run({"book", "copy", copy.string()}), 0) << err_.str();
  EXPECT_TRUE(std::filesystem::exists(copy));
  EXPECT_EQ(run({"book", "copy", copy.string()}), 1) << "nothing is written over";
  EXPECT_EQ(run({"book", "copy", (nursery_.at("no folder") / "copy").string()}), 1);
  EXPECT_NE(err_.str().find("there is no folder '" + nursery_.at("no folder").string() + "'"),
            std::string::npos)
      << err_.str();
  const auto made = run_words(
      {"new", "--book", (nursery_.at("no folder") / "new.coneline").string(), "--name", "New"});
  EXPECT_EQ(made.status, 1);
  EXPECT_NE(made.err.find("there is no folder '"), std::string::npos) << made.err;
  EXPECT_EQ(made.err.find("unfinished"), std::string::npos) << made.err;
  EXPECT_FALSE(std::filesystem::exists(copy.string() + ".part"));
  EXPECT_TRUE(store::Book::open(copy, store::Access::read));
}

TEST_F(BookFileCommand, AMoveLeavesABookThatAnotherHasOpen) {
  const auto to = nursery_.at("moved.coneline");
  // The nursery of this test has its book open.
  EXPECT_EQ(run({"book", "move", to.string()}), 1);
  EXPECT_NE(err_.str().find("open in another program"), std::string::npos) << err_.str();
  EXPECT_TRUE(std::filesystem::exists(nursery_.at("book.coneline")));
  EXPECT_FALSE(std::filesystem::exists(to));
}

TEST(MoveBook, TakesTheFileAlong) {
  const tests::Scratch scratch;
  const auto from = scratch.at("a.coneline");
  const auto to = scratch.at("b.coneline");
  {
    const auto made =
        store::Book::make(from, {"Test nursery", 17, true, Date::of(2026, 1, 1).value()});
  }
  const auto ran = run_words({"book", "move", to.string(), "--book", from.string()});
  ASSERT_EQ(ran.status, 0) << ran.err;
  EXPECT_FALSE(std::filesystem::exists(from));
  EXPECT_FALSE(std::filesystem::exists(from.string() + "-wal"));
  EXPECT_EQ(store::Book::open(to, store::Access::read)
                ->read([](store::Reading& reading) { return reading.registers().title.name; })
                .value(),
            "Test nursery");
}

} // namespace
} // namespace coneline::commands
