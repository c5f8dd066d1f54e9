// SPDX-License-Identifier: GPL-3.0-or-later
// What the README tells a new grower to type works as it stands there, codes and all.
#include "tests/core/commands/run_command.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <set>
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
  std::string whole;
  while (std::getline(readme, line) && line != "```") {
    whole += line;
    if (line.ends_with('\\')) { // goes on in the next
      whole.pop_back();
      continue;
    }
    if (auto words = words_of(whole); !words.empty())
      lines.push_back(std::move(words));
    whole.clear();
  }
  return lines;
}

/// The commands that stand indented below a heading, what is said of them left out.
std::vector<std::vector<std::string>> listed_under(const std::string& heading) {
  const std::string indent = "    coneline ";
  std::ifstream readme(CONELINE_TEST_DATA "/../../README.md");
  std::vector<std::vector<std::string>> lines;
  std::string line;
  while (std::getline(readme, line) && line != heading)
    ;
  while (std::getline(readme, line) && !line.starts_with('#'))
    if (line.starts_with(indent))
      lines.push_back(
          words_of(line.substr(indent.size(), line.find("  ", indent.size()) - indent.size())));
  return lines;
}

/// The lines of the first ten minutes that this room can run.
int run_ten_minutes(const std::string& book) {
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
    EXPECT_EQ(done.status, 0) << fmt::format("{}", fmt::join(words, " ")) << '\n' << done.err;
    ++ran;
  }
  return ran;
}

TEST(Readme, TenMinutesWithYourOwnFirstCone) {
  const tests::Scratch scratch;
  EXPECT_GT(run_ten_minutes(scratch.at("nursery.coneline").string()), 20);
}

/// On the book that the ten minutes made, planned from a day that its examples lie ahead of.
TEST(Readme, WhatTheMonthsToComeMayBring) {
  const tests::Scratch scratch;
  const auto book = scratch.at("nursery.coneline").string();
  run_ten_minutes(book);
  const std::set<std::string> planned{"forecast", "what-if", "order", "target", "placing"};
  const std::set<std::string> elsewhere{"paper", "coverage"}; // drawn by another room; takes long
  int ran = 0;
  for (auto words : listed_under("### What the months to come may bring")) {
    const bool to_be_filled_in = std::ranges::find(words, "…") != words.end();
    if (to_be_filled_in || elsewhere.contains(words.front()))
      continue;
    if (planned.contains(words.front()))
      words.insert(words.end(), {"--as-of", "2026-11-20", "--runs", "50"});
    words.insert(words.end(), {"--book", book});
    const auto done = run_words(words);
    EXPECT_EQ(done.status, 0) << fmt::format("{}", fmt::join(words, " ")) << '\n' << done.err;
    ++ran;
  }
  EXPECT_GT(ran, 10);
}

} // namespace
} // namespace coneline::commands
