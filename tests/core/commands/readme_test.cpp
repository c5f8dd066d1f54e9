// SPDX-License-Identifier: GPL-3.0-or-later
// What the README tells a new grower to type works as it stands there, codes and all.
#include "tests/core/commands/run_command.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace coneline::commands {
namespace {

/// The words of a line of a shell: quotes kept together, what follows a # left out.
std::vector<std::string> words_of(const std::string& line) {
  std::vector<std::string> words;
  std::string word;
  char quote = 0;
  bool begun = false;
  for (const char c : line + " ") {
    if (quote != 0) {
      if (c == quote)
        quote = 0;
      else
        word += c;
    } else if (c == '"' || c == '\'') {
      quote = c;
      begun = true;
    } else if (c == ' ') {
      if (begun)
        words.push_back(word);
      word.clear();
      begun = false;
    } else if (c == '#' && !begun) {
      break;
    } else {
      word += c;
      begun = true;
    }
  }
  return words;
}

/// The lines of the shell that follow a heading of the README.
std::vector<std::vector<std::string>> told_under(const std::string& heading) {
  std::ifstream readme(CONELINE_TEST_DATA "/../../README.md");
  std::vector<std::vector<std::string>> lines;
  std::string line;
  while (std::getline(readme, line) && line != heading)
    ;
  while (std::getline(readme, line) && line != "```sh")
    ;
  while (std::getline(readme, line) && line != "```")
    if (auto words = words_of(line); !words.empty())
      lines.push_back(std::move(words));
  return lines;
}

TEST(Readme, TenMinutesWithYourOwnFirstCone) {
  const tests::Scratch scratch;
  const auto book = scratch.at("nursery.coneline").string();
  int ran = 0;
  for (auto words : told_under("## Ten minutes with your own first cone")) {
    const auto program = words.front();
    words.erase(words.begin());
    if (program != "coneline" || words.front() == "labels") // drawn by another room, tested there
      continue;
    const bool without_book = words.front() == "sorting";
    if (!without_book)
      words.insert(words.end(), {"--book", book});
    const auto done = run_words(words);
    ASSERT_EQ(done.status, 0) << fmt::format("{}", fmt::join(words, " ")) << '\n' << done.err;
    ++ran;
  }
  EXPECT_GT(ran, 20);
}

} // namespace
} // namespace coneline::commands
