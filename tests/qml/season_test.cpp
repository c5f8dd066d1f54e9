// SPDX-License-Identifier: GPL-3.0-or-later
// The season plan in the window: the months ahead opened into their lots, an order list from offers
// that were typed, targets, and benches.
#include "qml/models/form.h"
#include "qml/models/plan_ahead.h"
#include "qml/models/plan_benches.h"
#include "qml/models/plan_otherwise.h"
#include "tests/qml/held.h"
#include "tests/qml/shown_window.h"

#include <QClipboard>
#include <QFileInfo>
#include <QGuiApplication>
#include <QTest>
#include <gtest/gtest.h>

namespace coneline::window {
namespace {

class Plan : public testing::Test {
 protected:
  Plan() : shown(With::demo_season, QSize(1280, 800)) {
    shown.set("page", "season");
    shown.settle();
  }
  void view(const QString& name) {
    shown.tap("season-" + name);
    shown.settle();
  }
  void write(const QString& field, const QString& text) {
    auto* item = shown.find(field);
    ASSERT_NE(item, nullptr) << field.toStdString();
    item->forceActiveFocus();
    item->setProperty("text", "");
    shown.type(text);
  }
  book::PlanRecords records() {
    return shown.session()
        .ask([](store::Reading& reading) { return reading.plan_records(); })
        .value();
  }

