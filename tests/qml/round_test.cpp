// SPDX-License-Identifier: GPL-3.0-or-later
// Twenty trays walked at the real window with a hand scanner that types, one picture a step.
#include "core/work/round.h"
#include "qml/models/round_pictures.h"
#include "tests/core/store/first_cone.h"
#include "tests/qml/label_picture.h"
#include "tests/qml/shown_window.h"

#include <QDir>
#include <QTest>
#include <gtest/gtest.h>

namespace coneline::window {
namespace {

constexpr QSize tablet(800, 1280);

QString text_of(const Code& code) {
  return QString::fromStdString(code.text());
}

work::RoundView view(ShownWindow& shown) {
  return shown.session()
      .ask([](store::Reading& reading) {
        return work::view_round(reading, reading.registers(), reading.rounds().back());
      })
      .value();
}

/// Numbered pictures of a round, for people to look at.
class Pictures {
 public:
  void take(ShownWindow& shown, const QString& what) {
    QDir folder(QStringLiteral(CONELINE_PICTURES_FOLDER) + "/round");
    folder.mkpath(QStringLiteral("."));
    const auto name = QStringLiteral("%1-%2.png").arg(++number_, 3, 10, QChar('0')).arg(what);
    EXPECT_TRUE(shown.window().grabWindow().save(folder.filePath(name)));
  }

