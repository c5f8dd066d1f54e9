// SPDX-License-Identifier: GPL-3.0-or-later
// The window in another language and other units: what it shows, and what it takes when typed.
#include "core/work/sow.h"
#include "qml/models/form.h"
#include "qml/models/germination_results.h"
#include "qml/models/label_print.h"
#include "qml/models/plan_otherwise.h"
#include "qml/models/trays_to_empty.h"
#include "qml/models/wording.h"
#include "tests/qml/shown_window.h"

#include <QFile>
#include <QLocale>
#include <QRegularExpression>
#include <QTest>
#include <gtest/gtest.h>

namespace coneline::window {
namespace {

class InLanguage : public testing::Test {
 protected:
  ~InLanguage() override { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom)); }
};

/// Shows what was said and what was not.
class Marking : public Language {
 public:
  [[nodiscard]] std::string text(std::string_view english) const override {
    return "<" + std::string(english) + ">";
  }
};

QString text_of(QQuickItem* item) {
  return item ? item->property("text").toString() : QString();
}

bool shows(ShownWindow& shown, const QString& text) {
  for (auto* item : shown.items())
    if (text_of(item).contains(text))
      return true;
  return false;
}

TEST_F(InLanguage, SpanishComesAndGoesWhileTheWindowIsOpen) {
  ShownWindow shown(With::demo_season, {1280, 800});
  EXPECT_TRUE(shows(shown, "Season plan"));
  shown.set("page", "look");
  auto* choice = shown.find("chooseLanguage");
  ASSERT_NE(choice, nullptr);
  QMetaObject::invokeMethod(choice, "picked", Q_ARG(QString, "es"));
  shown.settle();
  EXPECT_EQ(shown.session().speech()->language(), "es");
  EXPECT_TRUE(shows(shown, "Plan de temporada"));
  EXPECT_TRUE(shows(shown, "Bandejas"));
  EXPECT_FALSE(shows(shown, "Season plan"));
  QMetaObject::invokeMethod(shown.find("chooseLanguage"), "picked", Q_ARG(QString, "en"));
  shown.settle();
  EXPECT_TRUE(shows(shown, "Season plan"));
}

TEST_F(InLanguage, WhatIsDueIsSaidInSpanishWithTheLocalesDays) {
  ShownWindow shown(With::demo_season, {1280, 800});
  for (const auto& due : shown.session().standing().due)
    EXPECT_FALSE(due.told.empty());
  shown.session().speech()->set_language("es");
  int with_days = 0;
  for (const auto& due : shown.session().standing().due) {
    const auto told = QString::fromStdString(due.told + " " + due.missed);
    EXPECT_FALSE(told.contains(QRegularExpression("\\d{4}-\\d\\d-\\d\\d"))) << due.told;
    EXPECT_FALSE(told.contains(QRegularExpression("\\b(seeds|the|look|until)\\b"))) << due.told;
    with_days += told.contains(QRegularExpression("\\d{1,2}/\\d{1,2}/\\d{4}")) ? 1 : 0;
  }
  EXPECT_GT(with_days, 0);
}

TEST_F(InLanguage, EnglishSaysDaysAsTheLocaleDoesToo) {
  ShownWindow shown(With::demo_season, {1280, 800});
  shown.session().speech()->set_language("en");
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
  EXPECT_EQ(Date::of(2026, 3, 9)->said(), "09/03/2026");
  EXPECT_EQ(Date::of(2026, 3, 9)->iso(), "2026-03-09");
}

TEST_F(InLanguage, WhatIsSavedAndPrintedIsInItToo) {
  ShownWindow shown(With::demo_season, {1280, 800});
  shown.session().speech()->set_language("es");
  GerminationResults results;
  results.set_session(&shown.session());
  shown.settle();
  QFile page(results.save("HTML"));
  ASSERT_TRUE(page.open(QIODevice::ReadOnly)) << page.fileName().toStdString();
  const auto html = QString::fromUtf8(page.readAll());
  EXPECT_TRUE(html.startsWith("<!DOCTYPE html>\n<html lang=\"es\">"));
  EXPECT_TRUE(html.contains("<h2>Clasificación</h2>"));
  EXPECT_FALSE(html.contains(", likely "));
  EXPECT_FALSE(html.contains(QRegularExpression("[0-9]\\.[0-9] %"))) << "decimals are said";
}

