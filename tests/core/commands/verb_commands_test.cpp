// SPDX-License-Identifier: GPL-3.0-or-later
// The whole line by commands: from the pollen to the plant that is sold, each verb with what it
// moves, and each refusal without a trace.
#include "core/work/verb_done.h"
#include "tests/core/commands/with_nursery.h"

#include <filesystem>
#include <fstream>
#include <map>

namespace coneline::commands {
namespace {

using Words = std::vector<std::string>;

class VerbCommands : public WithNursery {
 protected:
  VerbCommands() {
    mother_ = plant_code(nursery_.plant("Grey Lady", book::Sex::female));
    bench_ = entered({"enter", "place", "Bench", "--length", "3000", "--width", "1000"});
    entered({"enter", "pot", "5 L", "--litres", "5", "--length", "200"});
  }

  std::string plant_code(book::PlantId id) {
    return nursery_.ask(
        [&](store::Reading& reading) { return reading.registers().plant(id).code.text(); });
  }
  /// The document of a command that has to go well.
  Json done(Words words) {
    words.emplace_back("--json");
    EXPECT_EQ(run(words), 0) << words[0] << '\n' << err_.str();
    return json();
  }
  std::string entered(const Words& words) { return done(words)["as"]; }
  /// The first code that it made.
  std::string made(const Words& words) { return done(words)["made"][0]; }
  void expect_refused(const Words& words, const std::string& says, int status = 1) {
    const auto before = entries();
    EXPECT_EQ(run(words), status) << words[0] << '\n' << out_.str();
    EXPECT_NE(err_.str().find(says), std::string::npos) << err_.str();
    EXPECT_EQ(out_.str(), "");
    EXPECT_EQ(entries(), before) << "something was written";
  }
  std::size_t entries() {
    return nursery_.ask([](store::Reading& reading) { return reading.entries().size(); });
  }
  /// What a lot holds, by the word of the state.
  std::map<std::string, std::int64_t> holds(const std::string& code) {
    return nursery_.ask([&](store::Reading& reading) {
      std::map<std::string, std::int64_t> all;
      const auto lot = reading.lot(Code::parse(code).value()).value();
      for (const auto& [account, count] : reading.balances_of(lot.id))
        all[std::string(book::word(account.state))] = count;
      return all;
    });
  }

