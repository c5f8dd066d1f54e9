// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// From picture files to what stands in them.

#include "labels/read/found.h"

#include <functional>
#include <span>
#include <string>
#include <vector>

namespace coneline::labels {

/// One picture, read here and now. A hostile one may end the process.
ReadPicture read_picture(const std::string& file);

/// Every picture, each behind a wall of its own (see apart.h: not from a process with other threads
/// at work). Results come in the order of `files`; `progress` is told how many are done.
std::vector<ReadPicture> read_pictures(std::span<const std::string> files,
                                       const std::function<void(std::size_t)>& progress = {});

} // namespace coneline::labels
