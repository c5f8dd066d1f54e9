// SPDX-License-Identifier: GPL-3.0-or-later
// What the database itself forbids, whoever writes to it.
#include "tests/core/store/first_cone.h"
#include "tests/core/store/raw.h"

#include <gtest/gtest.h>

namespace coneline::store {
namespace {

class Guards : public testing::Test {
 protected:
  Guards() { tests::make_first_cone(path, first); }
  tests::Scratch scratch;
  std::filesystem::path path = scratch.at("t.coneline");
  tests::FirstCone first;
};

TEST_F(Guards, NothingInTheLedgerIsChangedOrDeleted) {
  for (const auto* table : {"lot", "entry", "movement"}) {
    EXPECT_NE(
        tests::run_raw(path, fmt::format("UPDATE {} SET id = id + 1", table)).find("never changed"),
        std::string::npos)
        << table;
    EXPECT_NE(tests::run_raw(path, fmt::format("DELETE FROM {}", table)).find("never deleted"),
              std::string::npos)
        << table;
  }
}

TEST_F(Guards, AMovementOfNothingOrOfLessIsRefused) {
  for (const auto* count : {"0", "-3", "1.5", "'many'", "NULL"})
    EXPECT_NE(
        tests::run_raw(
            path,
            fmt::format(
                "INSERT INTO movement (entry_id, from_lot, from_state, to_lot, to_state, count) "
                "VALUES (1, 1, 'unsorted', 1, 'dead', {})",
                count)),
        "")
        << count;
}

TEST_F(Guards, AMovementBetweenConesIsRefused) {
  const auto made =
      tests::run_raw(path, "INSERT INTO cone (number, plant_id, note) VALUES (2, 1, '');"
                           "INSERT INTO lot (kind, number, cone_id, judged, judged_by, note) "
                           "VALUES ('batch', 2, 2, 'not judged', 'none', '')");
  ASSERT_EQ(made, "");
  EXPECT_NE(tests::run_raw(
                path,
                "INSERT INTO movement (entry_id, from_lot, from_state, to_lot, to_state, count) "
                "VALUES (1, 1, 'unsorted', 2, 'unsorted', 5)")
                .find("one cone"),
            std::string::npos);
}

TEST_F(Guards, AnEntryIsReversedOnce) {
  const std::string reversal = "INSERT INTO entry (verb, date, who, note, reverses, entered) "
                               "VALUES ('reverse', '2026-02-01', '', '', 1, '')";
  EXPECT_EQ(tests::run_raw(path, reversal), "");
  EXPECT_NE(tests::run_raw(path, reversal), "");
}

} // namespace
} // namespace coneline::store
