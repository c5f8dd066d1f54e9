// SPDX-License-Identifier: GPL-3.0-or-later
// Long work at the real window: a book copied and moved, a logger's file taken in, and all of it
// stopped, while the window stays alive and whatever page is looked at.
#include "core/store/proof.h"
#include "qml/models/beginning.h"
#include "qml/models/book_copies.h"
#include "qml/models/book_file.h"
#include "qml/models/temperature_log.h"
#include "tests/qml/held.h"
#include "tests/qml/shown_window.h"
#include "tests/qml/sound_page.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <optional>
#include <stdexcept>
#include <thread>

namespace coneline::window {
namespace {

constexpr QSize wide(1280, 800);
constexpr int moment = 60; // ms

Result<void> enter_taxon(Session& session, const char* name) {
  return session.keep(std::function([name](store::Writing& writing) -> Result<void> {
    return writing.put(book::Taxon{{}, name, {}, {}, {}, {}, {}, {}}).map([](book::TaxonId) {});
  }));
}

/// The taxa of a book that is proven.
std::size_t taxa(const QString& path) {
  auto book = store::Book::open(Session::path_of(path), store::Access::read);
  if (!book)
    return 0;
  EXPECT_TRUE(store::prove(*book)->holds());
  return book->read([](store::Reading& reading) { return reading.registers().taxa.size(); })
      .value();
}

class AsideFromTheWindow : public testing::Test {
 protected:
  AsideFromTheWindow() { session.speech()->set_language("en"); }

  template <class Model>
  std::unique_ptr<Model> model() {
    auto made = std::make_unique<Model>();
    made->setProperty("session", QVariant::fromValue(&session));
    return made;
  }
  /// Letters come in and the bar says what is underway; it can be stopped there.
  void is_alive(const char* underway) {
    QTest::qWait(moment);
    EXPECT_EQ(session.underway(), underway);
    ASSERT_NE(shown.find("lastTold"), nullptr);
    EXPECT_EQ(shown.find("lastTold")->property("text"), underway);
    ASSERT_NE(shown.find("stopLong"), nullptr);
    shown.type("zam");
    EXPECT_EQ(shown.find("readyField")->property("text"), "zam") << "typed meanwhile";
  }
  [[nodiscard]] std::size_t lots() const { return session.standing().lots.size(); }

