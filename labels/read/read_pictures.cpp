// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/read_pictures.h"

#include "labels/read/apart.h"
#include "labels/read/load_picture.h"
#include "labels/read/read_codes.h"

namespace coneline::labels {

ReadPicture read_picture(const std::string& file) {
  const auto loaded = load_picture(file);
  ReadPicture read{file, {}, loaded.error};
  if (!loaded.picture.isNull())
    read.codes = read_codes(loaded.view());
  return read;
}

std::vector<ReadPicture> read_pictures(std::span<const std::string> files,
                                       const std::function<void(std::size_t)>& progress) {
  return read_apart(files, read_picture, {}, progress);
}

} // namespace coneline::labels
