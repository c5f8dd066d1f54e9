// SPDX-License-Identifier: GPL-3.0-or-later
// The proof finds what was done to a file behind the program's back.
#include "core/store/proof.h"
#include "tests/core/store/first_cone.h"
#include "tests/core/store/raw.h"

#include <gtest/gtest.h>

namespace coneline::store {
namespace {

class ProofTest : public testing::Test {
 protected:
  ProofTest() { tests::make_first_cone(path, first); }

  /// Takes the guards away and does the harm.
  Proof after(const std::string& harm) {
    EXPECT_EQ(
        tests::run_raw(
            path,
            "DROP TRIGGER movement_stays; DROP TRIGGER movement_remains; DROP TRIGGER lot_stays;"
            "DROP TRIGGER movement_one_origin;" +
                harm),
        "");
    auto book = Book::open(path, Access::read).value();
    return prove(book).value();
  }
  static bool says(const Proof& proof, std::string_view text) {
    return std::ranges::any_of(proof.faults, [&](const std::string& fault) {
      return fault.find(text) != std::string::npos;
    });
  }

  tests::Scratch scratch;
  std::filesystem::path path = scratch.at("t.coneline");
  tests::FirstCone first;
};

TEST_F(ProofTest, CountsWhatItProved) {
  auto book = Book::open(path, Access::read).value();
  const auto proof = prove(book).value();
  EXPECT_TRUE(proof.holds());
  EXPECT_EQ(proof.seeds_in, 500);
  EXPECT_EQ(proof.on_hand, 500);
  EXPECT_EQ(proof.ended, 0);
  EXPECT_EQ(proof.movements, 1);
  EXPECT_EQ(proof.accounts, 2);
}

TEST_F(ProofTest, NamesAMissingGuard) {
  EXPECT_TRUE(says(after(""), "movement_remains"));
}

TEST_F(ProofTest, FindsAnAccountBelowZero) {
  const auto proof =
      after("INSERT INTO movement (entry_id, from_lot, from_state, to_lot, to_state, count) "
            "VALUES (1, 1, 'judged filled', 1, 'dead', 5)");
  EXPECT_TRUE(says(proof, "-5 'judged filled' on 2026-02-01"));
}

TEST_F(ProofTest, FindsSeedsThatLeadBackToNoCone) {
  const auto proof =
      after("INSERT INTO lot (kind, number, cone_id, judged, judged_by, note) VALUES ('batch', 2, "
            "1, 'not judged', 'none', '');"
            "INSERT INTO movement (entry_id, from_lot, from_state, to_lot, to_state, count) "
            "VALUES (1, 2, 'unexplained', 2, 'unsorted', 5)");
  EXPECT_TRUE(says(proof, "leads back to no cone"));
}

TEST_F(ProofTest, FindsALotWithNeitherConeNorPurchase) {
  const auto proof =
      after("PRAGMA ignore_check_constraints = 1; UPDATE lot SET cone_id = NULL WHERE id = 1");
  EXPECT_FALSE(proof.holds());
  EXPECT_TRUE(says(proof, "lot 1 leads back to no cone and no purchase"));
}

TEST_F(ProofTest, FindsAMovementBetweenCones) {
  const auto proof =
      after("INSERT INTO cone (number, plant_id, note) VALUES (2, 1, '');"
            "INSERT INTO lot (kind, number, cone_id, judged, judged_by, note) VALUES ('batch', 2, "
            "2, 'not judged', 'none', '');"
            "INSERT INTO movement (entry_id, from_lot, from_state, to_lot, to_state, count) "
            "VALUES (1, 1, 'unsorted', 2, 'unsorted', 5)");
  EXPECT_TRUE(says(proof, "different cones"));
  EXPECT_TRUE(says(proof, "500 seeds in, but 495 on hand"));
}

TEST_F(ProofTest, FindsAReversalThatDoesNotMirror) {
  const auto proof = after("INSERT INTO entry (verb, date, who, note, reverses, entered) VALUES "
                           "('reverse', '2026-02-01', '', '', 1, '')");
  EXPECT_TRUE(says(proof, "does not mirror"));
}

TEST_F(ProofTest, FindsARowThatIsMissing) {
  const auto proof = after("PRAGMA foreign_keys = OFF; DELETE FROM cone");
  EXPECT_TRUE(says(proof, "is missing"));
}

} // namespace
} // namespace coneline::store
