// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Long work as long as a test wants it: what is done aside from the window's thread waits while
// this lives, so that whatever happens meanwhile is the window's own doing.

#include "qml/models/aside.h"

#include <QSemaphore>

#include <memory>

namespace coneline::window {

class Held {
 public:
  Held() {
    for (int thread = 0; thread < threads_; ++thread)
      Aside::pool().start([gate = gate_] { gate->acquire(); });
  }
  ~Held() { gate_->release(threads_); }
  Held(const Held&) = delete;
  Held& operator=(const Held&) = delete;

 private:
  int threads_ = Aside::pool().maxThreadCount();
  std::shared_ptr<QSemaphore> gate_ = std::make_shared<QSemaphore>();
};

} // namespace coneline::window
