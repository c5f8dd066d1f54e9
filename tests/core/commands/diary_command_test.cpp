// SPDX-License-Identifier: GPL-3.0-or-later
// The diary through the command line: a season, the list, and the calendar out and in again.
#include "tests/core/commands/run_command.h"
#include "tests/core/store/first_cone.h"

#include <fstream>

namespace coneline::commands {
namespace {

class DiaryCommands : public testing::Test {
 protected:
  DiaryCommands() {
    static_cast<void>(tests::make_first_cone(scratch.at("t.coneline"), first));
    book = " --book " + scratch.at("t.coneline").string();
  }
  /// The answer as JSON; what fails is told.
  Json run(const std::string& arguments) {
    const auto ran = run_command(arguments + book + " --json");
    EXPECT_EQ(ran.status, 0) << arguments << '\n' << ran.err;
    return ran.status == 0 ? ran.json() : Json();
  }
  Json due(const std::string& more) { return run("due " + more)["due"]; }

  tests::Scratch scratch;
  tests::FirstCone first;
  std::string book;
};

TEST_F(DiaryCommands, ASeasonFromTheFirstLookToTheHarvest) {
  const auto father = first.father.text();
  run("watch-male-cone " + father + " removed --on 2026-05-01");
  const auto lot =
      run("collect-pollen " + father + " --ml 3 --store refrigerator --on 2026-05-02")["made"][0]
          .get<std::string>();
  run("test-pollen " + lot + " --counted 100 --germinated 62 --on 2026-05-03");
  const auto cone = run("enter cone " + first.mother.text() + " --first-seen 2026-05-03")["as"]
                        .get<std::string>();
  run("check-scales " + cone + " loose --fertile-scales 120 --on 2026-05-12");
  const auto list = due("--on 2026-05-12");
  EXPECT_TRUE(std::ranges::any_of(list, [&](const Json& each) {
    return each["code"] == cone && each["kind"] == "pollinate";
  })) << list;
  for (const auto* on : {"2026-05-12", "2026-05-14", "2026-05-17"})
    run("pollinate " + cone + " --pollen " + lot + "=0.5 --on " + on);
  run("check-scales " + cone + " closed --on 2026-05-20");
  expect_refused("pollinate " + cone + " --pollen " + lot + " --on 2026-05-22" + book, 1);
  const auto pollen = run("pollen")["pollen"];
  const auto row =
      std::ranges::find_if(pollen, [&](const Json& each) { return each["code"] == lot; });
  ASSERT_NE(row, pollen.end());
  EXPECT_DOUBLE_EQ((*row)["left"], 1.5);
  EXPECT_EQ((*row)["old_from"], "2028-05-02");
  EXPECT_EQ((*row)["tests"][0]["germinated"], 62);
  const auto cones = run("cones")["cones"];
  EXPECT_EQ(cones.back()["receptive_to"], "2026-05-17");
  EXPECT_EQ(cones.back()["seeds_expected"]["high"], 240.0);
  run("harvest " + cone + " --seeds 180 --on 2027-05-20");
  EXPECT_EQ(run("cones")["cones"].back()["seeds"], 180);
  EXPECT_EQ(run("check")["faults"].size(), 0U);
  EXPECT_GE(run("parents")["parents"].size(), 2U);
  EXPECT_GE(run("pollen-by-age")["rows"].size(), 1U);
}

TEST_F(DiaryCommands, TheCalendarGoesOutAndComesIn) {
  const auto cone = run("enter cone " + first.mother.text() + " --first-seen 2026-05-01")["as"]
                        .get<std::string>();
  run("want-label " + first.batch.text() + " --on 2026-05-08");
  const auto file = scratch.at("due.ics").string();
  run("due --on 2026-05-08 --ahead 30 --calendar " + file);
  std::ifstream in(file, std::ios::binary);
  std::string text((std::istreambuf_iterator<char>(in)), {});
  const auto spoil = [&](const std::string& near, const std::string& from, const std::string& to) {
    const auto at = text.find(from, text.find(near));
    ASSERT_NE(at, std::string::npos) << near << ' ' << from << '\n' << text;
    text.replace(at, from.size(), to);
  };
  // Put off in the calendar, and ticked there.
  spoil("UID:check%20scales%20" + cone, "DTSTART;VALUE=DATE:20260508",
        "DTSTART;VALUE=DATE:20260512");
  spoil("UID:print%20label%20" + first.batch.text(), "STATUS:NEEDS-ACTION",
        "STATUS:COMPLETED\r\nCOMPLETED:20260508T120000Z");
  std::ofstream(file, std::ios::binary) << text;
  const auto taken = run("take-in-calendar " + file + " --on 2026-05-09");
  EXPECT_EQ(taken["entries"].size(), 2U) << taken;
  const auto again = run("take-in-calendar " + file + " --on 2026-05-09");
  EXPECT_EQ(again["entries"].size(), 0U) << "taking it in again changes nothing: " << again;
  bool later = false;
  for (const auto& each : due("--on 2026-05-12"))
    later = later || (each["code"] == cone && each["from"] == "2026-05-12");
  EXPECT_TRUE(later);
  std::ofstream(file, std::ios::binary) << text << "\r\nrubbish\r\n";
  expect_refused("take-in-calendar " + file + " --on 2026-05-09" + book, 1);
}

TEST_F(DiaryCommands, CorrectionsAndParentsOfParents) {
  run("correct " + first.father.text() + " --seed-parent " + first.mother.text() +
      " --pollen-parent unknown --parents-certainty likely --on 2026-01-01");
  expect_refused(
      "correct " + first.mother.text() + " --pollen-parent " + first.father.text() + book, 1);
  expect_refused("correct " + first.mother.text() + " --seed-parent P999X" + book, 1);
  const auto parents = run("parents")["parents"];
  EXPECT_EQ(parents[1]["seed_parent"], first.mother.text());
  EXPECT_EQ(parents[1]["pollen_parent"], "unknown");
  EXPECT_EQ(parents[1]["corrected"].size(), 1U);
  expect_refused("due --as nothing" + book, 2);
  expect_refused("dismiss " + first.batch.text() + book, 1);
}

} // namespace
} // namespace coneline::commands
