// SPDX-License-Identifier: GPL-3.0-or-later
// What is read in and written out beside the plan: assumptions kept in the book, offers of a file,
// lists in the form their path ends in, and the words on labels.
#include "core/plan/potting_months.h"
#include "core/report/assumptions.h"
#include "core/report/label_words.h"
#include "core/report/offers_csv.h"
#include "core/report/plan_paper.h"
#include "core/report/whole_file.h"
#include "tests/core/work/small_nursery.h"

#include <fstream>

namespace coneline::report {
namespace {

using tests::day;

class OnPaper : public testing::Test {
 protected:
  std::filesystem::path file(const std::string& text) {
    auto path = nursery.at("offers.csv");
    std::ofstream(path) << text;
    return path;
  }
  void refused(const std::string& text, std::string_view where, std::string_view why) {
    const auto read = read_offers(file(text));
    ASSERT_FALSE(read) << text;
    EXPECT_NE(read.error().text().find(where), std::string::npos) << read.error().text();
    EXPECT_NE(read.error().text().find(why), std::string::npos) << read.error().text();
  }
  LabelWords words(const Code& code) {
    return nursery.ask([&](store::Reading& reading) {
      return label_words(reading, reading.registers(), std::span(&code, 1)).value().at(0);
    });
  }
  Code next(Kind kind) {
    return nursery.write([&](store::Writing& writing) { return writing.next_code(kind).value(); });
  }
  template <class Row>
  Code put(Row row) {
    nursery.write([&](store::Writing& writing) { return writing.put(row).value(); });
    return row.code;
  }