TEST_F(InLanguage, ABoughtBatchOfATrayToEmptyHasItsDayAsTheLocaleDoes) {
  ShownWindow shown(With::demo_season, {1280, 800});
  shown.session().speech()->set_language("es");
  TraysToEmpty trays;
  trays.set_session(&shown.session());
  auto* rows = qvariant_cast<Rows*>(trays.property("rows"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return rows->size() > 0; }, 60000));
  int bought = 0;
  for (int i = 0; i < rows->size(); ++i) {
    const auto cross = rows->value(i, "cross").toString();
    EXPECT_FALSE(cross.contains(QRegularExpression("\\d{4}-\\d\\d-\\d\\d"))) << cross.toStdString();
    bought += cross.contains(QRegularExpression("^Q\\w+ del? \\d{1,2}/\\d{1,2}/\\d{4}")) ? 1 : 0;
  }
  EXPECT_GT(bought, 0);
}

TEST_F(InLanguage, ReadyLayoutsAndStocksAreChosenByTheirNamesAndSaid) {
  LabelPrint print;
  const auto layouts = print.property("layouts").toStringList();
  EXPECT_EQ(print.property("layoutsSaid").toStringList(), layouts);
  const Marking marking;
  speak(&marking);
  EXPECT_EQ(print.property("layouts").toStringList(), layouts);
  EXPECT_EQ(print.property("layoutsSaid").toStringList(),
            QStringList({"<everything>", "<cross and date>", "<code alone>"}));
  EXPECT_EQ(print.property("stocksSaid").toStringList().front(),
            "<" + print.property("stocks").toStringList().front() + ">");
  speak(nullptr);
}

TEST_F(InLanguage, TheLabelsPageShowsTheSaidNamesAndPicksByName) {
  ShownWindow shown(With::demo_season, {1280, 800});
  shown.set("page", "trays");
  shown.tap("labels");
  auto* layouts = shown.find("labelLayouts");
  ASSERT_NE(layouts, nullptr);
  EXPECT_EQ(layouts->property("shown").toStringList(), layouts->property("choices").toStringList());
  const Marking marking;
  speak(&marking);
  emit shown.session().speech()->languageChanged();
  shown.settle();
  EXPECT_EQ(text_of(shown.find("labelLayouts-code alone")), "<code alone>");
  shown.tap("labelLayouts-code alone");
  EXPECT_EQ(layouts->property("chosen").toString(), "code alone");
  speak(nullptr);
}

TEST_F(InLanguage, RefusalsAreInSpanish) {
  ShownWindow shown(With::demo_season, {1280, 800});
  shown.session().speech()->set_language("es");
  const auto batch = shown.lot_with(Kind::batch, book::State::judged_filled).lot.code;
  const auto pot = shown.session().standing().registers.pots.front().name;
  const work::Sow wanted{
      batch, {}, Count::sure(1), 0, pot, {}, {}, {shown.session().today(), {}, {}}};
  const auto done = shown.session().act([&](store::Book& book) { return work::sow(book, wanted); });
  ASSERT_FALSE(done);
  EXPECT_EQ(done.error().text(), "0 bandejas. Dé al menos uno.");
}

TEST(FaultShown, BeginsLikeASentenceUnlessAFileIsNamedFirst) {
  const auto wrong = fault("12 germinated of 10 sown", "Correct it.");
  EXPECT_EQ(fault_shown(fault("no name", "Write one.")), "No name. Write one.");
  EXPECT_EQ(fault_shown(wrong.at({"counts.csv", 3, "sown"})).left(10), "counts.csv");
  for (const auto& where : {Where{{}, 0, "sown"}, {{}, 3, {}}, {{}, 3, "sown"}}) {
    const auto shown = fault_shown(wrong.at(where));
    EXPECT_TRUE(shown.front().isUpper()) << shown.toStdString();
  }
}

