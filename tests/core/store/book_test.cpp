// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book.h"
#include "core/store/proof.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

#include <fstream>

namespace coneline::store {
namespace {

using book::State;

Date day(std::string_view iso) {
  return Date::parse(iso).value();
}

book::Title title() {
  return {"Test nursery", 17, true, day("2026-01-01")};
}

struct Start {
  book::ConeId cone;
  book::LotId batch;
};

/// A female plant with one cone of 500 seeds, harvested.
Result<Start> harvested(Writing& writing) {
  const auto taxon = writing.put(book::Taxon{{}, "Cycas revoluta", {}, {}, {}, {}, {}, {}}).value();
  book::Plant plant;
  plant.code = writing.next_code(Kind::plant).value();
  plant.taxon = taxon;
  plant.sex = book::Sex::female;
  const auto mother = writing.put(plant).value();
  const auto cone =
      writing.put(book::Cone{{}, writing.next_code(Kind::cone).value(), mother, {}, ""}).value();
  book::Lot batch;
  batch.code = writing.next_code(Kind::batch).value();
  batch.origin = cone;
  const auto lot = writing.add(batch).value();
  book::Entry entry;
  entry.verb = book::Verb::harvest;
  entry.date = day("2026-02-01");
  entry.lot = lot;
  entry.movements = {{{lot, State::cone}, {lot, State::unsorted}, Count::sure(500)}};
  return writing.enter(entry).map([&](book::EntryId) { return Start{cone, lot}; });
}

TEST(Book, KeepsWhatWasWritten) {
  const tests::Scratch scratch;
  const auto path = scratch.at("a book with 'quotes' and blanks?.coneline");
  {
    auto book = Book::make(path, title());
    ASSERT_TRUE(book) << book.error().text();
    ASSERT_TRUE(book->write(harvested));
  }
  auto book = Book::open(path, Access::read);
  ASSERT_TRUE(book) << book.error().text();
  const auto balances = book->read([](Reading& reading) { return reading.balances(); }).value();
  ASSERT_EQ(balances.size(), 2U);
  const auto registers = book->read([](Reading& reading) { return reading.registers(); }).value();
  EXPECT_EQ(registers.title.series, 17);
  EXPECT_EQ(registers.taxa.at(0).name, "Cycas revoluta");
  EXPECT_EQ(registers.cones.at(0).code.text().substr(0, 4), "C171");
  const auto proof = prove(*book);
  ASSERT_TRUE(proof) << proof.error().text();
  EXPECT_TRUE(proof->holds()) << proof->faults.front();
  EXPECT_EQ(proof->seeds_in, 500);
  EXPECT_EQ(proof->on_hand, 500);
}

} // namespace
} // namespace coneline::store
