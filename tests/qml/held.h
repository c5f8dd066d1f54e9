// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Long work as long as a test wants it: what is done aside from the window's thread waits while
// this lives, so that whatever happens meanwhile is the window's own doing.

#include "qml/models/workers.h"

#include <memory>
#include <semaphore>

namespace coneline::window {

class Held {
 public:
  Held() {
    for (std::size_t thread = 0; thread < threads_; ++thread)
      Workers::all().begin([gate = gate_] { gate->acquire(); });
  }
  ~Held() { gate_->release(static_cast<std::ptrdiff_t>(threads_)); }
  Held(const Held&) = delete;
  Held& operator=(const Held&) = delete;

 private:
  std::size_t threads_ = Workers::most();
  std::shared_ptr<std::counting_semaphore<>> gate_ = std::make_shared<std::counting_semaphore<>>(0);
};

} // namespace coneline::window
