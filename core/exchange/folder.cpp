// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/folder.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <fcntl.h>
#include <unistd.h>

namespace coneline::exchange {

namespace {

namespace fs = std::filesystem;

Fault cannot(std::string_view what, const fs::path& path, int error) {
  return fault(
      phrase("'{}' cannot be {}: {}", path.string(), what, std::generic_category().message(error)),
      "Check that there is room and that you may write there.");
}

/// Where the folder really is: links followed, no slash at its end.
Result<fs::path> place_of(const fs::path& folder) {
  std::error_code error;
  auto place = fs::absolute(folder, error);
  if (!place.has_filename())
    place = place.parent_path();
  if (fs::exists(fs::symlink_status(place, error))) {
    place = fs::canonical(place, error);
    if (error)
      return refuse(fault(phrase("'{}' leads nowhere", folder.string()),
                          "Name another folder, or mend the link."));
  }
  if (!fs::is_directory(place.parent_path(), error))
    return refuse(
        fault(phrase("there is no folder '{}' to write into", place.parent_path().string()),
              "Make it first, or name another one."));
  return place;
}

Result<void> may_be_written(const fs::path& place, Existing existing,
                            const std::vector<std::string>& known) {
  std::error_code error;
  if (!fs::exists(place, error))
    return {};
  if (!fs::is_directory(place, error))
    return refuse(fault(phrase("'{}' is no folder", place.string()), "Name another one."));
  if (fs::equivalent(place, fs::current_path(error), error))
    return refuse(fault(phrase("'{}' is the folder you stand in", place.string()),
                        "Name a new folder in it."));
  bool empty = true;
  for (fs::directory_iterator each(place, error), end; !error && each != end;
       each.increment(error)) {
    empty = false;
    const auto name = each->path().filename().string();
    if (std::ranges::find(known, name) == known.end() ||
        !fs::is_regular_file(each->symlink_status(error)))
      return refuse(fault(
          phrase("'{}' holds '{}', which is no part of an earlier export", place.string(), name),
          "Name a new or an empty folder."));
  }
  if (error)
    return refuse(cannot("looked into", place, error.value()));
  if (!empty && existing == Existing::keep)
    return refuse(fault(phrase("'{}' holds an earlier export", place.string()),
                        "Name another folder, or ask for it to be replaced (--replace)."));
  return {};
}

Result<void> to_disk(const fs::path& path) {
  const int handle = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  const bool done = handle >= 0 && ::fsync(handle) == 0;
  const int error = errno;
  if (handle >= 0)
    ::close(handle);
  if (!done)
    return refuse(cannot("written to the disk", path, error));
  return {};
}

/// Gives the finished folder its name. An earlier one changes places with it, so that there is no
/// moment without either.
Result<void> give_name(const fs::path& finished, const fs::path& place) {
  if (::rename(finished.c_str(), place.c_str()) == 0)
    return {};
  if (errno != ENOTEMPTY && errno != EEXIST)
    return refuse(cannot("named", place, errno));
  if (::renameat2(AT_FDCWD, finished.c_str(), AT_FDCWD, place.c_str(), RENAME_EXCHANGE) == 0)
    return {};
  // A file system that cannot exchange: the old one steps aside first.
  const fs::path aside = finished.string() + ".old";
  if (::rename(place.c_str(), aside.c_str()) != 0)
    return refuse(cannot("replaced", place, errno));
  if (::rename(finished.c_str(), place.c_str()) != 0) {
    const int error = errno;
    ::rename(aside.c_str(), place.c_str());
    return refuse(cannot("replaced", place, error));
  }
  std::error_code ignored;
  fs::remove_all(aside, ignored);
  return {};
}

} // namespace

Result<void> write_whole(const fs::path& folder, Existing existing,
                         const std::vector<std::string>& known,
                         const std::function<Result<void>(const fs::path&)>& fill) {
  const auto place = place_of(folder);
  if (!place)
    return refuse(place.error());
  if (auto may = may_be_written(*place, existing, known); !may)
    return may;
  auto name = (place->parent_path() / ".season-unfinished-XXXXXX").string();
  if (::mkdtemp(name.data()) == nullptr)
    return refuse(cannot("made", *place, errno));
  auto written = fill(name);
  if (written)
    written = to_disk(name);
  if (written)
    written = give_name(name, *place);
  if (written)
    written = to_disk(place->parent_path());
  // What is left under the passing name is half a folder, or the earlier export.
  std::error_code ignored;
  fs::remove_all(name, ignored);
  return written;
}

Result<void> write_file(const fs::path& path, std::string_view text) {
  std::FILE* file = std::fopen(path.c_str(), "wbx");
  if (file == nullptr)
    return refuse(cannot("made", path, errno));
  const bool whole = std::fwrite(text.data(), 1, text.size(), file) == text.size() &&
                     std::fflush(file) == 0 && ::fsync(::fileno(file)) == 0;
  const int error = errno;
  std::fclose(file);
  if (!whole)
    return refuse(cannot("written", path, error));
  return {};
}

Result<void> is_file_inside(const fs::path& folder, const fs::path& path) {
  std::error_code error;
  const auto name = path.filename().string();
  const auto home = fs::canonical(folder, error);
  const auto real = fs::canonical(path, error);
  if (error)
    return refuse(
        fault("the link leads nowhere", "Put the file itself into the folder.").at({name, 0, {}}));
  const auto [end, rest] = std::ranges::mismatch(home, real);
  if (end != home.end())
    return refuse(fault(phrase("the link leads out of the folder, to '{}'", real.string()),
                        "Put the file itself into the folder.")
                      .at({name, 0, {}}));
  if (!fs::is_regular_file(real, error))
    return refuse(fault("this is no file", "Put the file into the folder.").at({name, 0, {}}));
  return {};
}

} // namespace coneline::exchange