TEST_F(InLanguage, PluralFormsAreRight) {
  ShownWindow shown(With::no_book, {1280, 800});
  shown.session().speech()->set_language("es");
  EXPECT_EQ(phrased_n(1, "{} new root", "{} new roots"), "1 raíz nueva");
  EXPECT_EQ(phrased_n(3, "{} new root", "{} new roots"), "3 raíces nuevas");
  EXPECT_EQ(phrased_n(0, "{} new root", "{} new roots"), "0 raíces nuevas");
  shown.session().speech()->set_language("en");
  EXPECT_EQ(phrased_n(1, "{} new root", "{} new roots"), "1 new root");
  EXPECT_EQ(QCoreApplication::translate("RoundStart", "%1: %n tray(s)", nullptr, 1), "%1: 1 tray");
  EXPECT_EQ(QCoreApplication::translate("RoundStart", "%1: %n tray(s)", nullptr, 4), "%1: 4 trays");
}

TEST_F(InLanguage, NumbersAreReadAsTheLocaleWritesThem) {
  QLocale::setDefault(QLocale(QLocale::Spanish, QLocale::Spain));
  EXPECT_EQ(read_number("2,5").value(), 2.5);
  EXPECT_EQ(read_number("2.5").value(), 2.5); // cannot be thousands
  EXPECT_EQ(read_number("1234,5").value(), 1234.5);
  EXPECT_FALSE(read_number("1.234").has_value()); // thousands there, a fraction elsewhere
  EXPECT_EQ(read_number("0,125").value(), 0.125);
  EXPECT_EQ(written(1234.5), "1234,5");
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
  EXPECT_EQ(read_number("2.5").value(), 2.5);
  EXPECT_EQ(read_number("2,5").value(), 2.5);
  EXPECT_FALSE(read_number("1,234").has_value());
  EXPECT_FALSE(read_number("two").has_value());
  EXPECT_EQ(written(1234.5), "1234.5");
}

TEST_F(InLanguage, DaysAreReadBackAsTheyAreShown) {
  for (const auto& locale :
       {QLocale(QLocale::Spanish, QLocale::Spain), QLocale(QLocale::Spanish, QLocale::Mexico),
        QLocale(QLocale::English, QLocale::UnitedStates),
        QLocale(QLocale::English, QLocale::UnitedKingdom)}) {
    QLocale::setDefault(locale);
    const auto day = Date::of(2026, 3, 9).value();
    EXPECT_EQ(read_day(shown(day)).value(), day) << shown(day).toStdString();
    EXPECT_EQ(read_day("2026-03-09").value(), day);
  }
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
  EXPECT_EQ(read_day("3/9/26").value(), Date::of(2026, 3, 9).value());
  QLocale::setDefault(QLocale(QLocale::Spanish, QLocale::Spain));
  EXPECT_EQ(read_day("9/3/26").value(), Date::of(2026, 3, 9).value());
}

TEST_F(InLanguage, AMeasureTypedInUsUnitsIsKeptMetric) {
  ShownWindow shown(With::demo_season, {1280, 800});
  shown.session().speech()->set_units("us");
  Form form;
  form.setProperty("session", QVariant::fromValue(&shown.session()));
  form.setProperty("deed", "new pot");
  form.set("name", "gallon pot");
  form.set("litres", "1");
  form.set("length", "6.5");
  ASSERT_TRUE(form.submit()) << form.property("fault").toString().toStdString();
  const auto* pot = book::named(shown.session().standing().registers.pots, "gallon pot");
  ASSERT_NE(pot, nullptr);
  EXPECT_NEAR(pot->litres, 3.785412, 1e-9); // to a millionth of a litre
  EXPECT_NEAR(pot->length_mm, 165.1, 1e-9);
}

TEST_F(InLanguage, TheFormNamesTheUnit) {
  ShownWindow shown(With::demo_season, {1280, 800});
  const auto labels = [&] {
    Form form;
    form.setProperty("session", QVariant::fromValue(&shown.session()));
    form.setProperty("deed", "new pot");
    QStringList all;
    auto* fields = qvariant_cast<Rows*>(form.property("fields"));
    for (int i = 0; i < fields->size(); ++i)
      all << fields->value(i, "label").toString();
    return all.join("|");
  };
  EXPECT_TRUE(labels().contains("It really holds, L")) << labels().toStdString();
  shown.session().speech()->set_units("us");
  EXPECT_TRUE(labels().contains("It really holds, US gal")) << labels().toStdString();
  EXPECT_TRUE(labels().contains("Outside width, in"));
  shown.session().speech()->set_language("es");
  EXPECT_TRUE(labels().contains("Contiene de verdad, US gal")) << labels().toStdString();
}

