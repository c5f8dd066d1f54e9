// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Threads for what would hold up the window, and the way back from them.
//
// Not the threads that Qt keeps for everybody: with those busy, a window that is drawn without a
// graphics card waits for one of them. What crosses between threads does so under locks of the
// standard library, into which the thread sanitizer sees; Qt's own are hidden from it.
//
// Exceptions are faults of the program. They end here: nothing above a thread, nor above Qt's
// events, could catch them.

#include "core/base/fault.h"

#include <QObject>

#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>
#include <vector>

namespace coneline::window {

class Workers : private QObject {
 public:
  /// Of the whole program. Called first on the window's thread; there has to be an application,
  /// which ends them: then all that was begun is done, and nothing of it is taken.
  static Workers& all();

  /// Has one of the threads do it, as soon as one is free. Where it throws, that is told.
  void begin(std::function<void()> work);
  /// From a worker: has the window's thread do it, in the order in which it was told.
  void on_window(std::function<void()> take);
  /// On the window's thread: who tells the person of faults of the program.
  void tell_faults_by(std::function<void(const Fault&)> tell);
  /// On the window's thread: has it told.
  void tell(const Fault& fault) const;
  /// Does it; where it throws, the fault of the program that this is.
  static std::optional<Fault> attempt(const std::function<void()>& act);
  /// On the window's thread: waits until all that was begun is done. What was meant for this thread
  /// still waits for its turn.
  void wait();
  /// How many can work at once.
  [[nodiscard]] static std::size_t most();

 private:
  Workers();
  ~Workers() override;
  bool event(QEvent* event) override;
  void serve();
  void end();

  std::mutex lock_;
  std::condition_variable more_; ///< to do, or nothing any more
  std::condition_variable idle_;
  std::deque<std::function<void()>> begun_;
  std::deque<std::function<void()>> told_;
  std::function<void(const Fault&)> tell_; ///< the window's thread alone
  std::vector<std::thread> threads_;
  std::size_t busy_ = 0;
  bool ending_ = false;
};

} // namespace coneline::window
