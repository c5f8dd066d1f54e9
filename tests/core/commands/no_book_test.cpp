// SPDX-License-Identifier: GPL-3.0-or-later
// Every command that takes a book is given none, and a file that is no book: it says so, answers
// nothing, and makes and touches nothing.
#include "core/commands/command_words.h"
#include "core/commands/commands.h"
#include "tests/core/commands/run_command.h"
#include "tests/core/store/scratch.h"

#include <fmt/ranges.h>

#include <filesystem>
#include <fstream>
#include <set>

namespace coneline::commands {
namespace {

namespace fs = std::filesystem;
using Words = std::vector<std::string>;

/// Something of the kind that a required word is to be.
std::string something(const OptionWords& option) {
  if (!option.choices.empty())
    return option.choices.front();
  const std::set<std::string> numbers{"INT", "UINT", "FLOAT", "NUMBER"};
  if (numbers.contains(option.value))
    return "1";
  const auto& name = option.names.empty() ? option.placed : option.names.front();
  if (name == "--by")
    return "2030-10";
  return name.find("until") != std::string::npos || name == "--from" ? "2030-10-01" : "T171G";
}

/// Commands with all words that they require but for the book.
void gather(const CommandWords& command, std::vector<Words>& all) {
  for (const auto& below : command.commands)
    gather(below, all);
  const auto takes_book = std::ranges::any_of(command.options, [](const OptionWords& option) {
    return std::ranges::find(option.names, "--book") != option.names.end();
  });
  // These two make a book.
  if (!takes_book || command.name == "new" || command.name == "import")
    return;
  Words words;
  std::istringstream names(command.name);
  for (std::string name; names >> name;)
    words.push_back(name);
  for (const auto& option : command.options) {
    if (!option.required || std::ranges::find(option.names, "--book") != option.names.end())
      continue;
    if (!option.names.empty())
      words.push_back(option.names.front());
    words.push_back(something(option));
  }
  all.push_back(words);
}

std::vector<Words> commands_with_a_book() {
  std::ostringstream out;
  std::ostringstream err;
  CommandLine line(out, err);
  add_core_commands(line);
  std::vector<Words> all;
  gather(line.words(), all);
  return all;
}

std::string content(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

class NoBook : public testing::Test {
 protected:
  /// Refused, in words that name the file.
  void expect_refused(Words words, const fs::path& book) {
    words.insert(words.end(), {"--book", book.string()});
    const auto said = fmt::format("{}", fmt::join(words, " "));
    const auto ran = run_words(words);
    EXPECT_TRUE(ran.status == 1 || ran.status == 2) << said << '\n' << ran.out;
    EXPECT_EQ(ran.out, "") << said;
    EXPECT_NE(ran.err, "") << said;
    named_ += ran.err.find(book.filename().string()) != std::string::npos ? 1 : 0;
  }

  tests::Scratch scratch_;
  std::size_t named_ = 0; ///< refusals that name the file; the others found fault with a word
};

TEST_F(NoBook, ThatIsNotThereIsNotMade) {
  const auto commands = commands_with_a_book();
  ASSERT_GT(commands.size(), 80U);
  const auto book = scratch_.at("nowhere.coneline");
  for (const auto& words : commands)
    expect_refused(words, book);
  EXPECT_GT(named_, commands.size() * 8 / 10);
  EXPECT_FALSE(fs::exists(book));
  EXPECT_TRUE(fs::is_empty(book.parent_path())) << "not even a folder for copies";
}

TEST_F(NoBook, ThatIsAnotherFileIsLeftAsItIs) {
  const auto book = scratch_.at("letter.coneline");
  std::ofstream(book) << "Dear friend, the cones have come loose.\n";
  const auto before = content(book);
  const auto commands = commands_with_a_book();
  for (const auto& words : commands)
    expect_refused(words, book);
  EXPECT_GT(named_, commands.size() * 8 / 10);
  EXPECT_EQ(content(book), before);
  EXPECT_EQ(std::distance(fs::directory_iterator(book.parent_path()), {}), 1);
}

} // namespace
} // namespace coneline::commands
