// SPDX-License-Identifier: GPL-3.0-or-later
// The grower's own figures, registers entered by hand, and how often ranges hold.
#include "tests/core/commands/run_command.h"
#include "tests/core/commands/with_nursery.h"

namespace coneline::commands {
namespace {

class FiguresCommand : public WithNursery {
 protected:
  Json done(std::vector<std::string> words) {
    words.emplace_back("--json");
    EXPECT_EQ(run(words), 0) << words[0] << '\n' << err_.str();
    return json();
  }
};

TEST_F(FiguresCommand, AreShownAndSetByName) {
  const auto before = done({"figures"});
  EXPECT_TRUE(before["worth of a plant"].is_null());
  EXPECT_EQ(done({"figures", "worth of a plant", "2500"})["worth of a plant"], 2500);
  EXPECT_EQ(done({"figures"})["worth of a plant"], 2500);
  EXPECT_TRUE(done({"figures"})["cost of a sown seed"].is_null());
  EXPECT_EQ(run({"figures"}), 0);
  EXPECT_NE(out_.str().find("2500"), std::string::npos);
  EXPECT_EQ(run({"figures", "worth of a plant", "-1"}), 1);
  EXPECT_NE(err_.str().find("-1"), std::string::npos) << err_.str();
  EXPECT_EQ(run({"figures", "worth of a cat", "1"}), 2);
  EXPECT_EQ(done({"figures"})["worth of a plant"], 2500);
}

TEST_F(FiguresCommand, HaveARangeEachAndSayItWithItsUnit) {
  struct Wrong {
    const char* name;
    const char* value;
    const char* says;
  };
  for (const auto& [name, value, says] : std::vector<Wrong>{
           {"months a ready plant stands", "1e300", "whole months, from 0 to 1200"},
           {"months a ready plant stands", "2.5", "whole months, from 0 to 1200"},
           {"assurance of the season plan", "5", "above 0 and below 1"},
           {"assurance of the season plan", "1", "above 0 and below 1"},
           {"share of the mix that settles", "3", "from 0 to below 1"},
           {"share of the mix that settles", "1", "from 0 to below 1"},
           {"chance of one more seed below which a tray is done", "7", "above 0 and below 1"},
           {"kilograms of a watered litre", "0", "kg, above 0 and below 10"},
           {"millimetres between pots", "10001", "mm, from 0 to 10000"},
           {"pots stand staggered", "2", "1 for staggered"},
           {"worth of a plant", "1e10", "your own money"},
           {"months of potting", "0", "at least one month"},
           {"months of potting", "4096", "1 to 4095"},
           {"months of potting", "2.5", "1 to 4095"}}) {
    EXPECT_EQ(run({"figures", name, value}), 1) << name << ' ' << value;
    EXPECT_NE(err_.str().find(says), std::string::npos) << err_.str();
    EXPECT_NE(err_.str().find(name), std::string::npos) << err_.str();
    EXPECT_TRUE(done({"figures"})[name].is_null()) << name;
  }
  EXPECT_EQ(run({"figures", "worth of a plant", "much"}), 2);
  EXPECT_EQ(run({"figures", "worth of a plant", "inf"}), 2);
  EXPECT_EQ(
      done({"figures", "share of the mix that settles", "0"})["share of the mix that settles"], 0);
  EXPECT_EQ(done({"figures", "months a ready plant stands", "1200"})["months a ready plant stands"],
            1200);
}

TEST_F(FiguresCommand, TakeMonthsByTheirNumbers) {
  const auto kept = [&](const char* months) {
    return done({"figures", "months of potting", months})["months of potting"];
  };
  EXPECT_EQ(kept("1-12"), 4095);
  EXPECT_EQ(kept("3-10"), 1020);
  EXPECT_EQ(run({"figures"}), 0);
  EXPECT_NE(out_.str().find("months 3-10"), std::string::npos) << out_.str();
  EXPECT_EQ(kept("2,3"), 6);
  EXPECT_EQ(kept("11-2"), 0b1100'0000'0011);
  EXPECT_EQ(run({"figures"}), 0);
  EXPECT_NE(out_.str().find("months 1-2,11-12"), std::string::npos) << out_.str();
  EXPECT_EQ(kept("3-4,9-9"), 0b1'0000'1100);
  EXPECT_EQ(kept("6"), 6) << "as it is kept: February and March";
  for (const auto* wrong : {"0-3", "3-13", "3-", "2,,3", "spring-fall"}) {
    EXPECT_EQ(run({"figures", "months of potting", wrong}), 2) << wrong;
    EXPECT_NE(err_.str().find("1 to 12"), std::string::npos) << err_.str();
  }
  EXPECT_EQ(done({"figures"})["months of potting"], 6);
}

TEST_F(FiguresCommand, PollenStoresHemisphereAndConesAreEntered) {
  done({"enter", "pollen-store", "deep freezer", "--years", "2-3", "--source", "own"});
  done({"enter", "pollen-store", "paper bag", "--source", "own"});
  EXPECT_EQ(run({"enter", "pollen-store", "tin", "--years", "3-2", "--source", "own"}), 1);
  EXPECT_EQ(run({"enter", "pollen-store", "tin", "--years", "long", "--source", "own"}), 1);
  EXPECT_NE(err_.str().find("long"), std::string::npos) << err_.str();
  done({"enter", "hemisphere", "southern"});
  EXPECT_EQ(run({"enter", "hemisphere", "eastern"}), 1);
  const auto registers = nursery_.ask([](store::Reading& reading) { return reading.registers(); });
  EXPECT_EQ(registers.title.hemisphere, book::Hemisphere::southern);
  EXPECT_NE(book::named(registers.pollen_stores, "deep freezer"), nullptr);
  EXPECT_EQ(book::named(registers.pollen_stores, "tin"), nullptr);
}

TEST_F(FiguresCommand, AConeIsAFemalesAndPollenAMales) {
  const auto code = [&](book::PlantId id) {
    return nursery_.ask(
        [&](store::Reading& reading) { return reading.registers().plant(id).code.text(); });
  };
  const auto female = code(nursery_.plant("Mother", book::Sex::female));
  const auto male = code(nursery_.plant("Father", book::Sex::male));
  const auto unknown = code(nursery_.plant("Nobody knows", book::Sex::not_known));
  const std::string cone = done({"enter", "cone", female, "--first-seen", "2026-05-01"})["as"];
  EXPECT_EQ(cone[0], 'C');
  EXPECT_EQ(run({"enter", "cone", male}), 1);
  EXPECT_NE(err_.str().find("is a male plant"), std::string::npos);
  EXPECT_EQ(run({"enter", "cone", absent(Kind::plant)}), 1);
  EXPECT_NE(err_.str().find("no plant " + absent(Kind::plant)), std::string::npos) << err_.str();
  EXPECT_EQ(run({"enter", "cone", female, "--first-seen", "spring"}), 1);
  const std::string pollen =
      done({"enter", "pollen", unknown, "--collected", "2026-05-02", "--ml", "4"})["as"];
  EXPECT_EQ(pollen[0], 'L');
  const auto registers = nursery_.ask([](store::Reading& reading) { return reading.registers(); });
  EXPECT_EQ(book::coded(registers.plants, Code::parse(unknown).value())->sex, book::Sex::male)
      << "what gives pollen is a male";
  EXPECT_EQ(run({"enter", "pollen", female}), 1);
  EXPECT_NE(err_.str().find("gives no pollen"), std::string::npos) << err_.str();
}

TEST_F(FiguresCommand, APlantIsEnteredWithPapersParentsAndPlace) {
  done({"enter", "place", "Shade house", "--kind", "house"});
  const std::string code =
      done({"enter", "plant", "Cycas revoluta", "--name", "Left Twin", "--sex", "female",
            "--acquired", "2001-04-05", "--place", "Shade house", "--paper", "import permit=12/345",
            "--paper", "receipt", "--seed-parent", "an old garden"})["as"];
  const auto plant = nursery_.ask([&](store::Reading& reading) {
    const auto registers = reading.registers();
    return *book::coded(registers.plants, Code::parse(code).value());
  });
  ASSERT_EQ(plant.papers.size(), 2U);
  EXPECT_EQ(plant.papers[0].number, "12/345");
  EXPECT_EQ(plant.papers[1].number, "");
  EXPECT_TRUE(plant.place);
  EXPECT_EQ(run({"enter", "plant", "Cycas revoluta", "--pollen-parent", absent(Kind::plant)}), 1);
  EXPECT_NE(err_.str().find(absent(Kind::plant)), std::string::npos) << err_.str();
}

/// Few crosses: the shares are not to be held against 80 and 95, only the document.
TEST(CoverageCommand, CountsHowOftenARangeHeld) {
  const auto ran =
      run_words({"coverage", "germination", "--crosses", "12", "--seed", "3", "--json"});
  ASSERT_EQ(ran.status, 0) << ran.err;
  const auto rows = ran.json()["rows"];
  ASSERT_FALSE(rows.empty());
  EXPECT_EQ(rows[0]["crosses"], 12);
  for (const auto& row : rows)
    for (const auto* what : {"still_expected", "share_in_end", "share_now"}) {
      const auto wide = row[what]["held_95"].get<double>();
      EXPECT_GE(wide, row[what]["held_80"].get<double>()) << "the wider holds more";
      EXPECT_LE(wide, 1);
    }
}

TEST(CoverageCommand, OfWholeNurseriesCountsMonthsAndYears) {
  const auto ran = run_words({"coverage", "plan", "--nurseries", "1", "--json"});
  ASSERT_EQ(ran.status, 0) << ran.err;
  const auto rows = ran.json()["rows"];
  ASSERT_FALSE(rows.empty());
  for (const auto& row : rows) {
    EXPECT_GT(row["cells"].get<std::int64_t>(), 0) << row["of"];
    EXPECT_GE(row["inclusive"].get<double>(), row["held"].get<double>()) << row["of"];
  }
}

} // namespace
} // namespace coneline::commands