  ShownWindow shown{With::demo_season, wide};
  Session& session = shown.session();
  QTemporaryDir folder;
  QString old_path = session.path();
  QString to = folder.filePath("other.coneline");
};

TEST_F(AsideFromTheWindow, ABookIsCopiedWhileEntriesGoOn) {
  auto file = model<BookFile>();
  const auto before = taxa(old_path);
  {
    const Held held;
    file->copyTo(to);
    is_alive("The book is being copied …");
    EXPECT_FALSE(QFile::exists(to));
    EXPECT_TRUE(enter_taxon(session, "Invented zamia"));
    shown.window().setProperty("page", "look"); // and the page is left
    file.reset();
  }
  shown.settle();
  EXPECT_EQ(session.fault(), "");
  EXPECT_EQ(session.path(), old_path);
  EXPECT_EQ(taxa(to), before + 1) << "entered before it was copied";
  EXPECT_EQ(taxa(old_path), before + 1);
  shown.tap("bookPage");
  ASSERT_NE(shown.find("bookTold"), nullptr) << "who comes back is told";
  EXPECT_EQ(shown.find("bookTold")->property("text"), "A whole copy stands at " + to + ".");
}

TEST_F(AsideFromTheWindow, NothingIsEnteredWhileABookIsMoved) {
  auto file = model<BookFile>();
  const auto shows = lots();
  {
    const Held held;
    file->moveTo(to);
    is_alive("The book is being moved …");
    const auto entered = enter_taxon(session, "Invented zamia");
    ASSERT_FALSE(entered);
    EXPECT_EQ(entered.error().text(), "Wait until this is done: The book is being moved …");
    EXPECT_EQ(session.path(), old_path) << "looked at meanwhile";
    EXPECT_EQ(lots(), shows);
    file.reset();
  }
  shown.settle();
  EXPECT_EQ(session.fault(), "");
  EXPECT_EQ(session.path(), to) << "the moved book is the open one";
  EXPECT_EQ(session.outcome(), "The book now stands at " + to + ".");
  EXPECT_FALSE(QFile::exists(old_path));
  EXPECT_EQ(lots(), shows);
  EXPECT_TRUE(enter_taxon(session, "Invented zamia"));
  session.close();
  EXPECT_FALSE(QFile::exists(to + "-wal")) << "nobody has it open any more";
}

TEST_F(AsideFromTheWindow, AMoveThatFailsIsKnownWhereverOneIs) {
  auto other = store::Book::open(Session::path_of(old_path), store::Access::read);
  ASSERT_TRUE(other->read([](store::Reading& reading) { return reading.balances().size(); }));
  auto file = model<BookFile>();
  file->moveTo(to);
  file.reset();
  shown.settle();
  EXPECT_TRUE(session.fault().contains("open in another program")) << session.fault().toStdString();
  EXPECT_EQ(session.outcome(), "");
  EXPECT_EQ(session.path(), old_path);
  EXPECT_TRUE(enter_taxon(session, "Invented zamia"));
}

TEST_F(AsideFromTheWindow, WhatIsStoppedLeavesTheBookWhereItWas) {
  auto file = model<BookFile>();
  for (const bool moved : {false, true}) {
    {
      const Held held;
      moved ? file->moveTo(to) : file->copyTo(to);
      QTest::qWait(moment);
      ASSERT_TRUE(QMetaObject::invokeMethod(shown.find("stopLong"), "clicked"));
      EXPECT_EQ(shown.find("stopLong"), nullptr) << "once is enough";
    }
    shown.settle();
    EXPECT_EQ(session.underway(), "");
    EXPECT_TRUE(file->fault().contains("Stopped: the book is as it was"))
        << file->fault().toStdString();
    EXPECT_EQ(file->told(), "");
    EXPECT_FALSE(QFile::exists(to));
    EXPECT_EQ(session.path(), old_path);
    EXPECT_GT(taxa(old_path), 0U);
  }
  file->moveTo(to);
  shown.settle();
  EXPECT_EQ(session.path(), to) << "it can be begun again";
}

TEST_F(AsideFromTheWindow, AMoveGoesOnWhileAnotherBookIsOpened) {
  auto file = model<BookFile>();
  const auto another = folder.filePath("another.coneline");
  {
    const Held held;
    file->moveTo(to);
    ASSERT_TRUE(session.makeBook(another, "Another"));
    EXPECT_TRUE(enter_taxon(session, "Invented zamia"));
  }
  shown.settle();
  EXPECT_EQ(session.path(), another);
  EXPECT_FALSE(QFile::exists(old_path));
  EXPECT_GT(taxa(to), 1U);
}

TEST_F(AsideFromTheWindow, AMoveWaitsForWhatStillReadsTheOldFile) {
  auto file = model<BookFile>();
  Aside aside(nullptr);
  std::atomic<bool> reading = false;
  aside.ask(
      Session::path_of(old_path),
      [&](store::Reading& book) {
        const auto balances = book.balances().size();
        reading = true;
        std::this_thread::sleep_for(std::chrono::milliseconds(400));
        return balances;
      },
      [](const auto&) {});
  ASSERT_TRUE(QTest::qWaitFor([&] { return reading.load(); }));
  file->moveTo(to);
  shown.settle();
  EXPECT_EQ(file->fault(), "");
  EXPECT_EQ(session.path(), to);
  EXPECT_FALSE(QFile::exists(old_path));
}

TEST_F(AsideFromTheWindow, AWindowThatIsClosedKnowsWhereTheBookStands) {
  auto file = model<BookFile>();
  file->moveTo(to);
  session.end();
  EXPECT_EQ(session.underway(), "");
  EXPECT_TRUE(session.is_open());
  EXPECT_TRUE(QFile::exists(session.path()));
  EXPECT_NE(QFile::exists(old_path), QFile::exists(to)) << "in one place";
}

TEST_F(AsideFromTheWindow, WhatTheWindowIsAskedForIsDoneThereOrNotAtAll) {
  Course course;
  bool acted = false;
  std::optional<Result<void>> answer;
  const auto ask = [&] {
    Workers::all().begin([&] {
      answer = Aside::in_window(
          [&]() -> Result<void> {
            acted = true;
            return {};
          },
          course);
    });
  };
  ask();
  ASSERT_TRUE(QTest::qWaitFor([&] { return acted; }));
  Workers::all().wait();
  ASSERT_TRUE(answer && *answer);
  acted = false;
  ask();
  course.stop = true; // as when the window is closed, whose thread then waits without listening
  Workers::all().wait();
  EXPECT_FALSE(*answer);
  QCoreApplication::sendPostedEvents();
  EXPECT_FALSE(acted) << "nobody waits for it any more";
}

TEST_F(AsideFromTheWindow, AnExceptionIsAFaultOfTheProgramThatTheBarTells) {
  const auto bar = [&] {
    shown.settle();
    auto* told = shown.find("barFault");
    const auto text = told == nullptr ? QString() : told->property("text").toString();
    session.forgetFault();
    return text.toStdString();
  };
  Aside aside(nullptr);
  std::optional<Result<int>> answer;
  aside.run([]() -> Result<int> { throw std::runtime_error("invented here"); },
            [&](Result<int> given) { answer = std::move(given); });
  EXPECT_NE(bar().find("invented here"), std::string::npos);
  ASSERT_TRUE(answer.has_value());
  ASSERT_FALSE(*answer);
  EXPECT_EQ(answer->error().blame, Blame::program);

  std::optional<std::vector<int>> list; // which has no room for a fault
  aside.run([]() -> std::vector<int> { throw std::runtime_error("a list"); },
            [&](std::vector<int> given) { list = std::move(given); });
  EXPECT_NE(bar().find("a list"), std::string::npos);
  EXPECT_EQ(list, std::vector<int>());

  bool failed = false;
  ASSERT_TRUE(session.work_long(
      "A work goes on …", Touches::open_book, std::make_shared<Course>(),
      []() -> Result<void> { throw 1; }, // as the solver's errors, no std::exception
      [&](const Result<void>& done) { failed = !done; }));
  EXPECT_NE(bar().find("fault of the program"), std::string::npos);
  EXPECT_TRUE(failed);
  EXPECT_EQ(session.underway(), "");
  EXPECT_TRUE(enter_taxon(session, "Invented zamia")) << "the book is written to again";

  Workers::all().begin([] { throw std::runtime_error("a thread"); });
  Workers::all().wait();
  EXPECT_NE(bar().find("a thread"), std::string::npos);

  const Course course;
  bool acted = false;
  std::optional<Result<void>> done;
  Workers::all().begin([&] {
    done = Aside::in_window(
        [&]() -> Result<void> {
          acted = true;
          throw std::runtime_error("the window");
        },
        course);
  });
  ASSERT_TRUE(QTest::qWaitFor([&] { return acted; }));
  Workers::all().wait();
  ASSERT_TRUE(done.has_value());
  ASSERT_FALSE(*done);
  EXPECT_NE(done->error().what.find("the window"), std::string::npos);
}

TEST_F(AsideFromTheWindow, ASeasonThatComesInIsNoBookBefore) {
  auto beginning = model<Beginning>();
  const auto book = folder.filePath("season.coneline");
  {
    const Held held;
    beginning->importSeason(CONELINE_DEMO_SEASON, book);
    beginning->importSeason(CONELINE_DEMO_SEASON, book);
    EXPECT_EQ(session.fault(), "Wait until this is done: The season comes into a new book …");
    EXPECT_FALSE(QFile::exists(book));
  }
  shown.settle();
  EXPECT_EQ(session.path(), book);
  beginning->importSeason(CONELINE_DEMO_SEASON, "");
  shown.settle();
  EXPECT_EQ(beginning->faults(), QStringList("No file is named. Give the book's file."));
  EXPECT_FALSE(session.openBook(""));
  EXPECT_EQ(session.fault(), "No file is named. Give the book's file.");
  EXPECT_EQ(session.path(), book);
}

TEST_F(AsideFromTheWindow, AStopIsHeardWhileReadersAreWaitedFor) {
  const Aside::Reader reader(Session::path_of(old_path));
  const auto course = std::make_shared<Course>();
  bool stopped = false;
  ASSERT_TRUE(session.replace_file(
      old_path, "The book is replaced …", course,
      [course, &stopped]() -> Result<void> {
        stopped = !course->go_on();
        return {};
      },
      [](const auto&) {}));
  QTest::qWait(moment);
  EXPECT_EQ(session.underway(), "The book is replaced …");
  session.stop();
  EXPECT_TRUE(QTest::qWaitFor([&] { return session.underway().isEmpty(); }));
  EXPECT_TRUE(stopped);
  EXPECT_EQ(session.path(), old_path);
}

TEST_F(AsideFromTheWindow, WhatFailedInABookThatWasLeftIsKnown) {
  auto log = model<TemperatureLog>();
  shown.settle();
  {
    const Held held;
    log->takeIn(folder.filePath("none.csv"), "");
    ASSERT_TRUE(session.makeBook(folder.filePath("another.coneline"), "Another"));
  }
  shown.settle();
  EXPECT_TRUE(session.fault().contains("none.csv")) << session.fault().toStdString();
}

TEST_F(AsideFromTheWindow, TheBarShowsHowFarItIs) {
  const auto course = std::make_shared<Course>();
  {
    const Held held;
    ASSERT_TRUE(session.work_long(
        "A work goes on …", Touches::nothing, course, [] { return 1; }, [](int) {}));
    QTest::qWait(moment);
    EXPECT_EQ(shown.find("stopLong")->property("text"), "Stop") << "nobody can say yet";
    course->done = 0.37;
    QTest::qWait(5 * moment);
    EXPECT_EQ(shown.find("stopLong")->property("text"), "Stop, 37 % done");
    QDir().mkpath(QStringLiteral(CONELINE_PICTURES_FOLDER));
    shown.window().grabWindow().save(QStringLiteral(CONELINE_PICTURES_FOLDER "/bar-stop.png"));
    course->done = 1;
    QTest::qWait(5 * moment);
    EXPECT_EQ(shown.find("stopLong"), nullptr) << "too late to stop";
  }
  shown.settle();
  EXPECT_EQ(shown.find("stopLong"), nullptr);
}

TEST_F(AsideFromTheWindow, TheBarHasRoomForItInEverySizeAndLanguage) {
  for (const auto* language : {"en", "es"}) {
    session.speech()->set_language(language);
    {
      const Held held;
      const auto course = std::make_shared<Course>();
      ASSERT_TRUE(session.work_long(
          TemperatureLog::tr("%1 comes into the book …").arg("logger-of-the-house.csv"),
          Touches::nothing, course, [] { return 1; }, [](int) {}));
      course->done = 0.37;
      for (const int text : {100, 200})
        for (const QSize size : {wide, QSize(800, 1280), QSize(1920, 1080)}) {
          SCOPED_TRACE(fmt::format("{} {} % {}x{}", language, text, size.width(), size.height()));
          session.speech()->set_text_size(text);
          shown.window().resize(size);
          QTest::qWait(5 * moment);
          ASSERT_NE(shown.find("stopLong"), nullptr);
          no_text_is_cut(shown);
          no_controls_overlap(shown);
          controls_are_named(shown);
          controls_are_large(shown);
          shown.window().grabWindow().save(
              QStringLiteral(CONELINE_PICTURES_FOLDER "/bar-stop-%1-%2-%3.png")
                  .arg(language)
                  .arg(text)
                  .arg(size.width()));
        }
    }
    shown.settle();
  }
}

TEST_F(AsideFromTheWindow, AnImportThatIsStoppedLeavesNoBook) {
  auto beginning = model<Beginning>();
  {
    const Held held;
    beginning->importSeason(QStringLiteral(CONELINE_DEMO_SEASON), to);
    is_alive("The season comes into a new book …");
    session.stop();
  }
  shown.settle();
  ASSERT_EQ(beginning->faults().size(), 1);
  EXPECT_TRUE(beginning->faults().front().contains("Stopped: nothing came into the book"));
  EXPECT_FALSE(QFile::exists(to));
  EXPECT_EQ(session.path(), old_path);
  beginning->importSeason(QStringLiteral(CONELINE_DEMO_SEASON), to);
  shown.settle();
  EXPECT_EQ(session.path(), to);
}

TEST_F(AsideFromTheWindow, ARestoreThatIsStoppedOpensTheBookAsItWas) {
  ASSERT_TRUE(enter_taxon(session, "Invented zamia"));
  ASSERT_TRUE(session.openBook(old_path)); // which copies it
  ASSERT_TRUE(enter_taxon(session, "Invented ceratozamia"));
  const auto now = taxa(old_path);
  auto copies = model<BookCopies>();
  copies->set_path(old_path);
  shown.settle();
  ASSERT_GT(copies->rows()->size(), 0);
  {
    const Held held;
    copies->restore(copies->rows()->value(0, "file").toString());
    QTest::qWait(moment);
    EXPECT_FALSE(session.is_open());
    const auto entered = enter_taxon(session, "Invented dioon");
    ASSERT_FALSE(entered);
    EXPECT_NE(entered.error().text().find("is being put back"), std::string::npos);
    ASSERT_TRUE(QMetaObject::invokeMethod(shown.find("stopLong"), "clicked"));
  }
  shown.settle();
  EXPECT_TRUE(copies->fault().contains("Stopped")) << copies->fault().toStdString();
  EXPECT_EQ(session.path(), old_path);
  EXPECT_FALSE(copies->undoable());
  EXPECT_EQ(taxa(old_path), now);
}

QString logged(const QTemporaryDir& folder) {
  const auto path = folder.filePath("bench.csv");
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::WriteOnly));
  file.write("Date Time,Temp C\n");
  for (int hour = 0; hour < 24 * 20; ++hour)
    file.write(QStringLiteral("2026-10-%1 %2:00,%3\n")
                   .arg(1 + hour / 24, 2, 10, QLatin1Char('0'))
                   .arg(hour % 24, 2, 10, QLatin1Char('0'))
                   .arg(20 + hour % 7)
                   .toUtf8());
  return path;
}

