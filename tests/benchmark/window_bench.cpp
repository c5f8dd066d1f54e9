// SPDX-License-Identifier: GPL-3.0-or-later
// The window's speed, without a display and drawn by the processor: its start with the demo's book
// beside a bare window's in the same run, and with a large book the answer of the ready field and
// the frames of lists that are scrolled. Processor time stands beside the clock's, since other work
// on the machine lengthens the latter.
//
//   bench_window [--trays=100000]     0 trays: the start alone
#include "core/exchange/import_season.h"
#include "qml/models/session.h"
#include "qml/window.h"
#include "tests/benchmark/large_book_file.h"
#include "tests/benchmark/ratio.h"
#include "tests/core/store/scratch.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QKeyEvent>
#include <QProcess>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTimer>
#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <stdexcept>
#include <sys/resource.h>
#include <time.h>

namespace coneline::tests {
namespace {

using window::Session;

constexpr double goal = 1000.0 / 60; // ms of a frame
constexpr double start_goal = 2;

/// Milliseconds.
struct Spent {
  double clock = 0;
  double processor = 0;
};

double milliseconds(const timespec& at) {
  return 1e3 * static_cast<double>(at.tv_sec) + 1e-6 * static_cast<double>(at.tv_nsec);
}

double processor_now() {
  timespec at{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &at);
  return milliseconds(at);
}

double children_now() {
  rusage used{};
  getrusage(RUSAGE_CHILDREN, &used);
  const auto of = [](const timeval& time) {
    return 1e3 * static_cast<double>(time.tv_sec) + 1e-3 * static_cast<double>(time.tv_usec);
  };
  return of(used.ru_utime) + of(used.ru_stime);
}

Spent timed(const std::function<void()>& act, const std::function<double()>& processor) {
  QElapsedTimer clock;
  const auto before = processor();
  clock.start();
  act();
  return {1e-6 * static_cast<double>(clock.nsecsElapsed()), processor() - before};
}

double at_share(std::vector<double> values, double share) {
  std::ranges::sort(values);
  return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1) + 0.5)];
}

void say(const std::string& line) {
  std::puts(line.c_str());
  std::fflush(stdout);
}

void say(const std::string& what, const std::vector<Spent>& all) {
  std::vector<double> clock;
  std::vector<double> processor;
  for (const auto& one : all) {
    clock.push_back(one.clock);
    processor.push_back(one.processor);
  }
  const auto worst = at_share(processor, 0.95);
  say(fmt::format("{:<46} {:7.1f} {:7.1f} {:9.1f} {:9.1f}   {}", what, at_share(processor, 0.5),
                  worst, at_share(clock, 0.5), at_share(clock, 0.95),
                  worst <= goal ? "within a frame" : fmt::format("{:.1f} frames", worst / goal)));
}

std::filesystem::path demo_book(const Scratch& scratch) {
  const auto path = scratch.at("demo.coneline");
  auto book = store::Book::make(path, {"Demo", 17, true, Date::of(2024, 1, 1).value()}).value();
  exchange::import_season(CONELINE_DEMO_SEASON, book, exchange::Import::write).value();
  return path;
}

/// One start of the window with a book, up to its first frame; as a process of its own.
int start(int argc, char** argv, const char* book) {
  auto told = [last = 0.0](const char* what) mutable {
    const auto now = processor_now();
    if (qEnvironmentVariableIsSet("CONELINE_STAGES"))
      std::fprintf(stderr, "%-12s %6.1f ms\n", what, now - last);
    last = now;
  };
  const QApplication application(argc, argv);
  told("Qt");
  Session session(Date::of(2026, 11, 20).value());
  if (!session.openBook(QString::fromUtf8(book)))
    return 1;
  told("book");
  window::PageEngine engine;
  if (!engine.load(session))
    return 1;
  told("window");
  auto* shown = engine.window();
  QObject::connect(shown, &QQuickWindow::frameSwapped, [&] {
    told("first frame");
    std::_Exit(0);
  });
  return QApplication::exec();
}

void starts(const QString& program) {
  const Scratch scratch;
  const auto book = QString::fromStdString(demo_book(scratch).string());
  const auto run = [](const QString& file, const QStringList& arguments) {
    return timed(
        [&] {
          if (QProcess::execute(file, arguments) != 0)
            throw std::runtime_error("a window did not start");
        },
        children_now);
  };
  std::vector<Spent> bare;
  std::vector<Spent> with_book;
  constexpr int times = 9;
  for (int i = 0; i < times; ++i) { // in turn, so that what else the machine does falls on both
    bare.push_back(run(QStringLiteral(CONELINE_BARE_WINDOW), {}));
    with_book.push_back(run(program, {QStringLiteral("--start"), book}));
  }
  const auto middle = [](std::vector<Spent>& all, double Spent::*of) {
    std::ranges::sort(all, {}, of);
    return all[all.size() / 2].*of;
  };
  for (const auto& [word, of] :
       {std::pair("processor", &Spent::processor), {"clock", &Spent::clock}}) {
    const auto one = middle(bare, of);
    const auto other = middle(with_book, of);
    say(fmt::format("start, ms by the {:<10} bare {:7.1f}   with the demo's book {:7.1f}   "
                    "{:.2f} times; at most {:.0f} is the goal",
                    word, one, other, other / one, start_goal));
  }
  const auto took = [&](std::vector<Spent>& all) -> tests::Took {
    return {middle(all, &Spent::processor) / 1e3, middle(all, &Spent::clock) / 1e3};
  };
  write_line("window start with the demo's book", {took(with_book), took(bare)}, start_goal);
}

