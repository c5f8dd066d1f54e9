// SPDX-License-Identifier: GPL-3.0-or-later
// What the proof says of a file whose rows were put there, or taken away, past every guard.
#include "core/store/proof.h"
#include "tests/core/store/first_cone.h"
#include "tests/core/store/raw.h"

#include <gtest/gtest.h>

namespace coneline::store {
namespace {

class ProofEdges : public testing::Test {
 protected:
  ProofEdges() { tests::make_first_cone(path, first); }

  /// Every fault of the book after the harm, a line each.
  std::string after(const std::string& harm, const std::string& printed = {}) {
    EXPECT_EQ(
        tests::run_raw(path, "PRAGMA foreign_keys = OFF; PRAGMA ignore_check_constraints = ON;"
                             "DROP TRIGGER movement_stays; DROP TRIGGER movement_remains;"
                             "DROP TRIGGER lot_stays; DROP TRIGGER lot_remains;"
                             "DROP TRIGGER movement_one_origin;" +
                                 harm),
        "");
    auto book = Book::open(path, Access::read);
    if (!book)
      return book.error().text();
    const auto proof = prove(*book, printed);
    std::string said;
    for (const auto& fault : proof->faults)
      said += fault + "\n";
    return said;
  }
  static bool has(const std::string& said, std::string_view part) {
    return said.find(part) != std::string::npos;
  }
  static std::string move(const char* from_lot, const char* from, const char* to_lot,
                          const char* to, const char* count) {
    return fmt::format("INSERT INTO movement (entry_id, from_lot, from_state, to_lot, to_state, "
                       "count) VALUES (1, {}, '{}', {}, '{}', {});",
                       from_lot, from, to_lot, to, count);
  }

  tests::Scratch scratch;
  std::filesystem::path path = scratch.at("t.coneline");
  tests::FirstCone first;
};

TEST_F(ProofEdges, AMovementOfNothingIsFoundAndNotReckonedWith) {
  const auto said = after(move("1", "unsorted", "1", "lost in cleaning", "-3"));
  EXPECT_TRUE(has(said, "entry 1: a movement of -3")) << said;
}

TEST_F(ProofEdges, AMovementOfALotThatIsMissingIsFound) {
  const auto said = after(move("1", "unsorted", "99", "unsorted", "5"));
  EXPECT_TRUE(has(said, "entry 1: a movement of a lot that is missing")) << said;
  EXPECT_TRUE(has(said, "500 seeds in, but 495 on hand")) << said;
}

TEST_F(ProofEdges, ASeedFromALotThatIsMissingIsBelowZeroThere) {
  const auto said = after(move("99", "unsorted", "1", "unsorted", "5"));
  EXPECT_TRUE(has(said, "lot 99 has -5 'unsorted' on 2026-02-01")) << said;
}

TEST_F(ProofEdges, AStateThatTheLotCannotHoldIsFound) {
  const auto said = after(move("1", "unsorted", "1", "plant", "5"));
  EXPECT_TRUE(has(said, first.batch.text() + " cannot hold what is 'plant'")) << said;
}

TEST_F(ProofEdges, AnAccountBelowZeroIsNamedOnce) {
  const auto said = after(
      move("1", "judged filled", "1", "sown", "5") +
      "INSERT INTO entry (verb, date, who, note, entered) VALUES ('open', '2026-02-03', '', '', "
      "'');"
      "INSERT INTO movement (entry_id, from_lot, from_state, to_lot, to_state, count) VALUES "
      "((SELECT max(id) FROM entry), 1, 'judged filled', 1, 'sown', 5);");
  const auto at = said.find("'judged filled' on 2026-02-01");
  EXPECT_NE(at, std::string::npos) << said;
  EXPECT_EQ(said.find("'judged filled' on 2026-02-03"), std::string::npos) << said;
}

TEST_F(ProofEdges, SeedOfAConeThatIsMissingIsNamedAsSuch) {
  const auto said = after(move("1", "cone", "99", "unsorted", "5") + "DELETE FROM cone;");
  EXPECT_TRUE(has(said, "a cone that is missing: ")) << said;
}

TEST_F(ProofEdges, SeedThatCameIntoAPurchaseFromAConeIsMissedThereAndTooMuchHere) {
  const std::string purchase =
      "INSERT INTO purchase (number, taxon_id, supplier, bought, note) VALUES (1, 1, 'a grower', "
      "'2026-01-05', '');"
      "INSERT INTO lot (kind, number, purchase_id, judged, judged_by, note) VALUES ('batch', 2, 1, "
      "'not judged', 'none', '');";
  const auto said = after(purchase + move("1", "unsorted", "2", "unsorted", "5"));
  const auto code = Code::of(Kind::purchase, 17, 1).value().text();
  EXPECT_TRUE(has(said, first.cone.text() + ": 500 seeds in, but 495 on hand and 0 ended")) << said;
  EXPECT_TRUE(has(said, code + ": 0 seeds in, but 5 on hand and 0 ended")) << said;
  ASSERT_EQ(tests::run_raw(path, "PRAGMA foreign_keys = OFF; DELETE FROM purchase"), "");
  auto book = Book::open(path, Access::read).value();
  const auto proof = prove(book).value();
  EXPECT_TRUE(std::ranges::any_of(proof.faults, [](const std::string& fault) {
    return fault.starts_with("a purchase that is missing: 0 seeds in");
  }));
}

TEST_F(ProofEdges, APrintedLinkOfAnotherBookIsToldFromOnesOwn) {
  const auto said = after("", std::string(64, 'a'));
  EXPECT_TRUE(has(said, "is not in this book's chain")) << said;
}

TEST_F(ProofEdges, AWordThatIsNoneStopsTheProofAndIsSaid) {
  const auto said = after("UPDATE movement SET to_state = 'mislaid';");
  EXPECT_TRUE(has(said, "mislaid")) << said;
}

} // namespace
} // namespace coneline::store
