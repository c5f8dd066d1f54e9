// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/survive.h"

#include <csetjmp>
#include <csignal>
#include <mutex>

namespace coneline::labels {

namespace {

thread_local sigjmp_buf* way_out = nullptr;

/// abort() raises the signal on the thread that called it, and allows the handler not to return.
void on_abort(int) {
  if (way_out != nullptr)
    siglongjmp(*way_out, 1);
  std::signal(SIGABRT, SIG_DFL); // not ours: abort() goes on to end the process
}

void watch() {
  static std::once_flag once;
  std::call_once(once, [] {
    struct sigaction action {};
    action.sa_handler = on_abort;
    sigemptyset(&action.sa_mask);
    sigaction(SIGABRT, &action, nullptr);
  });
}

} // namespace

bool survives(const std::function<void()>& work) {
  watch();
  sigjmp_buf here;
  if (sigsetjmp(here, 1) != 0) {
    way_out = nullptr;
    return false;
  }
  way_out = &here;
  try {
    work();
  } catch (...) {
    way_out = nullptr;
    throw;
  }
  way_out = nullptr;
  return true;
}

} // namespace coneline::labels
