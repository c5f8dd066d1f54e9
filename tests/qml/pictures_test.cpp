// SPDX-License-Identifier: GPL-3.0-or-later
// A picture of every page, wide and tall, for people to look at. The test itself sees that none is
// blank, that no text is cut off, and that texts stay within the window's width.
//
// The pictures go into the folder named by CONELINE_PICTURES, or that of the build.
#include "core/report/harvest_view.h"
#include "core/work/harvest.h"
#include "core/work/line_back.h"
#include "core/work/temperature.h"
#include "tests/core/store/first_cone.h"
#include "tests/qml/pages.h"
#include "tests/qml/sound_page.h"

#include <QAccessible>
#include <QTest>
#include <gtest/gtest.h>

#include <set>

namespace coneline::window {
namespace {

QString code_of(ShownWindow& shown, Kind kind, book::State state) {
  return QString::fromStdString(shown.lot_with(kind, state).lot.code.text());
}

/// A month of readings of the heated bench, every two hours, with a gap.
void measure(ShownWindow& shown) {
  const auto& places = shown.session().standing().registers.places;
  const auto bench = std::ranges::find(places, "Heated bench", &book::Place::name);
  ASSERT_NE(bench, places.end());
  std::vector<book::Temperature> readings;
  for (int step = 0; step < 30 * 12; ++step)
    if (step < 130 || step > 170)
      readings.push_back({bench->id,
                          {Date::of(2026, 10, 1)->plus_days(step / 12), step % 12 * 7200},
                          24 + (step % 12 < 6 ? step % 12 : 12 - step % 12) * 0.8});
  ASSERT_TRUE(shown.session().act([&](store::Book& book) {
    return book
        .write([&](store::Writing& writing) {
          return work::take_in_temperature(writing, bench->id, readings);
        })
        .map([](const work::TakenIn&) { return work::Done{}; });
  }));
}

/// Offers of every part that the plan needs, a good in the shed, and two targets.
void offer(ShownWindow& shown) {
  const auto& registers = shown.session().standing().registers;
  ASSERT_TRUE(shown.session().keep(std::function<Result<void>(
                                       store::Writing&)>([&](store::Writing& writing)
                                                             -> Result<void> {
    std::int64_t cents = 1850;
    for (const auto& mix : registers.mixes)
      for (const auto& part : mix.parts) {
        for (const auto& offer :
             {book::Offer{
                  {}, part.name, "Invented Mill", book::Form::bag, 100, 1, cents, 0, 3, 1, 14.0},
              book::Offer{{},
                          part.name,
                          "Invented Quarry",
                          book::Form::bulk,
                          1500,
                          1,
                          cents * 9,
                          6500,
                          8,
                          1,
                          {}}})
          if (auto put = writing.put(offer); !put)
            return refuse(put.error());
        cents += 90;
      }
    const book::Good peat{{}, "peat", 60, shown.session().today(), 1200.0, 12, 0};
    if (auto put = writing.put(peat); !put)
      return refuse(put.error());
    for (const auto& route : registers.routes)
      for (const auto& [code, origin] : work::origin_names(writing, registers))
        if (origin.taxon_id == route.taxon && route.steps.size() > 1) {
          const book::Target target{
              {}, origin.name, route.taxon, route.steps[1].pot, 60, Date::of(2028, 9, 1).value(),
              0.9};
          if (auto put = writing.put(target); !put)
            return refuse(put.error());
          break;
        }
    return {};
  })));
}

void station(ShownWindow& shown, const char* page, const QString& chosen = {},
             const char* deed = "") {
  shown.set("helping", false);
  shown.set("deed", "");
  shown.set("inHand", false);
  shown.set("labelling", false);
  shown.set("page", page);
  shown.set("chosen", chosen);
  shown.set("deed", deed);
}

/// A harvest of 500 seeds on the table, at one of three moments.
void harvest(ShownWindow& s, int moment) {
  const auto today = s.session().today();
  for (const auto& course : s.session().standing().cones)
    if (const auto& cone = course.line; cone.harvested_on || !cone.passes.empty()) {
      const auto made = s.session().act([&](store::Book& book) {
        return work::harvest(book, {cone.cone.code, Count::sure(500), {today, {}, {}}, {}});
      });
      ASSERT_TRUE(made);
      const auto batch = made->made.front();
      const auto enter = [&](work::TableCount::What what, int first, int second) {
        ASSERT_TRUE(s.session().act([&](store::Book& book) {
          return work::enter(book, batch, {what, Count::sure(first), Count::sure(second)},
                             {today, {}, {}});
        }));
      };
      using What = work::TableCount::What;
      if (moment > 1)
        enter(What::lost, 12, 0);
      if (moment > 2) {
        enter(What::floated, 350, 138);
        enter(What::sinkers, 9, 1);
        ASSERT_TRUE(s.session().act([&](store::Book& book) {
          return book.write([&](store::Writing& writing) -> Result<work::Done> {
            static_cast<void>(writing.put(book::Figure{book::figure::plant_worth, 18}));
            static_cast<void>(writing.put(book::Figure{book::figure::seed_cost, 0.9}));
            return work::Done{};
          });
        }));
      }
      station(s, "seed", QString::fromStdString(batch.text()));
      s.set("inHand", true);
      s.settle();
      if (moment == 2) {
        QMetaObject::invokeMethod(s.find("first"), "counted", Q_ARG(int, 340));
        QMetaObject::invokeMethod(s.find("second"), "counted", Q_ARG(int, 100));
      }
      if (moment == 3) {
        s.tap("doing-floaters");
        for (int i = 0; i < 12; ++i)
          s.tap("second-more");
      }
      return;
    }
}

std::vector<Page> pages() {
  using book::State;
  return {
      {"today", [](ShownWindow& s) { station(s, "today"); }},
      {"pollen", [](ShownWindow& s) { station(s, "pollen"); }},
      {"pollen-plant",
       [](ShownWindow& s) {
         station(
             s, "pollen",
             QString::fromStdString(s.session().standing().registers.plants.front().code.text()));
       }},
      {"cones",
       [](ShownWindow& s) {
         station(s, "cones",
                 QString::fromStdString(s.session().standing().cones.back().line.cone.code.text()));
       }},
      {"crosses", [](ShownWindow& s) { station(s, "crosses"); }},
      {"crosses-every-female",
       [](ShownWindow& s) {
         station(s, "crosses");
         s.tap("everyFemale");
         s.tap("anyRoom");
       }},
      {"cones-pollinate",
       [](ShownWindow& s) {
         for (const auto& cone : s.session().standing().cones)
           if (!cone.line.harvested_on && !cone.closed)
             return station(s, "cones", QString::fromStdString(cone.line.cone.code.text()),
                            "pollinate");
         station(
             s, "cones",
             QString::fromStdString(s.session().standing().registers.plants.front().code.text()),
             "pollinate");
       }},
      {"cones-scales",
       [](ShownWindow& s) {
         station(s, "cones",
                 QString::fromStdString(s.session().standing().cones.back().line.cone.code.text()),
                 "check scales");
       }},
      {"pollen-lot",
       [](ShownWindow& s) {
         station(s, "pollen",
                 QString::fromStdString(
                     s.session().standing().registers.pollen_lots.front().code.text()));
       }},
      {"pollen-test",
       [](ShownWindow& s) {
         station(s, "pollen",
                 QString::fromStdString(
                     s.session().standing().registers.pollen_lots.front().code.text()),
                 "test pollen");
       }},
      {"pollen-male-cone",
       [](ShownWindow& s) {
         for (const auto& plant : s.session().standing().registers.plants)
           if (plant.sex == book::Sex::male)
             return station(s, "pollen", QString::fromStdString(plant.code.text()),
                            "watch male cone");
       }},
      {"pollen-plant-right",
       [](ShownWindow& s) {
         station(
             s, "pollen",
             QString::fromStdString(s.session().standing().registers.plants.front().code.text()),
             "correct plant");
       }},
      {"pollen-store", [](ShownWindow& s) { station(s, "pollen", "", "pollen store"); }},
      {"today-by-day",
       [](ShownWindow& s) {
         station(s, "today");
         s.tap("byDay");
         s.tap("calendar");
       }},
      {"today-later",
       [](ShownWindow& s) {
         station(s, "today", QString::fromStdString(s.session().standing().due.front().code.text()),
                 "later");
       }},
      {"seed", [](ShownWindow& s) { station(s, "seed"); }},
      {"seed-batch",
       [](ShownWindow& s) { station(s, "seed", code_of(s, Kind::batch, State::judged_filled)); }},
      {"table-begun", [](ShownWindow& s) { harvest(s, 1); }},
      {"table-floating", [](ShownWindow& s) { harvest(s, 2); }},
      {"table-cut", [](ShownWindow& s) { harvest(s, 3); }},
      {"seed-sort",
       [](ShownWindow& s) {
         station(s, "seed", code_of(s, Kind::batch, State::judged_filled), "sort");
       }},
      {"seed-sow",
       [](ShownWindow& s) {
         station(s, "seed", code_of(s, Kind::batch, State::judged_filled), "sow");
       }},
      {"trays", [](ShownWindow& s) { station(s, "trays"); }},
      {"trays-tray",
       [](ShownWindow& s) { station(s, "trays", code_of(s, Kind::tray, State::sown)); }},
      {"trays-inspect",
       [](ShownWindow& s) {
         station(s, "trays", code_of(s, Kind::tray, State::sown));
         s.set("inHand", true);
       }},
      {"trays-labels",
       [](ShownWindow& s) {
         station(s, "trays");
         s.set("labelling", true);
       }},
      {"pots", [](ShownWindow& s) { station(s, "pots"); }},
      {"pots-lot",
       [](ShownWindow& s) { station(s, "pots", code_of(s, Kind::pot_group, State::plant)); }},
      {"pots-papers",
       [](ShownWindow& s) {
         station(s, "pots", code_of(s, Kind::pot_group, State::plant));
         s.settle();
         QMetaObject::invokeMethod(s.find("papers"), "clicked");
       }},
      {"pots-amend-pot", [](ShownWindow& s) { station(s, "pots", "", "amend pot"); }},
      {"pots-sell",
       [](ShownWindow& s) {
         station(s, "pots", code_of(s, Kind::pot_group, State::plant), "sell");
       }},
      {"labels-lot",
       [](ShownWindow& s) {
         station(s, "trays", code_of(s, Kind::tray, State::sown));
         s.tap("deed-labels");
       }},
      {"found",
       [](ShownWindow& s) {
         station(s, "today");
         s.find("readyField")->forceActiveFocus();
         s.scan("blue");
       }},
      {"out", [](ShownWindow& s) { station(s, "out"); }},
      {"round-pictures",
       [](ShownWindow& s) {
         station(s, "round");
         s.tap("roundPictures");
       }},
      {"results", [](ShownWindow& s) { station(s, "results"); }},
      {"results-why",
       [](ShownWindow& s) {
         station(s, "results");
         s.tap("results-why");
       }},
      {"results-empty",
       [](ShownWindow& s) {
         station(s, "results");
         s.tap("results-empty");
       }},
      {"results-pollen",
       [](ShownWindow& s) {
         station(s, "results");
         s.tap("results-pollen");
       }},
      {"results-temperature",
       [](ShownWindow& s) {
         station(s, "results");
         measure(s);
         s.tap("results-temperature");
       }},
      {"season", [](ShownWindow& s) { station(s, "season"); }},
      {"season-months",
       [](ShownWindow& s) {
         station(s, "season");
         s.tap("ahead-0");
         s.settle();
         s.tap("month-0");
       }},
      {"season-order",
       [](ShownWindow& s) {
         offer(s);
         station(s, "season");
         s.tap("season-order");
       }},
      {"season-benches",
       [](ShownWindow& s) {
         station(s, "season");
         s.tap("season-benches");
         s.settle();
         s.tap("place-0");
       }},
      {"season-otherwise",
       [](ShownWindow& s) {
         station(s, "season");
         s.tap("season-otherwise");
         s.tap("suppose-cones");
       }},
      {"season-targets",
       [](ShownWindow& s) {
         station(s, "season");
         s.tap("season-targets");
       }},
      {"look", [](ShownWindow& s) { station(s, "look"); }},
      {"help",
       [](ShownWindow& s) {
         station(s, "trays", code_of(s, Kind::tray, State::sown), "move");
         s.press(Qt::Key_F1);
       }},
      {"book", [](ShownWindow& s) { station(s, "book"); }},
      {"book-table",
       [](ShownWindow& s) {
         station(s, "book");
         s.tap("book-table");
         s.find("tableFile")->setProperty("path", QStringLiteral(CONELINE_OLD_TABLE));
         s.tap("tableRead");
         s.settle();
       }},
  };
}

} // namespace

std::vector<Page> every_page() {
  auto all = pages();
  const auto wanted = qEnvironmentVariable("CONELINE_PAGES");
  if (!wanted.isEmpty())
    std::erase_if(all, [names = wanted.split(',')](const Page& page) {
      return !names.contains(QLatin1String(page.name));
    });
  return all;
}

QDir pictures_folder() {
  const auto set = qEnvironmentVariable("CONELINE_PICTURES");
  QDir folder(set.isEmpty() ? QStringLiteral(CONELINE_PICTURES_FOLDER) : set);
  folder.mkpath(QStringLiteral("."));
  return folder;
}

void is_not_blank(const QImage& picture) {
  std::set<QRgb> colours;
  for (int y = 0; y < picture.height(); y += 3)
    for (int x = 0; x < picture.width(); x += 3)
      colours.insert(picture.pixel(x, y));
  EXPECT_GT(colours.size(), 16U);
}

namespace {

void take(ShownWindow& shown, const std::string& name) {
  SCOPED_TRACE(name);
  shown.settle();
  const auto picture = shown.window().grabWindow();
  is_not_blank(picture);
  no_text_is_cut(shown);
  EXPECT_TRUE(picture.save(pictures_folder().filePath(QString::fromStdString(name) + ".png")));
}

void all_pages(const char* shape, QSize size) {
  ShownWindow shown(With::demo_season, size);
  shown.session().speech()->set_language({});
  for (const auto& page : pages()) {
    page.go(shown);
    take(shown, std::string(page.name) + "-" + shape);
  }
}

TEST(Pictures, OfEveryPageWide) {
  all_pages("wide", {1280, 800});
}

TEST(Pictures, OfEveryPageTall) {
  all_pages("tall", {800, 1280});
}

TEST(Pictures, OfTheStart) {
  for (const auto& [shape, size] :
       {std::pair("wide", QSize(1280, 800)), {"tall", QSize(800, 1280)}}) {
    ShownWindow shown(With::no_book, size);
    take(shown, std::string("start-") + shape);
    shown.tap("way-cone");
    take(shown, std::string("start-cone-") + shape);
  }
}

/// A book with one harvested cone: every station and view with next to nothing in it.
TEST(Pictures, OfABookThatBegins) {
  const tests::Scratch scratch;
  const auto path = scratch.at("begun.coneline");
  tests::FirstCone first;
  { tests::make_first_cone(path, first); }
  ShownWindow shown(With::no_book, {1280, 800});
  shown.session().speech()->set_language({});
  ASSERT_TRUE(shown.session().openBook(QString::fromStdString(path.string())));
  for (const auto* page : {"today", "pollen", "cones", "seed", "trays", "pots", "out", "crosses",
                           "round", "results", "season"}) {
    station(shown, page);
    take(shown, std::string("begun-") + page);
  }
  for (const auto* view :
       {"results-why", "results-empty", "results-pollen", "results-temperature", "season-order",
        "season-benches", "season-targets", "season-otherwise"}) {
    station(shown, QByteArray(view).split('-').front().constData());
    shown.tap(view);
    take(shown, std::string("begun-") + view);
  }
}

TEST(Pictures, OfTheOtherLooks) {
  ShownWindow shown(With::demo_season, {1280, 800});
  shown.session().speech()->set_language({});
  for (const auto* look : {"night", "sun"}) {
    shown.session().set_look(look);
    station(shown, "trays", code_of(shown, Kind::tray, book::State::root));
    take(shown, std::string("trays-tray-") + look);
    station(shown, "results");
    take(shown, std::string("results-") + look);
    station(shown, "season");
    take(shown, std::string("season-") + look);
  }
}

/// Its name, and what a screen reader says of it: rows are made anew as a list scrolls.
QString known_as(QQuickItem* item) {
  const auto* spoken = QAccessible::queryAccessibleInterface(item);
  return item->objectName() + QStringLiteral(" '") +
         (spoken ? spoken->text(QAccessible::Name) : QString()) + QStringLiteral("'");
}

TEST(Pictures, NoControlOfAPageIsOutOfReachOfTab) {
  QAccessible::setActive(true);
  ShownWindow shown(With::demo_season, {1280, 800});
  for (const auto& page : every_page()) {
    SCOPED_TRACE(page.name);
    page.go(shown);
    shown.settle();
    std::set<QString> wanted;
    for (auto* item : shown.items())
      if (item->activeFocusOnTab() && item->isEnabled())
        wanted.insert(known_as(item));
    EXPECT_GT(wanted.size(), 10U) << "the line alone has more";
    constexpr int most = 1500; // a list is passed row by row
    for (int i = 0; i < most && !wanted.empty(); ++i) {
      QTest::keyClick(&shown.window(), Qt::Key_Tab);
      QTest::qWait(1); // what the keyboard comes to is scrolled into view
      if (auto* held = shown.window().activeFocusItem())
        wanted.erase(known_as(held));
    }
    for (const auto& name : wanted)
      ADD_FAILURE() << name.toStdString() << " is not reached";
  }
}

} // namespace
} // namespace coneline::window
