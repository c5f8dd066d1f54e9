// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/pollen.h"
#include "tests/core/commands/run_command.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

namespace coneline::commands {
namespace {

class CrossesCommand : public testing::Test {
 protected:
  CrossesCommand() { tests::make_first_cone(path, first); }
  Ran run(const std::string& more) {
    return run_command("crosses --book " + path.string() + " --as-of 2026-03-01 --room any " +
                       more);
  }

  tests::Scratch scratch;
  std::filesystem::path path = scratch.at("t.coneline");
  tests::FirstCone first;
};

TEST_F(CrossesCommand, NoFemaleIsTold) {
  const auto ran = run("");
  EXPECT_EQ(ran.status, 1);
  EXPECT_TRUE(ran.out.empty());
  EXPECT_NE(ran.err.find("no female"), std::string::npos) << ran.err;
}

TEST_F(CrossesCommand, ProposesForAnExpectedCone) {
  const auto ran = run("--female " + first.mother.text() + " --json");
  ASSERT_EQ(ran.status, 0) << ran.err;
  const auto json = ran.json();
  EXPECT_EQ(json["proposal"]["crosses"], 1);
  EXPECT_EQ(json["proposal"]["proven"], true);
  const auto& cross = json["crosses"][0];
  EXPECT_EQ(cross["seed_parent"]["code"], first.mother.text());
  EXPECT_EQ(cross["pollen_parent"]["code"], first.father.text());
  EXPECT_EQ(cross["hybrid"], false);
  // 500 seeds of the only cone, 0.7 up, 0.9 × 0.9 alive by the route; no range from one cone.
  EXPECT_NEAR(cross["plants"]["likely"].get<double>(), 500 * 0.7 * 0.81, 1e-9);
  EXPECT_TRUE(cross["plants"]["low"].is_null());
}

TEST_F(CrossesCommand, ReckonsWithTestedPollenAndAllThatWasCollected) {
  auto book = store::Book::open(path, store::Access::write).value();
  const work::Noted noted{tests::day("2025-02-01"), "", ""};
  ASSERT_TRUE(work::test_pollen(book, {first.pollen, 100, 60, "", noted}));
  ASSERT_TRUE(work::collect_pollen(book, {first.pollen, 2.5, "", noted}));
  const auto json = run("--female " + first.mother.text() + " --json").json();
  const auto& lot = json["pollen"][0];
  EXPECT_EQ(lot["millilitres_left"], 6.0) << "3.5 and then 2.5";
  EXPECT_DOUBLE_EQ(lot["viability"]["likely"], 0.6);
  EXPECT_NEAR(json["crosses"][0]["plants"]["likely"].get<double>(), 500 * 0.6 * 0.7 * 0.81, 1e-9);
}

TEST_F(CrossesCommand, CountedScalesSetTheCeilingAndAClosedConeIsLeftOut) {
  const auto book = " --book " + path.string();
  const auto entered =
      run_command("enter cone " + first.mother.text() + " --first-seen 2026-02-20 --json" + book);
  const auto cone = entered.json()["as"].get<std::string>();
  const auto scales = "check-scales " + cone + book;
  ASSERT_EQ(run_command(scales + " loose --fertile-scales 100 --on 2026-02-24").status, 0);
  auto cross = run("--json").json()["crosses"][0];
  EXPECT_EQ(cross["cone"], cone);
  EXPECT_EQ(cross["cone_state"], "loose on 2026-02-24, not pollinated yet");
  // The only earlier cone held 500; a hundred scales hold 200 at most.
  EXPECT_NEAR(cross["plants"]["likely"].get<double>(), 200 * 0.7 * 0.81, 1e-9);

  // Where the earlier cone's scales were counted too, its share of two a scale is the guide.
  ASSERT_EQ(run_command("check-scales " + first.cone.text() + book +
                        " closed --fertile-scales 500 --on 2024-06-01")
                .status,
            0);
  cross = run("--json").json()["crosses"][0];
  EXPECT_NEAR(cross["plants"]["likely"].get<double>(), 200 * 0.5 * 0.7 * 0.81, 1e-9);

  ASSERT_EQ(run_command(scales + " closed --on 2026-02-26").status, 0);
  const auto ran = run("");
  EXPECT_EQ(ran.status, 1);
  EXPECT_NE(ran.err.find("no female"), std::string::npos) << ran.err;
}

TEST_F(CrossesCommand, AFemaleIsNoFather) {
  const auto ran = run("--female " + first.mother.text() + " --pin " + first.mother.text() + "=" +
                       first.mother.text());
  EXPECT_EQ(ran.status, 1);
  EXPECT_NE(ran.err.find("cannot be the father"), std::string::npos) << ran.err;
}

TEST_F(CrossesCommand, AMaleHasNoCone) {
  const auto ran = run("--female " + first.father.text());
  EXPECT_EQ(ran.status, 1);
  EXPECT_NE(ran.err.find("male plant"), std::string::npos) << ran.err;
}

TEST_F(CrossesCommand, PollenThatRanOutIsNamed) {
  auto book = store::Book::open(path, store::Access::write).value();
  ASSERT_TRUE(book.write([](store::Writing& writing) {
    book::Entry entry;
    entry.verb = book::Verb::pollinate;
    entry.date = tests::day("2025-02-01");
    entry.cone = book::ConeId{1};
    entry.detail = book::Pollination{book::PollinationMethod::dry, {{book::PollenLotId{1}, 3.5}}};
    return writing.enter(entry);
  }));
  const auto ran = run("--female " + first.mother.text());
  EXPECT_EQ(ran.status, 1);
  EXPECT_NE(ran.err.find("no pollen"), std::string::npos) << ran.err;
}

TEST_F(CrossesCommand, TooMuchPollenForAPinIsToldByHowMuch) {
  const auto ran = run("--female " + first.mother.text() + " --millilitres 5 --pin " +
                       first.mother.text() + "=" + first.pollen.text());
  EXPECT_EQ(ran.status, 1);
  EXPECT_NE(ran.err.find("5 ml of " + first.pollen.text() + ", and 3.5 ml are left: 1.5 too few"),
            std::string::npos)
      << ran.err;
}

TEST_F(CrossesCommand, TellsTheProposalAndWhatItRestsOn) {
  const auto ran = run("--female " + first.mother.text());
  ASSERT_EQ(ran.status, 0) << ran.err;
  for (const auto* part : {"Crosses as of 2026-03-01", "proposed", "Proposal: 1 crosses",
                           "(expected) with ", "proven the best there is"})
    EXPECT_NE(ran.out.find(part), std::string::npos) << part << '\n' << ran.out;
  EXPECT_NE(ran.out.find(first.pollen.text()), std::string::npos);
}

TEST_F(CrossesCommand, ACrossIsPinnedOrForbidden) {
  const auto cross = first.mother.text() + "=" + first.pollen.text();
  const auto female = "--female " + first.mother.text();
  const auto pinned = run(female + " --pin " + cross + " --json").json();
  EXPECT_EQ(pinned["crosses"][0]["pinned"], true);
  EXPECT_NE(run(female + " --pin " + cross).out.find("pinned"), std::string::npos);
  const auto forbidden = run(female + " --forbid " + cross);
  EXPECT_EQ(forbidden.status, 1) << "there is no other";
  EXPECT_NE(forbidden.err.find("forbidden"), std::string::npos) << forbidden.err;
  EXPECT_EQ(run(female + " --pin " + cross + " --forbid " + cross).status, 1) << "both at once";
}

TEST_F(CrossesCommand, EachAimIsProposedFor) {
  for (const auto* aim : {"kinship --crosses 1", "mixture --weight 0.3 --crosses 1", "plants"}) {
    const auto ran = run("--female " + first.mother.text() + " --json --aim " + aim);
    ASSERT_EQ(ran.status, 0) << aim << '\n' << ran.err;
    EXPECT_EQ(ran.json()["proposal"]["crosses"], 1) << aim;
  }
}

TEST_F(CrossesCommand, RoomIsGivenInSquareMetres) {
  const auto crosses = [&](const std::string& room) {
    return run_words({"crosses", "--book", path.string(), "--as-of", "2026-03-01", "--female",
                      first.mother.text(), "--room", room});
  };
  const auto ample = crosses("part shade=1000");
  EXPECT_EQ(ample.status, 0) << ample.err;
  EXPECT_NE(ample.out.find("m² of part shade of 1000.00 free"), std::string::npos) << ample.out;
  EXPECT_NE(crosses("part shade=1").err.find("1.00 m² are free"), std::string::npos);
  for (const auto& [room, says] : {std::pair("twilight=3", "twilight"),
                                   {"shade", "names no square"},
                                   {"shade=-1", "names no square"},
                                   {"shade=wide", "names no square"}}) {
    const auto ran = crosses(room);
    EXPECT_EQ(ran.status, 1) << room;
    EXPECT_NE(ran.err.find(says), std::string::npos) << ran.err;
    EXPECT_NE(ran.err.find("--room"), std::string::npos) << ran.err;
  }
}

TEST_F(CrossesCommand, WhatIsWrongIsNamedByItsOption) {
  const auto female = "--female " + first.mother.text() + " ";
  for (const auto& [words, says] :
       {std::pair(female + "--pin nothing", "--pin"),
        {female + "--forbid x=y", "--forbid"},
        {female + "--pin " + first.mother.text() + "=y", "--pin"},
        {female + "--pin " + first.mother.text() + "=" + first.cone.text(), "--pin"},
        {std::string("--female nonsense"), "--female"},
        {female + "--millilitres 0", "--millilitres"},
        {female + "--seeds -3", "--seeds"}}) {
    const auto ran = run(words);
    EXPECT_NE(ran.status, 0) << words;
    EXPECT_NE(ran.err.find(says), std::string::npos) << words << '\n' << ran.err;
    EXPECT_EQ(ran.out, "") << words;
  }
}

TEST_F(CrossesCommand, AnAimThatIsNoneIsAWrongCommandLine) {
  EXPECT_EQ(run("--aim beauty").status, 2);
}

} // namespace
} // namespace coneline::commands
