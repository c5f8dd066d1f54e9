// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book.h"
#include "core/store/proof.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

#include <thread>

namespace coneline::store {
namespace {

using tests::day;

TEST(Book, KeepsWhatWasWritten) {
  const tests::Scratch scratch;
  const auto path = scratch.at("a book with 'quotes', \"these\" and blanks?.coneline");
  tests::FirstCone first;
  { tests::make_first_cone(path, first); }
  auto book = Book::open(path, Access::read);
  ASSERT_TRUE(book) << book.error().text();
  const auto registers = book->read([](Reading& reading) { return reading.registers(); }).value();
  EXPECT_EQ(registers.title.series, 17);
  EXPECT_EQ(registers.title.name, "Test nursery");
  EXPECT_TRUE(registers.title.invented);
  EXPECT_EQ(registers.taxa.at(0).ripening.value, (book::Range{10, 14}));
  EXPECT_EQ(registers.taxa.at(0).ripening.source, "common practice, no source");
  EXPECT_FALSE(registers.taxa.at(0).frost.source.size());
  EXPECT_EQ(registers.mixes.at(0).parts.at(2).name, "sand");
  EXPECT_EQ(registers.routes.at(0).steps.at(1).survival, 0.9);
  EXPECT_EQ(registers.plants.at(1).sex, book::Sex::male);
  EXPECT_EQ(registers.pollen_lots.at(0).millilitres, 3.5);
  EXPECT_EQ(registers.cones.at(0).first_seen, day("2025-01-10"));
  EXPECT_EQ(registers.places.at(1).within, registers.places.at(0).id);
  const auto balances = book->read([](Reading& reading) { return reading.balances(); }).value();
  EXPECT_EQ(balances.size(), 2U);
}

TEST(Book, WithoutAFilesNameIsRefused) {
  for (const auto access : {Access::read, Access::write}) {
    const auto opened = Book::open("", access);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().what, "no file is named");
  }
  const auto made = Book::make("", {"Test nursery", 17, true, day("2025-01-01")});
  ASSERT_FALSE(made);
  EXPECT_EQ(made.error().what, "no file is named");
}

TEST(Book, IsReadableByItsOwnerAlone) {
  const tests::Scratch scratch;
  tests::FirstCone first;
  tests::make_first_cone(scratch.at("t.coneline"), first);
  const auto rights = std::filesystem::status(scratch.at("t.coneline")).permissions();
  EXPECT_EQ(rights & (std::filesystem::perms::group_all | std::filesystem::perms::others_all),
            std::filesystem::perms::none);
}

TEST(Book, IsNotAskedTwiceAtOnce) {
  const tests::Scratch scratch;
  auto book = Book::make(scratch.at("book"), {"N", 17, true, day("2026-01-01")}).value();
  const auto name = [](Reading& reading) { return reading.registers().title.name; };
  Result<std::string> other;
  const auto first = book.read([&](Reading& reading) {
    std::thread([&] { other = book.read(name); }).join();
    return name(reading); // the first goes on undisturbed
  });
  EXPECT_EQ(first.value(), "N");
  ASSERT_FALSE(other);
  EXPECT_NE(other.error().what.find("twice at once"), std::string::npos) << other.error().text();
  EXPECT_EQ(book.read(name).value(), "N") << "and can be asked again";
}

TEST(Book, TryingOutKeepsNothing) {
  const tests::Scratch scratch;
  tests::FirstCone first;
  auto book = tests::make_first_cone(scratch.at("t.coneline"), first);
  const auto tried = book.try_out([](Writing& writing) {
    return writing.put(book::Taxon{{}, "Zamia furfuracea", {}, {}, {}, {}, {}, {}});
  });
  EXPECT_TRUE(tried);
  EXPECT_EQ(book.read([](Reading& reading) { return reading.registers().taxa.size(); }).value(),
            1U);
}

TEST(Book, AFaultInTheMiddleKeepsNothing) {
  const tests::Scratch scratch;
  tests::FirstCone first;
  auto book = tests::make_first_cone(scratch.at("t.coneline"), first);
  const auto refused = book.write([](Writing& writing) -> Result<int> {
    static_cast<void>(
        writing.put(book::Taxon{{}, "Zamia furfuracea", {}, {}, {}, {}, {}, {}}).value());
    return refuse(fault("changed my mind"));
  });
  EXPECT_EQ(refused.error().what, "changed my mind");
  const auto thrown = book.write([](Writing& writing) -> Result<int> {
    static_cast<void>(
        writing.put(book::Taxon{{}, "Zamia furfuracea", {}, {}, {}, {}, {}, {}}).value());
    throw std::runtime_error("a fault of the program");
  });
  EXPECT_FALSE(thrown);
  EXPECT_EQ(book.read([](Reading& reading) { return reading.registers().taxa.size(); }).value(),
            1U);
}

TEST(Book, ASecondUseOfACodeIsRefused) {
  const tests::Scratch scratch;
  tests::FirstCone first;
  auto book = tests::make_first_cone(scratch.at("t.coneline"), first);
  const auto again = book.write([&](Writing& writing) {
    auto lot = writing.lot(first.batch).value();
    return writing.add(lot);
  });
  ASSERT_FALSE(again);
  EXPECT_NE(again.error().what.find(first.batch.text()), std::string::npos);
  const auto plant = book.write([&](Writing& writing) {
    auto twin = writing.registers().plants.front();
    twin.id = {};
    return writing.put(twin);
  });
  EXPECT_FALSE(plant);
}

TEST(Book, TheLabelOfAnotherBookIsSaidSo) {
  const tests::Scratch scratch;
  tests::FirstCone first;
  auto book = tests::make_first_cone(scratch.at("t.coneline"), first);
  const auto other =
      book.read([](Reading& reading) { return reading.lot(Code::of(Kind::tray, 23, 1).value()); });
  ASSERT_FALSE(other);
  EXPECT_NE(other.error().what.find("another book"), std::string::npos);
}

TEST(Book, BalancesAndPlacesAreThoseOfTheDay) {
  const tests::Scratch scratch;
  tests::FirstCone first;
  auto book = tests::make_first_cone(scratch.at("t.coneline"), first);
  const auto before = book.read([&](Reading& reading) {
                            return reading.balances_of(first.batch_id, day("2026-01-31"));
                          })
                          .value();
  EXPECT_TRUE(before.empty());
  const auto on =
      book.read([&](Reading& reading) { return reading.balances(day("2026-02-01")); }).value();
  EXPECT_EQ(on.size(), 2U);
}

TEST(Book, MixAndRouteAndPotMustBeSound) {
  const tests::Scratch scratch;
  tests::FirstCone first;
  auto book = tests::make_first_cone(scratch.at("t.coneline"), first);
  const auto put = [&](const auto& row) {
    return book.write([&](Writing& writing) { return writing.put(row); });
  };
  EXPECT_FALSE(put(book::Mix{{}, "nothing", 0, 0, "", {}}));
  EXPECT_FALSE(put(book::Mix{{}, "below", 0, 0, "", {{"bark", -1}}}));
  EXPECT_FALSE(put(book::Mix{{}, "all gone", 1, 0, "", {{"bark", 1}}}));
  EXPECT_FALSE(put(book::Mix{{}, "twice", 0, 0, "", {{"bark", 1}, {"bark", 2}}}));
  EXPECT_FALSE(put(book::Pot{{}, "flat", 0, book::Shape::round, 10, 10, 1, ""}));
  EXPECT_FALSE(put(book::Pot{{}, "oval", 1, book::Shape::round, 10, 12, 1, ""}));
  EXPECT_FALSE(put(book::Pot{{}, "seed tray", 1, book::Shape::round, 10, 10, 1, ""}))
      << "the name stands";
  EXPECT_FALSE(put(book::Route{{}, book::TaxonId{1}, 0.5, {0, 1}, "", {}})) << "no end";
}

} // namespace
} // namespace coneline::store
