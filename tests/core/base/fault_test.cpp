// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/fault.h"

#include <gtest/gtest.h>

namespace coneline {
namespace {

TEST(Fault, SaysWhereWhatAndWhatToDo) {
  const auto found = fault("12 germinated of 10 sown: 2 too many", "Correct the count.")
                         .at({"counts.csv", 3, "germinated"});
  EXPECT_EQ(found.text(), "counts.csv, line 3, column germinated: 12 germinated of 10 sown: 2 too "
                          "many. Correct the count.");
  EXPECT_EQ(fault("locked").text(), "locked");
}

TEST(Fault, KeepsThePlaceItHas) {
  EXPECT_EQ(fault("x").at({"a", 1, {}}).at({"b", 2, {}}).where->file, "a");
}

} // namespace
} // namespace coneline
