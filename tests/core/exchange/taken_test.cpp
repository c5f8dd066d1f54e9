// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever numbers a book takes, its season folder brings in again, to the byte. Numbers at and
// beyond the ends of what is sound are offered; a book that took none of them would show nothing,
// so what must be taken is counted.
#include "core/exchange/export_season.h"
#include "core/exchange/import_season.h"
#include "tests/core/exchange/small_season.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace coneline::exchange {
namespace {

const std::vector<double> reals{
    -1,  0,     1e-300, 0.15,     0.5,
    1,   12,    1200,   1201,     1e6,
    1e7, 1e300, -1e300, HUGE_VAL, std::numeric_limits<double>::quiet_NaN()};
const std::vector<int> wholes{
    std::numeric_limits<int>::min(), -1'000'001, -1'000'000, -1, 0, 1, 40, 1'000'000, 1'000'001,
    std::numeric_limits<int>::max()};

/// A book that takes what it finds sound of what it is offered.
class Offered {
 public:
  Offered() : book_(tests::make_first_cone(scratch_.at("book"), first_)) {
    rows_ = book_.read([](store::Reading& reading) { return reading.registers(); }).value();
  }

  template <class Row>
  bool put(const Row& row) {
    return book_.write([&](store::Writing& writing) { return writing.put(row); }).has_value();
  }
  bool put_place(int walk, double length, double width) {
    return book_
        .write([&](store::Writing& writing) {
          book::Place place;
          place.code = writing.next_code(Kind::place).value();
          place.name = "offered";
          place.walk = walk;
          place.length_mm = length;
          place.width_mm = width;
          return writing.put(place);
        })
        .has_value();
  }
  bool put_route(double germination, const book::Range& months, const book::Range& step) {
    auto route = rows_.routes[0];
    route.germination = germination;
    route.germination_months = months;
    route.steps[0].months = step;
    return put(route);
  }
  bool put_taxon(const book::Range& ripening) {
    book::Taxon taxon;
    taxon.name = "offered";
    taxon.ripening.value = ripening;
    return put(taxon);
  }
  bool put_mix(double share, double shrink, double loss) {
    return put(book::Mix{{}, "offered", shrink, loss, "", {{"sand", share}, {"bark", 1}}});
  }
  bool enter(book::Verb verb, book::Detail detail) {
    book::Entry entry;
    entry.verb = verb;
    entry.date = tests::day("2026-02-02");
    if (verb != book::Verb::collect_pollen)
      entry.lot = first_.batch_id;
    entry.detail = std::move(detail);
    return book_.write([&](store::Writing& writing) { return writing.enter(entry); }).has_value();
  }
  bool collect(double millilitres) {
    return enter(book::Verb::collect_pollen,
                 book::PollenNote{rows_.pollen_lots[0].id, millilitres, {}, {}, ""});
  }

  /// What is wrong with the folder of the book; empty where it comes in and goes out the same.
  std::string comes_back() {
    if (const auto out = export_season(book_, scratch_.at("out"), Existing::keep); !out)
      return out.error().text();
    const auto again = scratch_.at("again");
    const auto in = import_new(scratch_.at("out"), again, tests::day("2026-03-01"));
    if (!in)
      return in.error().text();
    if (!in->faults.none())
      return in->faults.listed().front().text();
    auto second = store::Book::open(again, store::Access::read);
    if (!second)
      return second.error().text();
    if (const auto out = export_season(*second, scratch_.at("out again"), Existing::keep); !out)
      return out.error().text();
    return tests::contents(scratch_.at("out")) == tests::contents(scratch_.at("out again"))
               ? ""
               : "the folders differ";
  }

 private:
  tests::Scratch scratch_;
  tests::FirstCone first_;
  store::Book book_;
  book::Registers rows_;
};

RC_GTEST_PROP(Taken, WhatABookTakesItsFolderBringsInAgain, ()) {
  const auto real = [] { return *rc::gen::elementOf(reals); };
  const auto whole = [] { return *rc::gen::elementOf(wholes); };
  const auto range = [&] { return book::Range{real(), real()}; };
  Offered offered;
  int taken = 0;
  taken += offered.put_place(whole(), real(), real());
  taken += offered.put(
      book::Pot{{}, "offered", real(), book::Shape::rectangular, real(), real(), whole(), ""});
  taken += offered.put_mix(real(), real(), real());
  taken += offered.put_taxon(range());
  taken += offered.put_route(real(), range(), range());
  taken += offered.put(book::Figure{book::figure::ready_stands, real()});
  taken += offered.put(book::Figure{book::figure::plan_assurance, real()});
  taken += offered.put(book::Figure{"a figure of the grower's own", real()});
  taken += offered.enter(book::Verb::clean, book::Cleaning{whole()});
  taken += offered.enter(book::Verb::store, book::Keeping{"box", real(), {}, {}});
  taken += offered.collect(real());
  RC_TAG(taken);
  const auto wrong = offered.comes_back();
  RC_LOG() << wrong;
  RC_ASSERT(wrong.empty());
}

TEST(Taken, WhatIsSoundAtItsEndsIsTakenAndComesBack) {
  Offered offered;
  EXPECT_TRUE(offered.put_place(-1'000'000, 0, 1e300));
  EXPECT_TRUE(
      offered.put(book::Pot{{}, "wide", 1e300, book::Shape::round, 1e100, 1e100, 1'000'000, ""}));
  EXPECT_TRUE(offered.put_mix(1e300, 0, 1e300));
  EXPECT_TRUE(offered.put_taxon({0, 1200}));
  EXPECT_TRUE(offered.put_route(1, {0, 1200}, {0, 1200}));
  EXPECT_TRUE(offered.put(book::Figure{book::figure::ready_stands, 1200}));
  EXPECT_TRUE(offered.put(book::Figure{book::figure::potting_months, 1}));
  EXPECT_TRUE(offered.enter(book::Verb::clean, book::Cleaning{1'000'000}));
  EXPECT_TRUE(offered.enter(book::Verb::store, book::Keeping{"box", -1e300, {}, {}}));
  EXPECT_TRUE(offered.collect(1e300));
  EXPECT_EQ(offered.comes_back(), "");
}

} // namespace
} // namespace coneline::exchange
