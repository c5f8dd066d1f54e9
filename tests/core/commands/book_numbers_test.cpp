// SPDX-License-Identifier: GPL-3.0-or-later
// coming, trays done, leaves and why, from a book.
#include "tests/core/commands/with_nursery.h"

namespace coneline::commands {
namespace {

class BookNumbers : public WithNursery {
 protected:
  BookNumbers() {
    for (const auto* mother : {"Old Sentinel", "Harbour Girl"}) {
      const auto cone = nursery_.cone(nursery_.plant(mother, book::Sex::female));
      const auto batch = nursery_.harvest(cone, "2025-02-01", 80);
      tray_ = nursery_.sow(batch, "2025-03-01", 40);
      nursery_.inspect(tray_, "2025-04-01", 10);
      nursery_.inspect(tray_, "2025-05-01", 6, 4);
    }
  }

  book::LotId tray_;
};

TEST_F(BookNumbers, ComingHasEveryHorizonAskedForAndItsPrior) {
  ASSERT_EQ(run({"coming", "--json", "--as-of", "2025-05-20", "--within", "14,60"}), 0)
      << err_.str();
  const auto found = json();
  ASSERT_EQ(found["crosses"].size(), 2U);
  const auto& cross = found["crosses"][0];
  EXPECT_EQ(cross["prior"]["crosses"], 1);
  EXPECT_EQ(cross["coming"]["waiting"], 24);
  EXPECT_EQ(cross["coming"]["within"][1]["by"], "2025-07-19");
  EXPECT_LE(cross["coming"]["within"][0]["expected"].get<double>(),
            cross["coming"]["within"][1]["expected"].get<double>());
  const auto code = nursery_.lot_of(tray_).code.text();
  ASSERT_EQ(run({"coming", code, "--json", "--as-of", "2025-05-20"}), 0) << err_.str();
  EXPECT_EQ(json()["crosses"].size(), 1U);
  ASSERT_EQ(run({"coming", "--as-of", "2025-01-20"}), 0);
  EXPECT_NE(out_.str().find("No seed waits"), std::string::npos);
}

TEST_F(BookNumbers, ComingRefusesHorizonsThatCannotBe) {
  for (const auto* within : {"0", "-3", "soon", "30,,60", "4000"}) {
    EXPECT_EQ(run({"coming", "--within", within}), 2) << within;
    EXPECT_EQ(out_.str(), "") << within;
  }
  EXPECT_EQ(run({"coming", "--confidence", "1"}), 2);
}

TEST_F(BookNumbers, TraysDoneSayWhatTheRoomCosts) {
  ASSERT_EQ(run({"trays", "done", "--json", "--as-of", "2025-05-20", "--price", "4.5"}), 0)
      << err_.str();
  ASSERT_EQ(json()["trays"].size(), 2U);
  const auto tray = json()["trays"][0];
  EXPECT_EQ(tray["done"], false);
  EXPECT_EQ(tray["seedlings"], 16);
  EXPECT_NEAR(tray["cents_a_month"].get<double>(), 54, 1e-9); // 0.12 m² of the tray
  ASSERT_EQ(run({"trays", "done", "--json", "--as-of", "2025-05-20"}), 0);
  EXPECT_TRUE(json()["trays"][0]["cents_a_month"].is_null());
  EXPECT_EQ(run({"trays", "done", "--below", "1.5"}), 2);
  EXPECT_EQ(run({"trays", "done", "--price", "-1"}), 2);
}

TEST_F(BookNumbers, LeavesHaveFiguresOfTheirOwn) {
  ASSERT_EQ(run({"leaves", "--json", "--as-of", "2025-05-20"}), 0) << err_.str();
  const auto cross = json()["crosses"][0];
  EXPECT_EQ(cross["root"]["seeds"], 16);
  EXPECT_EQ(cross["leaf"]["seeds"], 4);
  EXPECT_EQ(cross["from_root_to_leaf"]["roots"], 16);
  EXPECT_EQ(cross["from_root_to_leaf"]["leafed"], 4);
  EXPECT_TRUE(cross["from_root_to_leaf"]["half_by_days"].is_null()); // 12 still wait
  EXPECT_EQ(json()["comparisons"].size(), 1U);
}

TEST_F(BookNumbers, WhyTakesTheConditionsAskedFor) {
  ASSERT_EQ(run({"why", "--json", "--as-of", "2025-05-20", "--by", "seed-parent,judged"}), 0)
      << err_.str();
  const auto found = json();
  EXPECT_EQ(found["trays"], 2);
  ASSERT_EQ(found["conditions"].size(), 2U);
  EXPECT_EQ(found["conditions"][0]["condition"], "seed-parent");
  EXPECT_NEAR(found["conditions"][0]["levels"][1]["alone"]["difference"].get<double>(), 0, 1e-12);
  EXPECT_EQ(found["conditions"][1]["told"], "the same in every tray");
  EXPECT_EQ(run({"why", "--by", "luck"}), 2);
  EXPECT_EQ(run({"why", "--by-day", "0"}), 2);
  EXPECT_EQ(run({"why", "--taxon", "Zamia furfuracea"}), 1);
}

} // namespace
} // namespace coneline::commands