TEST_F(InLanguage, WhatIsWrittenInAFormIsSaidAnewInOtherUnitsAndAnotherLanguage) {
  ShownWindow shown(With::demo_season, {1280, 800});
  auto* speech = shown.session().speech();
  speech->set_language("en");
  Form form;
  form.setProperty("session", QVariant::fromValue(&shown.session()));
  form.setProperty("deed", "new pot");
  form.set("name", "5 l pot");
  form.set("litres", "5");
  form.set("length", "165.1");
  form.set("width", "wide");
  speech->set_units("us");
  EXPECT_EQ(form.valueOf("litres"), "1.320860262") << "the same pot";
  EXPECT_EQ(form.valueOf("length"), "6.5");
  EXPECT_EQ(form.valueOf("width"), "wide") << "what cannot be read stays to be set right";
  EXPECT_EQ(form.valueOf("name"), "5 l pot");
  for (int row = 0; row < form.fields()->size(); ++row)
    EXPECT_EQ(form.fields()->value(row, "value"),
              form.valueOf(form.fields()->value(row, "key").toString()));
  speech->set_language("es");
  EXPECT_EQ(form.valueOf("length"), "6,5");
  speech->set_units("metric");
  EXPECT_EQ(form.valueOf("litres"), "5") << "as it was typed, there and back";
  EXPECT_EQ(form.valueOf("length"), "165,1");
  form.set("width", "0");
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  const auto* pot = book::named(shown.session().standing().registers.pots, "5 l pot");
  ASSERT_NE(pot, nullptr);
  EXPECT_EQ(pot->litres, 5);
  EXPECT_NEAR(pot->length_mm, 165.1, 1e-9);
}

TEST_F(InLanguage, ADayThatWasWrittenStaysTheSameDay) {
  ShownWindow shown(With::demo_season, {1280, 800});
  shown.session().speech()->set_language("en");
  const auto day = Date::of(2026, 3, 9).value();
  const auto& tray = shown.lot_with(Kind::tray, book::State::sown);
  Form form;
  form.setProperty("session", QVariant::fromValue(&shown.session()));
  form.setProperty("code", QString::fromStdString(tray.lot.code.text()));
  form.setProperty("deed", "move");
  const auto english = window::shown(day);
  form.set("on", english);
  shown.session().speech()->set_language("es");
  EXPECT_NE(form.valueOf("on"), english);
  EXPECT_EQ(form.valueOf("on"), window::shown(day));
  EXPECT_EQ(read_day(form.valueOf("on")).value(), day);
}

TEST_F(InLanguage, EveryDayOfAFormIsOne) {
  ShownWindow shown(With::demo_season, {1280, 800});
  auto* speech = shown.session().speech();
  const auto& standing = shown.session().standing();
  const auto seed = shown.lot_with(Kind::batch, book::State::judged_filled).lot.code;
  const auto day = Date::of(2026, 3, 9).value();
  const auto plant_for = [&](const char* deed) {
    for (const auto& plant : standing.registers.plants)
      if (deed_named(deed)->fits({&standing, shown.session().today(), plant.code}))
        return plant.code;
    throw std::runtime_error("no plant of the demo's season fits");
  };
  for (const auto& [deed, field, code] : {std::tuple("new cone", "seen", plant_for("new cone")),
                                          {"new pollen", "collected", plant_for("new pollen")},
                                          {"correct plant", "acquired", plant_for("new cone")},
                                          {"add paper", "issued", plant_for("new cone")},
                                          {"store", "from", seed},
                                          {"store", "to", seed}}) {
    speech->set_language("en");
    Form form;
    form.setProperty("session", QVariant::fromValue(&shown.session()));
    form.setProperty("code", QString::fromStdString(code.text()));
    form.setProperty("deed", deed);
    const auto english = window::shown(day);
    form.set(field, english);
    speech->set_language("es");
    EXPECT_NE(window::shown(day), english);
    EXPECT_EQ(form.valueOf(field), window::shown(day)) << deed << ": " << field;
  }
}

