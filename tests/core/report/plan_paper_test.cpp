// SPDX-License-Identifier: GPL-3.0-or-later
// A part of the plan as it is given away: nothing in a cell becomes a formula, a column or a row.
#include "core/base/phrase.h"
#include "core/report/forecast_paper.h"
#include "core/report/ordering.h"
#include "core/report/plan_paper.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

#include <fstream>

namespace coneline::report {
namespace {

PlanPaper paper() {
  return {"Order list",
          "Test nursery (invented data)  ·  2026-11-20",
          {"12.50 in all."},
          {{"orders",
            {"order by", "good", "litres"},
            {{std::string("2026-11-20"), std::string("=1+1"), 70.5},
             {std::string("2026-12-01"), std::string("peat\tand\nbark"), std::int64_t{3}},
             {std::monostate(), std::string("\"sand\", coarse"), 0.0}}}},
          {"Lift with care."}};
}

book::Title title() {
  return {"Test nursery", 17, true, Date::parse("2026-01-01").value(), {}};
}

TEST(PlanPaper, IsSafeAsCsv) {
  EXPECT_EQ(csv_of(paper().tables.front(), title()), "order_by,good,litres,invented\n"
                                                     "2026-11-20,'=1+1,70.5,yes\n"
                                                     "2026-12-01,\"peat\tand\nbark\",3,yes\n"
                                                     ",\"\"\"sand\"\", coarse\",0,yes\n");
}

TEST(PlanPaper, KeepsItsColumnsAndRowsWhenPasted) {
  EXPECT_EQ(tabbed(paper().tables.front()), "order by\tgood\tlitres\n"
                                            "2026-11-20\t=1+1\t70.5\n"
                                            "2026-12-01\tpeat and bark\t3\n"
                                            "\t\"sand\", coarse\t0\n");
}

TEST(PlanPaper, IsReadInSectionsWithItsCautionsLast) {
  const auto sections = sections_of(paper());
  ASSERT_EQ(sections.size(), 3U);
  EXPECT_EQ(sections[0].title, "Order list");
  EXPECT_EQ(sections[1].rows[0][2], "70.5");
  EXPECT_TRUE(sections[2].warns);
}

TEST(PlanPaper, GoesIntoTheFormItsPathEndsIn) {
  const tests::Scratch scratch;
  const auto pdf = [](const std::string& path, const PlanPaper&) -> Result<int> {
    std::ofstream(path) << "pdf";
    return 1;
  };
  for (const auto& [ending, begins] :
       {std::pair("csv", "order_by"), {"xlsx", "PK"}, {"pdf", "pdf"}}) {
    const auto path = scratch.at(std::string("list.") + ending);
    ASSERT_TRUE(write_paper(paper(), title(), path, pdf)) << ending;
    std::ifstream file(path, std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    EXPECT_EQ(text.substr(0, std::string(begins).size()), begins);
  }
  EXPECT_FALSE(write_paper(paper(), title(), scratch.at("nowhere/list.csv"), pdf));
}

class Customary : public Language {
 public:
  Customary() { speak(this); }
  Customary(const Customary&) = delete;
  Customary& operator=(const Customary&) = delete;
  ~Customary() override { speak(nullptr); }
  [[nodiscard]] UnitSystem units() const override { return UnitSystem::us; }
};

/// One bag of 10 US gallons and 50 pounds, as the book keeps them.
Ordered one_bag() {
  const auto month = Date::parse("2027-03-01").value();
  plan::OrderLine line;
  line.good = "bark";
  line.packs = 1;
  line.litres = 37.85411784;
  line.kilograms = 22.6796185;
  line.order_by = line.for_month = month;
  Ordered all;
  all.list.lines = {line};
  all.goods = {{"bark", {37.85411784}, {}}};
  return all;
}

TEST(PlanPaper, SaysTheOrderInTheReadersUnits) {
  const std::vector<Date> months{Date::parse("2027-03-01").value()};
  const auto orders = [&] { return order_paper(one_bag(), title(), months[0], months).tables; };
  EXPECT_EQ(csv_of(orders()[0], title()),
            "order_by,good,supplier,form,packs,litres,price,kg,for_month,invented\n"
            "2027-03-01,bark,,bag,1,37.9,0,22.7,2027-03,yes\n");
  EXPECT_EQ(orders()[1].name, "needed, L");
  const Customary gallons;
  EXPECT_EQ(csv_of(orders()[0], title()),
            "order_by,good,supplier,form,packs,US_gal,price,lb,for_month,invented\n"
            "2027-03-01,bark,,bag,1,10,0,50,2027-03,yes\n");
  EXPECT_EQ(orders()[1].name, "needed, US gal");
  EXPECT_EQ(tabbed(orders()[1]), "month\tbark\n2027-03\t10\n");
}

TEST(PlanPaper, SaysPricesWithTwoDecimals) {
  const std::vector<Date> months{Date::parse("2027-03-01").value()};
  auto order = one_bag();
  order.list.lines[0].cents = 1850;
  const auto paper = order_paper(order, title(), months[0], months);
  EXPECT_EQ(sections_of(paper)[1].rows[0][6], "18.50");
  EXPECT_NE(tabbed(paper.tables[0]).find("\t18.50\t"), std::string::npos);
  // A program reads the number.
  EXPECT_NE(csv_of(paper.tables[0], title()).find(",37.9,18.5,22.7,"), std::string::npos);
}

TEST(PlanPaper, NamesTheUnitOverEachTable) {
  EXPECT_EQ(heading_of(plan::Shown::mix), "Finished mix, L");
  EXPECT_EQ(heading_of(plan::Shown::place_load), "Load in each place, kg/m²");
  const Customary gallons;
  EXPECT_EQ(heading_of(plan::Shown::mix), "Finished mix, US gal");
  EXPECT_EQ(heading_of(plan::Shown::place_load), "Load in each place, lb/ft²");
}

} // namespace
} // namespace coneline::report
