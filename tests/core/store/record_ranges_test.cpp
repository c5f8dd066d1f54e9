// SPDX-License-Identifier: GPL-3.0-or-later
// What a book keeps beside its registers and entries: label papers, prints, rounds, temperatures,
// targets and pins. What is no such thing is refused, and nothing is written.
#include "tests/core/store/first_cone.h"
#include "tests/core/store/raw.h"

#include <gtest/gtest.h>

#include <cmath>

namespace coneline::store {
namespace {

class RecordRanges : public testing::Test {
 protected:
  RecordRanges() : book_(tests::make_first_cone(scratch_.at("t.coneline"), first)) {
    rows = book_.read([](Reading& reading) { return reading.registers(); }).value();
  }
  template <class Row>
  std::string put(const Row& row) {
    const auto done = book_.write([&](Writing& writing) { return writing.put(row); });
    return done ? "written" : done.error().what;
  }
  template <class Ask>
  auto read(Ask ask) {
    return book_.read(ask).value();
  }
  book::LabelRecords labels() {
    return read([](Reading& reading) { return reading.label_records(); });
  }

  tests::Scratch scratch_;
  tests::FirstCone first;
  Book book_;
  book::Registers rows;
};

TEST_F(RecordRanges, LabelPapersHaveNamesOfTheirOwnAndFit) {
  book::LabelStock stock{{}, "own sheet", 210, 297, 7.5, 10, 60, 35, 62.5, 36, 3, 7, 0};
  EXPECT_EQ(put(stock), "written");
  EXPECT_EQ(put(stock), "there is a label stock 'own sheet' already");
  stock.id = labels().stocks.back().id;
  stock.left = 8;
  EXPECT_EQ(put(stock), "written"); // that one, changed
  stock.left = 100;
  EXPECT_NE(put(stock).find("wider than the page"), std::string::npos);
  ASSERT_EQ(labels().stocks.back().left, 8);
  stock.name.clear();
  EXPECT_EQ(put(stock), "a label stock without a name");
}

TEST_F(RecordRanges, LayoutsHaveNamesOfTheirOwn) {
  book::LabelLayout layout{{}, "short", true, false, true, false, false};
  EXPECT_EQ(put(layout), "written");
  EXPECT_EQ(put(layout), "there is a label layout 'short' already");
  layout.name.clear();
  EXPECT_EQ(put(layout), "a label layout without a name");
  layout.id = labels().layouts.back().id;
  layout.name = "shorter";
  layout.day = false;
  EXPECT_EQ(put(layout), "written");
  EXPECT_EQ(labels().layouts.back().name, "shorter");
  EXPECT_FALSE(labels().layouts.back().day);
}

TEST_F(RecordRanges, ARulerIsATenthTooLongAtMost) {
  const auto scale = [&](std::string printer, double across, double down) {
    return put(book::PrinterScale{{}, std::move(printer), "", across, down});
  };
  EXPECT_EQ(scale("office", 90, 110), "written");
  EXPECT_EQ(scale("", 100, 100), "the scale of a printer without a name");
  EXPECT_EQ(scale("office", 89.9, 100), "a 100 mm ruler of 89.9 mm");
  EXPECT_EQ(scale("office", 100, 110.1), "a 100 mm ruler of 110.1 mm");
  EXPECT_EQ(scale("office", NAN, 100), "a 100 mm ruler of nan mm");
  EXPECT_EQ(scale("office", 99.5, 100), "written"); // the same printer, measured again
  ASSERT_EQ(labels().scales.size(), 1U);
  EXPECT_EQ(labels().scales[0].across_mm, 99.5);
}

TEST_F(RecordRanges, APrintIsOfSomethingThatIsThere) {
  const auto print = [&](const Code& code, int copies) {
    return put(book::LabelPrint{{}, code, tests::day("2026-02-02"), "own sheet", copies});
  };
  EXPECT_EQ(print(first.batch, 1), "written");
  EXPECT_EQ(print(first.bench, 10'000), "written");
  EXPECT_EQ(print(first.batch, 0), "0 copies of a label");
  EXPECT_EQ(print(first.batch, 10'001), "10001 copies of a label");
  const auto missing = Code::of(Kind::tray, 17, 7).value();
  EXPECT_EQ(print(missing, 1), "there is no tray " + missing.text() + " in this book");
  EXPECT_NE(print(Code::of(Kind::tray, 18, 7).value(), 1), "written");
  EXPECT_EQ(labels().prints.size(), 2U);
}

TEST_F(RecordRanges, ARoundIsWalkedForwardsWithATrayInTheHand) {
  const auto round = [&](book::Tapped tapped, bool in_hand, std::optional<Date> ended) {
    book::Round made;
    made.began = tests::day("2026-02-05");
    made.tapped = tapped;
    if (in_hand)
      made.in_hand = first.batch_id;
    made.ended = ended;
    return put(made);
  };
  EXPECT_EQ(round({1, 2, 3}, true, {}), "written");
  EXPECT_EQ(round({}, false, tests::day("2026-02-05")), "written");
  EXPECT_EQ(round({-1, 0, 0}, true, {}), "a count below 0");
  EXPECT_EQ(round({0, -1, 0}, true, {}), "a count below 0");
  EXPECT_EQ(round({0, 0, -1}, true, {}), "a count below 0");
  EXPECT_EQ(round({0, 0, 1}, false, {}), "counts without a tray in the hand");
  EXPECT_EQ(round({}, true, tests::day("2026-02-05")),
            "a round that has ended with a tray still in the hand");
  EXPECT_NE(round({}, false, tests::day("2026-02-03")).find("2 days before"), std::string::npos);
  EXPECT_EQ(read([](Reading& reading) { return reading.rounds().size(); }), 2U);
  book::Round gone;
  gone.id = {99};
  gone.began = tests::day("2026-02-05");
  EXPECT_EQ(put(gone), "there is no round 99");
}

TEST_F(RecordRanges, APlaceHasOneReadingAMoment) {
  const auto add = [&](const char* at, double celsius) {
    const auto done = book_.write([&](Writing& writing) {
      return writing.add(book::Temperature{rows.places[1].id, Moment::parse(at).value(), celsius});
    });
    return done ? std::string("written") : done.error().what;
  };
  EXPECT_EQ(add("2026-02-02T00:00:00", 20), "written");
  EXPECT_EQ(add("2026-02-02T23:59:59", 21), "written");
  EXPECT_EQ(add("2026-02-02T00:00:00", 22),
            "the place has a reading of 2026-02-02T00:00:00 already");
  EXPECT_EQ(add("2026-02-03T00:00:00", NAN), "a temperature of nan");
  EXPECT_EQ(add("2026-02-03T00:00:00", 22), "written");
  const auto taken = book_.write([&](Writing& writing) -> Result<std::int64_t> {
    const auto day = tests::day("2026-02-02");
    return writing.take_out_temperatures(rows.places[1].id, day, day);
  });
  EXPECT_EQ(taken.value(), 2); // to the last second of the day
}

TEST_F(RecordRanges, AMomentThatIsNoneInTheFileIsSaidSo) {
  ASSERT_EQ(tests::run_raw(scratch_.at("t.coneline"),
                           "INSERT INTO temperature (place_id, at, celsius) VALUES (1, "
                           "'yesterday at noon__', 20)"),
            "");
  const auto read = book_.read([](Reading& reading) { return reading.temperatures(); });
  ASSERT_FALSE(read);
  EXPECT_NE(read.error().text().find("'yesterday at noon__' is no date"), std::string::npos)
      << read.error().text();
}

TEST_F(RecordRanges, ATargetIsChangedAsLongAsItStands) {
  book::Target target;
  target.cross = "Mother × Father";
  target.taxon = rows.taxa[0].id;
  target.pot = rows.pots[1].id;
  target.plants = 100;
  target.by = tests::day("2028-05-31");
  EXPECT_EQ(put(target), "written");
  target.id = read([](Reading& reading) { return reading.plan_records().targets.at(0).id; });
  target.plants = 120;
  EXPECT_EQ(put(target), "written");
  EXPECT_EQ(read([](Reading& reading) { return reading.plan_records().targets.at(0).plants; }),
            120);
  target.assurance = 1;
  EXPECT_EQ(put(target), "an assurance of 1");
  target.assurance = 0.9;
  static_cast<void>(book_.write([&](Writing& writing) -> Result<int> {
    writing.take_out(target.id);
    return 0;
  }));
  EXPECT_EQ(put(target), "that target is not there any more");
}

TEST_F(RecordRanges, ALotIsPinnedToAPlaceWithASizeAndOnce) {
  const auto pinned = [&] {
    return read([](Reading& reading) { return reading.plan_records().pins; });
  };
  EXPECT_EQ(put(book::Pin{first.batch_id, rows.places[0].id}),
            "'House' has no size, so that nothing can be told to stand there");
  EXPECT_EQ(put(book::Pin{first.batch_id, rows.places[1].id}), "written");
  EXPECT_EQ(put(book::Pin{first.batch_id, rows.places[1].id}), "written");
  EXPECT_EQ(pinned().size(), 1U);
  const auto take_out = [&] {
    return book_
        .write(
            [&](Writing& writing) -> Result<bool> { return writing.take_out_pin(first.batch_id); })
        .value();
  };
  EXPECT_TRUE(take_out());
  EXPECT_FALSE(take_out());
  EXPECT_TRUE(pinned().empty());
}

} // namespace
} // namespace coneline::store
