// SPDX-License-Identifier: GPL-3.0-or-later
// The diary at the real window: pollinating with what the last pass used, setting a plant right,
// amending a row of the registers, what is due by day and in a calendar.
#include "core/work/amend.h"
#include "qml/models/comes_next.h"
#include "qml/models/diary.h"
#include "qml/models/due_rows.h"
#include "qml/models/form.h"
#include "qml/models/line_rows.h"
#include "qml/models/trays_to_empty.h"
#include "tests/qml/shown_window.h"

#include <QFile>
#include <QTest>
#include <gtest/gtest.h>

namespace coneline::window {
namespace {

constexpr QSize wide(1280, 800);

QString text_of(const Code& code) {
  return QString::fromStdString(code.text());
}

template <class Row>
QString text_of_name(const Row& row) {
  return QString::fromStdString(row.name);
}

class Deeds : public testing::Test {
 protected:
  Deeds() { form.setProperty("session", QVariant::fromValue(&shown.session())); }

  void begin(const QString& deed, const Code& code = {}) {
    form.setProperty("deed", QString());
    form.setProperty("code", code == Code() ? QString() : text_of(code));
    form.setProperty("deed", deed);
  }
  const book::Plant& plant(book::Sex sex) {
    for (const auto& one : shown.session().standing().registers.plants)
      if (one.sex == sex)
        return one;
    throw std::runtime_error("the demo has no such plant");
  }

  const book::Registers& registers() { return shown.session().standing().registers; }
  /// Of what was done last nothing is promised that would be refused.
  void is_not_undone() {
    EXPECT_TRUE(shown.session().told().contains("instead of"))
        << shown.session().told().toStdString();
    EXPECT_FALSE(shown.session().undoable());
    EXPECT_FALSE(shown.session().undo());
    EXPECT_EQ(shown.session().fault(), "");
  }

