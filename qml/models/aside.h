// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is long is done aside from the window's thread, through a book of its own, so that the
// window stays alive.

#include "core/base/progress.h"
#include "core/store/book.h"
#include "workers.h"

#include <QObject>
#include <QPointer>

#include <atomic>
#include <filesystem>
#include <functional>
#include <memory>
#include <type_traits>

namespace coneline::window {

/// How far long work has come; shared with the thread that does it.
struct Course {
  std::atomic<double> done = 0; ///< of 1; 0 where nobody can say
  std::atomic<bool> stop = false;
  [[nodiscard]] bool go_on() const { return !stop; }
};

/// For work in core, which then tells how far it is and can be stopped.
Progress told_to(std::shared_ptr<Course> course);

class Aside : public QObject {
 public:
  explicit Aside(QObject* parent) : QObject(parent) {}
  /// What has not begun is not wanted any more.
  ~Aside() override { forget(); }

  /// `ask` takes a store::Reading& on another thread; `take` gets the Result of it on the window's,
  /// unless something newer was asked meanwhile, it was forgotten, this is gone, or the window has
  /// let go of the book.
  template <class Ask, class Take>
  void ask(const std::filesystem::path& book, Ask ask, Take take) {
    run([book, ask = std::move(ask),
         opened = opened_.load()]() mutable { return answered(book, ask, opened); },
        [opened = opened_.load(), take = std::move(take)](auto answer) mutable {
          if (opened == opened_)
            take(std::move(answer));
        });
  }

  /// The same for what takes nothing, such as a write through a book that it opens itself. Where it
  /// throws, that is told as a fault of the program, and `take` gets it, or an empty answer where
  /// that is no Result.
  template <class Work, class Take>
  void run(Work work, Take take) {
    const int ticket = forget();
    ++running_;
    Workers::all().begin([self = QPointer<Aside>(this), newest = newest_, ticket,
                          work = std::move(work), take = std::move(take)]() mutable {
      if (newest->load() != ticket) {
        --running_;
        return;
      }
      using Answer = decltype(work());
      std::shared_ptr<Answer> answer;
      const auto failed = Workers::attempt([&] { answer = std::make_shared<Answer>(work()); });
      if (failed)
        answer = std::make_shared<Answer>(answer_of<Answer>(*failed));
      Workers::all().on_window([self = std::move(self), newest = std::move(newest), ticket, failed,
                                answer = std::move(answer), take = std::move(take)]() mutable {
        --running_;
        if (failed)
          Workers::all().tell(*failed);
        if (self && newest->load() == ticket)
          take(std::move(*answer));
      });
    });
  }

  /// The window has another book, or none: answers about the one before say nothing of it.
  static void another_book() { ++opened_; }

  /// While it lives, a file is being read.
  class Reader {
   public:
    explicit Reader(std::filesystem::path book);
    ~Reader();
    Reader(const Reader&) = delete;
    Reader& operator=(const Reader&) = delete;

   private:
    std::filesystem::path book_;
  };

  /// For work aside: waits until nothing that was asked about a book reads its file any more, nor
  /// whoever else said so, or until it is stopped where it has a course. What was asked before the
  /// window let go of that book and has not begun is none of it.
  static void wait_for_readers(const std::filesystem::path& book, const Course* course = nullptr);

  /// For work aside: has the window's thread do something, and waits for what came of it. Stopped
  /// meanwhile, it is not done.
  static Result<void> in_window(std::function<Result<void>()> act, const Course& course);

  /// Whatever was asked is not wanted any more.
  int forget() { return ++*newest_; }

  /// Whether anything asked anywhere is still to be answered.
  static bool any_running() { return running_ > 0; }

 private:
  template <class Answer>
  static Answer answer_of(const Fault& failed) {
    if constexpr (std::is_constructible_v<Answer, tl::unexpected<Fault>>)
      return refuse(failed);
    else
      return {};
  }

  template <class Ask>
  static auto answered(const std::filesystem::path& path, Ask& ask, int opened) {
    using Answer = decltype(std::declval<store::Book&>().read(ask));
    // Known as a reader before it looks, so that who waits for readers misses none.
    const Reader reader(path);
    if (opened != opened_)
      return Answer(refuse(book_fault("no book is open", "Open a book first.")));
    auto book = store::Book::open(path, store::Access::read);
    return book ? book->read(ask) : Answer(refuse(book.error()));
  }

  inline static std::atomic<int> running_ = 0;
  inline static std::atomic<int> opened_ = 0;
  std::shared_ptr<std::atomic<int>> newest_ = std::make_shared<std::atomic<int>>(0);
};

} // namespace coneline::window
