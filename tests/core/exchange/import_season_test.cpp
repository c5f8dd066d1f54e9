// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_season.h"
#include "core/store/copies.h"
#include "core/store/proof.h"
#include "tests/core/exchange/small_season.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace coneline::exchange {
namespace {

namespace fs = std::filesystem;

class ImportSeason : public testing::Test {
 protected:
  ImportSeason()
      : book_(store::Book::make(scratch_.at("book"), {"", 10, false, tests::day("2026-01-01")})
                  .value()) {
    EXPECT_TRUE(write_season(tests::small_season(), folder(), Existing::keep));
  }
  [[nodiscard]] fs::path folder() const { return scratch_.at("season"); }

  /// Puts `now` where `before` stands, once.
  void change(const std::string& file, const std::string& before, const std::string& now) {
    auto text = tests::content(folder() / file);
    const auto at = text.find(before);
    ASSERT_NE(at, std::string::npos) << before << " in\n" << text;
    tests::put(folder() / file, text.replace(at, before.size(), now));
  }

  Imported import(Import how = Import::write) {
    auto imported = import_season(folder(), book_, how);
    EXPECT_TRUE(imported) << imported.error().text();
    return imported.value_or(Imported{});
  }

  /// The only fault is there, and it says so; and nothing came in.
  void only_fault(const Where& where, const std::string& says) {
    const auto imported = import();
    ASSERT_EQ(imported.faults.listed().size(), 1U) << texts(imported);
    const auto& fault = imported.faults.listed().front();
    EXPECT_EQ(fault.where, where) << fault.text();
    EXPECT_NE(fault.text().find(says), std::string::npos) << fault.text();
    nothing_in();
  }
  void nothing_in() {
    const auto taxa =
        book_.read([](store::Reading& reading) { return reading.registers().taxa.size(); });
    EXPECT_EQ(taxa.value(), 0U);
  }
  static std::string texts(const Imported& imported) {
    std::string all;
    for (const auto& fault : imported.faults.listed())
      all += fault.text() + '\n';
    return all;
  }

