// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A folder of pictures of benches: the labels in each, and the day it was taken.

#include "core/work/seen_there.h"
#include "labels/read/found.h"

#include <filesystem>
#include <optional>
#include <span>

namespace coneline::labels {

struct BenchPicture {
  std::string file; ///< its name in the folder
  std::vector<std::string> texts;
  std::optional<Date> taken;        ///< by the picture's own EXIF; nothing where it has no day
  std::optional<std::string> error; ///< why it could not be read, or not whole
};

/// The day a JPEG says it was taken (EXIF DateTimeOriginal, else DateTimeDigitized, else DateTime).
/// A camera whose clock was never set says none.
std::optional<Date> taken_on(const std::string& file);

/// The files of a folder that may be pictures, by their names; sub-folders are not looked into.
/// Fails: no such folder, no file in it.
Result<std::vector<std::string>> pictures_in(const std::filesystem::path& folder);

/// Reads them, each in a process of its own: not from a process with other threads at work.
std::vector<BenchPicture> read_bench_pictures(std::span<const std::string> files,
                                              const std::function<void(std::size_t)>& progress);

/// What was read, each text with its day: the picture's own, or `otherwise` for those without.
/// Fails and names the pictures: without a day where `otherwise` is none; of a day after `today`,
/// which no camera can have seen.
Result<std::vector<work::ReadLabel>> labels_read(std::span<const BenchPicture> pictures,
                                                 std::optional<Date> otherwise, Date today);

} // namespace coneline::labels
