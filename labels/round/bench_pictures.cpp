// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/round/bench_pictures.h"

#include "core/base/phrase.h"
#include "labels/read/apart.h"
#include "labels/read/read_pictures.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <libexif/exif-data.h>
#include <memory>

namespace coneline::labels {

namespace {

namespace fs = std::filesystem;

/// What a reading process sends back besides codes, as one more of them: it has no other way.
constexpr std::string_view taken_format = "taken";

std::optional<Date> day_of(ExifContent* content, ExifTag tag) {
  ExifEntry* entry = exif_content_get_entry(content, tag);
  if (entry == nullptr || entry->data == nullptr || entry->size < 10)
    return std::nullopt;
  std::string text(reinterpret_cast<const char*>(entry->data), 10); // 2026:11:20 14:05:00
  std::ranges::replace(text, ':', '-');
  const auto day = Date::parse(text);
  return day ? std::optional(*day) : std::nullopt;
}

ReadPicture read_with_day(const std::string& file) {
  auto picture = read_picture(file);
  if (const auto day = taken_on(file))
    picture.codes.push_back({day->iso(), std::string(taken_format), 0, 0});
  return picture;
}

std::string named(const std::vector<std::string>& files) {
  constexpr std::size_t most = 20;
  const auto shown = std::min(files.size(), most);
  auto text = fmt::format(
      "{}", fmt::join(files.begin(), files.begin() + static_cast<std::ptrdiff_t>(shown), ", "));
  return files.size() > most ? text + phrase(" and {} more", files.size() - most) : text;
}

} // namespace

std::optional<Date> taken_on(const std::string& file) {
  const std::unique_ptr<ExifData, void (*)(ExifData*)> exif(exif_data_new_from_file(file.c_str()),
                                                            exif_data_unref);
  if (!exif)
    return std::nullopt;
  for (const auto& [part, tag] : {std::pair(EXIF_IFD_EXIF, EXIF_TAG_DATE_TIME_ORIGINAL),
                                  {EXIF_IFD_EXIF, EXIF_TAG_DATE_TIME_DIGITIZED},
                                  {EXIF_IFD_0, EXIF_TAG_DATE_TIME}})
    if (const auto day = day_of(exif->ifd[part], tag))
      return day;
  return std::nullopt;
}

Result<std::vector<std::string>> pictures_in(const fs::path& folder) {
  std::error_code error;
  if (!fs::is_directory(folder, error))
    return refuse(fault(phrase("there is no folder '{}'", folder.string()),
                        "Name the folder that holds the pictures."));
  std::vector<std::string> files;
  for (fs::directory_iterator each(folder, error), end; !error && each != end;
       each.increment(error))
    if (each->is_regular_file(error) && !each->path().filename().string().starts_with('.'))
      files.push_back(each->path().string());
  if (files.empty())
    return refuse(fault(phrase("there is no picture in '{}'", folder.string()),
                        "Copy the pictures into it."));
  std::ranges::sort(files);
  return files;
}

std::vector<BenchPicture> read_bench_pictures(std::span<const std::string> files,
                                              const std::function<void(std::size_t)>& progress) {
  std::vector<BenchPicture> pictures;
  for (auto& read : read_apart(files, read_with_day, {}, progress)) {
    BenchPicture picture{fs::path(read.file).filename().string(), {}, {}, read.error};
    for (const auto& code : read.codes) {
      if (code.format != taken_format)
        picture.texts.push_back(code.text);
      else if (const auto day = Date::parse(code.text))
        picture.taken = *day;
    }
    pictures.push_back(std::move(picture));
  }
  return pictures;
}

Result<std::vector<work::ReadLabel>> labels_read(std::span<const BenchPicture> pictures,
                                                 std::optional<Date> otherwise, Date today) {
  std::vector<work::ReadLabel> labels;
  std::vector<std::string> undated;
  std::vector<std::string> ahead;
  for (const auto& picture : pictures) {
    if (picture.texts.empty())
      continue;
    const auto on = picture.taken ? picture.taken : otherwise;
    if (!on)
      undated.push_back(picture.file);
    else if (*on > today)
      ahead.push_back(fmt::format("{} ({})", picture.file, on->iso()));
    else
      for (const auto& text : picture.texts)
        labels.push_back({text, picture.file, *on});
  }
  if (!undated.empty())
    return refuse(fault(phrase("{} pictures do not say on which day they were taken: {}",
                               undated.size(), named(undated)),
                        "Give their day with --on."));
  if (!ahead.empty())
    return refuse(fault(
        phrase("{} pictures are of a day after {}: {}", ahead.size(), today.said(), named(ahead)),
        "Set the camera's clock; take these out, or give the right day."));
  return labels;
}

} // namespace coneline::labels
