// SPDX-License-Identifier: GPL-3.0-or-later
// The diary at the real window: pollinating with what the last pass used, setting a plant right,
// what is due by day and in a calendar.
#include "qml/models/comes_next.h"
#include "qml/models/diary.h"
#include "qml/models/due_rows.h"
#include "qml/models/form.h"
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
  EXPECT_TRUE(shown.session().told().contains("instead of"));
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
