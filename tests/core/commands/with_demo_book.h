// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The book of the invented nursery, which has several seasons behind it, and commands run on it.

#include "core/exchange/import_season.h"
#include "core/store/book.h"
#include "tests/core/commands/run_command.h"
#include "tests/core/store/scratch.h"

namespace coneline::commands {

constexpr const char* demo_day = "2026-11-20";

/// Each test takes the season in for itself: it runs as a process of its own.
class DemoBook : public testing::Test {
 protected:
  DemoBook() {
    auto book = store::Book::make(own_.at("book.coneline"),
                                  {"Demo", 37, true, Date::parse("2023-01-01").value()})
                    .value();
    const auto came = exchange::import_season(CONELINE_DEMO_SEASON, book, exchange::Import::write);
    if (!came || !came->faults.none())
      throw std::runtime_error("the demo's season does not come in");
  }

  Ran run(std::vector<std::string> words) const {
    words.insert(words.end(), {"--book", own_.at("book.coneline").string()});
    return run_words(std::move(words));
  }
  Json json(std::vector<std::string> words) const {
    words.emplace_back("--json");
    const auto ran = run(words);
    EXPECT_EQ(ran.status, 0) << words[0] << '\n' << ran.err;
    return ran.json();
  }
  /// Refused with the status and words that say why, nothing on standard output.
  void expect_refused(const std::vector<std::string>& words, int status,
                      const std::string& says) const {
    const auto ran = run(words);
    EXPECT_EQ(ran.status, status) << words[0] << '\n' << ran.out;
    EXPECT_EQ(ran.out, "") << words[0];
    EXPECT_NE(ran.err.find(says), std::string::npos) << ran.err;
  }

  tests::Scratch own_;
};

} // namespace coneline::commands
