// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/commands/commands.h"
#include "tests/labels/read/other_symbols.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <sstream>

namespace coneline::labels {
namespace {

struct Outcome {
  int status = 0;
  std::string out;
  std::string err;
};

Outcome run(std::vector<std::string> arguments) {
  std::ostringstream out;
  std::ostringstream err;
  commands::CommandLine line(out, err);
  add_label_commands(line);
  const auto status = line.run(std::move(arguments));
  return {status.value_or(-1), out.str(), err.str()};
}

TEST(ReadCommand, AnswersAsAgreed) {
  const QTemporaryDir folder;
  const auto picture = folder.filePath("bench.png");
  ASSERT_TRUE(other_symbol("T1742Q", OtherSymbol::qr, 6).save(picture));
  const auto done = run({"labels", "read", "--json", picture.toStdString()});
  EXPECT_EQ(done.status, 0) << done.err;
  const auto expected = nlohmann::json::array(
      {{{"file", picture.toStdString()},
        {"codes", {{{"text", "T1742Q"}, {"format", "QRCode"}, {"x", 87}, {"y", 87}}}},
        {"error", nullptr}}});
  EXPECT_EQ(nlohmann::json::parse(done.out), expected);
}

TEST(ReadCommand, SaysWhichPictureFailedAndReadsTheOthers) {
  const QTemporaryDir folder;
  const auto picture = folder.filePath("bench.png").toStdString();
  ASSERT_TRUE(other_symbol("T1742Q", OtherSymbol::qr, 6).save(QString::fromStdString(picture)));
  const auto absent = folder.filePath("absent.png").toStdString();
  const auto done = run({"labels", "read", absent, picture, "--json"});
  EXPECT_EQ(done.status, 1);
  const auto answer = nlohmann::json::parse(done.out);
  ASSERT_EQ(answer.size(), 2U);
  EXPECT_EQ(answer[0]["file"], absent);
  EXPECT_TRUE(answer[0]["codes"].empty());
  EXPECT_TRUE(answer[0]["error"].is_string());
  EXPECT_EQ(answer[1]["codes"].size(), 1U);
  EXPECT_TRUE(answer[1]["error"].is_null());

  const auto table = run({"labels", "read", absent, picture});
  EXPECT_EQ(table.status, 1);
  EXPECT_NE(table.out.find("T1742Q"), std::string::npos);
  EXPECT_NE(table.out.find("no such file"), std::string::npos);
  EXPECT_NE(table.out.find("1 code in 2 pictures"), std::string::npos);
}

TEST(ReadCommand, WantsAPicture) {
  EXPECT_EQ(run({"labels", "read"}).status, 2);
  EXPECT_EQ(run({"labels"}).status, 2);
  EXPECT_EQ(run({"labels", "read", "--no-such-option", "a.png"}).status, 2);
}

TEST(ReadCommand, TakesAFileNameThatIsNoUtf8) {
  const auto done = run({"labels", "read", "--json", "no\xFFsuch.png"});
  EXPECT_EQ(done.status, 1) << done.err;
  EXPECT_EQ(nlohmann::json::parse(done.out)[0]["file"], "no\uFFFDsuch.png");
}

} // namespace
} // namespace coneline::labels
