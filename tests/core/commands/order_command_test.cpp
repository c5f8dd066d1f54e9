// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/commands/run_command.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace coneline::commands {
namespace {

/// The invented nursery of the demonstration, and invented offers for its parts.
class OrderCommand : public RunsCommands {
 protected:
  OrderCommand() {
    EXPECT_EQ(run({"import", "--book", book_, CONELINE_TEST_DATA "/../../demo/season"}), 0)
        << err_.str();
  }
  std::string offers(const std::string& text) {
    const auto path = scratch_.at("offers.csv");
    std::ofstream(path) << text;
    return path.string();
  }
  int order(const std::string& file, const std::vector<std::string>& more = {}) {
    std::vector<std::string> arguments{"order",  "--book", book_,      "--as-of", "2026-11-20",
                                       "--runs", "200",    "--offers", file};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return run(arguments);
  }

  tests::Scratch scratch_;
  std::string book_ = scratch_.at("book").string();
  const std::string enough_ =
      "good,supplier,form,litres,cents,expansion,delivery_cents,lead_days,least,kilograms\n"
      "coarse perlite,Mill,bag,100,1500,1,0,3,1,12\n"
      "coarse perlite,Quarry,bulk,2000,18000,1,6000,5,1,\n"
      "peat,Mill,bale,100,2400,2.2,0,3,2,25\n"
      "coarse sand,Mill,bag,15,400,,,3,,24\n";
};

TEST_F(OrderCommand, ListsWhatToOrderByWhen) {
  const auto csv = scratch_.at("order.csv").string();
  ASSERT_EQ(order(offers(enough_), {"--compare", "--csv", csv, "--json"}), 0) << err_.str();
  const auto answer = json();
  ASSERT_FALSE(answer["orders"].empty());
  EXPECT_GE(answer["held"], 0.9);
  EXPECT_LE(answer["bound_cents"], answer["cents"]);
  EXPECT_LE(answer["gap"], 0.05); // the machine may be busy with other tests
  std::string before = "2026-11-20";
  for (const auto& line : answer["orders"]) {
    EXPECT_GE(line["order_by"].get<std::string>(), before);
    before = line["order_by"];
  }
  double least = 0;
  for (const auto& one : answer["by_assurance"]) {
    EXPECT_GE(one["cents"].get<double>(), least - 1e-6);
    least = one["cents"];
  }
  std::ifstream file(csv);
  std::string header;
  std::getline(file, header);
  EXPECT_EQ(header.substr(0, 13), "order_by,good");
}

TEST_F(OrderCommand, CountsWhatIsInStore) {
  const auto file = offers(enough_);
  ASSERT_EQ(order(file, {"--json"}), 0) << err_.str();
  const double whole = json()["cents"];
  ASSERT_EQ(order(file, {"--on-hand", "peat=100000", "--json"}), 0) << err_.str();
  const auto answer = json();
  EXPECT_LT(answer["cents"], whole);
  ASSERT_FALSE(answer["orders"].empty());
  for (const auto& line : answer["orders"])
    EXPECT_NE(line["good"], "peat");
  EXPECT_EQ(order(file, {"--on-hand", "bark=10"}), 2);
  EXPECT_EQ(order(file, {"--room", "peat"}), 2);
  EXPECT_EQ(order(file, {"--keeps", "peat=-1"}), 2);
}

TEST_F(OrderCommand, ShowsATableWithItsCautions) {
  ASSERT_EQ(order(offers(enough_)), 0) << err_.str();
  EXPECT_NE(out_.str().find("order by"), std::string::npos);
  EXPECT_NE(out_.str().find("25 kg"), std::string::npos);
}

TEST_F(OrderCommand, NamesWhatIsWrongWithTheOffers) {
  const auto refused = [&](const std::string& text, const std::string& said) {
    EXPECT_EQ(order(offers(text)), 1);
    EXPECT_EQ(out_.str(), "");
    EXPECT_NE(err_.str().find(said), std::string::npos) << err_.str();
  };
  const std::string header = "good,supplier,form,litres,cents\n";
  refused("", "");
  refused(header, "there are no offers");
  refused("good,supplier,form,litres\npeat,Mill,bag,70\n", "column 'cents'");
  refused("good,supplier,form,litres,cents,colour\npeat,Mill,bag,70,900,brown\n", "'colour'");
  refused(header + "peat,Mill,sack,70,900\n", "line 2, column form");
  refused(header + "peat,Mill,bag,0,900\n", "column litres");
  refused(header + "peat,Mill,bag,70,9.5\n", "column cents");
  refused(header + "peat,,bag,70,900\n", "column supplier");
  refused(header + "peat,Mill,bag,70,900\n", "nobody offers 'coarse");
  EXPECT_EQ(order(scratch_.at("nowhere.csv").string()), 1);
  EXPECT_EQ(order(offers(enough_), {"--assurance", "1"}), 1);
  EXPECT_EQ(run({"order", "--book", book_, "--as-of", "2026-11-20", "--runs", "50"}), 1);
  EXPECT_NE(err_.str().find("Enter an offer"), std::string::npos) << err_.str();
}

} // namespace
} // namespace coneline::commands
