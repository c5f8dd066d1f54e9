// SPDX-License-Identifier: GPL-3.0-or-later
#include "frame_gray.h"

#include <QImage>

namespace coneline::window {

namespace {

using labels::GrayImage;
using Format = QVideoFrameFormat::PixelFormat;

/// Where the lightness of a pixel stands: every `step` bytes from `first`, one or two bytes each.
struct Lightness {
  int step = 1;
  int first = 0;
  int shift = 0; ///< of a little-endian two-byte value; 0: one byte
};

std::optional<Lightness> lightness_of(Format format) {
  switch (format) {
  case Format::Format_YUV420P:
  case Format::Format_YUV422P:
  case Format::Format_YV12:
  case Format::Format_NV12:
  case Format::Format_NV21:
  case Format::Format_IMC1:
  case Format::Format_IMC2:
  case Format::Format_IMC3:
  case Format::Format_IMC4:
  case Format::Format_Y8:
    return Lightness{};
  case Format::Format_UYVY:
    return Lightness{2, 1, 0};
  case Format::Format_YUYV:
    return Lightness{2, 0, 0};
  case Format::Format_AYUV:
  case Format::Format_AYUV_Premultiplied:
    return Lightness{4, 1, 0};
  case Format::Format_Y16:
  case Format::Format_P010: // ten bits at the upper end of sixteen
  case Format::Format_P016:
    return Lightness{2, 0, 8};
  case Format::Format_YUV420P10: // ten bits at the lower end
    return Lightness{2, 0, 2};
  default:
    return std::nullopt;
  }
}

/// Byte places of red, green and blue among four.
struct Colours {
  int red = 0;
  int green = 1;
  int blue = 2;
};

std::optional<Colours> colours_of(Format format) {
  switch (format) {
  case Format::Format_ARGB8888:
  case Format::Format_ARGB8888_Premultiplied:
  case Format::Format_XRGB8888:
    return Colours{1, 2, 3};
  case Format::Format_BGRA8888:
  case Format::Format_BGRA8888_Premultiplied:
  case Format::Format_BGRX8888:
    return Colours{2, 1, 0};
  case Format::Format_ABGR8888:
  case Format::Format_XBGR8888:
    return Colours{3, 2, 1};
  case Format::Format_RGBA8888:
  case Format::Format_RGBX8888:
    return Colours{0, 1, 2};
  default:
    return std::nullopt;
  }
}

std::uint8_t byte_of(const std::uint8_t* at, int shift) {
  if (shift == 0)
    return *at;
  return static_cast<std::uint8_t>(std::min((at[0] | (at[1] << 8)) >> shift, 255));
}

GrayImage take(const QVideoFrame& frame, const Lightness& where) {
  GrayImage gray(frame.width(), frame.height());
  for (int y = 0; y < frame.height(); ++y) {
    const auto* from = frame.bits(0) + static_cast<qsizetype>(y) * frame.bytesPerLine(0);
    auto* to = gray.row(y);
    for (int x = 0; x < frame.width(); ++x)
      to[x] = byte_of(from + x * where.step + where.first, where.shift);
  }
  return gray;
}

GrayImage take(const QVideoFrame& frame, const Colours& where) {
  GrayImage gray(frame.width(), frame.height());
  for (int y = 0; y < frame.height(); ++y) {
    const auto* from = frame.bits(0) + static_cast<qsizetype>(y) * frame.bytesPerLine(0);
    auto* to = gray.row(y);
    for (int x = 0; x < frame.width(); ++x, from += 4)
      to[x] =
          static_cast<std::uint8_t>(qGray(from[where.red], from[where.green], from[where.blue]));
  }
  return gray;
}

std::optional<GrayImage> take(const QImage& image) {
  if (image.isNull())
    return std::nullopt;
  const auto lightness = image.convertToFormat(QImage::Format_Grayscale8);
  GrayImage gray(lightness.width(), lightness.height());
  for (int y = 0; y < lightness.height(); ++y)
    std::copy_n(lightness.constScanLine(y), lightness.width(), gray.row(y));
  return gray;
}

/// True where the mapped plane is as large as reading it needs.
bool whole(const QVideoFrame& frame, int bytes_a_pixel) {
  return frame.bits(0) != nullptr && frame.width() > 0 && frame.height() > 0 &&
         frame.bytesPerLine(0) >= frame.width() * bytes_a_pixel &&
         frame.mappedBytes(0) >=
             frame.bytesPerLine(0) * (frame.height() - 1) + frame.width() * bytes_a_pixel;
}

} // namespace

std::optional<GrayImage> gray_of(QVideoFrame frame) {
  const auto format = frame.pixelFormat();
  const auto lightness = lightness_of(format);
  const auto colours = colours_of(format);
  if (!lightness && !colours && format != Format::Format_Jpeg)
    return take(frame.toImage()); // a texture: Qt knows how to fetch it
  if (!frame.map(QVideoFrame::ReadOnly))
    return std::nullopt;
  std::optional<GrayImage> gray;
  if (format == Format::Format_Jpeg)
    gray = take(QImage::fromData(frame.bits(0), frame.mappedBytes(0)));
  else if (lightness && whole(frame, lightness->step))
    gray = take(frame, *lightness);
  else if (colours && whole(frame, 4))
    gray = take(frame, *colours);
  frame.unmap();
  return gray;
}

} // namespace coneline::window
