// SPDX-License-Identifier: GPL-3.0-or-later
// A round and a label's answer through the command line.
#include "core/work/round.h"
#include "core/work/sow.h"
#include "tests/core/commands/run_command.h"
#include "tests/core/store/first_cone.h"

#include <algorithm>
#include <fstream>

namespace coneline::commands {
namespace {

class RoundCommands : public testing::Test {
 protected:
  RoundCommands() {
    auto made = tests::make_first_cone(scratch.at("t.coneline"), first);
    trays = work::sow(made, {first.batch,
                             book::State::unsorted,
                             Count::sure(80),
                             2,
                             "seed tray",
                             "gritty",
                             first.bench,
                             {tests::day("2026-02-10"), "", ""}})
                ->made;
    book = " --book " + scratch.at("t.coneline").string();
  }
  Json run(const std::string& arguments) {
    const auto ran = run_command(arguments + book + " --json");
    EXPECT_EQ(ran.status, 0) << arguments << '\n' << ran.err;
    return ran.status == 0 ? ran.json() : Json();
  }
  std::string scan(const Code& tray, const std::string& counts) const {
    return "round scan " + tray.text() + " " + counts + " --on 2026-03-10";
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  std::vector<Code> trays;
  std::string book;
};

TEST_F(RoundCommands, WalkARoundToItsEnd) {
  expect_refused(scan(trays[0], "") + book, 1); // no round is open
  run("round begin --place " + first.bench.text() + " --on 2026-03-10");
  run(scan(trays[0], "--roots 2 --dead 1"));
  expect_refused(scan(trays[1], "--roots 999") + book, 1);
  const auto going = run("round show");
  EXPECT_EQ(going["seen"], 1) << "a scan that was refused left something";
  EXPECT_TRUE(going["in_hand"].is_null());
  EXPECT_EQ(going["next"], trays[1].text());
  EXPECT_NE(run_command("round show" + book).out.find("to come"), std::string::npos);
  run("round undo --on 2026-03-10");
  EXPECT_EQ(run("round show")["counted"], 0);
  EXPECT_TRUE(run("round show")["in_hand"].is_null());
  run(scan(trays[1], ""));
  const auto end = run("round end --on 2026-03-10");
  EXPECT_EQ(end["counted"], 0) << "what was taken back stays taken back";
  EXPECT_EQ(end["found"]["roots"], 0);
  EXPECT_TRUE(end["entries"].empty());
  EXPECT_EQ(end["not_found"], 0);
  EXPECT_NE(run_command("round show" + book).out.find("0 not found"), std::string::npos);
}

/// What was tapped in the window and not entered is shown, and entered where the round ends.
TEST_F(RoundCommands, TellWhatIsInTheHandAndWhatTheEndEnters) {
  run("round begin --place " + first.bench.text() + " --on 2026-03-10");
  run(scan(trays[0], ""));
  EXPECT_EQ(run("round show")["not_entered"]["roots"], 0);
  {
    auto window = store::Book::open(scratch.at("t.coneline"), store::Access::write).value();
    const auto id =
        window.read([](store::Reading& reading) { return work::open_round(reading)->id; }).value();
    ASSERT_TRUE(work::tap_in_round(window, id, {3, 1, 0}));
  }
  EXPECT_EQ(run("round show")["not_entered"]["roots"], 3);
  const auto shown = run_command("round show" + book).out;
  EXPECT_NE(shown.find("In the hand: " + trays[0].text() + ", not entered yet: 3 roots, 1 leaf"),
            std::string::npos)
      << shown;
  const auto end = run("round end --on 2026-03-10");
  EXPECT_EQ(end["found"]["roots"], 3);
  ASSERT_EQ(end["entries"].size(), 1U);
  EXPECT_EQ(end["told"],
            "3 new roots, 1 first leaf in " + trays[0].text() + "; the round has ended");
}

TEST_F(RoundCommands, TakeALogWholeOrNotAtAll) {
  const auto log = scratch.at("log.csv");
  std::ofstream(log) << "2026-03-01 08:00:00," << trays[0].text() << "\nnonsense\n";
  const auto command = "round log " + log.string() + book;
  expect_refused(command, 1);
  EXPECT_TRUE(run("tell " + trays[0].text() + " --on 2026-03-10")["last_seen"].is_null());
  EXPECT_EQ(run_command(command + " --leave-bad-lines").status, 1) << "the bad line is still told";
  EXPECT_EQ(run("tell " + trays[0].text() + " --on 2026-03-10")["last_seen"], "2026-03-01");
}

/// Seen on the bench: one that has no place yet, one nowhere in the book, and a code of no lot.
TEST_F(RoundCommands, ALogProposesMovesThatAreEnteredOnlyWhenAccepted) {
  const auto other = run("enter place Far --length 1000 --width 500")["as"].get<std::string>();
  const auto log = scratch.at("log.csv");
  std::ofstream(log) << "2026-03-01 08:00:00," << other << "\n2026-03-01 08:01:00,"
                     << trays[0].text() << "\n2026-03-01 08:02:00,"
                     << Code::of(Kind::tray, 17, 99).value().text() << "\n";
  const auto command = "round log " + log.string();
  const auto proposed = run(command);
  ASSERT_EQ(proposed["moves"].size(), 1U);
  EXPECT_EQ(proposed["moves"][0]["code"], trays[0].text());
  EXPECT_EQ(proposed["moves"][0]["to"], other);
  ASSERT_EQ(proposed["seen"].size(), 1U);
  EXPECT_EQ(proposed["seen"][0]["place"], other);
  ASSERT_EQ(proposed["not_placed"].size(), 1U);
  EXPECT_TRUE(proposed["moved"].empty());
  const auto place = [&] { return run("show " + trays[0].text())["place"]; };
  const auto before = place();
  const auto told = run_command(command + book);
  EXPECT_NE(told.out.find("1 seen, "), std::string::npos) << told.out;
  EXPECT_NE(told.out.find("1 moves proposed, 1 not placed"), std::string::npos) << told.out;
  EXPECT_NE(told.out.find("To enter the moves: --accept"), std::string::npos) << told.out;
  EXPECT_EQ(place(), before);
  const auto accepted = run_command(command + " --accept" + book);
  EXPECT_EQ(accepted.status, 0) << accepted.err;
  EXPECT_NE(place(), before);
  EXPECT_NE(place().dump().find("Far"), std::string::npos) << place();
}

TEST_F(RoundCommands, AnyLabelAnswers) {
  const auto tray = run("tell " + trays[0].text() + " --on 2026-03-10");
  EXPECT_EQ(tray["holds"]["sown"], 40);
  EXPECT_EQ(tray["line"].size(), 3U);
  EXPECT_EQ(tray["seed_parent"]["name"], "Mother");
  EXPECT_TRUE(tray["unknown_father"]) << "nobody noted a pollination";
  EXPECT_FALSE(tray["due"].empty());
  for (const auto& code : {first.father, first.cone, first.batch, first.bench})
    EXPECT_EQ(run("tell " + code.text() + " --on 2026-03-10")["code"], code.text());
  auto reversed = trays[0].text();
  std::ranges::reverse(reversed);
  for (const auto& wrong : {reversed, std::string("T999"), std::string("nonsense")})
    expect_refused("tell " + wrong + book, 1);
}

} // namespace
} // namespace coneline::commands
