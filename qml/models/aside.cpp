// SPDX-License-Identifier: GPL-3.0-or-later
#include "aside.h"

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <optional>
#include <set>

namespace coneline::window {

namespace {

/// How often it is looked whether what is waited for was stopped.
constexpr auto between_looks = std::chrono::milliseconds(20);

struct Readers {
  std::mutex lock;
  std::condition_variable fewer;
  std::multiset<std::filesystem::path> books;
};

Readers& readers() {
  static Readers all;
  return all;
}

/// What the window's thread was asked to do.
struct Asked {
  std::mutex lock;
  std::condition_variable answered;
  bool dropped = false;
  std::optional<Result<void>> answer;
};

} // namespace

Progress told_to(std::shared_ptr<Course> course) {
  return [course = std::move(course)](std::size_t done, std::size_t of) {
    course->done = static_cast<double>(done) / static_cast<double>(of);
    return course->go_on();
  };
}

Aside::Reader::Reader(std::filesystem::path book) : book_(std::move(book)) {
  const std::lock_guard held(readers().lock);
  readers().books.insert(book_);
}

Aside::Reader::~Reader() {
  const std::lock_guard held(readers().lock);
  readers().books.erase(readers().books.find(book_));
  readers().fewer.notify_all();
}

void Aside::wait_for_readers(const std::filesystem::path& book, const Course* course) {
  constexpr auto longest = std::chrono::minutes(1); // then it is said that the file is in use
  const auto until = std::chrono::steady_clock::now() + longest;
  std::unique_lock held(readers().lock);
  while (readers().books.contains(book) && (course == nullptr || course->go_on()) &&
         std::chrono::steady_clock::now() < until)
    readers().fewer.wait_for(held, between_looks);
}

Result<void> Aside::in_window(std::function<Result<void>()> act, const Course& course) {
  const auto asked = std::make_shared<Asked>();
  Workers::all().on_window([asked, act = std::move(act)] {
    const std::lock_guard held(asked->lock);
    if (asked->dropped)
      return;
    if (const auto failed = Workers::attempt([&] { asked->answer = act(); }))
      asked->answer = refuse(*failed);
    asked->answered.notify_one();
  });
  std::unique_lock held(asked->lock);
  while (!asked->answered.wait_for(held, between_looks, [&] { return asked->answer.has_value(); }))
    if (!course.go_on()) { // the window may be gone
      asked->dropped = true;
      return refuse(stopped_copying());
    }
  return *asked->answer;
}

} // namespace coneline::window
