// SPDX-License-Identifier: GPL-3.0-or-later
// Whole tasks at the real window: seven with the keyboard alone, one with the mouse alone, one with
// a hand scanner that types. Each ends with what stands in the book, and with the book proven.
#include "core/store/proof.h"
#include "core/work/round.h"
#include "qml/models/deeds/deed.h"
#include "tests/qml/keyboard.h"

#include <QFile>
#include <QTest>
#include <QWheelEvent>
#include <gtest/gtest.h>

#include <set>

namespace coneline::window {
namespace {

constexpr QSize wide(1280, 800);

using book::State;

QString text_of(const Code& code) {
  return QString::fromStdString(code.text());
}

std::int64_t held(ShownWindow& shown, const Code& code, State state) {
  const auto* line = shown.session().standing().lot(code);
  if (!line)
    return -1;
  const auto found = line->on_hand.find(state);
  return found == line->on_hand.end() ? 0 : found->second;
}

store::Proof proof(ShownWindow& shown) {
  return shown.session().ask([](store::Reading& reading) { return store::prove(reading); }).value();
}

std::set<Code> lots_of(ShownWindow& shown, Kind kind) {
  std::set<Code> codes;
  for (const auto& line : shown.session().standing().lots)
    if (line.lot.code.kind() == kind)
      codes.insert(line.lot.code);
  return codes;
}

/// What is there now and was not there before.
std::vector<Code> new_since(const std::set<Code>& before, const std::set<Code>& now) {
  std::vector<Code> made;
  std::ranges::set_difference(now, before, std::back_inserter(made));
  return made;
}

/// The first thing of a kind to which this can be done.
Code one_that_can(ShownWindow& shown, const char* deed) {
  const auto& standing = shown.session().standing();
  for (const auto& course : standing.cones) {
    const auto fitting = deeds_for({&standing, shown.session().today(), course.line.cone.code});
    if (std::ranges::any_of(fitting, [&](const Deed* one) { return one == deed_named(deed); }))
      return course.line.cone.code;
  }
  throw std::runtime_error("nothing in the demo's season can be done this to");
}

work::RoundView round_of(ShownWindow& shown) {
  return shown.session()
      .ask([](store::Reading& reading) {
        return work::view_round(reading, reading.registers(), reading.rounds().back());
      })
      .value();
}

/// The house or bench with the most trays.
Code fullest_place(ShownWindow& shown) {
  const auto& standing = shown.session().standing();
  const auto trays_in = [&](const book::Place& place) {
    return std::ranges::count_if(standing.lots, [&](const work::LotLine& line) {
      return line.lot.code.kind() == Kind::tray && line.total() > 0 &&
             work::is_within(standing.registers, line.place, place.id);
    });
  };
  return std::ranges::max(standing.registers.places, {}, trays_in).code;
}

QByteArray file_at(const QString& path) {
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
  return file.readAll();
}

QString said_by(ShownWindow& shown, const char* name) {
  auto* item = shown.find(name);
  return item ? item->property("text").toString() : QString();
}

/// What the window says in every item of one name.
QString all_said_by(ShownWindow& shown, const char* name) {
  QStringList said;
  for (auto* item : shown.items())
    if (item->objectName() == QLatin1String(name))
      said << item->property("text").toString();
  return said.join('\n');
}

TEST(ByKeyboard, TheFirstConeInAnEmptyBook) {
  const tests::Scratch scratch;
  ShownWindow shown(With::no_book, wide);
  shown.session().speech()->set_language({});
  Keyboard keys(shown);
  keys.choose("way-cone");
  keys.choose("coneNext"); // a nursery has a name
  EXPECT_TRUE(said_by(shown, "coneFault").contains("no name"));
  keys.write("nursery", "Hill nursery");
  keys.write("path", QString::fromStdString(scratch.at("new.coneline").string()));
  keys.press(Qt::Key_Return);
  EXPECT_TRUE(said_by(shown, "coneStep").startsWith("Step 2 of 4"))
      << said_by(shown, "coneStep").toStdString();
  keys.write("field-name", "Old Sentinel");
  keys.press(Qt::Key_Return); // a plant has a kind
  EXPECT_TRUE(said_by(shown, "coneStep").startsWith("Step 2"));
  keys.write("field-taxon", "Cycas revoluta");
  keys.choose("coneNext");
  keys.choose("The scales are: loose"); // now pollen is asked about
  EXPECT_TRUE(said_by(shown, "coneStep").startsWith("Step 3 of 5"))
      << said_by(shown, "coneStep").toStdString();
  keys.choose("coneNext");
  EXPECT_TRUE(said_by(shown, "coneStep").startsWith("Step 4 of 5"))
      << said_by(shown, "coneStep").toStdString() << said_by(shown, "coneFault").toStdString();
  keys.choose("Has it had pollen?: of a male plant I know");
  keys.choose("coneNext");
  keys.write("field-male", "Blue Knight");
  keys.press(Qt::Key_Return);
  EXPECT_TRUE(all_said_by(shown, "coneTold").contains("pollen of Blue Knight"));
  keys.choose("coneBack");
  keys.go_to_field("field-male");
  EXPECT_EQ(shown.window().activeFocusItem()->property("text"), "Blue Knight") << "asked twice";
  keys.choose("coneNext");
  EXPECT_FALSE(shown.session().is_open()) << "nothing is written before the last step";
  keys.choose("begin");

  ASSERT_TRUE(shown.session().is_open()) << shown.session().fault().toStdString();
  const auto& standing = shown.session().standing();
  ASSERT_EQ(standing.registers.plants.size(), 2U);
  EXPECT_EQ(standing.registers.plants[0].name, "Old Sentinel");
  EXPECT_EQ(standing.registers.title.name, "Hill nursery");
  ASSERT_EQ(standing.pollen.size(), 1U);
  EXPECT_EQ(standing.pollen[0].passes, 1);
  ASSERT_EQ(standing.cones.size(), 1U);
  const auto& cone = standing.cones[0];
  EXPECT_EQ(cone.line.passes.size(), 1U);
  EXPECT_EQ(cone.looks.back().scales, book::Scales::loose);
  EXPECT_EQ(shown.get("chosen").toString(), text_of(cone.line.cone.code));
  // Its page says what comes next and when: the second pass, and the ripe cone.
  const auto next = all_said_by(shown, "comesNext");
  EXPECT_TRUE(next.contains("pass 2")) << next.toStdString();
  EXPECT_TRUE(next.contains("may be ripe")) << next.toStdString();
  EXPECT_EQ(proof(shown).faults, std::vector<std::string>());
}

/// What somebody new does after the first cone, in a book with no tray, place or mix yet.
TEST(ByKeyboard, ATrayIsSownInANewBook) {
  const tests::Scratch scratch;
  ShownWindow shown(With::no_book, wide);
  shown.session().speech()->set_language({});
  Keyboard keys(shown);
  keys.choose("way-cone");
  keys.write("nursery", "Hill nursery");
  keys.write("path", QString::fromStdString(scratch.at("new.coneline").string()));
  keys.press(Qt::Key_Return);
  keys.write("field-taxon", "Cycas revoluta");
  keys.press(Qt::Key_Return);
  keys.choose("The scales are: coming apart");
  keys.choose("coneNext");
  keys.choose("coneNext"); // no pollen that is known
  keys.choose("begin");
  ASSERT_EQ(shown.session().standing().cones.size(), 1U);
  keys.press(Qt::Key_F6);
  keys.choose("deed-harvest");
  keys.write("field-seeds", "60");
  keys.choose("enter");
  const auto batches = lots_of(shown, Kind::batch);
  ASSERT_EQ(batches.size(), 1U) << said_by(shown, "formFault").toStdString();

  keys.look_up(text_of(*batches.begin()));
  keys.press(Qt::Key_F6);
  keys.choose("deed-sow");
  keys.write("field-seeds", "50");
  EXPECT_NE(shown.find("first-mix"), nullptr) << "none is no mix to choose";
  keys.choose("first-pot"); // there is none to choose from
  keys.press(Qt::Key_Escape);
  EXPECT_EQ(shown.get("deed").toString(), "sow") << "Escape goes back one form, not both";
  keys.go_to_field("field-seeds");
  EXPECT_EQ(shown.window().activeFocusItem()->property("text"), "50") << "thrown away";
  keys.choose("first-pot");
  keys.write("field-name", "Seed tray");
  keys.write("field-litres", "5");
  keys.choose("Shape: rectangular");
  keys.write("field-length", "400");
  keys.write("field-width", "300");
  keys.write("field-cells", "40");
  keys.choose("enter");
  keys.go_to_field("field-seeds");
  EXPECT_EQ(shown.window().activeFocusItem()->property("text"), "50") << "asked twice";
  keys.choose("enter");
  std::int64_t sown = 0;
  for (const auto& tray : lots_of(shown, Kind::tray))
    sown += held(shown, tray, State::sown);
  EXPECT_EQ(sown, 50) << said_by(shown, "formFault").toStdString();
  EXPECT_EQ(proof(shown).faults, std::vector<std::string>());
}

TEST(ByKeyboard, AHarvestAndItsSorting) {
  ShownWindow shown(With::demo_season, wide);
  Keyboard keys(shown);
  const auto before = proof(shown);
  const auto batches = lots_of(shown, Kind::batch);
  keys.look_up(text_of(one_that_can(shown, "harvest")));
  keys.press(Qt::Key_F6);
  keys.choose("deed-harvest");
  keys.write("field-seeds", "120");
  keys.choose("enter");
  const auto made = new_since(batches, lots_of(shown, Kind::batch));
  ASSERT_EQ(made.size(), 1U) << said_by(shown, "formFault").toStdString();
  const auto batch = made.front();
  EXPECT_EQ(held(shown, batch, State::unsorted), 120);

  keys.look_up(text_of(batch));
  keys.press(Qt::Key_F6);
  keys.choose("deed-table");
  keys.choose("doing-float");
  keys.write("first", "90");
  keys.write("second", "30");
  keys.choose("enterTable");
  EXPECT_EQ(held(shown, batch, State::judged_filled), 90)
      << said_by(shown, "tableFault").toStdString();
  EXPECT_EQ(held(shown, batch, State::judged_empty), 30);
  keys.choose("doing-sinkers");
  keys.write("first", "9");
  keys.write("second", "1");
  keys.choose("enterTable");
  EXPECT_EQ(held(shown, batch, State::judged_filled), 80)
      << said_by(shown, "tableFault").toStdString();
  const auto after = proof(shown);
  EXPECT_EQ(after.faults, std::vector<std::string>());
  EXPECT_EQ(after.seeds_in, before.seeds_in + 120);
  EXPECT_EQ(after.ended, before.ended + 10);
}

TEST(ByKeyboard, SowingAndLabels) {
  const tests::Scratch scratch;
  ShownWindow shown(With::demo_season, wide);
  Keyboard keys(shown);
  const auto batch = shown.lot_with(Kind::batch, State::judged_filled).lot.code;
  const auto filled = held(shown, batch, State::judged_filled);
  ASSERT_GT(filled, 12);
  const auto trays = lots_of(shown, Kind::tray);
  keys.look_up(text_of(batch));
  keys.press(Qt::Key_F6);
  keys.choose("deed-sow");
  keys.write("field-seeds", "12");
  keys.write("field-trays", "2");
  keys.choose("enter");
  const auto made = new_since(trays, lots_of(shown, Kind::tray));
  ASSERT_EQ(made.size(), 2U) << said_by(shown, "formFault").toStdString();
  EXPECT_EQ(held(shown, made[0], State::sown) + held(shown, made[1], State::sown), 12);
  EXPECT_EQ(held(shown, batch, State::judged_filled), filled - 12);

  keys.look_up(text_of(made[1])); // comes up to be counted
  keys.press(Qt::Key_Escape);
  keys.press(Qt::Key_F6);
  keys.choose("deed-labels");
  keys.go_to(text_of(made[1])); // its row, chosen already
  keys.press(Qt::Key_Down);
  keys.press(Qt::Key_Return); // one label more
  keys.press(Qt::Key_End);    // past the list, which is long
  const auto path = QString::fromStdString(scratch.at("labels.pdf").string());
  keys.write("labelPath", path);
  keys.go_to("labelSave");
  EXPECT_TRUE(said_by(shown, "labelSave").contains("2"))
      << said_by(shown, "labelSave").toStdString();
  keys.press(Qt::Key_Return);
  EXPECT_TRUE(file_at(path).startsWith("%PDF"));
  EXPECT_TRUE(said_by(shown, "labelTold").contains(path));
  EXPECT_EQ(proof(shown).faults, std::vector<std::string>());
}

TEST(ByKeyboard, ARound) {
  ShownWindow shown(With::demo_season, wide);
  Keyboard keys(shown);
  keys.choose("stripRound");
  keys.choose("roundDue");
  const auto stops = round_of(shown).trays;
  ASSERT_GE(stops.size(), 3U);
  const auto first = std::ranges::find_if(
      stops, [&](const work::RoundTray& tray) { return held(shown, tray.code, State::sown) > 3; });
  ASSERT_NE(first, stops.end());
  const auto sown = held(shown, first->code, State::sown);
  keys.look_up(text_of(first->code)); // its label is typed
  ASSERT_EQ(round_of(shown).in_hand, first->code);
  keys.press(Qt::Key_F2);
  keys.press(Qt::Key_F2);
  keys.press(Qt::Key_F4);
  keys.press(Qt::Key_F5);
  EXPECT_EQ(held(shown, first->code, State::sown), sown - 3);
  // The next is taken from the list, as where a label is spoilt.
  keys.go_to("roundToCome");
  keys.press(Qt::Key_Return);
  const auto second = round_of(shown).in_hand;
  ASSERT_TRUE(second);
  keys.write("roundRoots", "1");
  keys.choose("roundEnter");
  keys.choose("roundUndo");
  EXPECT_EQ(round_of(shown).counted, 1);
  keys.choose("roundEnter");
  keys.choose("roundEnd");
  const auto end = round_of(shown);
  EXPECT_TRUE(end.round.ended);
  EXPECT_EQ(end.counted, 2);
  EXPECT_EQ(end.found, (book::Tapped{3, 0, 1}));
  keys.choose("roundDone");
  EXPECT_EQ(shown.get("page").toString(), "today");
  EXPECT_EQ(proof(shown).faults, std::vector<std::string>());
}

TEST(ByKeyboard, AGerminationReport) {
  ShownWindow shown(With::demo_season, wide);
  Keyboard keys(shown);
  const auto entries = proof(shown).entries;
  keys.choose("Results");
  keys.press(Qt::Key_F6);
  keys.choose("results-crosses");
  keys.choose("taken together by: season");
  keys.choose("taken together by: cross");
  keys.press(Qt::Key_Down);
  keys.press(Qt::Key_Down);
  keys.press(Qt::Key_Down); // the first of the crosses
  keys.press(Qt::Key_Down);
  keys.press(Qt::Key_Return);
  for (const auto& [form, begins] : {std::pair("PDF", "%PDF"), {"CSV", "level,"}}) {
    keys.choose(QStringLiteral("save-") + form);
    EXPECT_TRUE(file_at(said_by(shown, "saved")).startsWith(begins)) << form;
  }
  // Every tray of the book is in the file.
  const auto csv = file_at(said_by(shown, "saved"));
  int trays = 0;
  for (const auto& code : lots_of(shown, Kind::tray))
    trays += csv.contains(text_of(code).toUtf8()) ? 1 : 0;
  EXPECT_GT(trays, 20);
  EXPECT_EQ(proof(shown).entries, entries) << "a report enters nothing";
}

TEST(ByKeyboard, ASeasonPlanWithATargetThatIsKept) {
  ShownWindow shown(With::demo_season, wide);
  Keyboard keys(shown);
  keys.choose("Season plan");
  keys.press(Qt::Key_F6);
  keys.choose("season-targets");
  shown.settle();
  keys.choose("targetCross"); // opens in place
  keys.press(Qt::Key_Down);
  keys.press(Qt::Key_Down);
  keys.press(Qt::Key_Return);
  const auto cross = shown.find("targetCross")->property("chosen").toString();
  ASSERT_FALSE(cross.isEmpty());
  keys.go_to("targetPot");
  keys.press(Qt::Key_Down);
  keys.press(Qt::Key_Return);
  const auto pot = shown.find("targetPot")->property("chosen").toString();
  ASSERT_FALSE(pot.isEmpty());
  keys.write("targetPlants", "40");
  keys.write("targetBy", "2028-10");
  keys.choose("targetEnter");
  const auto targets = shown.session()
                           .ask([](store::Reading& reading) { return reading.plan_records(); })
                           .value()
                           .targets;
  ASSERT_EQ(targets.size(), 1U) << said_by(shown, "targetFault").toStdString();
  const auto& registers = shown.session().standing().registers;
  EXPECT_EQ(QString::fromStdString(targets[0].cross), cross);
  EXPECT_EQ(QString::fromStdString(registers.pot(targets[0].pot).name), pot);
  EXPECT_EQ(targets[0].plants, 40);
  EXPECT_EQ(targets[0].by, Date::parse("2028-10-01").value());
}

/// The mouse: presses what is in sight; what is not is scrolled to with the wheel.
class Mouse {
 public:
  explicit Mouse(ShownWindow& shown) : shown_(shown) {}