  tests::SmallNursery nursery;
};

TEST_F(OnPaper, AssumptionsAreKeptAndReadBack) {
  const auto registers = [&] {
    return nursery.ask([](store::Reading& reading) { return reading.registers(); });
  };
  const auto keep = [&](const std::vector<book::Figure>& figures) {
    EXPECT_TRUE(nursery.write([&](store::Writing& writing) {
      return std::ranges::all_of(
          figures, [&](const auto& figure) { return writing.put(figure).has_value(); });
    }));
  };
  EXPECT_EQ(figures_of(plan::Assumptions{}).size(), plan::Assumptions{}.sold_after ? 4U : 3U);
  plan::Assumptions assumed;
  assumed.sold_after.reset();
  EXPECT_EQ(figures_of(assumed).size(), 3U);
  assumed.sold_after = 4;
  assumed.settling = 0.17;
  assumed.wet_kilograms_a_litre = 1.1;
  keep(figures_of(assumed));
  const auto read = assumptions_in(registers());
  EXPECT_EQ(read.sold_after, 4);
  EXPECT_EQ(read.settling, 0.17);
  EXPECT_EQ(read.wet_kilograms_a_litre, 1.1);
  EXPECT_EQ(plan::months_as_number(read.potting), plan::months_as_number(assumed.potting));
  EXPECT_EQ(assurance_in(registers()), 0.9);
  keep({{book::figure::plan_assurance, 0.75}});
  EXPECT_EQ(assurance_in(registers()), 0.75);
}

/// No book takes these any more, but one may hold them from before.
TEST(Assumptions, FiguresThatCannotBeDoNoHarm) {
  const auto with = [](const char* name, double value) {
    book::Registers registers;
    registers.figures = {{name, value}};
    return registers;
  };
  const auto stands = [&](double months) {
    return assumptions_in(with(book::figure::ready_stands, months)).sold_after;
  };
  EXPECT_EQ(stands(-1), plan::Assumptions{}.sold_after);
  EXPECT_EQ(stands(1200), 1200);
  EXPECT_GT(stands(1e300).value(), 1200) << "which the plan refuses in words";
  for (const double wrong : {0.0, 1.0, 5.0})
    EXPECT_EQ(assurance_in(with(book::figure::plan_assurance, wrong)), 0.9) << wrong;
}

TEST_F(OnPaper, OffersOfAFileAreReadWithWhatMayBeLeftOpen) {
  const auto offers =
      read_offers(file("good,supplier,form,litres,cents,expansion,delivery_cents,lead_days,least,"
                       "kilograms\npeat,The mill,bale,100,3000,2.5,500,14,4,32\n"
                       "bark,The mill,bag,50,800,,,,,\n"))
          .value();
  ASSERT_EQ(offers.size(), 2U);
  EXPECT_EQ(offers[0].expansion, 2.5);
  EXPECT_EQ(offers[0].delivery_cents, 500);
  EXPECT_EQ(offers[0].lead_days, 14);
  EXPECT_EQ(offers[0].least, 4);
  EXPECT_EQ(offers[0].kilograms, 32);
  EXPECT_EQ(offers[1].expansion, 1);
  EXPECT_EQ(offers[1].delivery_cents, 0);
  EXPECT_EQ(offers[1].least, 1);
  EXPECT_FALSE(offers[1].kilograms);
}

TEST_F(OnPaper, OffersThatCannotBeReadAreRefusedInTheirPlace) {
  const std::string header = "good,supplier,form,litres,cents,expansion,least\n";
  refused("good,supplier,form,litres\n", "cents", "the header has no column 'cents'");
  refused("good,supplier,form,litres,cents,colour\n", "line 1, column colour", "is not known");
  refused(header, "offers.csv, line 1", "there are no offers");
  refused(header + ",Mill,bag,50,800,,\n", "line 2, column good", "an empty cell");
  refused(header + "bark,,bag,50,800,,\n", "column supplier", "an empty cell");
  refused(header + "bark,Mill,sack,50,800,,\n", "column form", "'sack' is no form");
  refused(header + "bark,Mill,bag,,800,,\n", "column litres", "'' is no number");
  refused(header + "bark,Mill,bag,many,800,,\n", "column litres", "'many' is no number");
  refused(header + "bark,Mill,bag,-5,800,,\n", "column litres", "-5 is below 0.001");
  refused(header + "bark,Mill,bag,50,,,\n", "column cents", "'' is no whole number");
  refused(header + "bark,Mill,bag,50,8.5,,\n", "column cents", "'8.5' is no whole number");
  refused(header + "bark,Mill,bag,50,-1,,\n", "column cents", "-1 is not from 0");
  refused(header + "bark,Mill,bag,50,2000000000,,\n", "column cents", "is not from 0");
  refused(header + "bark,Mill,bag,50,800,,0\n", "column least", "0 is not from 1");
  // The first fault of a row is the one that is told.
  refused(header + ",Mill,sack,-5,x,,\n", "column good", "an empty cell");
  EXPECT_FALSE(read_offers(nursery.at("none.csv")));
}

TEST_F(OnPaper, AListThatCannotBeWrittenIsRefusedInEveryForm) {
  PlanPaper paper{"List", "foot", {"Words."}, {{"rows", {"good"}, {{std::string("bark")}}}}, {}};
  const book::Title title{"Real nursery", 17, false, day("2026-01-01"), {}};
  const auto no_printer = [](const std::string&, const PlanPaper&) -> Result<int> {
    return refuse(fault("no paper"));
  };
  for (const auto* name : {"nowhere/list.csv", "nowhere/list.xlsx"})
    EXPECT_FALSE(write_paper(paper, title, nursery.at(name), no_printer)) << name;
  const auto pdf = write_paper(paper, title, nursery.at("list.pdf"), no_printer);
  ASSERT_FALSE(pdf);
  EXPECT_EQ(pdf.error().what, "no paper");
  EXPECT_EQ(csv_of(paper.tables[0], title), "good,invented\nbark,no\n");
  EXPECT_EQ(sections_of(paper).size(), 2U); // no cautions, so none are headed
  // Without a table there is nothing to put into columns: it is a page.
  paper.tables.clear();
  EXPECT_FALSE(write_paper(paper, title, nursery.at("list.csv"), no_printer));
}

TEST_F(OnPaper, LabelsSayWhatTheirKindHasToSay) {
  const auto mother = nursery.plant("Old Sentinel", book::Sex::female);
  const auto nameless =
      put(book::Plant{{}, next(Kind::plant), "", nursery.taxon(), {}, {}, "", {}, {}, "", {}});
  EXPECT_EQ(words(nameless).cross, "Cycas revoluta");
  EXPECT_EQ(words(nameless).cone, ""); // its sex is not known
  const auto unseen = put(book::Cone{{}, next(Kind::cone), mother, {}, ""});
  EXPECT_EQ(words(unseen).cross, "cone · Cycas revoluta · Old Sentinel");
  EXPECT_EQ(words(unseen).sown, "");
  const auto seen = put(book::Cone{{}, next(Kind::cone), mother, day("2025-01-10"), ""});
  EXPECT_EQ(words(seen).sown, "first seen 2025-01-10");
  const book::Purchase bought{{},     next(Kind::purchase), nursery.taxon(),
                              "Kiln", day("2025-05-05"),    ""};
  EXPECT_EQ(words(put(bought)).cone, "from Kiln");
  EXPECT_EQ(words(bought.code).sown, "bought 2025-05-05");
  const auto place = put(
      book::Place{{}, next(Kind::place), "Cold frame", book::PlaceKind::house, {}, 0, 0, {}, 0});
  EXPECT_EQ(words(place).cross, "Cold frame");
  const auto purchase =
      nursery.ask([](store::Reading& reading) { return reading.registers().purchases.front().id; });
  const auto seed = nursery.harvest(purchase, "2025-05-06", 1);
  EXPECT_EQ(words(nursery.lot_of(seed).code).sown, "bought 2025-05-06");
  EXPECT_EQ(words(nursery.lot_of(seed).code).count, "1 seed");
  const auto own = nursery.harvest(nursery.cone(mother), "2025-02-01", 40);
  EXPECT_EQ(words(nursery.lot_of(own).code).sown, "harvested 2025-02-01");
  const auto group = nursery.lot(Kind::pot_group, nursery.lot_of(own).origin);
  const auto pot_words = words(nursery.lot_of(group).code); // nothing came into it
  EXPECT_EQ(pot_words.count, "");
  const auto absent = Code::of(Kind::tray, 17, 99).value();
  const auto none = nursery.book().read([&](store::Reading& reading) {
    return label_words(reading, reading.registers(), std::span(&absent, 1));
  });
  ASSERT_FALSE(none);
  EXPECT_NE(none.error().text().find("there is no tray"), std::string::npos);
}

} // namespace
} // namespace coneline::report
