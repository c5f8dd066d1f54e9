// SPDX-License-Identifier: GPL-3.0-or-later
#include "workers.h"

#include "core/base/phrase.h"

#include <QCoreApplication>
#include <QEvent>

#include <algorithm>
#include <exception>

namespace coneline::window {

namespace {

Fault thrown(const char* what) {
  return program_fault(phrase("a fault of the program: {}", what),
                       "What was being done was not finished; the book holds what was entered "
                       "before. Try again, and where it comes back, close the program and open it "
                       "anew.");
}

} // namespace

Workers& Workers::all() {
  static Workers workers;
  return workers;
}

Workers::Workers() {
  qAddPostRoutine([] { all().end(); });
}

Workers::~Workers() {
  end();
}

std::size_t Workers::most() {
  // Three at the least: long work holds one for minutes, and a slow question of a page another, for
  // neither of which the camera's pictures are to wait.
  return std::max(3U, std::thread::hardware_concurrency());
}

void Workers::begin(std::function<void()> work) {
  const std::lock_guard held(lock_);
  begun_.push_back(std::move(work));
  if (busy_ + begun_.size() > threads_.size() && threads_.size() < most())
    threads_.emplace_back([this] { serve(); });
  more_.notify_one();
}

void Workers::serve() {
  std::unique_lock held(lock_);
  while (true) {
    more_.wait(held, [&] { return ending_ || !begun_.empty(); });
    if (begun_.empty())
      return;
    {
      const auto work = std::move(begun_.front());
      begun_.pop_front();
      ++busy_;
      held.unlock();
      if (const auto failed = attempt(work))
        on_window([failed = *failed] { all().tell(failed); });
    } // what it held is let go of before it counts as done
    held.lock();
    --busy_;
    if (busy_ == 0 && begun_.empty())
      idle_.notify_all();
  }
}

void Workers::on_window(std::function<void()> take) {
  const std::lock_guard held(lock_);
  told_.push_back(std::move(take));
  QCoreApplication::postEvent(this, new QEvent(QEvent::User));
}

bool Workers::event(QEvent* event) {
  std::function<void()> take;
  {
    const std::lock_guard held(lock_); // under which the event was made too
    if (event->type() != QEvent::User)
      return QObject::event(event);
    if (told_.empty())
      return true;
    take = std::move(told_.front());
    told_.pop_front();
  }
  if (const auto failed = attempt(take))
    tell(*failed);
  return true;
}

std::optional<Fault> Workers::attempt(const std::function<void()>& act) {
  try {
    act();
    return std::nullopt;
  } catch (const std::exception& error) {
    return thrown(error.what());
  } catch (...) { // libraries throw what is no std::exception, such as the solver
    return thrown("?");
  }
}

void Workers::tell_faults_by(std::function<void(const Fault&)> tell) {
  tell_ = std::move(tell);
}

void Workers::tell(const Fault& fault) const {
  if (tell_)
    tell_(fault);
}

void Workers::wait() {
  std::unique_lock held(lock_);
  idle_.wait(held, [&] { return busy_ == 0 && begun_.empty(); });
}

void Workers::end() {
  {
    const std::lock_guard held(lock_);
    ending_ = true;
  }
  more_.notify_all();
  for (auto& thread : threads_)
    thread.join();
  threads_.clear();
  told_.clear();
  ending_ = false;
}

} // namespace coneline::window
