// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/due.h"
#include "core/work/labels_to_renew.h"
#include "core/work/note_prints.h"
#include "core/work/overview.h"
#include "tests/core/work/small_nursery.h"

#include <gtest/gtest.h>

namespace coneline::work {
namespace {

using tests::day;

/// A book with a plant, which can have a label but no entry.
class LabelPrints : public testing::Test {
 protected:
  void SetUp() override { nursery_.plant("Old Gate", book::Sex::female); }

  Code plant() {
    return nursery_.ask(
        [](store::Reading& reading) { return reading.registers().plants.back().code; });
  }
  tests::SmallNursery nursery_;
};

TEST_F(LabelPrints, AreCountedAndKeepTheCode) {
  const std::vector<Code> codes{plant(), plant()};
  nursery_.write([&](store::Writing& writing) {
    EXPECT_TRUE(note_prints(writing, codes, day("2026-01-02"), "roll"));
    EXPECT_TRUE(note_prints(writing, {codes.data(), 1}, day("2026-03-01"), "roll"));
    return true;
  });
  const auto histories =
      nursery_.ask([](store::Reading& reading) { return label_histories(reading); });
  ASSERT_EQ(histories.size(), 1U);
  EXPECT_EQ(histories.at(plant()).times, 3);
  EXPECT_EQ(histories.at(plant()).last, day("2026-03-01"));
}

TEST_F(LabelPrints, RefuseWhatIsNotThere) {
  const std::vector<Code> absent{Code::of(Kind::tray, 17, 999).value()};
  const std::vector<Code> foreign{Code::of(Kind::plant, 18, 1).value()};
  nursery_.write([&](store::Writing& writing) {
    EXPECT_FALSE(note_prints(writing, absent, day("2026-01-02"), "roll"));
    EXPECT_FALSE(note_prints(writing, foreign, day("2026-01-02"), "roll"));
    return true;
  });
}

TEST_F(LabelPrints, ScalesFarFromTrueAreAPrinterSetting) {
  nursery_.write([](store::Writing& writing) {
    EXPECT_TRUE(writing.put(book::PrinterScale{{}, "office", "", 99.5, 100.4}));
    EXPECT_TRUE(writing.put(book::PrinterScale{{}, "office", "", 99.6, 100.4}));
    EXPECT_FALSE(writing.put(book::PrinterScale{{}, "office", "", 94.0, 141.0}));
    EXPECT_EQ(writing.label_records().scales.size(), 1U);
    return true;
  });
}

TEST_F(LabelPrints, AreDueWhereNobodySawTheLabelForAYear) {
  const auto cone = nursery_.cone(nursery_.plant("Old Sentinel", book::Sex::female));
  const auto tray =
      nursery_.sow(nursery_.harvest(cone, "2025-01-10", 100), "2025-02-01", 100); // all of it
  const auto due = [&](std::string_view on) {
    return nursery_.ask([&](store::Reading& reading) {
      std::size_t labels = 0;
      for (const auto& each : due_on(reading, reading.registers(), day(on)))
        labels += each.kind == DueKind::print_label ? 1 : 0;
      return labels;
    });
  };
  EXPECT_EQ(due("2026-01-31"), 0U);
  EXPECT_EQ(due("2026-02-10"), 1U);
  nursery_.write([&](store::Writing& writing) {
    return writing.see({{}, tray, {}, day("2026-02-05"), book::SeenBy::scan, "", {}}).value();
  });
  EXPECT_EQ(due("2026-02-10"), 0U) << "it was scanned five days before";
  EXPECT_EQ(due("2027-03-01"), 1U);
  const auto code = nursery_.ask([&](store::Reading& reading) { return reading.lot(tray).code; });
  nursery_.write([&](store::Writing& writing) {
    return note_prints(writing, {&code, 1}, day("2027-02-20"), "roll").has_value();
  });
  EXPECT_EQ(due("2027-03-01"), 0U) << "it was printed again";
}

} // namespace
} // namespace coneline::work
