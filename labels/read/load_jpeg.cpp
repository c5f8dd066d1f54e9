// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/load_jpeg.h"

// jpeglib.h needs these before it.
#include <algorithm>
#include <csetjmp>
#include <cstddef>
#include <cstdio>
#include <jerror.h>
#include <jpeglib.h>

namespace coneline::labels {

namespace {

/// libjpeg calls back in C; errors leave by longjmp, past no object that needs destroying.
struct Reading {
  jpeg_decompress_struct jpeg{};
  jpeg_error_mgr errors{};
  std::jmp_buf stop{};
  bool damaged = false;
  int stray = 0; ///< bytes between parts that belong to none
};

Reading& reading_of(j_common_ptr jpeg) {
  return *static_cast<Reading*>(jpeg->client_data);
}

[[noreturn]] void leave(j_common_ptr jpeg) {
  std::longjmp(reading_of(jpeg).stop, 1);
}

/// Level -1 is a warning.
void note(j_common_ptr jpeg, int level) {
  if (level >= 0)
    return;
  switch (jpeg->err->msg_code) {
  case JWRN_HIT_MARKER:
  case JWRN_HUFF_BAD_CODE:
  case JWRN_MUST_RESYNC:
  case JWRN_NOT_SEQUENTIAL:
  case JWRN_BOGUS_PROGRESSION:
  case JWRN_JPEG_EOF:
    reading_of(jpeg).damaged = true;
    break;
  case JWRN_EXTRANEOUS_DATA:
    reading_of(jpeg).stray = jpeg->err->msg_parm.i[0];
    break;
  default:
    break;
  }
}

/// Bytes left over before the end are what spoilt pixels leave, unless they are mere padding, as
/// some cameras write it.
bool is_padding(std::string_view bytes, std::size_t stray) {
  if (stray == 0)
    return true;
  const auto end = bytes.rfind("\xFF\xD9");
  if (end == std::string_view::npos || stray > end)
    return false;
  return std::ranges::all_of(bytes.substr(end - stray, stray),
                             [](char c) { return c == '\0' || c == '\xFF'; });
}

/// Fills `picture`; false when libjpeg gave up on the way.
bool read(Reading& reading, std::string_view bytes, QImage& picture) {
  auto& jpeg = reading.jpeg;
  jpeg.client_data = &reading;
  jpeg.err = jpeg_std_error(&reading.errors);
  reading.errors.error_exit = leave;
  reading.errors.emit_message = note;
  if (setjmp(reading.stop) != 0)
    return false;
  jpeg_create_decompress(&jpeg);
  jpeg.client_data = &reading;
  jpeg_mem_src(&jpeg, reinterpret_cast<const unsigned char*>(bytes.data()),
               static_cast<unsigned long>(bytes.size()));
  jpeg_read_header(&jpeg, TRUE);
  if (jpeg.jpeg_color_space == JCS_CMYK || jpeg.jpeg_color_space == JCS_YCCK ||
      jpeg.jpeg_color_space == JCS_UNKNOWN)
    return true;
  jpeg.out_color_space = JCS_GRAYSCALE;
  jpeg_start_decompress(&jpeg);
  picture = QImage(static_cast<int>(jpeg.output_width), static_cast<int>(jpeg.output_height),
                   QImage::Format_Grayscale8);
  if (picture.isNull())
    return false;
  picture.fill(Qt::gray);
  while (jpeg.output_scanline < jpeg.output_height) {
    JSAMPROW row = picture.scanLine(static_cast<int>(jpeg.output_scanline));
    jpeg_read_scanlines(&jpeg, &row, 1);
  }
  jpeg_finish_decompress(&jpeg);
  return true;
}

} // namespace

Jpeg load_jpeg(std::string_view bytes) {
  Reading reading;
  Jpeg loaded;
  loaded.damaged = !read(reading, bytes, loaded.picture);
  loaded.damaged = loaded.damaged || reading.damaged ||
                   !is_padding(bytes, static_cast<std::size_t>(reading.stray));
  jpeg_destroy_decompress(&reading.jpeg);
  return loaded;
}

} // namespace coneline::labels
