// SPDX-License-Identifier: GPL-3.0-or-later
#include "aside.h"

namespace coneline::window {

QThreadPool& Aside::pool() {
  static QThreadPool threads;
  // What runs tells the application, so the application waits for it, as for Qt's own threads.
  static const bool waits = [] {
    qAddPostRoutine([] { pool().waitForDone(); });
    return true;
  }();
  static_cast<void>(waits);
  return threads;
}

} // namespace coneline::window
