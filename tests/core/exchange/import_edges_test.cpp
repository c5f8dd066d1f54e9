// SPDX-License-Identifier: GPL-3.0-or-later
// A season folder with one slip in it: the slip is named where it stands, and nothing comes in.
#include "core/exchange/folder.h"
#include "core/exchange/import_season.h"
#include "tests/core/exchange/small_season.h"

#include <gtest/gtest.h>

namespace coneline::exchange {
namespace {

namespace fs = std::filesystem;

struct Slip {
  std::string file;
  std::string before;
  std::string now;
};

class ImportEdges : public testing::Test {
 protected:
  [[nodiscard]] fs::path folder() const { return scratch_.at("season"); }

  void write() const {
    EXPECT_TRUE(write_season(tests::small_season(), folder(), Existing::replace));
  }
  void make(const Slip& slip) const {
    auto text = tests::content(folder() / slip.file);
    const auto at = text.find(slip.before);
    ASSERT_NE(at, std::string::npos) << slip.before << " in\n" << text;
    tests::put(folder() / slip.file, text.replace(at, slip.before.size(), slip.now));
  }
  /// Every fault of the folder, a line each; empty where all of it came in.
  std::string imported() {
    auto book = store::Book::make(scratch_.at(fmt::format("book {}", ++books_)),
                                  {"", 10, false, tests::day("2026-01-01")})
                    .value();
    const auto done = import_season(folder(), book, Import::write);
    if (!done)
      return done.error().text();
    std::string all;
    for (const auto& fault : done->faults.listed())
      all += fault.text() + '\n';
    const auto taxa =
        book.read([](store::Reading& reading) { return reading.registers().taxa.size(); });
    EXPECT_EQ(taxa.value(), all.empty() ? 2U : 0U) << all;
    return all;
  }
  /// That the slip is told so.
  void told(const Slip& slip, const std::string& says) {
    write();
    make(slip);
    const auto all = imported();
    EXPECT_NE(all.find(says), std::string::npos) << says << " in\n" << all;
  }