  void click(const QString& name) {
    auto* item = found(name);
    for (int turns = 0; !in_sight(item) && turns < 200; ++turns)
      turn(item, item->mapToScene({0, 0}).y() > shown_.window().height() / 2.0 ? -120 : 120);
    ASSERT_TRUE(in_sight(item)) << name.toStdString();
    shown_.tap(item);
  }
  /// A row of a list, turned to with the wheel.
  void click_in(const QString& list, const QString& code) {
    for (int turns = 0; !there(code) && turns < 200; ++turns)
      turn(there(list)->childItems().constFirst(), -120);
    click(code);
  }

 private:
  QQuickItem* found(const QString& name) {
    if (auto* item = there(name))
      return item;
    throw std::runtime_error("nothing is called " + name.toStdString());
  }
  QQuickItem* there(const QString& name) {
    for (auto* item : shown_.items())
      if (item->objectName() == name || item->property("code").toString() == name ||
          (item->inherits("coneline::window::Tap") && item->property("word").toString() == name))
        return item;
    return nullptr;
  }
  static QRectF seen(QQuickItem* item) {
    auto rect = item->mapRectToScene({0, 0, item->width(), item->height()});
    for (auto* above = item->parentItem(); above; above = above->parentItem())
      if (above->clip())
        rect &= above->mapRectToScene({0, 0, above->width(), above->height()});
    return rect;
  }
  static bool in_sight(QQuickItem* item) {
    return seen(item).contains(item->mapToScene({item->width() / 2, item->height() / 2}));
  }
  void turn(QQuickItem* item, int by) {
    auto* page = item->parentItem();
    while (page && !page->inherits("QQuickFlickable"))
      page = page->parentItem();
    ASSERT_NE(page, nullptr);
    const auto at = page->mapToScene({page->width() / 2, page->height() / 2});
    QWheelEvent event(at, shown_.window().mapToGlobal(at), {0, by}, {0, by}, Qt::NoButton,
                      Qt::NoModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&shown_.window(), &event);
    shown_.settle();
  }