  tests::Scratch scratch_;
  store::Book book_;
};

TEST_F(ImportSeason, TakesOverTheCover) {
  ASSERT_TRUE(import().faults.none());
  const auto title = book_.read([](store::Reading& reading) { return reading.title(); }).value();
  EXPECT_EQ(title.name, "Test nursery");
  EXPECT_EQ(title.series, 17);
  EXPECT_TRUE(title.invented);
}

TEST_F(ImportSeason, DryRunWritesNothing) {
  const auto imported = import(Import::dry_run);
  EXPECT_TRUE(imported.faults.none());
  EXPECT_EQ(imported.files.front().file, "book.csv");
  EXPECT_EQ(imported.files.at(14).rows, 22U);
  nothing_in();
}

TEST_F(ImportSeason, RefusesABookWithSomethingInIt) {
  ASSERT_TRUE(import().faults.none());
  const auto again = import_season(folder(), book_, Import::dry_run);
  ASSERT_FALSE(again);
  EXPECT_EQ(again.error().blame, Blame::book);
}

TEST_F(ImportSeason, ReadsWhatASpreadsheetSaves) {
  for (const auto& [file, text] : tests::contents(folder())) {
    std::string saved = "\xEF\xBB\xBF";
    for (const char c : text)
      saved += c == '\n' ? "\r\n" : std::string(1, c);
    tests::put(folder() / file, saved);
  }
  EXPECT_TRUE(import().faults.none());
}

TEST_F(ImportSeason, TakesCodesAsTheyAreTyped) {
  const auto code = Code::of(Kind::cone, 17, 1)->text();
  change("lots.csv", code, "c-171 " + code.substr(4));
  EXPECT_TRUE(import().faults.none());
}

TEST_F(ImportSeason, MorePottedThanGerminated) {
  change("movements.csv", ",plant,10\n", ",plant,14\n");
  only_fault({"movements.csv", 12, "count"}, "has 12 'root' on 2025-06-01, and 14 are asked for");
}

TEST_F(ImportSeason, TheMovementAtFaultIsFoundAmongSeveral) {
  change("movements.csv", "judged empty,17", "judged empty,18");
  only_fault({"movements.csv", 5, "count"}, "1 too many");
}

TEST_F(ImportSeason, SownBeforeHarvest) {
  change("entries.csv", "7,sow,2025-03-02", "7,sow,2025-01-02");
  only_fault({"movements.csv", 8, "count"}, "on 2025-01-02, and 40 are asked for");
  EXPECT_GT(import().not_judged, 0U); // the looks at that tray
}

TEST_F(ImportSeason, NegativeCount) {
  change("movements.csv", ",root,12\n", ",root,-12\n");
  only_fault({"movements.csv", 9, "count"}, "-12");
}

TEST_F(ImportSeason, WordsOutsideTheSet) {
  change("movements.csv", ",root,12\n", ",roots,12\n");
  only_fault({"movements.csv", 9, "to_state"}, "'roots' is no state");
}

TEST_F(ImportSeason, CodeUsedTwice) {
  const auto code = Code::of(Kind::plant, 17, 1)->text();
  change("plants.csv", "\n" + Code::of(Kind::plant, 17, 2)->text(), "\n" + code);
  const auto imported = import();
  ASSERT_FALSE(imported.faults.none());
  EXPECT_EQ(imported.faults.listed().front().where, (Where{"plants.csv", 3, "code"}));
  EXPECT_NE(texts(imported).find("stands on line 2 already"), std::string::npos);
}

TEST_F(ImportSeason, MissingCode) {
  const auto missing = Code::of(Kind::cone, 17, 9)->text();
  change("entries.csv", Code::of(Kind::cone, 17, 1)->text(), missing);
  only_fault({"entries.csv", 2, "cone"}, "there is no cone '" + missing + "' in cones.csv");
}

TEST_F(ImportSeason, CodeOfAnotherBook) {
  const auto other = Code::of(Kind::purchase, 18, 1)->text();
  const auto own = Code::of(Kind::purchase, 17, 1)->text();
  change("purchases.csv", own, other);
  change("lots.csv", own, other);
  only_fault({"purchases.csv", 2, "code"}, "is of series 18, the book's is 17");
}

TEST_F(ImportSeason, MissingAndUnknownColumns) {
  change("sales.csv", "buyer", "customer");
  const auto imported = import();
  ASSERT_EQ(imported.faults.listed().size(), 2U) << texts(imported);
  EXPECT_EQ(imported.faults.listed()[0].where, (Where{"sales.csv", 1, "buyer"}));
  EXPECT_EQ(imported.faults.listed()[1].where, (Where{"sales.csv", 1, "customer"}));
}

TEST_F(ImportSeason, MissingAndMisnamedFiles) {
  fs::rename(folder() / "taxa.csv", folder() / "taxons.csv");
  const auto imported = import();
  ASSERT_EQ(imported.faults.listed().size(), 2U) << texts(imported);
  EXPECT_EQ(imported.faults.listed()[0].where->file, "taxons.csv");
  EXPECT_EQ(imported.faults.listed()[1].where->file, "taxa.csv");
}

TEST_F(ImportSeason, LinksOutOfTheFolder) {
  fs::rename(folder() / "taxa.csv", scratch_.at("taxa.csv"));
  fs::create_symlink(scratch_.at("taxa.csv"), folder() / "taxa.csv");
  only_fault({"taxa.csv", 0, ""}, "out of the folder");
}

TEST_F(ImportSeason, ListsEveryFault) {
  change("plants.csv", "1999-05-01", "01.05.1999");
  change("pots.csv", "6.5", "0");
  change("mixes.csv", "0.15", "0,15");
  change("pollinations.csv", ",0.5\n", ",a\n");
  change("book.csv", "yes", "perhaps");
  EXPECT_GE(import().faults.listed().size(), 5U);
  nothing_in();
}

TEST_F(ImportSeason, DatesAndRangesAndRoundPots) {
  change("taxa.csv", "6,9.5", "9.5,6");
  change("entries.csv", "8,inspect,2025-05-01", "8,inspect,2025-02-30");
  change("pots.csv", "170,170", "170,180");
  const auto all = texts(import());
  EXPECT_NE(all.find("taxa.csv, line 2, column ripening_months_low"), std::string::npos) << all;
  EXPECT_NE(all.find("entries.csv, line 9, column date"), std::string::npos) << all;
  EXPECT_NE(all.find("pots.csv, line 3, column width_mm"), std::string::npos) << all;
}

TEST_F(ImportSeason, AReversalThatIsNoMirror) {
  change("movements.csv", "dead," + Code::of(Kind::tray, 17, 1)->text() + ",sown,5",
         "dead," + Code::of(Kind::tray, 17, 1)->text() + ",sown,4");
  only_fault({"entries.csv", 11, "reverses"}, "mirror");
}

TEST_F(ImportSeason, LongValuesAreCutInMessages) {
  change("plants.csv", "likely", std::string(10'000, 'x'));
  const auto all = texts(import());
  EXPECT_LT(all.size(), 500U);
  EXPECT_NE(all.find("xxx… (10000 bytes)"), std::string::npos) << all;
}

TEST_F(ImportSeason, APlaceWithinItself) {
  const auto house = Code::of(Kind::place, 17, 1)->text();
  const auto bench = Code::of(Kind::place, 17, 2)->text();
  change("places.csv", "house,,", "house," + bench + ",");
  EXPECT_NE(texts(import()).find("within itself"), std::string::npos);
}

TEST_F(ImportSeason, TemperaturesMayBeMissing) {
  std::filesystem::remove(folder() / "temperatures.csv");
  EXPECT_TRUE(import().faults.none());
}

TEST_F(ImportSeason, ATemperatureNobodyCanRead) {
  change("temperatures.csv", "2025-03-01T00:00:00", "2025-03-01");
  only_fault({"temperatures.csv", 3, "at"}, "2026-03-09T14:05:00");
}

/// More rows than are done between two looks at the clock.
void add_rows(const fs::path& folder) {
  auto season = tests::small_season();
  for (int second = 0; second < 5000; ++second)
    season.temperatures.push_back({book::PlaceId{1}, Moment{tests::day("2025-06-01"), second}, 20});
  fs::remove_all(folder);
  ASSERT_TRUE(write_season(season, folder, Existing::keep));
}

TEST_F(ImportSeason, TellsHowFarItIsUpToTheWhole) {
  add_rows(folder());
  std::vector<double> shares;
  const auto imported =
      import_season(folder(), book_, Import::write, [&](std::size_t done, std::size_t of) {
        shares.push_back(static_cast<double>(done) / static_cast<double>(of));
        return true;
      });
  ASSERT_TRUE(imported && imported->faults.none());
  EXPECT_GE(shares.size(), 10U) << "five thousand rows are read, and put";
  EXPECT_LT(shares.size(), 100U) << "for each file, not for every row";
  EXPECT_LT(std::set(shares.begin(), shares.end()).size(), 20U) << "a share is told anew";
  EXPECT_TRUE(std::ranges::is_sorted(shares));
  EXPECT_LT(shares.front(), 0.1);
  EXPECT_EQ(shares.back(), 1);
}

TEST_F(ImportSeason, StoppedAnywhereNothingCameIn) {
  add_rows(folder());
  for (int stop_at = 1;; ++stop_at) {
    ASSERT_LT(stop_at, 100);
    int asked = 0;
    const auto imported =
        import_season(folder(), book_, Import::write,
                      [&](std::size_t, std::size_t) { return ++asked != stop_at; });
    if (imported) {
      EXPECT_GE(stop_at, 10);
      EXPECT_TRUE(imported->faults.none());
      break;
    }
    EXPECT_NE(imported.error().what.find("stopped"), std::string::npos) << imported.error().text();
    EXPECT_EQ(asked, stop_at) << "once is enough";
    nothing_in();
  }
}

/// What stands in a folder.
std::set<std::string> names_in(const fs::path& folder) {
  std::set<std::string> names;
  for (const auto& each : fs::directory_iterator(folder))
    names.insert(each.path().filename().string());
  return names;
}

TEST_F(ImportSeason, ANewBookStandsThereWhenAllIsInIt) {
  add_rows(folder());
  const auto home = scratch_.at("home");
  fs::create_directory(home);
  const auto book = home / "new.coneline";
  int asked = 0;
  const auto imported =
      import_new(folder(), book, tests::day("2026-01-01"), [&](std::size_t, std::size_t) {
        EXPECT_FALSE(fs::exists(book)) << "nobody can open half of it";
        return ++asked > 0;
      });
  ASSERT_TRUE(imported && imported->faults.none());
  EXPECT_GE(asked, 10);
  EXPECT_EQ(names_in(home), (std::set<std::string>{"new.coneline", "new.coneline.copies"}));
  auto whole = store::Book::open(book, store::Access::read);
  ASSERT_TRUE(whole);
  EXPECT_TRUE(store::prove(*whole)->holds());
  EXPECT_EQ(store::copies_of(book).size(), 1U);
  EXPECT_TRUE(store::Book::open(book, store::Access::write));
  EXPECT_EQ(store::copies_of(book).size(), 1U) << "the opening makes none";
  const auto again = import_new(folder(), book, tests::day("2026-01-01"));
  ASSERT_FALSE(again);
  EXPECT_NE(again.error().what.find("is there already"), std::string::npos);
}

TEST_F(ImportSeason, ANewBookOfAFolderAtFaultOrStoppedIsNone) {
  add_rows(folder());
  const auto home = scratch_.at("home");
  fs::create_directory(home);
  const auto book = home / "new.coneline";
  EXPECT_FALSE(import_new(folder(), book, tests::day("2026-01-01"),
                          [](std::size_t done, std::size_t of) { return 2 * done < of; }));
  EXPECT_EQ(names_in(home), std::set<std::string>());
  change("temperatures.csv", "2025-03-01T00:00:00", "2025-03-01");
  const auto imported = import_new(folder(), book, tests::day("2026-01-01"));
  ASSERT_TRUE(imported);
  EXPECT_FALSE(imported->faults.none());
  EXPECT_EQ(names_in(home), std::set<std::string>());
}

TEST_F(ImportSeason, AFolderThatIsNone) {
  EXPECT_FALSE(import_season(scratch_.at("nothing"), book_, Import::write));
}

} // namespace
} // namespace coneline::exchange