TEST_F(AsideFromTheWindow, ALoggersFileComesInWhateverPageIsLookedAt) {
  auto log = model<TemperatureLog>();
  shown.settle();
  EXPECT_EQ(log->measured()->size(), 0);
  {
    const Held held;
    log->takeIn(logged(folder), "");
    is_alive("bench.csv comes into the book …");
    EXPECT_FALSE(enter_taxon(session, "Invented zamia"));
    log.reset();
  }
  shown.settle();
  EXPECT_EQ(session.told(), "480 readings taken in");
  EXPECT_EQ(session.fault(), "");
  EXPECT_TRUE(enter_taxon(session, "Invented zamia"));
  {
    const Held held;
    log = model<TemperatureLog>();
    EXPECT_TRUE(log->looking()) << "they are summed up aside";
    EXPECT_EQ(log->measured()->size(), 0);
    shown.type("zam");
    EXPECT_EQ(shown.find("readyField")->property("text"), "zamzam");
  }
  shown.settle();
  EXPECT_FALSE(log->looking());
  ASSERT_EQ(log->measured()->size(), 1);
  EXPECT_EQ(log->place(), log->measured()->value(0, "name"));
  EXPECT_GT(log->series()->size(), 0);
  const auto elsewhere = log->places().back();
  log->choose(elsewhere);
  EXPECT_EQ(log->place(), elsewhere);
  EXPECT_EQ(log->series()->size(), 0) << "at once: nothing is read for it";
  log->takeIn(logged(folder), "");
  shown.settle();
  EXPECT_EQ(log->measured()->size(), 2) << "read anew with what came in";
  EXPECT_GT(log->series()->size(), 0);
}

TEST_F(AsideFromTheWindow, ALoggersFileThatIsStoppedOrCannotBeReadBringsNothing) {
  auto log = model<TemperatureLog>();
  shown.settle();
  {
    const Held held;
    log->takeIn(logged(folder), "");
    session.stop();
  }
  shown.settle();
  EXPECT_TRUE(log->fault().contains("Stopped: nothing came into the book"))
      << log->fault().toStdString();
  EXPECT_EQ(log->measured()->size(), 0);
  log->takeIn(folder.filePath("none.csv"), "");
  EXPECT_EQ(log->fault(), "") << "of before";
  shown.settle();
  EXPECT_TRUE(log->fault().contains("none.csv")) << log->fault().toStdString();
  log->takeIn(folder.filePath("none.csv"), "");
  log.reset();
  shown.settle();
  EXPECT_TRUE(session.fault().contains("none.csv")) << session.fault().toStdString();
}

} // namespace
} // namespace coneline::window