class Large {
 public:
  explicit Large(int trays) : session_(Date::of(2024, 3, 1).value()) {
    const auto path = scratch_.at("large.coneline");
    const auto made = timed([&] { make_large_book(path, trays, 1); }, processor_now);
    const auto opened = timed(
        [&] {
          if (!session_.openBook(QString::fromStdString(path.string())))
            throw std::runtime_error(session_.fault().toStdString());
        },
        processor_now);
    const auto loaded = timed(
        [&] {
          if (!engine_.load(session_))
            throw std::runtime_error("the window does not load");
          window_ = engine_.window();
          rest();
        },
        processor_now);
    say(fmt::format("{} lots, {} of them due; made in {:.1f} s, opened in {:.2f} s, window in "
                    "{:.2f} s of the processor",
                    session_.standing().lots.size(), session_.standing().due.size(),
                    made.processor / 1e3, opened.processor / 1e3, loaded.processor / 1e3));
  }

  void page(const char* name) {
    const auto took = timed(
        [&] {
          window_->setProperty("page", name);
          frame();
        },
        processor_now);
    rest();
    say(fmt::format("page {:<41} {:7.1f} ms of the processor", name, took.processor));
  }
  /// Scrolls a list from its top, in steps a wheel makes, and far into it in leaps.
  void scroll(const QString& list, const std::string& what) {
    auto* item = find(list);
    for (const auto& [how, by] : {std::pair("wheel", 60.0), {"leap", 2000.0}}) {
      std::vector<Spent> frames;
      constexpr int count = 300;
      for (int i = 0; i < count; ++i)
        frames.push_back(timed(
            [&] {
              item->setProperty("contentY", item->property("contentY").toDouble() + by);
              frame();
            },
            processor_now));
      say(what + ", " + how, frames);
    }
  }
  /// Letters into the ready field, each up to the frame that shows it, and what Return finds.
  void type(const QString& text) {
    auto* field = find("readyField");
    field->forceActiveFocus();
    field->setProperty("text", "");
    std::vector<Spent> letters;
    for (const auto letter : text)
      letters.push_back(timed(
          [&] {
            QKeyEvent event(QEvent::KeyPress, 0, Qt::NoModifier, QString(letter));
            QCoreApplication::sendEvent(field, &event);
            frame();
          },
          processor_now));
    say("a letter in the ready field", letters);
    say("Return after '" + text.toStdString() + "'",
        {timed(
            [&] {
              QKeyEvent event(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier,
                              QStringLiteral("\r"));
              QCoreApplication::sendEvent(field, &event);
              frame();
            },
            processor_now)});
    rest();
  }

 private:
  QQuickItem* find(const QString& name) {
    std::vector<QQuickItem*> left{window_->contentItem()};
    while (!left.empty()) {
      auto* item = left.back();
      left.pop_back();
      if (!item->isVisible())
        continue;
      if (item->objectName() == name)
        return item;
      for (auto* child : item->childItems())
        left.push_back(child);
    }
    throw std::runtime_error("nothing is called " + name.toStdString());
  }
  /// Up to the next frame.
  void frame() {
    QEventLoop loop;
    const auto drawn =
        QObject::connect(window_, &QQuickWindow::frameSwapped, &loop, &QEventLoop::quit);
    window_->update();
    loop.exec();
    QObject::disconnect(drawn);
  }
  void rest() {
    QEventLoop loop;
    QTimer::singleShot(300, &loop, &QEventLoop::quit);
    loop.exec();
  }

  Scratch scratch_;
  Session session_;
  window::PageEngine engine_;
  QQuickWindow* window_ = nullptr;
};

void large(int trays) {
  Large book(trays);
  say(fmt::format("{:<46} {:>7} {:>7} {:>9} {:>9}", "ms", "middle", "95 %", "by clock", "95 %"));
  book.page("trays");
  book.scroll("stationList", "trays");
  book.page("today");
  book.scroll("todayList", "today");
  book.type("cross 0042");
  book.page("cones");
  book.scroll("stationList", "cones");
}

int run(int argc, char** argv) {
  if (argc == 3 && std::string(argv[1]) == "--start")
    return start(argc, argv, argv[2]);
  int trays = 100'000;
  const std::string option = "--trays=";
  for (int i = 1; i < argc; ++i)
    if (std::string(argv[i]).starts_with(option))
      trays = std::atoi(argv[i] + option.size());
  const QApplication application(argc, argv);
  starts(QCoreApplication::applicationFilePath());
  if (trays > 0)
    large(trays);
  return 0;
}

} // namespace
} // namespace coneline::tests

int main(int argc, char** argv) {
  // A frame is drawn as soon as it is asked for, not a moment later.
  if (qEnvironmentVariableIsEmpty("QT_QPA_UPDATE_IDLE_TIME"))
    qputenv("QT_QPA_UPDATE_IDLE_TIME", "0");
  for (const auto* setting : {"QT_QPA_PLATFORM=offscreen", "QT_QUICK_BACKEND=software"}) {
    const QByteArray pair(setting);
    const auto at = pair.indexOf('=');
    if (qEnvironmentVariableIsEmpty(pair.left(at)))
      qputenv(pair.left(at), pair.mid(at + 1));
  }
  return coneline::tests::run(argc, argv);
}
