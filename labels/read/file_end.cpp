// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/file_end.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <cstdint>

namespace coneline::labels {

namespace {

using std::string_view_literals::operator""sv;

std::uint32_t byte_at(std::string_view bytes, std::size_t i) {
  return static_cast<unsigned char>(bytes[i]);
}

std::uint64_t number_at(std::string_view bytes, std::size_t from, std::size_t length,
                        bool low_first) {
  std::uint64_t number = 0;
  for (std::size_t i = 0; i < length; ++i)
    number = number << 8U | byte_at(bytes, low_first ? from + length - 1 - i : from + i);
  return number;
}

/// Walks the markers (ITU-T T.81, annex B): a segment has its length, the coded pixels after a scan
/// header go on to the next marker that is neither a stuffed zero nor a restart.
std::optional<std::string> missing_of_jpeg(std::string_view bytes) {
  constexpr std::uint32_t start_of_scan = 0xDA;
  constexpr std::uint32_t end_of_image = 0xD9;
  bool pixels = false;
  std::size_t i = 2;
  while (i + 1 < bytes.size()) {
    if (byte_at(bytes, i) != 0xFF) {
      ++i; // coded pixels, or stray bytes before a marker
      continue;
    }
    const auto marker = byte_at(bytes, i + 1);
    if (marker == end_of_image)
      return std::nullopt;
    const bool bare = marker == 0 || marker == 0x01 || (marker >= 0xD0 && marker <= 0xD8);
    if (marker == 0xFF) {
      ++i;
      continue;
    }
    i += 2;
    if (bare)
      continue;
    pixels = pixels || marker == start_of_scan;
    if (i + 2 > bytes.size())
      break;
    i += static_cast<std::size_t>(number_at(bytes, i, 2, false));
  }
  return pixels ? "the JPEG file ends before its picture does"
                : "the JPEG file ends before its picture begins";
}

std::optional<std::string> missing_of_png(std::string_view bytes) {
  std::size_t i = 8;
  while (i + 12 <= bytes.size()) {
    const auto length = number_at(bytes, i, 4, false);
    if (bytes.substr(i + 4, 4) == "IEND"sv)
      return std::nullopt;
    if (length > bytes.size() - i - 12)
      return phrase("the PNG file ends {} bytes before the end of a part",
                    length - (bytes.size() - i - 12));
    i += static_cast<std::size_t>(length) + 12;
  }
  return "the PNG file has no end";
}

/// A length written in the file's own header, which the file must have.
std::optional<std::string> missing_of_length(std::string_view kind, std::uint64_t stated,
                                             std::size_t bytes) {
  if (bytes >= stated)
    return std::nullopt;
  return phrase("the {} file has {} bytes, {} fewer than it says", kind, bytes, stated - bytes);
}

/// Passes over the blocks of a GIF (version 89a) up to its trailer.
std::optional<std::string> missing_of_gif(std::string_view bytes) {
  const auto cut = "the GIF file ends before its picture does";
  const auto colours = [](std::uint32_t flags) -> std::size_t {
    return (flags & 0x80U) != 0 ? std::size_t{3} << ((flags & 7U) + 1) : 0;
  };
  if (bytes.size() < 13)
    return cut;
  std::size_t i = 13 + colours(byte_at(bytes, 10));
  while (i < bytes.size()) {
    const auto kind = byte_at(bytes, i);
    if (kind == 0x3B)
      return std::nullopt;
    if (kind == 0x2C) {
      if (i + 10 > bytes.size())
        return cut;
      i += 10 + colours(byte_at(bytes, i + 9)) + 1;
    } else if (kind == 0x21) {
      i += 2;
    } else {
      return "the GIF file is damaged";
    }
    while (i < bytes.size() && byte_at(bytes, i) != 0)
      i += byte_at(bytes, i) + 1;
    ++i;
  }
  return cut;
}

} // namespace

std::optional<std::string> what_is_missing(std::string_view bytes) {
  if (bytes.starts_with("\xFF\xD8\xFF"sv))
    return missing_of_jpeg(bytes);
  if (bytes.starts_with("\x89PNG\r\n\x1A\n"sv))
    return missing_of_png(bytes);
  if (bytes.starts_with("GIF8"sv))
    return missing_of_gif(bytes);
  if (bytes.starts_with("BM"sv) && bytes.size() >= 6)
    return missing_of_length("BMP", number_at(bytes, 2, 4, true), bytes.size());
  if (bytes.starts_with("RIFF"sv) && bytes.size() >= 12 && bytes.substr(8, 4) == "WEBP"sv)
    return missing_of_length("WebP", number_at(bytes, 4, 4, true) + 8, bytes.size());
  return std::nullopt;
}

} // namespace coneline::labels
