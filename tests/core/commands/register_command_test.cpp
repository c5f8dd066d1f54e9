// SPDX-License-Identifier: GPL-3.0-or-later
// What lots refer to, entered by hand: what comes of it, and what is refused without a trace.
#include "tests/core/commands/with_nursery.h"

namespace coneline::commands {
namespace {

class EnterCommand : public WithNursery {
 protected:
  std::size_t rows() {
    const auto registers =
        nursery_.ask([](store::Reading& reading) { return reading.registers(); });
    return registers.taxa.size() + registers.places.size() + registers.pots.size() +
           registers.mixes.size() + registers.routes.size() + registers.plants.size() +
           registers.pollen_lots.size() + registers.cones.size();
  }
};

TEST_F(EnterCommand, EverythingThatARouteStandsOn) {
  const std::vector<std::vector<std::string>> all{
      {"taxon", "Encephalartos altensteinii", "--leaf", "green", "--light", "sun", "--frost",
       "light frost", "--float-test", "unreliable", "--ripening", "6-9", "--after-ripening", "6",
       "--source", "own"},
      {"place", "West house", "--kind", "house"},
      {"place", "West bench", "--within", "West house", "--length", "3000", "--width", "1200",
       "--light", "shade", "--walk", "7"},
      {"pot", "deep pot", "--litres", "2.5", "--shape", "rectangular", "--length", "120", "--width",
       "110"},
      {"mix", "coarse", "--part", "bark=4", "--part", "sand=1", "--shrink", "0.1", "--loss",
       "0.02"},
      {"route", "Encephalartos altensteinii", "--germination", "0.6", "--germination-months", "1-9",
       "--step", "deep pot:coarse:6-12:0.9:part shade", "--source", "own"},
      {"plant", "Encephalartos altensteinii", "--name", "Grey Lady", "--sex", "female",
       "--certainty", "likely", "--origin", "a friend", "--acquired", "1999-05-02", "--place",
       "West bench"}};
  for (auto words : all) {
    const auto before = rows();
    words.insert(words.begin(), "enter");
    ASSERT_EQ(run(words), 0) << words[1] << ": " << err_.str();
    EXPECT_EQ(rows(), before + 1) << words[1];
  }
  EXPECT_EQ(run({"check"}), 0) << out_.str();
}

TEST_F(EnterCommand, RefusesInWordsAndWritesNothing) {
  struct Refused {
    std::vector<std::string> words;
    int status;
    const char* says;
  };
  const std::vector<Refused> all{
      {{"taxon", "X", "--leaf", "pink"}, 1, "pink"},
      {{"taxon", "X", "--ripening", "12-9"}, 1, "12"},
      {{"taxon", "X", "--ripening", "nine"}, 1, "nine"},
      {{"taxon", ""}, 1, "without a name"},
      {{"place", "B", "--kind", "field"}, 1, "field"},
      {{"place", "B", "--within", "no such house"}, 1, "there is no place 'no such house'"},
      {{"place", "B", "--length", "-1"}, 1, "-1 × 0 mm"},
      {{"place", "B", "--length", "4"}, 1, "4 m are 4000"},
      {{"place", "B", "--walk", "2147483647"}, 1, "a turn of 2147483647"},
      {{"pot", "P", "--litres", "1", "--length", "100", "--cells", "2147483647"},
       1,
       "cells of 2147483647"},
      {{"pot", "1 l", "--litres", "1", "--length", "100"}, 1, "stands in the book as '1 L'"},
      {{"pot", "   ", "--litres", "1", "--length", "100"}, 1, "a pot without a name"},
      {{"mix", "M", "--part", "M=1"}, 1, "the mix 'M' contains itself"},
      {{"taxon", "X", "--ripening", "1e300-1e301"}, 1, "at most 1200"},
      {{"pot", "P", "--litres", "0", "--length", "100"}, 1, "litres of 0"},
      {{"pot", "P", "--litres", "1", "--length", "100", "--shape", "oval"}, 1, "oval"},
      {{"pot", "P", "--length", "100"}, 2, "litres"},
      {{"mix", "M", "--part", "bark"}, 2, "'bark' is not of the form name=number"},
      {{"mix", "M", "--part", "bark=much"}, 1, "much"},
      {{"mix", "M", "--part", "bark=0"}, 1, "a share of 'bark' of 0"},
      {{"mix", "M", "--part", "bark=1", "--shrink", "1"}, 1, "a shrink of 1"},
      {{"route", "no such taxon", "--germination", "0.6", "--germination-months", "1-9", "--step",
        "a:b:1:1:sun"},
       1,
       "there is no taxon"},
      {{"route", "Cycas revoluta", "--germination", "0.6", "--germination-months", "1-9", "--step",
        "a:b:1"},
       2,
       "has 3 parts"},
      {{"route", "Cycas revoluta", "--germination", "0.6", "--germination-months", "1-9", "--step",
        "no such pot:b:1:1:sun"},
       1,
       "there is no pot 'no such pot'"},
      {{"route", "Cycas revoluta", "--germination", "0.6", "--germination-months", "1-9", "--step",
        "1 L:cycad mix:6-1e9:0.9:sun"},
       1,
       "it has no end"},
      {{"plant", "no such taxon"}, 1, "no such taxon"},
      {{"plant", "Cycas revolta"}, 1, "The book has 'Cycas revoluta'"},
      {{"plant", "Cycas revoluta", "--sex", "both"}, 1, "both"},
      {{"plant", "Cycas revoluta", "--acquired", "2019-02-30"}, 1, "2019-02-30"},
      {{"plant", "Cycas revoluta", "--place", "nowhere"}, 1, "nowhere"},
      {{"pollen", absent(Kind::plant), "--collected", "2025-05-01"}, 1, "there is no plant"},
  };
  const auto before = rows();
  for (auto [words, status, says] : all) {
    words.insert(words.begin(), "enter");
    const auto said = fmt::format("{}", fmt::join(words, " "));
    EXPECT_EQ(run(words), status) << said << '\n' << out_.str() << err_.str();
    EXPECT_NE(err_.str().find(says), std::string::npos) << said << '\n' << err_.str();
    EXPECT_NE(err_.str(), "") << said;
  }
  EXPECT_EQ(rows(), before);
}

TEST_F(EnterCommand, ABookIsMadeOnceAndNeverOverAnother) {
  const auto path = nursery_.at("another.coneline").string();
  const auto make = [&](std::vector<std::string> words) {
    words.insert(words.begin(), "new");
    words.insert(words.end(), {"--book", path});
    return RunsCommands::run(std::move(words));
  };
  EXPECT_NE(make({"--name", "N", "--series", "9"}), 0) << "a series has two digits";
  EXPECT_NE(make({"--name", "N", "--hemisphere", "east"}), 0);
  for (const auto* blank : {"", "   "}) {
    EXPECT_EQ(make({"--name", blank}), 1);
    EXPECT_NE(err_.str().find("no name"), std::string::npos) << err_.str();
  }
  EXPECT_FALSE(std::filesystem::exists(path));
  ASSERT_EQ(make({"--name", "N", "--series", "42", "--hemisphere", "southern"}), 0) << err_.str();
  EXPECT_NE(out_.str().find("42"), std::string::npos);
  EXPECT_EQ(make({"--name", "N"}), 1);
}

} // namespace
} // namespace coneline::commands