  ShownWindow shown{With::demo_season, wide};
  Form form;
};

TEST_F(Deeds, APassIsFilledInFromTheLast) {
  const auto mother = plant(book::Sex::female);
  begin("pollinate", mother.code);
  const auto& first_lot = shown.session().standing().pollen;
  ASSERT_FALSE(first_lot.empty());
  EXPECT_NE(form.valueOf("pollen"), "unknown father");
  form.set("ml", "0,5");
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  ASSERT_EQ(form.made().size(), 1);
  const auto cone = Code::parse(form.made().front().toStdString()).value();

  begin("pollinate", cone);
  EXPECT_EQ(form.valueOf("ml"), "0.5");
  const auto& used = shown.session().standing().cone(cone)->last_pollen.front();
  const auto& lot = shown.session().standing().registers.pollen_lot(*used.lot);
  EXPECT_TRUE(form.valueOf("pollen").startsWith(text_of(lot.code)));
  EXPECT_EQ(shown.session().standing().registers.plant(lot.plant).taxon, mother.taxon)
      << "pollen of the cone's own kind is offered first";
}

TEST_F(Deeds, AClosedConeTakesNoMorePollen) {
  for (const auto& course : shown.session().standing().cones)
    if (course.closed && !course.line.harvested_on) {
      shown.set("page", "cones");
      shown.set("chosen", text_of(course.line.cone.code));
      EXPECT_EQ(shown.find("deed-pollinate"), nullptr);
      EXPECT_NE(shown.find("deed-harvest"), nullptr);
      return;
    }
  FAIL() << "the demo has no closed cone";
}

TEST_F(Deeds, APlantIsSetRightAndTheOldStandsInTheBook) {
  const auto child = plant(book::Sex::male);
  const auto mother = plant(book::Sex::female);
  begin("correct plant", child.code);
  EXPECT_FALSE(form.submit()) << "nothing was changed";
  form.set("seed_parent", text_of(mother.code));
  form.set("sure", "unsure");
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  const auto& now = *book::coded(shown.session().standing().registers.plants, child.code);
  EXPECT_EQ(now.seed_parent, mother.id);
  EXPECT_EQ(now.taxon_certainty, book::Certainty::unsure);
  is_not_undone();
  const auto history = history_rows(shown.session(), child.code);
  ASSERT_FALSE(history.empty());
  EXPECT_TRUE(history.front()[4].toBool()) << "it stands";
  EXPECT_FALSE(history.front()[5].toBool()) << "and is not taken back";
}

TEST_F(Deeds, APotIsChosenByItsNameAndAmended) {
  const auto before = *book::named(registers().pots, "Pot 5 L");
  begin("amend pot");
  EXPECT_EQ(form.valueOf("name"), text_of_name(registers().pots.front()));
  form.set("name", "typed for another pot");
  form.set("pot", "Pot 5 L");
  EXPECT_EQ(form.valueOf("name"), "Pot 5 L") << "filled in with what stands";
  EXPECT_EQ(form.valueOf("litres"), "4.8");
  EXPECT_EQ(form.valueOf("length"), "220");
  EXPECT_EQ(form.valueOf("cells"), "1");
  EXPECT_FALSE(form.submit()) << "nothing was changed";
  form.set("litres", "0");
  EXPECT_FALSE(form.submit());
  EXPECT_EQ(form.fault_field(), "litres");
  form.set("litres", "4.6");
  form.set("name", "POT 10 L");
  EXPECT_FALSE(form.submit()) << "reads like another pot";
  EXPECT_EQ(form.fault_field(), "name");
  EXPECT_EQ(registers().pot(before.id).litres, before.litres) << "nothing is half amended";
  form.set("name", "Pot 5 L");
  form.set("length", "225");
  form.set("note", "measured again");
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  const auto& now = registers().pot(before.id);
  EXPECT_EQ(now.litres, 4.6);
  EXPECT_EQ(now.length_mm, 225);
  EXPECT_EQ(now.width_mm, 225) << "a round one";
  EXPECT_EQ(now.name, before.name);
  EXPECT_EQ(now.cells, before.cells);
  EXPECT_EQ(now.source, before.source);
  is_not_undone();
}

TEST_F(Deeds, OfAnAmendedRowOnlyWhatWasChangedIsSent) {
  begin("amend pot");
  form.set("pot", "Pot 5 L");
  ASSERT_TRUE(shown.session().act([&](store::Book& book) {
    return work::amend(book, work::Amend<book::Pot>{"Pot 5 L",
                                                    [](book::Pot& pot, const book::Registers&) {
                                                      pot.cells = 3;
                                                      return Result<void>();
                                                    },
                                                    {shown.session().today(), {}, {}}});
  }));
  form.set("litres", "4.7");
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  const auto* now = book::named(registers().pots, "Pot 5 L");
  EXPECT_EQ(now->litres, 4.7);
  EXPECT_EQ(now->cells, 3) << "as it was amended meanwhile";
}

TEST_F(Deeds, AMixIsAmendedInItsPartsAndWhatIsLost) {
  const auto before = *book::named(registers().mixes, "Growing mix");
  begin("amend mix");
  form.set("mix", "Growing mix");
  EXPECT_EQ(form.valueOf("parts"), "coarse perlite 4, peat 3, coarse sand 3");
  EXPECT_EQ(form.valueOf("shrink"), "15");
  EXPECT_EQ(form.valueOf("loss"), "5");
  form.set("parts", "coarse perlite, peat 3");
  EXPECT_FALSE(form.submit());
  EXPECT_EQ(form.fault_field(), "parts");
  form.set("parts", "coarse perlite 5, peat 2.5, coarse sand 3");
  form.set("loss", "8");
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  const auto& now = registers().mix(before.id);
  ASSERT_EQ(now.parts.size(), 3U);
  EXPECT_EQ(now.parts[0].share, 5);
  EXPECT_EQ(now.parts[1].share, 2.5);
  EXPECT_DOUBLE_EQ(now.loss, 0.08);
  EXPECT_EQ(now.shrink, before.shrink);
  EXPECT_EQ(now.source, before.source);
  is_not_undone();
}

TEST_F(Deeds, APlaceIsAmendedByItsNameOrOnItsPage) {
  const auto before = *book::named(registers().places, "Cool bench");
  begin("amend place");
  form.set("place", "Cool bench");
  EXPECT_EQ(form.valueOf("within"), "Glasshouse");
  form.set("width", "1000");
  form.set("within", "none");
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  EXPECT_EQ(registers().place(before.id).width_mm, 1000);
  EXPECT_FALSE(registers().place(before.id).within);
  EXPECT_EQ(registers().place(before.id).length_mm, before.length_mm);
  is_not_undone();

  begin("amend place", before.code);
  EXPECT_EQ(form.valueOf("place"), "") << "the page says which";
  EXPECT_EQ(form.valueOf("name"), "Cool bench");
  form.set("name", "Cold bench");
  form.set("within", "Glasshouse");
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  EXPECT_EQ(registers().place(before.id).name, "Cold bench");
  EXPECT_EQ(registers().place(before.id).within, before.within);
}

TEST_F(Deeds, WhatIsAmendedOfAKindOfPlantSaysWhereItComesFrom) {
  const auto before = *book::named(registers().taxa, "Cycas thouarsii");
  begin("amend taxon");
  form.set("taxon", "Cycas thouarsii");
  EXPECT_EQ(form.valueOf("ripe_from"), "8");
  EXPECT_EQ(form.valueOf("frost"), "no frost");
  form.set("ripe_from", "12");
  EXPECT_FALSE(form.submit()) << "from 12 to 11 is no range";
  EXPECT_EQ(form.fault_field(), "ripe_to");
  form.set("ripe_to", "14");
  form.set("after_from", "");
  form.set("after_to", "");
  form.set("frost", "light frost");
  form.set("source", "three cones of ours");
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  const auto& now = registers().taxon(before.id);
  EXPECT_EQ(now.ripening.value, (book::Range{12, 14}));
  EXPECT_EQ(now.ripening.source, "three cones of ours");
  EXPECT_FALSE(now.after_ripening.value) << "not known";
  EXPECT_EQ(now.frost.value, book::Frost::light);
  EXPECT_EQ(now.frost.source, "three cones of ours");
  EXPECT_EQ(now.float_test, before.float_test) << "with its own source";
  EXPECT_EQ(now.leaf_colour, before.leaf_colour);
  is_not_undone();
}

TEST_F(Deeds, AmendingStandsBesideWhatIsNew) {
  shown.set("page", "pots");
  for (const auto* deed : {"amend pot", "amend place", "amend mix"})
    EXPECT_NE(shown.find(QStringLiteral("begin-") + deed), nullptr) << deed;
  shown.tap("begin-amend mix");
  EXPECT_EQ(shown.get("deed").toString(), "amend mix");
  shown.tap("field-mix-Blue-leaf mix");
  const auto written = [&](const char* field) {
    return shown.find(field)->childItems().constFirst();
  };
  EXPECT_EQ(written("field-name")->property("text").toString(), "Blue-leaf mix");
  written("field-shrink")->setProperty("text", "20");
  ASSERT_TRUE(QMetaObject::invokeMethod(written("field-shrink"), "textEdited"));
  shown.tap("enter");
  EXPECT_EQ(shown.get("deed").toString(), "");
  EXPECT_DOUBLE_EQ(book::named(registers().mixes, "Blue-leaf mix")->shrink, 0.2);
  EXPECT_EQ(shown.find("undo"), nullptr);
  EXPECT_TRUE(shown.find("lastTold")->property("text").toString().contains("0.2"));
  for (const auto* page : {"pollen", "cones"}) {
    shown.set("page", page);
    EXPECT_NE(shown.find("begin-amend taxon"), nullptr) << page;
  }
}

TEST_F(Deeds, APlantThatWouldBeItsOwnParentIsRefusedAtTheField) {
  const auto child = plant(book::Sex::male);
  begin("correct plant", child.code);
  form.set("pollen_parent", text_of(child.code));
  EXPECT_FALSE(form.submit());
  EXPECT_TRUE(form.fault().contains("ancestor")) << form.fault().toStdString();
  begin("correct plant", child.code);
  form.set("pollen_parent", "P37");
  EXPECT_FALSE(form.submit());
  EXPECT_EQ(form.fault_field(), "pollen_parent");
}

TEST_F(Deeds, APaperIsAddedAndStruck) {
  const auto owner = plant(book::Sex::female);
  begin("add paper", owner.code);
  form.set("kind", "receipt (invented)");
  form.set("number", "R-77");
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  const auto papers = [&] {
    return book::coded(shown.session().standing().registers.plants, owner.code)->papers;
  };
  ASSERT_EQ(papers().size(), owner.papers.size() + 1);
  EXPECT_EQ(papers().back().number, "R-77");
  begin("strike paper", owner.code);
  form.set("paper", QString::number(papers().size()) + ": receipt (invented) R-77");
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  EXPECT_EQ(papers().size(), owner.papers.size());
}

TEST_F(Deeds, TheHemisphereAndThePollenStoreAreKept) {
  begin("nursery");
  form.set("half", "southern");
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  EXPECT_EQ(shown.session().standing().registers.title.hemisphere, book::Hemisphere::southern);
  begin("pollen store");
  form.set("name", "freezer");
  form.set("from", "1");
  form.set("to", "0,5");
  EXPECT_FALSE(form.submit()) << "from 1 to 0.5 is no range";
  form.set("to", "4");
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  const auto* kept = book::named(shown.session().standing().registers.pollen_stores, "freezer");
  ASSERT_NE(kept, nullptr);
  EXPECT_EQ(kept->years.value->high, 4);
}

TEST(ALabel, AnswersWithBothParentsTheirOriginAndPapers) {
  ShownWindow shown(With::demo_season, wide);
  const auto& standing = shown.session().standing();
  const auto found = std::ranges::find_if(standing.lots, [](const auto& line) {
    return line.lot.code.kind() == Kind::tray && !line.on_hand.empty() &&
           line.origin.name == "Left Twin × Tall Piet";
  });
  ASSERT_NE(found, standing.lots.end());
  Diary diary;
  diary.set_session(&shown.session());
  diary.setProperty("code", text_of(found->lot.code));
  QStringList told;
  for (const auto& row : diary.facts()->rows())
    told << row[0].toString() + ": " + row[1].toString();
  const auto all = told.join('\n').toStdString();
  EXPECT_NE(all.find("Seed parent: Left Twin, P372L; from a town garden"), std::string::npos)
      << all;
  EXPECT_NE(all.find("Pollen parent: Tall Piet, P373J"), std::string::npos) << all;
  EXPECT_NE(all.find("R-002"), std::string::npos) << "its receipt: " << all;
}

TEST(DueRows, StayAsTheyWereShownWhileTheBookIsReadAnew) {
  ShownWindow shown(With::demo_season, wide);
  DueRows rows(nullptr);
  rows.show(shown.session(), DueRows::Order::as_walked);
  ASSERT_GT(rows.rowCount(), 0);
  const int heading = rows.roleNames().key("heading");
  const auto headings = [&] {
    QStringList all;
    for (int row = 0; row < rows.rowCount(); ++row)
      all << rows.data(rows.index(row), heading).toString();
    return all;
  };
  const auto before = headings();
  shown.session().read_anew();
  EXPECT_EQ(headings(), before);
  shown.session().close();
  EXPECT_EQ(headings(), before);
  rows.show(shown.session(), DueRows::Order::as_walked);
  EXPECT_EQ(rows.rowCount(), 0);
}

TEST(NextOfCone, NeverShowsWhatAnotherConeWants) {
  ShownWindow shown(With::demo_season, wide);
  ComesNext next;
  next.set_session(&shown.session());
  std::vector<QString> wanting;
  for (const auto& course : shown.session().standing().cones) {
    next.setProperty("code", text_of(course.line.cone.code));
    shown.settle();
    if (next.rows()->size() > 0)
      wanting.push_back(text_of(course.line.cone.code));
  }
  ASSERT_GE(wanting.size(), 2U);
  next.setProperty("code", wanting.front());
  shown.settle();
  const auto rows = next.rows()->rows();
  next.setProperty("code", wanting.back());
  EXPECT_EQ(next.rows()->size(), 0) << "nothing, until it is known";
  shown.settle();
  EXPECT_GT(next.rows()->size(), 0);
  next.setProperty("code", wanting.front());
  shown.settle();
  EXPECT_EQ(next.rows()->rows(), rows);
  shown.session().read_anew();
  EXPECT_EQ(next.rows()->rows(), rows) << "of the same cone they stay meanwhile";
  shown.settle();
}

TEST(TraysAtTheWindow, ThoseThatCanBeEmptiedStandFirst) {
  ShownWindow shown(With::demo_season, wide);
  TraysToEmpty trays;
  trays.set_session(&shown.session());
  ASSERT_TRUE(QTest::qWaitFor([&] { return !trays.reckoning(); }, 60'000));
  ASSERT_GT(trays.rows()->size(), 0) << trays.summary().toStdString();
  double last = 0;
  for (const auto& row : trays.rows()->rows()) {
    EXPECT_LE(last, row[4].toDouble());
    last = row[4].toDouble();
    EXPECT_EQ(row[2].toString() == "Can be emptied", last < 0.05)
        << row[0].toString().toStdString();
  }
}

TEST(DueAtTheWindow, GoesToACalendarAndComesBack) {
  ShownWindow shown(With::demo_season, wide);
  shown.set("page", "today");
  shown.tap("byDay");
  shown.tap("calendar");
  shown.tap("saveCalendar");
  const auto path = shown.find("calendarPath")->property("text").toString();
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
  EXPECT_TRUE(file.readAll().startsWith("BEGIN:VCALENDAR"));
  file.close();
  shown.tap("takeInCalendar");
  EXPECT_TRUE(shown.find("calendarTold")->property("text").toString().contains("0 taken in"));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write("BEGIN:VCALENDAR\nnonsense");
  file.close();
  const auto due = shown.session().due_count();
  shown.tap("takeInCalendar");
  EXPECT_TRUE(shown.find("calendarTold")->property("text").toString().contains("line"))
      << shown.find("calendarTold")->property("text").toString().toStdString();
  EXPECT_EQ(shown.session().due_count(), due);
}

} // namespace
} // namespace coneline::window
