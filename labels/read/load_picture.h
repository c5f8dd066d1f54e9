// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A picture file as grey pixels, turned the way it is shown.

#include "labels/read/gray.h"

#include <QImage>

#include <cstdint>
#include <optional>
#include <string>

namespace coneline::labels {

/// Pixels of the largest picture that is read: twice what large telephone sensors give.
constexpr std::int64_t most_pixels = 120'000'000;
/// Bytes of the largest file that is read.
constexpr std::int64_t most_bytes = 512'000'000;

/// `picture` is null when nothing could be read. `error` is set when the file is no picture, is
/// damaged or ends too early; the pixels that could be read are there all the same.
struct LoadedPicture {
  QImage picture; ///< QImage::Format_Grayscale8
  std::optional<std::string> error;

  [[nodiscard]] GrayView view() const {
    return {picture.constBits(), picture.width(), picture.height(), picture.bytesPerLine()};
  }
};

/// Reads JPEG, PNG, BMP, GIF (its first picture), PPM and what else Qt has a reader for; drawings
/// (SVG) are refused. The kind is told from the content, not from the name. `path` is taken as it
/// was given by the operating system.
LoadedPicture load_picture(const std::string& path);

} // namespace coneline::labels
