// SPDX-License-Identifier: GPL-3.0-or-later
// What was entered wrongly is put right by command: only what is given changes, the answer says
// what was and what is, and the book goes out and comes in with it.
#include "tests/core/commands/with_nursery.h"
#include "tests/core/exchange/small_season.h"

namespace coneline::commands {
namespace {

using Words = std::vector<std::string>;

class AmendCommand : public WithNursery {
 protected:
  AmendCommand() { nursery_.put_route(); }

  Json done(Words words) {
    words.emplace_back("--json");
    EXPECT_EQ(run(words), 0) << words[0] << '\n' << err_.str();
    return json();
  }
  std::string told(Words words) {
    words.insert(words.begin(), "amend");
    return done(words)["told"];
  }
  void refused(Words words, const std::string& says, int status = 1) {
    words.insert(words.begin(), "amend");
    const auto before = entries();
    EXPECT_EQ(run(words), status) << words[1] << '\n' << out_.str();
    EXPECT_NE(err_.str().find(says), std::string::npos) << err_.str();
    EXPECT_EQ(entries(), before) << "something was written";
  }
  std::size_t entries() {
    return nursery_.ask([](store::Reading& reading) { return reading.entries().size(); });
  }
  book::Registers registers() {
    return nursery_.ask([](store::Reading& reading) { return reading.registers(); });
  }
};

TEST_F(AmendCommand, APotByWhatIsGiven) {
  EXPECT_EQ(told({"pot", "1 L", "--litres", "1.2", "--on", "2026-01-02", "--who", "Ana"}),
            "litres of 1 L: '1.2' instead of '1'");
  const auto pot = registers().pot(nursery_.pot());
  EXPECT_EQ(pot.litres, 1.2);
  EXPECT_EQ(pot.length_mm, 110);
  EXPECT_EQ(pot.source, "test");
  told({"pot", "1 L", "--length", "120"});
  EXPECT_EQ(registers().pot(nursery_.pot()).width_mm, 120) << "of a round one both";
  told({"pot", "tray of 50", "--length", "410", "--cells", "45", "--name", "tray of 45"});
  const auto tray = registers().pot(nursery_.tray_pot());
  EXPECT_EQ(tray.width_mm, 300);
  EXPECT_EQ(tray.cells, 45);
  EXPECT_EQ(tray.name, "tray of 45");
  refused({"pot", "1 L"}, "nothing changes on 1 L");
  refused({"pot", "1 L", "--litres", "-1"}, "litres of -1");
  refused({"pot", "1 L", "--shape", "oval"}, "oval");
  refused({"pot", "1 L", "--cells", "2147483647"}, "cells of 2147483647");
  refused({"pot", "tray of 46", "--cells", "46"}, "The book has 'tray of 45'");
  refused({"pot", "1 L", "--litres", "much"}, "much", 2);
}

TEST_F(AmendCommand, ATaxonWithTheSourceOfWhatIsGiven) {
  told({"taxon", "Cycas revoluta", "--ripening", "6-9", "--float-test", "reliable", "--source",
        "own experience"});
  auto taxon = registers().taxa[0];
  EXPECT_EQ(taxon.ripening.value->high, 9);
  EXPECT_EQ(taxon.ripening.source, "own experience");
  EXPECT_EQ(taxon.float_test.source, "own experience");
  EXPECT_EQ(taxon.light.source, "") << "nothing was said of it";
  told({"taxon", "Cycas revoluta", "--ripening", "7-9", "--leaf", "green"});
  taxon = registers().taxa[0];
  EXPECT_EQ(taxon.ripening.value->low, 7);
  EXPECT_EQ(taxon.ripening.source, "own experience") << "it stays";
  told({"taxon", "Cycas revoluta", "--source", "a book"});
  taxon = registers().taxa[0];
  EXPECT_EQ(taxon.light.source, "a book");
  EXPECT_EQ(taxon.ripening.source, "a book");
  told({"taxon", "Cycas revoluta", "--ripening", ""});
  EXPECT_FALSE(registers().taxa[0].ripening.value);
  refused({"taxon", "Cycas revoluta", "--ripening", "1e300-1e301"}, "at most 1200");
  refused({"taxon", "cycas revoluta", "--leaf", "blue"}, "The book has 'Cycas revoluta'");
  refused({"taxon", "Cycas revoluta", "--frost", "snow"}, "snow");
}

TEST_F(AmendCommand, AMixARouteAndAPlace) {
  EXPECT_EQ(told({"mix", "cycad mix", "--part", "perlite=5", "--part", "peat=4"}),
            "parts of cycad mix: 'perlite=5, peat=4' instead of 'perlite=4, peat=4'");
  EXPECT_EQ(registers().mixes[0].shrink, 0.2);
  refused({"mix", "cycad mix", "--part", "cycad mix=1"}, "contains itself");
  refused({"mix", "cycad mix", "--part", "=1"}, "names no part");

  EXPECT_EQ(told({"route", "Cycas revoluta", "--change-step", "2=1 L:cycad mix:3-8:0.95:sun"}),
            "step 2 of Cycas revoluta: '1 L:cycad mix:3-8:0.95:sun, test' instead of '1 L:cycad "
            "mix:3-6:0.9:part shade, test'");
  told({"route", "Cycas revoluta", "--germination", "0.6", "--germination-months", "1-8"});
  EXPECT_EQ(registers().routes[0].germination_months.high, 8);
  EXPECT_EQ(registers().routes[0].steps.size(), 2U);
  told({"route", "Cycas revoluta", "--step", "tray of 50:cycad mix:3-6:0.9:shade", "--source",
        "own"});
  ASSERT_EQ(registers().routes[0].steps.size(), 1U);
  EXPECT_EQ(registers().routes[0].steps[0].source, "own");
  refused({"route", "Cycas revoluta", "--change-step", "2=1 L:cycad mix:3-8:0.95:sun"},
          "there is no step 2 of 1");
  refused({"route", "Cycas revoluta", "--change-step", "1 L:cycad mix:3-8:0.95:sun"},
          "the turn of a step", 2);
  refused({"route", "Cycas revoluta", "--step", "1 L:cycad mix:6-1e9:0.95:sun"}, "it has no end");
  refused({"route", "Cycas revoluta", "--step", "1 L:cycad mix::0.95:sun"}, "says no months", 2);

  const std::string house = done({"enter", "place", "House", "--kind", "house"})["as"];
  done({"enter", "place", "Bench", "--length", "3000", "--width", "1200"});
  told({"place", "Bench", "--within", "House", "--walk", "3", "--name", "Long bench"});
  const auto bench = *book::named(registers().places, "Long bench");
  EXPECT_EQ(bench.walk, 3);
  EXPECT_EQ(bench.length_mm, 3000);
  ASSERT_TRUE(bench.within);
  EXPECT_EQ(registers().place(*bench.within).code.text(), house);
  refused({"place", house, "--kind", "bay"}, "1 place within it");
  refused({"place", "Long bench", "--length", "4"}, "4 m are 4000");
  told({"place", "Long bench", "--within", ""});
  EXPECT_FALSE(book::named(registers().places, "Long bench")->within);
  EXPECT_EQ(run({"check"}), 0) << out_.str();
}

TEST_F(AmendCommand, WhatStoodBeforeGoesOutAndComesIn) {
  told({"pot", "1 L", "--litres", "1.2", "--on", "2026-01-02", "--note", "weighed"});
  told({"route", "Cycas revoluta", "--germination", "0.6", "--on", "2026-01-02"});
  const auto out = nursery_.at("out").string();
  const auto again = nursery_.at("again").string();
  const auto other = nursery_.at("other.coneline").string();
  ASSERT_EQ(run({"export", out}), 0) << err_.str();
  ASSERT_EQ(RunsCommands::run({"import", "--book", other, out}), 0) << err_.str();
  ASSERT_EQ(RunsCommands::run({"export", "--book", other, again}), 0) << err_.str();
  EXPECT_EQ(tests::contents(out), tests::contents(again));
  EXPECT_NE(tests::contents(out)["entries.csv"].find("litres '1.2' instead of '1'. weighed"),
            std::string::npos);
  EXPECT_EQ(RunsCommands::run({"check", "--book", other}), 0) << out_.str();
}

TEST_F(AmendCommand, WhatStoodBeforeIsTold) {
  EXPECT_EQ(done({"amended"})["amended"], Json::array());
  EXPECT_EQ(run({"amended"}), 0);
  EXPECT_NE(out_.str().find("Nothing was amended"), std::string::npos) << out_.str();
  told(
      {"pot", "1 L", "--litres", "1.2", "--on", "2026-01-02", "--who", "Ana", "--note", "weighed"});
  const auto mother = nursery_.plant("Grey Lady", book::Sex::female);
  const auto code =
      nursery_.ask([&](store::Reading& r) { return r.registers().plant(mother).code.text(); });
  done({"correct", code, "--name", "Grey Dame", "--on", "2026-01-03"});
  const auto all = done({"amended"})["amended"];
  ASSERT_EQ(all.size(), 2U);
  EXPECT_EQ(all[0]["what"], "pot '1 L': litres '1.2' instead of '1'. weighed");
  EXPECT_EQ(all[0]["who"], "Ana");
  EXPECT_EQ(all[0]["date"], "2026-01-02");
  EXPECT_EQ(all[1]["what"], "plant " + code + ": name 'Grey Dame' instead of 'Grey Lady'");
  EXPECT_EQ(run({"amended"}), 0);
  EXPECT_NE(out_.str().find("litres '1.2' instead of '1'"), std::string::npos) << out_.str();
}

TEST_F(AmendCommand, EnteringAgainNamesIt) {
  const std::vector<std::pair<Words, std::string>> again{
      {{"pot", "1 L", "--litres", "1", "--length", "110"}, "coneline amend pot '1 L'"},
      {{"mix", "cycad mix", "--part", "sand=1"}, "coneline amend mix 'cycad mix'"},
      {{"taxon", " Cycas  revoluta "}, "coneline amend taxon 'Cycas revoluta'"},
      {{"taxon", "cycas revoluta"}, "stands in the book as 'Cycas revoluta'"},
      {{"route", "Cycas revoluta", "--germination", "0.5", "--germination-months", "1-2", "--step",
        "1 L:cycad mix:1-2:0.9:sun"},
       "coneline amend route 'Cycas revoluta'"}};
  for (auto [words, says] : again) {
    words.insert(words.begin(), "enter");
    EXPECT_EQ(run(words), 1) << words[1];
    EXPECT_NE(err_.str().find(says), std::string::npos) << err_.str();
  }
}

} // namespace
} // namespace coneline::commands
