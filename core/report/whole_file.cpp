// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/whole_file.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <cstdlib>
#include <fcntl.h>
#include <string>
#include <sys/stat.h>
#include <unistd.h>

namespace coneline::report {

namespace {

Fault cannot_write(const std::filesystem::path& path, const std::error_code& why) {
  return fault(phrase("{} cannot be written: {}", path.string(), why.message()),
               "Check the folder, its rights and the room left on the disk.");
}

std::error_code last_error() {
  return {errno, std::generic_category()};
}

bool write_all(int file, std::string_view text) {
  while (!text.empty()) {
    const auto written = ::write(file, text.data(), text.size());
    if (written < 0)
      return false;
    text.remove_prefix(static_cast<std::size_t>(written));
  }
  return ::fsync(file) == 0;
}

} // namespace

Result<void> write_whole(const std::filesystem::path& path, std::string_view text,
                         Readers readers) {
  std::error_code ignored;
  if (std::filesystem::is_directory(path, ignored))
    return refuse(fault(phrase("{} is a folder", path.string()), "Name a file."));
  auto beside = path.string() + ".part-XXXXXX";
  const int file = ::mkstemp(beside.data());
  if (file < 0)
    return refuse(cannot_write(path, last_error()));
  // What mkstemp makes is the owner's alone; a report is read by whom any new file is.
  if (readers == Readers::as_usual) {
    const auto mask = ::umask(0);
    ::umask(mask);
    ::fchmod(file, 0666U & ~mask);
  }
  std::error_code why;
  if (!write_all(file, text))
    why = last_error();
  if (::close(file) != 0 && !why)
    why = last_error();
  if (!why)
    std::filesystem::rename(beside, path, why);
  if (!why)
    return {};
  std::filesystem::remove(beside, ignored);
  return refuse(cannot_write(path, why));
}

} // namespace coneline::report
