// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/commands.h"
#include "labels/commands/commands.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace coneline::labels {
namespace {

struct Outcome {
  int status = 0;
  std::string out;
  std::string err;
  [[nodiscard]] nlohmann::json json() const { return nlohmann::json::parse(out); }
};

class LabelBook : public testing::Test {
 protected:
  void SetUp() override {
    ASSERT_EQ(run({"new", "--book", book_, "--name", "Test", "--series", "17"}).status, 0);
    ASSERT_EQ(run({"enter", "taxon", "Cycas revoluta", "--book", book_}).status, 0);
    for (int i = 0; i < 2; ++i)
      ASSERT_EQ(
          run({"enter", "plant", "Cycas revoluta", "--sex", "female", "--book", book_}).status, 0);
  }
  static Outcome run(std::vector<std::string> arguments) {
    std::ostringstream out;
    std::ostringstream err;
    commands::CommandLine line(out, err);
    commands::add_core_commands(line);
    add_label_commands(line);
    const auto status = line.run(std::move(arguments));
    return {status.value_or(-1), out.str(), err.str()};
  }
  std::string file(const char* name) const { return folder_.filePath(name).toStdString(); }

  QTemporaryDir folder_;
  std::string book_ = folder_.filePath("book.coneline").toStdString();
};

TEST_F(LabelBook, KeepsAStockAndChangesIt) {
  const std::vector<std::string> first{"labels", "enter-stock",    "own",    "--page-width",
                                       "210",    "--page-height",  "297",    "--columns",
                                       "2",      "--rows",         "5",      "--label-width",
                                       "90",     "--centred",      "--book", book_,
                                       "--json", "--label-height", "50"};
  const auto added = run(first);
  ASSERT_EQ(added.status, 0) << added.err;
  EXPECT_EQ(added.json()["left"], 15.0);
  auto wider = first;
  wider[12] = "100";
  ASSERT_EQ(run(wider).status, 0);
  const auto listed = run({"labels", "stocks", "--book", book_, "--json"}).json();
  EXPECT_EQ(listed[0]["name"], "own");
  EXPECT_EQ(listed[0]["label_width"], 100.0);
  EXPECT_EQ(listed[0]["in_book"], true);
  EXPECT_NE(listed[1]["name"], "own");
  wider[12] = "120";
  const auto refused = run(wider);
  EXPECT_EQ(refused.status, 1);
  EXPECT_NE(refused.err.find("30.00 mm wider than the page"), std::string::npos) << refused.err;
}

/// One after the other, neither of which is shown a display.
TEST_F(LabelBook, PrintsByALayoutAndCountsIt) {
  ::unsetenv("DISPLAY");
  ::unsetenv("QT_QPA_PLATFORM");
  ASSERT_EQ(run({"labels", "enter-layout", "short", "--show", "what,day", "--book", book_}).status,
            0);
  const auto printed = run({"labels", "print", "--all", "plant", "--layout", "short", "--out",
                            file("a.pdf"), "--book", book_, "--json"});
  ASSERT_EQ(printed.status, 0) << printed.err;
  EXPECT_EQ(printed.json()["labels"], 2);
  ASSERT_EQ(run({"labels", "print", "--all", "plant", "--uncounted", "--out", file("a.pdf"),
                 "--book", book_})
                .status,
            0);
  ASSERT_EQ(run({"export", "--book", book_, file("season")}).status, 0);
  std::ifstream prints(file("season") + "/label_prints.csv");
  std::string line;
  int rows = 0;
  while (std::getline(prints, line))
    ++rows;
  EXPECT_EQ(rows, 3); // a header and one print each
  const auto text =
      run({"labels", "print", "--all", "place", "--out", file("a.txt"), "--book", book_});
  EXPECT_EQ(text.status, 2) << "a PDF that ends like a text";
  EXPECT_NE(text.err.find("does not end with .pdf"), std::string::npos) << text.err;
  EXPECT_FALSE(std::filesystem::exists(file("a.txt")));
  const auto absent = run({"labels", "print", "--all", "plant", "--layout", "no such", "--out",
                           file("b.pdf"), "--book", book_});
  EXPECT_EQ(absent.status, 1);
  EXPECT_NE(absent.err.find("code alone"), std::string::npos);
}

TEST_F(LabelBook, CorrectsAPrinter) {
  EXPECT_EQ(run({"labels", "test-page", "--out", file("t.pdf")}).status, 0);
  EXPECT_EQ(run({"labels", "correct", "--printer", "office", "--across", "99.5", "--down", "100.5",
                 "--book", book_})
                .status,
            0);
  EXPECT_EQ(run({"labels", "correct", "--printer", "office", "--across", "50", "--down", "100",
                 "--book", book_})
                .status,
            1);
  EXPECT_EQ(run({"labels", "renew", "--book", book_}).status, 0);
}

} // namespace
} // namespace coneline::labels
