// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/germination_csv.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coneline::commands {
namespace {

Result<std::vector<stats::Tray>> read(const std::string& text) {
  return read_germination(read_csv(text, "counts.csv").value());
}

TEST(GerminationCsv, ReadsColumnsAndRowsInAnyOrder) {
  const auto trays = read("germinated,day,note,tray,sown,group,removed\n"
                          "5,14.5,fine,T2,30,B,1\n"
                          "2,7,,T1,20,A,\n"
                          "0,3,,T2,30,B,0\n")
                         .value();
  ASSERT_EQ(trays.size(), 2U);
  EXPECT_EQ(trays[0].tray, "T2");
  EXPECT_EQ(trays[0].looks, (std::vector<stats::Look>{{3, 0, 0}, {14.5, 5, 1}}));
  EXPECT_EQ(trays[1].group, "A");
  EXPECT_EQ(trays[1].sown, 20);
}

struct Bad {
  std::string rows;
  std::size_t line;
  std::string column;
  std::string said;
};

TEST(GerminationCsv, PlacesEveryFault) {
  for (const auto& bad : {
           Bad{"A,1,10,7,2,0\nA,1,10,7,3,0\n", 3, "day", "two inspections on day 7"},
           Bad{"A,1,10,7,2,0\nA,1,12,8,3,0\n", 3, "sown", "12 sown here and 10 in line 2"},
           Bad{"A,1,10,7,-2,0\n", 2, "germinated", "below zero, and this is -2"},
           Bad{"A,1,10,7,0,-1\n", 2, "removed", "below zero"},
           Bad{"A,1,-10,7,0,0\n", 2, "sown", "below zero"},
           Bad{"A,1,10,7,11,0\n", 2, "germinated", "11 germinated of 10 sown: 1 too many"},
           Bad{"A,1,10,9,6,0\nA,1,10,7,5,0\n", 2, "germinated", "11 germinated of 10 sown"},
           Bad{"A,1,10,7,6,5\n", 2, "removed", "6 germinated and 5 removed of 10 sown: 1 too many"},
           Bad{"A,1,10,0,1,0\n", 2, "germinated", "day 0"},
           Bad{"A,1,10,-1,0,0\n", 2, "day", "before the sowing"},
           Bad{"A,1,10,\"7,5\",0,0\n", 2, "day", "comma"},
           Bad{"A,1,10,2026-03-01,0,0\n", 2, "day", "is a date"},
           Bad{"A,1,10,soon,0,0\n", 2, "day", "no number"},
           Bad{"A,1,10,7,1.5,0\n", 2, "germinated", "no whole number"},
           Bad{"A,1,10,7,,0\n", 2, "germinated", "no whole number"},
           Bad{"A,,10,7,1,0\n", 2, "tray", "no name"},
           Bad{",1,10,7,1,0\n", 2, "group", "no name"},
           Bad{"", 1, "", "no rows"},
       }) {
    const auto trays = read("group,tray,sown,day,germinated,removed\n" + bad.rows);
    ASSERT_FALSE(trays) << bad.rows;
    EXPECT_NE(trays.error().what.find(bad.said), std::string::npos) << trays.error().text();
    ASSERT_TRUE(trays.error().where) << trays.error().text();
    EXPECT_EQ(*trays.error().where, (Where{"counts.csv", bad.line, bad.column})) << bad.rows;
  }
}

TEST(GerminationCsv, TakesATrayOfTheSameNameInAnotherGroupForAnotherTray) {
  const auto trays =
      read("group,tray,sown,day,germinated\nA,1,10,7,2\nB,1,12,7,3\nA,1,10,9,1\n").value();
  ASSERT_EQ(trays.size(), 2U);
  EXPECT_EQ(trays[0].group, "A");
  EXPECT_EQ(trays[0].looks.size(), 2U);
  EXPECT_EQ(trays[1].group, "B");
  EXPECT_EQ(trays[1].sown, 12);
}

TEST(GerminationCsv, SaysWhatToDoAboutOtherSeparators) {
  for (const std::string text : {"group;tray;sown;day;germinated\nA;1;20;7.5;2\n",
                                 "group;tray;sown;day;germinated\nA;1;20;7,5;2\n",
                                 "group\ttray\tsown\tday\tgerminated\nA\t1\t20\t7\t2\n"}) {
    const auto table = read_csv(text, "counts.csv");
    const auto fault = table ? read_germination(*table).error() : table.error();
    EXPECT_NE(fault.text().find("Save the file with commas between columns"), std::string::npos)
        << fault.text();
  }
  const auto split = read_csv("group,tray,sown,day,germinated\nA,1,20,7,5,2\n", "counts.csv");
  ASSERT_FALSE(split);
  EXPECT_NE(split.error().text().find("decimals with a point"), std::string::npos);
}

TEST(GerminationCsv, NamesAMissingColumn) {
  const auto trays = read("group,tray,sown,germinated\nA,1,10,2\n");
  ASSERT_FALSE(trays);
  EXPECT_EQ(*trays.error().where, (Where{"counts.csv", 1, "day"}));
}

TEST(GerminationCsv, TellsAllFaultsAtOnceInTheOrderOfTheFile) {
  const auto trays =
      read("group,tray,sown,day,germinated\nA,1,10,7,11\nA,2,10,x,1\nB,2,10,8,1\nA,1,9,8,0\n");
  ASSERT_FALSE(trays);
  const auto text = trays.error().text();
  EXPECT_LT(text.find("line 2, column germinated"), text.find("line 3, column day"));
  EXPECT_LT(text.find("line 3, column day"), text.find("line 5, column sown"));
}

RC_GTEST_PROP(GerminationCsv, TheOrderOfRowsDoesNotMatter, ()) {
  std::vector<std::string> rows;
  for (int i = 1; i <= 6; ++i)
    rows.push_back(csv_line({"A", "1", "50", std::to_string(3 * i), std::to_string(i)}));
  const auto header = csv_line({"group", "tray", "sown", "day", "germinated"});
  const auto joined = [&] {
    auto text = header;
    for (const auto& row : rows)
      text += row;
    return text;
  };
  const auto straight = read(joined()).value();
  for (std::size_t i = rows.size(); i > 1; --i)
    std::swap(rows[i - 1],
              rows[static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(i)))]);
  RC_ASSERT(read(joined()).value().front().looks == straight.front().looks);
}

} // namespace
} // namespace coneline::commands