  ShownWindow& shown_;
};

TEST(ByMouse, SowingATrayAndLookingAtIt) {
  ShownWindow shown(With::demo_season, wide);
  Mouse mouse(shown);
  const auto batch = shown.lot_with(Kind::batch, State::judged_filled).lot.code;
  const auto filled = held(shown, batch, State::judged_filled);
  const auto trays = lots_of(shown, Kind::tray);
  mouse.click("Seed");
  mouse.click_in("stationList", text_of(batch));
  ASSERT_EQ(shown.get("chosen").toString(), text_of(batch));
  mouse.click("deed-sow");
  mouse.click("enter"); // as it was filled in
  const auto made = new_since(trays, lots_of(shown, Kind::tray));
  ASSERT_FALSE(made.empty());
  EXPECT_EQ(held(shown, batch, State::judged_filled), 0);
  std::int64_t sown = 0;
  for (const auto& tray : made)
    sown += held(shown, tray, State::sown);
  EXPECT_EQ(sown, filled);

  mouse.click("Trays");
  mouse.click_in("stationList", text_of(made.front()));
  const auto in_tray = held(shown, made.front(), State::sown);
  mouse.click("deed-inspect");
  mouse.click("roots-more");
  mouse.click("roots-more");
  mouse.click("enterLook");
  EXPECT_EQ(held(shown, made.front(), State::root), 2);
  EXPECT_EQ(held(shown, made.front(), State::sown), in_tray - 2);
  mouse.click("undo");
  EXPECT_EQ(held(shown, made.front(), State::root), 0);
  EXPECT_EQ(proof(shown).faults, std::vector<std::string>());
}

TEST(ByScanner, ABenchIsFilledWithTraysOfARound) {
  ShownWindow shown(With::demo_season, QSize(800, 1280));
  Keyboard keys(shown);
  keys.choose("stripRound");
  keys.choose("roundAt-" + text_of(fullest_place(shown)));
  const auto stops = round_of(shown).trays;
  ASSERT_GE(stops.size(), 4U);
  const auto& registers = shown.session().standing().registers;
  const auto cool = *book::named(registers.places, "Cool bench");
  const auto place = [&](const Code& code) { return shown.session().standing().lot(code)->place; };
  // From here on nothing but labels.
  shown.scan(text_of(stops[0].code));
  EXPECT_EQ(round_of(shown).in_hand, stops[0].code);
  shown.scan(text_of(cool.code));
  for (int i : {1, 2, 3}) {
    shown.scan(text_of(stops[static_cast<std::size_t>(i)].code));
    EXPECT_EQ(place(stops[static_cast<std::size_t>(i)].code), cool.id);
  }
  auto spoilt = text_of(stops[1].code);
  spoilt[spoilt.size() - 1] = spoilt.back() == 'A' ? 'B' : 'A';
  shown.scan(spoilt);
  EXPECT_EQ(round_of(shown).in_hand, stops[3].code) << "a spoilt label changes nothing";
  const auto view = round_of(shown);
  EXPECT_EQ(view.seen, 4);
  EXPECT_EQ(view.moved, 3);
  EXPECT_TRUE(view.round.tapped.none()) << "a letter or digit of a label became a count";
  EXPECT_EQ(proof(shown).faults, std::vector<std::string>());
}

} // namespace
} // namespace coneline::window
