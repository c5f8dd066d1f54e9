// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/load_picture.h"

#include "core/base/phrase.h"
#include "labels/read/file_end.h"
#include "labels/read/load_jpeg.h"

#include <QBuffer>
#include <QByteArray>
#include <QImageReader>
#include <QTransform>
#include <fmt/format.h>

#include <cstring>
#include <filesystem>
#include <fstream>
#include <string_view>
#include <system_error>

namespace coneline::labels {

namespace {

constexpr int megabytes_of_pixels = 4 * most_pixels / 1'000'000;

LoadedPicture failed(std::string why) {
  return {QImage(), std::move(why)};
}

double millions(std::int64_t pixels) {
  return static_cast<double>(pixels) / 1e6;
}

/// The whole file, or why not.
std::optional<std::string> read_bytes(const std::string& path, QByteArray& bytes) {
  std::error_code problem;
  const auto status = std::filesystem::status(path, problem);
  if (!std::filesystem::exists(status))
    return "there is no such file";
  if (!std::filesystem::is_regular_file(status))
    return "this is no file with a picture";
  const auto size = static_cast<std::int64_t>(std::filesystem::file_size(path, problem));
  if (problem)
    return phrase("the file cannot be read: {}", problem.message());
  if (size == 0)
    return "the file is empty";
  if (size > most_bytes)
    return phrase("the file is too large: {:.0f} MB, {:.0f} MB more than is read. Save the "
                  "picture smaller",
                  millions(size), millions(size - most_bytes));
  std::ifstream in(path, std::ios::binary);
  bytes.resize(size);
  in.read(bytes.data(), size);
  if (!in)
    return "the file cannot be read; check who may read it";
  return std::nullopt;
}

/// What is see-through is seen on white paper.
QImage in_grey(const QImage& picture) {
  if (!picture.hasAlphaChannel())
    return picture.convertToFormat(QImage::Format_Grayscale8);
  auto mixed = picture.convertToFormat(QImage::Format_ARGB32_Premultiplied);
  for (int y = 0; y < mixed.height(); ++y) {
    auto* row = mixed.scanLine(y);
    for (int x = 0; x < mixed.width(); ++x) {
      auto* pixel = row + std::ptrdiff_t{4} * x;
      QRgb colour = 0;
      std::memcpy(&colour, pixel, sizeof colour);
      const int white = 255 - qAlpha(colour);
      colour = qRgba(qRed(colour) + white, qGreen(colour) + white, qBlue(colour) + white, 255);
      std::memcpy(pixel, &colour, sizeof colour);
    }
  }
  return mixed.convertToFormat(QImage::Format_RGB32).convertToFormat(QImage::Format_Grayscale8);
}

/// As the picture is shown: EXIF says how the camera was held.
QImage turned(const QImage& picture, QImageIOHandler::Transformations how) {
  const auto upright = picture.mirrored(how.testFlag(QImageIOHandler::TransformationMirror),
                                        how.testFlag(QImageIOHandler::TransformationFlip));
  return how.testFlag(QImageIOHandler::TransformationRotate90)
             ? upright.transformed(QTransform().rotate(90))
             : upright;
}

/// Reads by libjpeg what it can, all else by Qt, and tells of damage.
LoadedPicture loaded_by(QImageReader& reader, std::string_view bytes,
                        const std::optional<std::string>& missing) {
  LoadedPicture loaded;
  if (missing)
    loaded.error = *missing + phrase(". Take or copy the picture again");
  std::string damage;
  if (reader.format() == "jpeg") {
    const auto jpeg = load_jpeg(bytes);
    loaded.picture = turned(jpeg.picture, reader.transformation());
    if (jpeg.damaged)
      damage = "the picture is damaged: parts of it are missing or wrong. Take or copy it again";
  }
  if (loaded.picture.isNull()) {
    QImage picture;
    if (!reader.read(&picture))
      damage = phrase("the picture is damaged ({}). Take or copy it again",
                      reader.errorString().toStdString());
    if (!picture.isNull())
      loaded.picture = in_grey(picture);
  }
  if (!loaded.error && !damage.empty())
    loaded.error = damage;
  return loaded;
}

/// The PNG library takes compressed pixels in blocks of 4096 bytes and gives up a block that the
/// file's end cuts, with all the rows in it. Zeros fill it up; they are no rows.
void fill_last_block(QByteArray& bytes) {
  constexpr qsizetype two_blocks = 8192;
  if (bytes.startsWith("\x89PNG"))
    bytes.append(two_blocks, '\0');
}

/// Told from the file itself, since the format's reader is a package that may not be there.
bool is_drawing(const QByteArray& bytes) {
  constexpr int far_enough = 4096; // past a prolog, a document type and a remark
  const auto begins = bytes.left(far_enough);
  const auto first = begins.indexOf('<');
  return first >= 0 && begins.left(first).simplified().size() <= 3 && // blanks, a byte order mark
         begins.contains("<svg");
}

} // namespace

LoadedPicture load_picture(const std::string& path) {
  QByteArray bytes;
  if (auto problem = read_bytes(path, bytes))
    return failed(*std::move(problem));
  const auto missing = what_is_missing({bytes.constData(), static_cast<std::size_t>(bytes.size())});
  if (missing)
    fill_last_block(bytes);
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::ReadOnly);
  QImageReader reader(&buffer);
  reader.setDecideFormatFromContent(true);
  reader.setAutoTransform(true);
  QImageReader::setAllocationLimit(megabytes_of_pixels);
  const auto format = reader.format();
  if (format.startsWith("svg") || is_drawing(bytes))
    return failed("the file is a drawing (SVG), not a picture; save it as PNG");
  if (format.isEmpty() || format == "pdf")
    return failed("the file is no picture of a known kind; JPEG and PNG are read");
  const auto size = reader.size();
  const auto pixels = std::int64_t{size.width()} * size.height();
  if (size.isValid() && pixels > most_pixels)
    return failed(phrase("the picture is too large: {} × {} pixels are {:.0f} million, {:.0f} "
                         "million more than are read. Save it smaller",
                         size.width(), size.height(), millions(pixels),
                         millions(pixels - most_pixels)));
  return loaded_by(reader, {bytes.constData(), static_cast<std::size_t>(bytes.size())}, missing);
}

} // namespace coneline::labels