  ShownWindow shown;
};

TEST_F(Plan, ShowsTheMonthsAheadAndWhatTheyAreMadeOf) {
  auto* first = shown.find("ahead-0");
  ASSERT_NE(first, nullptr);
  EXPECT_EQ(first->property("high").toList().size(), 36);
  shown.tap("ahead-0");
  shown.settle();
  ASSERT_NE(shown.find("monthGrid"), nullptr);
  // A month in which something is potted.
  const auto high = first->property("high").toList();
  int busiest = 0;
  for (int month = 0; month < high.size(); ++month)
    if (high[month].toDouble() > high[busiest].toDouble())
      busiest = month;
  auto* grid = shown.find("monthGrid");
  QMetaObject::invokeMethod(grid, "positionViewAtIndex", Q_ARG(int, busiest), Q_ARG(int, 3));
  shown.settle();
  shown.tap("month-" + QString::number(busiest));
  shown.settle();
  auto* lots = shown.find("monthLots");
  ASSERT_NE(lots, nullptr);
  EXPECT_GT(lots->property("count").toInt(), 0);
  shown.tap("monthsClose");
  shown.settle();
  EXPECT_EQ(shown.find("monthGrid"), nullptr);
  shown.tap("horizon-12");
  shown.settle();
  EXPECT_EQ(shown.find("ahead-0")->property("high").toList().size(), 12);
}

TEST_F(Plan, TheLineThatIsOpenStaysSoWhenRowsComeAndGo) {
  PlanAhead ahead;
  ahead.set_session(&shown.session());
  shown.settle();
  const auto name = [&](int row) {
    return ahead.rows()->value(row, "group").toString() + ": " +
           ahead.rows()->value(row, "name").toString();
  };
  const int last = ahead.rows()->size() - 1;
  ASSERT_GT(last, 1);
  ahead.open(last);
  const auto opened = name(last);
  ahead.set_sowings(true);
  shown.settle();
  ASSERT_GE(ahead.opened(), 0);
  EXPECT_EQ(name(ahead.opened()), opened);
  EXPECT_GT(ahead.cells()->size(), 0);
  ahead.open(ahead.opened());
  EXPECT_EQ(ahead.opened(), -1) << "a second tap closes it";
}

TEST_F(Plan, ForgetsWhatWasAskedOfABookThatIsClosed) {
  PlanAhead ahead;
  ahead.set_session(&shown.session());
  shown.settle();
  ahead.again();
  ASSERT_TRUE(ahead.busy());
  int told = 0;
  QObject::connect(&ahead, &PlanAhead::told, [&] { ++told; });
  shown.session().close();
  EXPECT_FALSE(ahead.busy());
  shown.settle();
  EXPECT_EQ(told, 0);
}

TEST_F(Plan, GoesOutAsATableAndAsFiles) {
  shown.tap("aheadCopy");
  const auto copied = QGuiApplication::clipboard()->text();
  EXPECT_GT(copied.count('\t'), 100);
  EXPECT_GT(copied.count('\n'), 20);
  shown.tap("aheadSaveOpen");
  shown.settle();
  for (const QString ending : {"pdf", "xlsx", "csv"}) {
    shown.tap("aheadSave-" + ending);
    shown.settle();
    const auto path = shown.find("aheadSavePath")->property("text").toString();
    EXPECT_TRUE(path.endsWith("season-plan." + ending)) << path.toStdString();
    shown.tap("aheadSaveDo");
    EXPECT_GT(QFileInfo(path).size(), 1000) << path.toStdString();
  }
}

TEST_F(Plan, OrdersFromOffersThatWereTyped) {
  view("order");
  ASSERT_NE(shown.find("orderFault"), nullptr);
  EXPECT_TRUE(shown.find("orderFault")->property("text").toString().contains("Nobody offers"));
  int number = 0;
  for (const QString part : {"coarse perlite", "peat", "coarse sand"}) {
    shown.tap("offerOpen");
    shown.settle();
    shown.find("offerGood")->setProperty("chosen", part);
    write("offerSupplierField", "Mill");
    write("offerLitresField", "100");
    write("offerPriceField", QString::number(12 + number++) + ".5");
    shown.tap("offerEnter");
    shown.settle();
  }
  const auto offers = records().offers;
  ASSERT_EQ(offers.size(), 3U);
  EXPECT_EQ(offers[0].cents, 1250);
  EXPECT_EQ(shown.find("orderFault"), nullptr);
  ASSERT_NE(shown.find("assure-95"), nullptr);
  shown.tap("assure-95");
  shown.settle();
  EXPECT_TRUE(shown.find("assure-95")->property("checked").toBool());
}

TEST_F(Plan, RefusesAnOfferThatCannotBe) {
  view("order");
  shown.tap("offerOpen");
  shown.settle();
  shown.find("offerGood")->setProperty("chosen", "peat");
  write("offerSupplierField", "Mill");
  write("offerLitresField", "much");
  shown.tap("offerEnter");
  shown.settle();
  ASSERT_NE(shown.find("orderEntryFault"), nullptr);
  EXPECT_TRUE(shown.find("orderEntryFault")->property("text").toString().contains("much"));
  EXPECT_TRUE(records().offers.empty());
}

TEST_F(Plan, KeepsATargetAndTellsWhatItTakes) {
  view("targets");
  auto* cross = shown.find("targetCross");
  ASSERT_NE(cross, nullptr);
  const auto crosses = cross->property("choices").toStringList();
  ASSERT_FALSE(crosses.empty());
  cross->setProperty("chosen", crosses.front());
  shown.settle();
  auto* pot = shown.find("targetPot");
  ASSERT_NE(pot, nullptr);
  const auto pots = pot->property("choices").toStringList();
  ASSERT_GE(pots.size(), 2);
  pot->setProperty("chosen", pots[1]);
  write("targetPlantsField", "40");
  write("targetByField", "2028-10");
  shown.tap("targetEnter");
  shown.settle();
  ASSERT_EQ(records().targets.size(), 1U);
  EXPECT_EQ(records().targets[0].plants, 40);
  write("targetPlantsField", "none");
  shown.tap("targetEnter");
  shown.settle();
  EXPECT_EQ(records().targets.size(), 1U);
  ASSERT_NE(shown.find("targetFault"), nullptr);
}

TEST_F(Plan, PlacesLotsAndPinsThem) {
  view("benches");
  ASSERT_NE(shown.find("place-0"), nullptr);
  const auto tray = shown.lot_with(Kind::tray, book::State::sown).lot.code;
  write("pinLotField", QString::fromStdString(tray.text()));
  shown.find("pinPlace")->setProperty("chosen", "Cool bench");
  shown.tap("pinDo");
  shown.settle();
  ASSERT_EQ(records().pins.size(), 1U);
  shown.tap("place-0");
  shown.settle();
}

TEST_F(Plan, SupposesAndWritesOnlyWhenToldTo) {
  const auto survival = [&] {
    return shown.session().standing().registers.routes.front().steps[1].survival;
  };
  const double stood = survival();
  view("otherwise");
  shown.tap("suppose-survival");
  const auto taxon = shown.find("supposeWhat")->property("choices").toStringList().front();
  shown.find("supposeWhat")->setProperty("chosen", taxon);
  shown.settle();
  const auto steps = shown.find("supposeWhich")->property("choices").toStringList();
  ASSERT_GE(steps.size(), 2);
  shown.find("supposeWhich")->setProperty("chosen", steps[1]);
  write("supposeOneField", "50");
  shown.tap("supposeDo");
  shown.settle();
  ASSERT_NE(shown.find("forget-0"), nullptr);
  EXPECT_FALSE(shown.find("suppose-survival")->property("checked").toBool())
      << "what was supposed is not about to be supposed again";
  EXPECT_EQ(survival(), stood);
  ASSERT_NE(shown.find("otherwiseAccept"), nullptr);
  auto* accept = shown.find("otherwiseAccept");
  accept->forceActiveFocus();
  shown.press(Qt::Key_Return);
  shown.settle();
  EXPECT_EQ(survival(), 0.5);
  EXPECT_EQ(shown.find("forget-0"), nullptr);
}

TEST_F(Plan, WhatIsSupposedIsShownInTheReadersUnits) {
  PlanOtherwise otherwise;
  otherwise.set_session(&shown.session());
  shown.settle();
  ASSERT_FALSE(otherwise.crosses().isEmpty());
  ASSERT_TRUE(otherwise.suppose(
      "sow", {{"cross", otherwise.crosses().front()}, {"seeds", "4000"}, {"month", "2027-03"}}));
  shown.settle();
  const auto of_mix = [&](const QString& unit) {
    for (int row = 0; row < otherwise.years()->size(); ++row)
      if (const auto name = otherwise.years()->value(row, "name").toString();
          name.startsWith("Finished mix, " + unit + ": "))
        return QLocale().toDouble(
            otherwise.years()->value(row, "difference").toString().remove('+'));
    return 0.0;
  };
  const double litres = of_mix("L");
  EXPECT_GT(litres, 10) << otherwise.fault().toStdString();
  EXPECT_EQ(of_mix("US gal"), 0);
  shown.session().speech()->set_units("us");
  shown.settle();
  EXPECT_EQ(of_mix("L"), 0);
  EXPECT_NEAR(of_mix("US gal"), litres / 3.785411784, 0.6); // both are rounded
}

TEST_F(Plan, AChangeThatTheBookOvertookCanBeForgotten) {
  PlanOtherwise otherwise;
  otherwise.set_session(&shown.session());
  const QVariantMap bench{
      {"name", "Far bench"}, {"light", "shade"}, {"length", "4000"}, {"width", "1200"}};
  ASSERT_TRUE(otherwise.suppose("more", bench)) << "also before the first plan is drawn";
  EXPECT_EQ(otherwise.changes()->value(0, "told"), "change 1");
  shown.settle();
  EXPECT_TRUE(otherwise.changes()->value(0, "told").toString().contains("Far bench"))
      << otherwise.fault().toStdString();
  ASSERT_TRUE(otherwise.suppose("sold", {{"months", "3"}}))
      << otherwise.entry_fault().toStdString();
  ASSERT_EQ(otherwise.changes()->size(), 2) << "at once";
  const auto told = otherwise.changes()->rows();
  shown.settle();
  EXPECT_EQ(otherwise.fault(), "");

  Form built;
  built.setProperty("session", QVariant::fromValue(&shown.session()));
  built.setProperty("deed", "new place");
  built.set("name", "Far bench");
  ASSERT_TRUE(built.submit()) << built.fault().toStdString();
  shown.settle();
  EXPECT_TRUE(otherwise.fault().contains("Far bench")) << otherwise.fault().toStdString();
  ASSERT_EQ(otherwise.changes()->rows(), told) << "there is still something to forget";
  EXPECT_FALSE(otherwise.suppose("sold", {{"months", "2"}}));
  EXPECT_NE(otherwise.entry_fault(), "");
  otherwise.forget(0);
  EXPECT_EQ(otherwise.entry_fault(), "");
  ASSERT_EQ(otherwise.changes()->size(), 1) << "at once";
  EXPECT_EQ(otherwise.changes()->rows().front(), told.back());
  shown.settle();
  EXPECT_EQ(otherwise.fault(), "");
  EXPECT_EQ(otherwise.changes()->size(), 1);
}

TEST_F(Plan, StoppedBeforeAPlacingIsFoundTheOneBeforeStaysAndItCanBeAskedAgain) {
  view("benches");
  const auto click = [&](const char* name) {
    ASSERT_NE(shown.find(name), nullptr) << name;
    ASSERT_TRUE(QMetaObject::invokeMethod(shown.find(name), "clicked"));
  };
  EXPECT_EQ(shown.find("benchesAgain"), nullptr);
  ASSERT_NE(shown.find("place-0"), nullptr);
  shown.session().read_anew();
  click("benchesStop"); // the forecast has just begun
  shown.settle();
  EXPECT_EQ(shown.find("benchesFault"), nullptr);
  EXPECT_NE(shown.find("place-0"), nullptr);
  click("benchesAgain");
  EXPECT_EQ(shown.find("benchesAgain"), nullptr);
  click("benchesStop");
  shown.settle();
}

TEST_F(Plan, StoppedBeforeAPlacingIsFoundThePinsAreThoseOfTheBook) {
  PlanBenches benches;
  benches.set_session(&shown.session());
  shown.settle();
  const auto months = benches.months();
  ASSERT_FALSE(months.isEmpty());
  ASSERT_FALSE(benches.place_names().isEmpty());
  const auto code =
      QString::fromStdString(shown.lot_with(Kind::tray, book::State::sown).lot.code.text());
  const auto pinned = benches.pins()->size();
  const auto stopped = [&](const auto& change) {
    const Held held;
    change();
    benches.stop();
  };
  stopped([&] { EXPECT_TRUE(benches.pin(code, benches.place_names().front())); });
  shown.settle();
  ASSERT_TRUE(benches.stopped());
  EXPECT_EQ(benches.months(), months) << "what was placed before stays";
  ASSERT_EQ(benches.pins()->size(), pinned + 1);
  stopped([&] { benches.unpin(code); });
  shown.settle();
  EXPECT_EQ(benches.pins()->size(), pinned);
}

} // namespace
} // namespace coneline::window