  tests::Scratch scratch_;
  int books_ = 0;
};

TEST_F(ImportEdges, MomentsOfWritingAreMomentsOrEmpty) {
  const std::string stood = "Ana,,,2026-01-01T10:00:00Z";
  for (const char* wrong : {"2026-01-01T24:00:00Z", "2026-01-01T10:60:00Z", "2026-01-01T10:00:60Z",
                            "2026-01-01T10:00:00", "2026-01-01 10:00:00Z", "2026-01-01T1x:00:00Z",
                            "2026-01-01T1/:00:00Z", "2026-01-32T10:00:00Z", "yesterday"})
    told({"entries.csv", stood, std::string("Ana,,,") + wrong},
         "entries.csv, line 2, column entered: '" + std::string(wrong) + "' is no moment");
  write();
  make({"entries.csv", stood, "Ana,,,"});
  EXPECT_EQ(imported(), "") << "the book gives it";
}

TEST_F(ImportEdges, AnEntryReversesAnEarlierOne) {
  told({"entries.csv", ",Ana,,9,", ",Ana,,10,"},
       "entries.csv, line 11, column reverses: an entry that comes no earlier is reversed");
  told({"entries.csv", ",Ana,,9,", ",Ana,,12,"}, "an entry that comes no earlier is reversed");
  told({"entries.csv", ",Ana,,9,", ",Ana,,,"}, "a reversal names the entry it reverses");
  told({"entries.csv", "9,inspect,2025-05-01,T171G,,,Ana,,,",
        "9,inspect,2025-05-01,T171G,,,Ana,,8,"},
       "a reversal names the entry it reverses");
}

TEST_F(ImportEdges, PlacesAndConesBelongToWhatNeedsThem) {
  told({"entries.csv", "6,store,2025-01-14,B1718,,,", "6,store,2025-01-14,,,H172H,"},
       "entries.csv, line 7, column place: a place without a lot that stands there");
  told({"entries.csv", "2024-05-04,,C171T", "2024-05-04,,"}, "a pollination without its cone");
  told({"entries.csv", "2024-05-03,,C171T", "2024-05-03,,"},
       "a look at the scales without its cone");
}

TEST_F(ImportEdges, DetailsStandInTheFileOfTheirVerbAndOnce) {
  told({"sales.csv", "13,a buyer", "12,a buyer"}, "sales.csv has a row for this entry");
  told({"sales.csv", "13,a buyer,12550\n", ""}, "sales.csv has no row for this entry");
  told({"sales.csv", "12550\n", "12550\n13,another,5\n"}, "sales.csv has 2 rows for this entry");
  told({"sortings.csv", "5,cut", "3,cut"}, "sortings.csv has a row for this entry");
  told({"pollinations.csv", "1,wet,,", "1,dry,,"},
       "pollinations.csv, line 3, column method: the pass is 'dry' here and 'wet' on line 2");
  told({"weighings.csv", "15.05,14.9", "15.1,14.9"},
       "weighings.csv, line 3, column grams: all the seed weighs 15.1 g here and 15.05 g");
}

TEST_F(ImportEdges, WhatIsOnceInABookIsOnceInAFolder) {
  told({"offers.csv", "bark,the mill,bag,70,1,900,0,7,1,25.5\n",
        "bark,the mill,bag,70,1,900,0,7,1,25.5\nbark,the mill,bag,70,1,950,0,7,1,\n"},
       "offers.csv, line 3");
  told({"goods.csv", "sand,0", "bark,0"}, "goods.csv, line 3");
  told({"pins.csv", "T171G,H172H\n", "T171G,H172H\nT171G,H172H\n"}, "pins.csv, line 3");
  told({"place_limits.csv", "H171J,,", "H172H,,"}, "place_limits.csv, line 3");
  told({"round_stops.csv", "1,T171G,H172H\n", "1,T171G,H172H\n1,T171G,\n"},
       "round_stops.csv, line 3, column tray: this round has that tray already");
  told({"round_entries.csv", "7,1\n", "7,1\n7,1\n"},
       "round_entries.csv, line 3, column entry: this entry is of a round already");
  told({"sightings.csv", "T171G,,2025-05-09,picture,bench.jpg,\n",
        "T171G,,2025-05-09,picture,bench.jpg,\nT171G,,2025-05-09,picture,bench.jpg,\n"},
       "sightings.csv, line 4, column lot: the very same sight stands above already");
  told({"temperatures.csv", "H171J,2025-03-01T00:00:00", "H172H,2025-03-02T14:05:00"},
       "temperatures.csv, line 3, column at: the place has a reading of 2025-03-02T14:05:00");
}

TEST_F(ImportEdges, RowsThatTheBookRefusesAreNamed) {
  told({"rounds.csv", "T171G,2,0,1,", ",2,0,1,"},
       "rounds.csv, line 2, column round: counts without a tray in the hand");
  told({"pins.csv", "T171G,H172H", "T171G,H171J"}, "pins.csv, line 2");
  told({"book.csv", "nursery,17", "nursery,100"}, "book.csv, line 2, column series");
  told({"label_prints.csv", "sheet,2", "sheet,10001"}, "label_prints.csv, line 2");
  told({"printer_scales.csv", "99.6", "80"}, "printer_scales.csv, line 2");
}

TEST_F(ImportEdges, StepsStandInTurnAndBelongToARoute) {
  told({"route_steps.csv", "Dioon edule,2", "Dioon edule,3"},
       "route_steps.csv, line 3, column step: step 3 where step 2 is expected");
  told({"route_steps.csv", "Dioon edule,2", "Cycas revoluta,1"},
       "route_steps.csv, line 3, column taxon: a step of a taxon without a route");
  // A step at fault is told by itself, and not again as one that is missing.
  told({"route_steps.csv", "Dioon edule,2", "Dioon edule,second"},
       "route_steps.csv, line 3, column step");
}

TEST_F(ImportEdges, APlantIsNotItsOwnAncestor) {
  write();
  make({"plants.csv", "P1732,Grandmother,Cycas revoluta,certain,not known,,,,,,,",
        "P1732,Grandmother,Cycas revoluta,certain,not known,,,,,,,P1724"});
  const auto all = imported();
  EXPECT_NE(all.find("plants.csv, line"), std::string::npos) << all;
  EXPECT_NE(all.find("would be its own ancestor"), std::string::npos) << all;
}

TEST_F(ImportEdges, CodesAndNumbersOfAnotherKind) {
  told({"plants.csv", "1999-05-01,H172H", "1999-05-01,P1716"}, "P1716 is the code of a plant");
  told({"lots.csv", "B1718,C171T", "B1718,P1716"}, "P1716 is the code of a plant");
  write();
  make({"lots.csv", "B1726,Q171N", "B1726,q17 1n"});
  EXPECT_EQ(imported(), "") << "a purchase as it may be typed";
  told({"cones.csv", "C171T,P1716", "P1716,P1716"}, "cones.csv, line 2, column code: P1716 is the "
                                                    "code of a plant");
  told({"places.csv", "shade,2", "shade,2000000"}, "2000000 is far out of range");
  told({"places.csv", "shade,2", "shade,-2000000"}, "-2000000 is far out of range");
  told({"book.csv", "17,yes", "17,true"}, "'true' is neither yes nor no");
  told({"taxa.csv", "Dioon edule,not", ",not"},
       "taxa.csv, line 3, column name: the field is empty");
}

TEST_F(ImportEdges, ALongValueIsNotCutThroughALetter) {
  std::string word(59, 'x');
  told({"plants.csv", "likely", word + "üüüü"}, word + "… (67 bytes)");
}

TEST_F(ImportEdges, TheCoverIsOneRow) {
  told({"book.csv", "southern\n", "southern\nSecond,17,yes,2024-01-02,southern\n"},
       "book.csv: 2 rows. The cover of the book is one row.");
  told({"book.csv", "Test nursery,17,yes,2024-01-02,southern\n", ""}, "book.csv: 0 rows");
}

TEST_F(ImportEdges, OtherFilesMayLieThereUnlessTheyAreTablesOrLeadOut) {
  write();
  tests::put(folder() / "notes.txt", "mine");
  fs::create_symlink("notes.txt", folder() / "same.txt");
  EXPECT_EQ(imported(), "");
  tests::put(scratch_.at("outside.txt"), "x");
  fs::create_symlink(scratch_.at("outside.txt"), folder() / "outside.txt");
  EXPECT_NE(imported().find("outside.txt"), std::string::npos);
  fs::remove(folder() / "outside.txt");
  tests::put(folder() / "salez.csv", "x");
  EXPECT_EQ(imported(),
            "salez.csv: 'salez.csv' is no file of a season folder. Correct its name, or "
            "take it out.\n");
}

TEST_F(ImportEdges, ABookWithAnythingInItIsRefused) {
  write();
  const auto refused = [&](const auto& put) {
    auto book = store::Book::make(scratch_.at(fmt::format("book {}", ++books_)),
                                  {"Mine", 17, false, tests::day("2026-01-01")})
                    .value();
    EXPECT_TRUE(book.write([&](store::Writing& writing) { return put(writing); }));
    const auto done = import_season(folder(), book, Import::write);
    return done ? std::string("imported") : done.error().what;
  };
  const std::string holds = "the book 'Mine' holds something already";
  EXPECT_EQ(refused([](store::Writing& writing) {
              book::Taxon taxon;
              taxon.name = "Zamia";
              return writing.put(taxon);
            }),
            holds);
  EXPECT_EQ(refused([](store::Writing& writing) {
              return writing.put(book::Pot{{}, "p", 1, book::Shape::round, 90, 90, 1, ""});
            }),
            holds);
  EXPECT_EQ(refused([](store::Writing& writing) {
              return writing.put(book::Mix{{}, "m", 0, 0, "", {{"sand", 1}}});
            }),
            holds);
  EXPECT_EQ(refused([](store::Writing& writing) {
              book::Place place;
              place.name = "House";
              place.code = writing.next_code(Kind::place).value();
              return writing.put(place);
            }),
            holds);
}

// Folders of the export, beyond those that the export's own tests write.
TEST_F(ImportEdges, AFolderThatCannotBeWrittenIsNamed) {
  const auto written = [&](const fs::path& to) {
    const auto done = write_season(tests::small_season(), to, Existing::replace);
    return done ? std::string("written") : done.error().what;
  };
  tests::put(scratch_.at("file"), "mine");
  EXPECT_NE(written(scratch_.at("file")).find("is no folder"), std::string::npos);
  EXPECT_EQ(tests::content(scratch_.at("file")), "mine");
  fs::create_symlink(scratch_.at("nowhere"), scratch_.at("dead"));
  EXPECT_NE(written(scratch_.at("dead")).find("leads nowhere"), std::string::npos);
  EXPECT_EQ(written(scratch_.at("slash").string() + "/"), "written");
  EXPECT_TRUE(fs::exists(scratch_.at("slash") / "book.csv"));
  fs::create_directory(scratch_.at("real"));
  fs::create_symlink(scratch_.at("real"), scratch_.at("link"));
  EXPECT_EQ(written(scratch_.at("link")), "written");
  EXPECT_TRUE(fs::exists(scratch_.at("real") / "book.csv")) << "links are followed";
  EXPECT_NE(written(fs::current_path()).find("is the folder you stand in"), std::string::npos);
  const auto again = write_file(scratch_.at("file"), "yours");
  EXPECT_FALSE(again);
  EXPECT_EQ(tests::content(scratch_.at("file")), "mine");
}

} // namespace
} // namespace coneline::exchange