  std::string mother_;
  std::string bench_;
};

TEST_F(VerbCommands, FromTheConeToTheTray) {
  const auto cone = made({"pollinate", mother_, "--pollen", "L171X=0.5", "--on", "2024-06-01"});
  done({"pollinate", cone, "--pollen", "L171X", "--unknown-father", "--method", "wet", "--on",
        "2024-06-03"});
  expect_refused({"pollinate", cone, "--pollen", "L171X=much", "--on", "2024-06-05"},
                 "'much' is no number");
  expect_refused({"pollinate", cone, "--pollen", absent(Kind::pollen), "--on", "2024-06-05"},
                 absent(Kind::pollen));
  expect_refused({"pollinate", cone, "--method", "by moonlight", "--on", "2024-06-05"},
                 "by moonlight");
  expect_refused({"harvest", cone, "--seeds", "-1", "--on", "2025-06-01"}, "this is -1");
  const auto batch = made({"harvest", cone, "--seeds", "500", "--on", "2025-06-01"});
  EXPECT_EQ(holds(batch).at("unsorted"), 500);
  done({"clean", batch, "--soak-days", "3", "--lost", "4", "--on", "2025-06-04"});
  done({"water", batch, "--on", "2025-06-05"});
  expect_refused({"water", absent(Kind::batch), "--on", "2025-06-05"}, absent(Kind::batch));
  done(
      {"sort", batch, "--test", "float", "--filled", "400", "--empty", "90", "--on", "2025-06-06"});
  expect_refused({"sort", batch, "--test", "guess", "--filled", "1", "--on", "2025-06-06"},
                 "guess");
  expect_refused({"sort", batch, "--filled", "7", "--on", "2025-06-06"}, "6 'unsorted'");
  done({"open", batch, "--from", "judged empty", "--opened", "10", "--filled", "1", "--on",
        "2025-06-07"});
  expect_refused({"open", batch, "--opened", "3", "--filled", "4", "--on", "2025-06-07"},
                 "4 filled of 3 opened: 1 too many");
  done({"store", batch, "--in", "box of dry perlite", "--celsius", "20", "--ready-from",
        "2025-09-01", "--ready-to", "2025-12-01", "--place", bench_, "--on", "2025-06-08"});
  expect_refused({"store", batch, "--in", "box", "--ready-from", "soon", "--on", "2025-06-08"},
                 "soon");
  done({"recheck", batch, "--dead", "2", "--state", "judged filled", "--next", "2025-08-01", "--on",
        "2025-07-01"});
  expect_refused({"recheck", batch, "--dead", "1", "--on", "2025-07-02"}, "Say which");
  expect_refused({"recheck", batch, "--dead", "1", "--state", "leef", "--on", "2025-07-02"},
                 "--state: 'leef' is no state of a batch. Use one of: unsorted, judged filled, "
                 "judged empty");
  expect_refused({"show", cone}, "'coneline tell " + cone + "' tells of it.");
  const auto sown = done({"sow", batch, "--seeds", "120", "--trays", "3", "--tray", "tray of 50",
                          "--mix", "cycad mix", "--place", bench_, "--on", "2025-09-01"});
  ASSERT_EQ(sown["made"].size(), 3U);
  for (const auto& tray : sown["made"])
    EXPECT_EQ(holds(tray).at("sown"), 40);
  expect_refused({"sow", batch, "--seeds", "10", "--tray", "no such tray", "--on", "2025-09-02"},
                 "no such tray");
  const auto held = holds(batch);
  // 500 harvested = 4 lost + 10 opened + 2 dead + 120 sown + what is still in the batch.
  EXPECT_EQ(held.at("unsorted") + held.at("judged filled") + held.at("judged empty"), 364);
  EXPECT_EQ(run({"check"}), 0) << out_.str();
}

TEST_F(VerbCommands, PlacesAndPlantsAreKnownByTheirNames) {
  const auto cone = made({"pollinate", "Grey Lady", "--pollen", "L171X", "--on", "2024-06-01"});
  const auto batch = made({"harvest", cone, "--seeds", "50", "--on", "2025-06-01"});
  const auto tray = made({"sow", batch, "--seeds", "20", "--tray", "tray of 50", "--place", "Bench",
                          "--on", "2025-07-01"});
  entered({"enter", "place", "Cool bench"});
  const auto moved = done({"move", tray, "--to", "Cool bench", "--on", "2025-07-02"});
  EXPECT_NE(moved["told"].get<std::string>().find("Cool bench"), std::string::npos) << moved;
  expect_refused({"move", tray, "--to", "Bemch", "--on", "2025-07-03"},
                 "'Bemch' is no code. Is Bench (" + bench_ + ") meant?");
  entered({"enter", "place", "Grey Lady"});
  expect_refused({"move", tray, "--to", "Grey Lady", "--on", "2025-07-03"},
                 "several are called 'Grey Lady': place ");
  expect_refused({"move", tray, "--to", bench_, "--on", "soon"}, "--on: 'soon' is no date");
}

TEST_F(VerbCommands, SayWhenNoCopyOfTheBookCouldBeMade) {
  std::filesystem::remove_all(nursery_.at("book.coneline.copies"));
  std::ofstream(nursery_.at("book.coneline.copies")) << "a file where the folder is to be";
  const auto cone = made({"pollinate", mother_, "--pollen", "L171X", "--on", "2024-06-01"});
  EXPECT_NE(err_.str().find("No copy of the book could be made"), std::string::npos) << err_.str();
  EXPECT_NE(err_.str().find("book.coneline.copies"), std::string::npos) << err_.str();
  EXPECT_EQ(run({"cones"}), 0);
  EXPECT_EQ(err_.str(), "") << "a look writes nothing and makes no copy";
}

TEST_F(VerbCommands, AHarvestIsCountedByWeightOrByHand) {
  const auto cone = made({"pollinate", mother_, "--pollen", "L171X", "--on", "2024-06-01"});
  EXPECT_EQ(run({"harvest", cone, "--seeds", "5", "--hundreds", "15,15", "--grams", "75"}), 2);
  EXPECT_EQ(run({"harvest", cone, "--grams", "75"}), 2) << "without the weighings";
  expect_refused({"harvest", cone, "--on", "2025-06-01"}, "the count of the seeds is missing", 2);
  expect_refused({"harvest", cone, "--seeds", "0", "--on", "2025-06-01"}, "in the note why");
  // 100 seeds weigh 15 g in the mean, so 750 g are 5,000 of them.
  const auto batch = made({"harvest", cone, "--hundreds", "15.0,15.2,14.8,15.1,14.9,15.0,15.3,14.7",
                           "--grams", "750", "--on", "2025-06-01"});
  EXPECT_EQ(holds(batch).at("unsorted"), 5000);
}

TEST_F(VerbCommands, SeedAndPlantsComeFromElsewhere) {
  const auto seed = made(
      {"buy-in", "Cycas revoluta", "--from", "Seed house", "--count", "100", "--on", "2025-03-01"});
  EXPECT_EQ(seed[0], 'B');
  EXPECT_EQ(holds(seed).at("unsorted"), 100);
  const auto plants = made({"buy-in", "Cycas revoluta", "--from", "A friend", "--count", "3",
                            "--pot", "1 L", "--place", bench_, "--on", "2025-03-02"});
  EXPECT_EQ(plants[0], 'G');
  EXPECT_EQ(holds(plants).at("plant"), 3);
  expect_refused(
      {"buy-in", "Cycas revoluta", "--from", "X", "--count", "3", "--place", absent(Kind::place)},
      absent(Kind::place));
  expect_refused({"buy-in", "Cycas revoluta", "--from", "X", "--count", "0"},
                 "a movement of nothing");
}

TEST_F(VerbCommands, FromTheTrayToTheWayOut) {
  const auto cone = nursery_.cone(nursery_.plant("Second", book::Sex::female));
  const auto lot = nursery_.sow(nursery_.harvest(cone, "2025-01-10", 100), "2025-02-01", 50);
  const auto tray = nursery_.lot_of(lot).code.text();
  done({"inspect", tray, "--roots", "20", "--leaves", "0", "--on", "2025-04-01"});
  done({"inspect", tray, "--leaves", "12", "--dead", "3", "--on", "2025-05-01"});
  expect_refused({"inspect", tray, "--roots", "-2", "--on", "2025-05-02"}, "this is -2");
  expect_refused({"inspect", tray, "--roots", "28", "--on", "2025-05-02"},
                 "27 'sown' on 2025-05-02, and 28");
  const auto group = made({"pot", tray, "--count", "10", "--pot", "1 L", "--mix", "cycad mix",
                           "--place", bench_, "--on", "2025-06-01"});
  EXPECT_EQ(holds(group).at("plant"), 10);
  EXPECT_EQ(holds(tray).at("leaf"), 2);
  done({"pot", tray, "--state", "root", "--count", "1", "--pot", "1 L", "--into", group, "--on",
        "2025-06-02"});
  EXPECT_EQ(holds(group).at("plant"), 11);
  expect_refused({"pot", group, "--pot", "1 L", "--on", "2025-06-03"}, "pot-on");
  expect_refused({"pot-on", tray, "--pot", "5 L", "--on", "2025-06-03"},
                 "is a tray. Trays are potted with 'pot'");
  expect_refused({"pot", tray, "--state", "flower", "--pot", "1 L", "--on", "2025-06-03"},
                 "flower");
  const auto large = made({"pot-on", group, "--count", "6", "--pot", "5 L", "--on", "2026-06-01"});
  EXPECT_EQ(holds(large).at("plant"), 6);
  EXPECT_EQ(holds(group).at("plant"), 5);
  done({"move", tray, group, large, "--to", bench_, "--on", "2026-06-02"});
  expect_refused({"move", tray, "--to", absent(Kind::place), "--on", "2026-06-03"},
                 absent(Kind::place));
  expect_refused({"move", absent(Kind::tray), "--to", bench_, "--on", "2026-06-03"},
                 absent(Kind::tray));
  done({"lose", tray, "--count", "1", "--state", "root", "--on", "2026-06-04"});
  expect_refused({"lose", tray, "--count", "1", "--on", "2026-06-04"}, "Say which");
  done({"discard", tray, "--count", "27", "--state", "sown", "--on", "2026-06-05"});
  const auto sale = done({"sell", large, "--count", "4", "--buyer", "A garden", "--cents", "40000",
                          "--on", "2026-06-06"});
  EXPECT_EQ(holds(large).at("plant"), 2);
  done({"plant-out", large, "--count", "1", "--on", "2026-06-07"});
  expect_refused({"sell", large, "--count", "2", "--on", "2026-06-08"},
                 "1 'plant' on 2026-06-08, and 2");
  done({"recount", group, "--counted", "4", "--on", "2026-06-09"});
  EXPECT_EQ(holds(group).at("plant"), 4);
  EXPECT_EQ(holds(group).at("unexplained"), 1);
  const auto entry = std::to_string(sale["entries"][0].get<std::int64_t>());
  done({"reverse", entry, "--note", "the buyer did not come"});
  EXPECT_EQ(holds(large).at("plant"), 5);
  expect_refused({"reverse", entry}, "was reversed already");
  EXPECT_EQ(run({"check"}), 0) << out_.str();
}

TEST_F(VerbCommands, PollenIsWatchedCollectedTestedAndThrownAway) {
  const auto male = plant_code(nursery_.plant("Tall", book::Sex::male));
  done({"watch-male-cone", male, "tight", "--on", "2025-01-01"});
  done({"watch-male-cone", male, "shedding", "--on", "2025-01-20"});
  expect_refused({"watch-male-cone", male, "blue", "--on", "2025-01-21"}, "blue");
  expect_refused({"watch-male-cone", absent(Kind::plant), "shedding", "--on", "2025-01-21"},
                 absent(Kind::plant));
  const auto lot = made(
      {"collect-pollen", male, "--ml", "6", "--store", "refrigerator, dry", "--on", "2025-01-22"});
  EXPECT_EQ(lot[0], 'L');
  done({"collect-pollen", lot, "--ml", "2", "--on", "2025-01-23"});
  done({"test-pollen", lot, "--counted", "200", "--germinated", "150", "--conditions",
        "10 % sucrose, 24 h", "--on", "2025-01-24"});
  expect_refused({"test-pollen", lot, "--counted", "10", "--germinated", "11"},
                 "11 germinated of 10 counted");
  done({"discard-pollen", lot, "--ml", "3", "--on", "2025-01-25"});
  const auto pollen = done({"pollen"});
  const auto& rows = pollen["pollen"];
  const auto row =
      std::ranges::find_if(rows, [&](const auto& each) { return each["code"] == lot; });
  ASSERT_NE(row, rows.end()) << pollen.dump();
  EXPECT_EQ((*row)["left"], 5) << "6 + 2 - 3 ml: " << pollen.dump();
  expect_refused({"discard-pollen", lot, "--ml", "9", "--on", "2025-01-26"},
                 "has 5 ml on 2025-01-26, 4 ml less than wanted");
  done({"discard-pollen", lot, "--on", "2025-01-27"});
  for (const auto* verb : {"collect-pollen", "discard-pollen"})
    expect_refused({verb, absent(Kind::pollen)}, absent(Kind::pollen));
  expect_refused({"test-pollen", absent(Kind::pollen), "--counted", "9", "--germinated", "1"},
                 absent(Kind::pollen));
}

TEST_F(VerbCommands, APlantsRowIsCorrectedAndItsPapersKept) {
  done({"correct",        mother_,       "--name",
        "Grey Dame",      "--certainty", "likely",
        "--origin",       "a friend",    "--acquired",
        "1999-05-02",     "--place",     "Bench",
        "--remark",       "leans",       "--taxon",
        "Cycas revoluta", "--add-paper", "import permit=12/345,2019-05-02,the authority",
        "--add-paper",    "receipt=7",   "--on",
        "2025-01-01"});
  const auto row = [&] {
    return nursery_.ask([&](store::Reading& reading) {
      const auto registers = reading.registers();
      return *book::coded(registers.plants, Code::parse(mother_).value());
    });
  };
  EXPECT_EQ(row().name, "Grey Dame");
  ASSERT_EQ(row().papers.size(), 2U);
  EXPECT_EQ(row().papers[0].authority, "the authority");
  EXPECT_EQ(row().papers[0].issued, tests::day("2019-05-02"));
  EXPECT_EQ(row().papers[1].number, "7");
  done({"correct", mother_, "--remove-paper", "2", "--add-paper", "permit=9,2020-01-01", "--on",
        "2025-01-02"});
  ASSERT_EQ(row().papers.size(), 2U);
  EXPECT_EQ(row().papers[1].kind, "permit");
  expect_refused({"correct", mother_, "--remove-paper", "3"}, "no paper 3 of 2");
  expect_refused({"correct", mother_, "--add-paper", "permit"}, "kind=number", 2);
  expect_refused({"correct", mother_, "--add-paper", "permit=9,someday"}, "someday");
  expect_refused({"correct", mother_, "--taxon", "No such"}, "No such");
  expect_refused({"correct", mother_, "--place", "Nowhere"}, "Nowhere");
  expect_refused({"correct", mother_, "--acquired", "2019-02-30"}, "2019-02-30");
  expect_refused({"correct", mother_, "--sex", "both"}, "both");
  expect_refused({"correct", absent(Kind::plant), "--name", "X"}, absent(Kind::plant));
  EXPECT_EQ(row().papers.size(), 2U);
}

TEST_F(VerbCommands, ALabelIsWantedAndAPlantMeantToBeMoved) {
  done({"plan-move", mother_, "--to", bench_, "--on", "2025-01-02"});
  expect_refused({"plan-move", mother_, "--to", absent(Kind::place)}, absent(Kind::place));
  expect_refused({"plan-move", absent(Kind::plant), "--to", bench_}, absent(Kind::plant));
  const auto cone = made({"pollinate", mother_, "--pollen", "L171X", "--on", "2024-06-01"});
  done({"want-label", cone, "--on", "2025-01-03"});
  expect_refused({"want-label", absent(Kind::tray)}, absent(Kind::tray));
  expect_refused({"want-label", "not a code"}, "not a code");
}

TEST_F(VerbCommands, AVerbNeedsABookAndADay) {
  EXPECT_EQ(run({"inspect", absent(Kind::tray), "--on", "2025-02-30"}), 1);
  EXPECT_NE(err_.str().find("2025-02-30"), std::string::npos);
  const auto ran = run_words(
      {"inspect", absent(Kind::tray), "--book", nursery_.at("no such.coneline").string()});
  EXPECT_EQ(ran.status, 1);
  EXPECT_NE(ran.err.find("no such.coneline"), std::string::npos) << ran.err;
}

} // namespace
} // namespace coneline::commands
