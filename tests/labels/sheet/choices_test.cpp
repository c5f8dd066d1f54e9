// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/phrase.h"
#include "labels/sheet/choices.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace coneline::labels {
namespace {

/// Shows what was said and what was not.
class Marking : public Language {
 public:
  [[nodiscard]] std::string text(std::string_view english) const override {
    return "«" + std::string(english) + "»";
  }
};

class Choices : public testing::Test {
 protected:
  Choices() { speak(&marking_); }
  ~Choices() override { speak(nullptr); }

 private:
  Marking marking_;
};

TEST_F(Choices, SayTheNamesOfWhatIsReadyAndAreChosenByThem) {
  const auto layouts = layouts_of({});
  ASSERT_EQ(layouts.size(), 3U);
  EXPECT_EQ(layouts[1].name, "cross and date");
  EXPECT_EQ(name_said(layouts[1]), "«cross and date»");
  EXPECT_EQ(layout_named({}, "cross and date")->name, "cross and date");
  EXPECT_FALSE(layout_named({}, "«cross and date»"));
  ASSERT_FALSE(stocks_of({}).empty());
  for (const auto& stock : stocks_of({})) {
    EXPECT_EQ(name_said(stock), "«" + stock.name + "»");
    EXPECT_EQ(stock_named({}, stock.name)->name, stock.name);
  }
}

TEST_F(Choices, LeaveWhatTheGrowerNamed) {
  book::LabelRecords records;
  records.layouts.push_back({{1}, "everything", true, false, true, false, true});
  records.stocks = common_stocks();
  for (auto& stock : records.stocks)
    stock.id.value = 1;
  const auto layouts = layouts_of(records);
  ASSERT_EQ(layouts.size(), 3U);
  EXPECT_EQ(name_said(layouts.front()), "everything");
  EXPECT_FALSE(layouts.front().origin);
  EXPECT_EQ(std::ranges::count(layouts, "«everything»",
                               [](const auto& layout) { return name_said(layout); }),
            0);
  ASSERT_EQ(stocks_of(records).size(), common_stocks().size());
  for (const auto& stock : stocks_of(records))
    EXPECT_EQ(name_said(stock), stock.name);
}

} // namespace
} // namespace coneline::labels
