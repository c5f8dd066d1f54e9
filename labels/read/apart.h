// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Reads pictures in processes of their own, so that a picture which makes a library fail, fill the
// memory or never end costs that picture and nothing else.
//
// The processes are copies of this one (fork), which start in about a millisecond and need no
// second program on the disk; one started anew would load Qt again for 10 to 50 ms. The price: a
// process with other threads at work must not call this, for a copy may find a lock that nobody
// will open. The command line has one thread; the window starts the program itself with
// `labels read --json`.

#include "labels/read/found.h"

#include <chrono>
#include <functional>
#include <span>
#include <string>
#include <vector>

namespace coneline::labels {

/// What one picture may cost.
struct Limits {
  std::chrono::milliseconds time{60'000};
  std::int64_t memory = 2'000'000'000; ///< bytes on top of what the program has already
};

/// Calls `read` for every file, shared out over as many processes as there are cores. Results come
/// in the order of `files`; one whose process ended or took too long has `error` set to why.
/// `progress` is told, from 1, how many files are done.
std::vector<ReadPicture> read_apart(std::span<const std::string> files,
                                    const std::function<ReadPicture(const std::string&)>& read,
                                    const Limits& limits = {},
                                    const std::function<void(std::size_t)>& progress = {});

} // namespace coneline::labels