TEST_F(InLanguage, OriginsAreSaidWhereverTheyStand) {
  ShownWindow shown(With::demo_season, {1280, 800});
  shown.session().speech()->set_language("es");
  const QRegularExpression as_a_key(" of \\d{4}-\\d\\d-\\d\\d, from ");
  GerminationResults results;
  results.set_session(&shown.session());
  TraysToEmpty trays;
  trays.set_session(&shown.session());
  PlanOtherwise otherwise;
  otherwise.set_session(&shown.session());
  shown.settle();
  int bought = 0;
  for (int row = 0; row < results.crosses()->size(); ++row) {
    results.choose(row);
    EXPECT_EQ(results.name(), results.crosses()->value(row, "name").toString());
    bought += results.name().startsWith("Q3725") ? 1 : 0;
    EXPECT_FALSE(results.name().contains(as_a_key)) << results.name().toStdString();
  }
  EXPECT_EQ(bought, 1);
  const auto shown_crosses = otherwise.property("crossesShown").toStringList();
  EXPECT_EQ(shown_crosses.size(), otherwise.crosses().size());
  EXPECT_FALSE(otherwise.crosses().filter(as_a_key).isEmpty());
  EXPECT_TRUE(shown_crosses.filter(as_a_key).isEmpty());
  ASSERT_GT(trays.rows()->size(), 0);
  for (int row = 0; row < trays.rows()->size(); ++row)
    EXPECT_FALSE(trays.rows()->value(row, "cross").toString().contains(as_a_key));
}

TEST_F(InLanguage, AFormStaysWithTheRowThatWasChosenInIt) {
  ShownWindow shown(With::demo_season, {1280, 800});
  shown.session().speech()->set_language("en");
  Form form;
  form.setProperty("session", QVariant::fromValue(&shown.session()));
  form.setProperty("deed", "amend pot");
  form.set("pot", "Pot 5 L");
  form.set("litres", "5");
  shown.session().speech()->set_units("us");
  EXPECT_EQ(form.valueOf("pot"), "Pot 5 L");
  EXPECT_EQ(form.valueOf("name"), "Pot 5 L");
  EXPECT_EQ(form.valueOf("litres"), "1.320860262") << "as it was typed";
  EXPECT_EQ(form.valueOf("length"), "8.661417323") << "as it stands";
  ASSERT_TRUE(form.submit()) << form.fault().toStdString();
  const auto* pot = book::named(shown.session().standing().registers.pots, "Pot 5 L");
  EXPECT_NEAR(pot->litres, 5, 1e-6);
  EXPECT_EQ(pot->length_mm, 220);
}

TEST_F(InLanguage, ACrossToldApartBySeasonIsSaidToo) {
  ShownWindow shown(With::demo_season, {1280, 800});
  shown.session().speech()->set_language("es");
  GerminationResults results;
  results.set_session(&shown.session());
  results.set_by("cross and season");
  shown.settle();
  int bought = 0;
  for (int row = 0; row < results.crosses()->size(); ++row) {
    results.choose(row);
    EXPECT_EQ(results.name(), results.crosses()->value(row, "name").toString());
    if (!results.name().startsWith("Q3725"))
      continue;
    ++bought;
    EXPECT_TRUE(results.name().contains(QRegularExpression(" del \\d{1,2}/\\d{1,2}/\\d{4}, de ")))
        << results.name().toStdString();
  }
  EXPECT_EQ(bought, 1);
}

TEST_F(InLanguage, ChoicesAreShownInSpanishAndKeptAsTheBookWritesThem) {
  ShownWindow shown(With::demo_season, {1280, 800});
  shown.session().speech()->set_language("es");
  Form form;
  form.setProperty("session", QVariant::fromValue(&shown.session()));
  form.setProperty("deed", "new plant");
  auto* fields = qvariant_cast<Rows*>(form.property("fields"));
  for (int i = 0; i < fields->size(); ++i)
    if (fields->value(i, "key").toString() == "sex") {
      EXPECT_EQ(fields->value(i, "choices").toStringList(),
                QStringList({"not known", "male", "female"}));
      EXPECT_EQ(fields->value(i, "shown").toStringList(),
                QStringList({"no se sabe", "macho", "hembra"}));
    }
  form.set("taxon", "Cycas revoluta");
  form.set("sex", "male");
  ASSERT_TRUE(form.submit());
  EXPECT_EQ(shown.session().standing().registers.plants.back().sex, book::Sex::male);
}

} // namespace
} // namespace coneline::window
