// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/parallel.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <thread>
#include <vector>

namespace coneline::labels {

void in_parallel(int pieces, const std::function<void(int)>& work) {
  std::atomic<int> next = 0;
  std::mutex guard;
  std::exception_ptr failed;
  const auto take = [&] {
    for (int piece = next++; piece < pieces; piece = next++) {
      try {
        work(piece);
      } catch (...) {
        const std::scoped_lock lock(guard);
        if (!failed)
          failed = std::current_exception();
      }
    }
  };
  const int cores = static_cast<int>(std::thread::hardware_concurrency());
  {
    std::vector<std::jthread> others;
    for (int i = 1; i < std::min({pieces, cores, 4}); ++i)
      others.emplace_back(take);
    take();
  }
  if (failed)
    std::rethrow_exception(failed);
}

} // namespace coneline::labels