 private:
  int number_ = 0;
};

TEST(Round, OffersPlacesOnlyWhereThereAreTraysInThem) {
  {
    ShownWindow shown(With::demo_season, tablet);
    shown.tap("stripRound");
    EXPECT_NE(shown.find("roundPlaces"), nullptr);
  }
  const tests::Scratch scratch;
  const auto path = scratch.at("begun.coneline");
  tests::FirstCone first;
  { tests::make_first_cone(path, first); }
  ShownWindow shown(With::no_book, tablet);
  ASSERT_TRUE(shown.session().openBook(QString::fromStdString(path.string())));
  shown.settle();
  shown.tap("stripRound");
  EXPECT_NE(shown.find("roundPictures"), nullptr);
  EXPECT_EQ(shown.find("roundPlaces"), nullptr) << "a heading with nothing beneath it";
}

TEST(Round, OfTwentyTraysWithAHandScanner) {
  ShownWindow shown(With::demo_season, tablet);
  Pictures pictures;
  shown.tap("stripRound");
  pictures.take(shown, "start");
  // The first house or bench with at least twenty trays.
  QString place;
  std::size_t most = 0;
  const auto& standing = shown.session().standing();
  for (const auto& at : standing.registers.places) {
    std::size_t trays = 0;
    for (const auto& line : standing.lots)
      trays += line.lot.code.kind() == Kind::tray && line.total() > 0 &&
                       work::is_within(standing.registers, line.place, at.id)
                   ? 1
                   : 0;
    if (trays > most) {
      most = trays;
      place = text_of(at.code);
    }
  }
  ASSERT_GE(most, 20U) << "the demo has too few trays in one place";
  shown.tap("roundAt-" + place);
  ASSERT_EQ(view(shown).planned, static_cast<std::int64_t>(most));
  pictures.take(shown, "begun");

  std::int64_t looked = 0;
  const auto stops = view(shown).trays;
  for (std::size_t i = 0; i < 20; ++i) {
    const auto& tray = stops[i].code;
    SCOPED_TRACE(tray.text());
    // The keyboard is anywhere: in a counter, on a button.
    if (i % 3 == 1 && shown.find("roundRoots"))
      shown.find("roundRoots")->forceActiveFocus();
    if (i % 3 == 2 && shown.find("roundEnd"))
      shown.find("roundEnd")->forceActiveFocus(Qt::TabFocusReason);
    shown.scan(text_of(tray));
    ASSERT_EQ(view(shown).in_hand, tray);
    ASSERT_TRUE(view(shown).round.tapped.none()) << "a letter or digit leaked into a counter";
    pictures.take(shown, "scanned-" + text_of(tray));
    const auto& line = *shown.session().standing().lot(tray);
    const bool sown = line.on_hand.contains(book::State::sown);
    if (sown && i % 2 == 0) {
      shown.tap("roundRoots-more");
      pictures.take(shown, "tapped-" + text_of(tray));
    } else if (sown && i % 4 == 1) {
      shown.press(Qt::Key_F4);
    }
    if (i % 5 == 4) {
      shown.tap("roundEnter"); // else the next scan enters it
      ++looked;
    } else if (!view(shown).round.tapped.none()) {
      ++looked;
    }
  }
  shown.tap("roundEnd");
  pictures.take(shown, "end");
  const auto end = view(shown);
  EXPECT_TRUE(end.round.ended);
  EXPECT_EQ(end.seen, 20);
  EXPECT_EQ(end.counted, looked);
  EXPECT_EQ(end.not_found, static_cast<std::int64_t>(most) - 20);
  EXPECT_NE(shown.find("roundSums"), nullptr);

  // What was not found can be gone to from here.
  const auto rows = shown.items();
  const auto row = std::ranges::find_if(rows, [](QQuickItem* item) {
    return item->inherits("coneline::window::Tap") && item->property("code").isValid();
  });
  ASSERT_NE(row, rows.end());
  const auto code = (*row)->property("code").toString();
  EXPECT_TRUE(code.startsWith("T"));
  shown.tap(*row);
  EXPECT_EQ(shown.get("chosen").toString(), code);
  EXPECT_EQ(shown.get("page").toString(), "today");
}

TEST(Round, SaysPlainlyWhatIsNoTrayHereAndTakesBack) {
  ShownWindow shown(With::demo_season, tablet);
  Pictures pictures;
  shown.tap("stripRound");
  shown.tap("roundDue");
  const auto tray = view(shown).trays.front().code;
  shown.scan(text_of(tray));
  shown.tap("roundDead-more");
  const auto foreign = Code::of(Kind::tray, tray.series() == 99 ? 10 : tray.series() + 1, 1);
  shown.scan(text_of(foreign.value()));
  EXPECT_TRUE(shown.find("roundSaid")->property("text").toString().contains("another book"));
  EXPECT_EQ(view(shown).in_hand, tray); // and the tap is still there
  EXPECT_EQ(view(shown).round.tapped.dead, 1);
  shown.tap("roundEnter");
  EXPECT_EQ(view(shown).counted, 1);
  shown.tap("roundUndo");
  EXPECT_EQ(view(shown).counted, 0);
  EXPECT_EQ(view(shown).round.tapped.dead, 1);
  pictures.take(shown, "refused-taken-back");
  // The same label twice in a moment: said, and taken once.
  const auto other = view(shown).trays[1].code;
  shown.scan(text_of(other));
  shown.scan(text_of(other));
  ASSERT_NE(shown.find("scanNote"), nullptr);
  EXPECT_TRUE(shown.find("scanNote")->property("text").toString().contains("once counts"));
  EXPECT_EQ(view(shown).in_hand, other);
  pictures.take(shown, "scanned-twice");
}

TEST(Round, MovesWhatIsScannedAfterABench) {
  ShownWindow shown(With::demo_season, tablet);
  Pictures pictures;
  const auto& standing = shown.session().standing();
  const auto cool = *book::named(standing.registers.places, "Cool bench");
  const auto place = [&](const Code& code) { return shown.session().standing().lot(code)->place; };
  shown.tap("stripRound");
  shown.tap("roundDue");
  const auto stops = view(shown).trays;
  ASSERT_GE(stops.size(), 3U);
  shown.scan(text_of(stops[0].code));
  shown.tap("roundDead-more");
  shown.scan(text_of(cool.code)); // enters the look at the tray before
  EXPECT_EQ(view(shown).counted, 1);
  EXPECT_NE(place(stops[0].code), cool.id);
  ASSERT_NE(shown.find("roundBench"), nullptr);
  pictures.take(shown, "bench");
  shown.scan(text_of(stops[1].code));
  EXPECT_EQ(place(stops[1].code), cool.id);
  pictures.take(shown, "moved");
  shown.tap("roundUndo");
  EXPECT_NE(place(stops[1].code), cool.id);
  shown.tap("roundStay");
  // A tray whose label is spoilt is tapped in the list of those to come.
  shown.tap("roundEnter");
  pictures.take(shown, "to-come");
  shown.tap("toCome-" + text_of(stops[2].code));
  EXPECT_EQ(view(shown).in_hand, stops[2].code);
  EXPECT_NE(place(stops[2].code), cool.id);
  shown.tap("roundEnd");
  EXPECT_EQ(view(shown).moved, 0);
}

TEST(Round, GoesOnInAnotherWindow) {
  ShownWindow shown(With::demo_season, tablet);
  shown.tap("stripRound");
  shown.tap("roundDue");
  const auto tray = view(shown).trays.front().code;
  shown.scan(text_of(tray));
  shown.tap("roundDead-more");
  // As after a stop: another window on the same book, which knows nothing of this one.
  ShownWindow again(With::no_book, tablet);
  ASSERT_TRUE(again.session().openBook(shown.session().path()));
  again.settle();
  again.tap("stripRound");
  EXPECT_EQ(again.find("roundTray")->property("text").toString(), text_of(tray));
  EXPECT_EQ(again.find("roundDead")->property("value").toInt(), 1);
  again.tap("roundEnter");
  EXPECT_EQ(view(again).found, (book::Tapped{0, 0, 1}));
}

TEST(RoundFromPictures, MarksWhatWasSeenAndMovesOnlyAfterALook) {
  ShownWindow shown(With::demo_season, tablet);
  const tests::Scratch folder;
  const auto& standing = shown.session().standing();
  const auto* named = book::named(standing.registers.places, "Cool bench");
  ASSERT_NE(named, nullptr);
  const auto cool = named->id;
  std::vector<Code> trays;
  for (const auto& line : standing.lots)
    if (line.lot.code.kind() == Kind::tray && line.total() > 0 && trays.size() < 4)
      trays.push_back(line.lot.code);
  ASSERT_TRUE(
      tests::label_picture(trays).save(QString::fromStdString(folder.at("bench.png").string())));

  shown.tap("stripRound");
  shown.tap("roundPictures");
  RoundPictures pictures;
  pictures.setProperty("program", QStringLiteral(CONELINE_PROGRAM));
  pictures.set_session(&shown.session());
  const auto wait = [&] { return QTest::qWaitFor([&] { return !pictures.reading(); }, 60'000); };
  pictures.read(QString::fromStdString(folder.at("").string()), "Cool bench", "");
  ASSERT_TRUE(wait());
  EXPECT_TRUE(pictures.fault().contains("bench.png")) << "a picture without a day is named";

  pictures.read(QString::fromStdString(folder.at("").string()), "Cool bench", "19/11/2026");
  ASSERT_TRUE(wait());
  EXPECT_EQ(pictures.fault(), QString());
  ASSERT_EQ(pictures.moves()->size(), 4) << pictures.said().toStdString();
  const auto place = [&](const Code& code) { return shown.session().standing().lot(code)->place; };
  EXPECT_NE(place(trays[0]), cool) << "nothing is moved before a look";
  pictures.want(0, false);
  ASSERT_TRUE(pictures.accept()) << pictures.fault().toStdString();
  int moved = 0;
  for (const auto& tray : trays)
    moved += place(tray) == cool ? 1 : 0;
  EXPECT_EQ(moved, 3);
}

} // namespace
} // namespace coneline::window
