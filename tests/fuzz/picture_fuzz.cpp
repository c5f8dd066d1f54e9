// SPDX-License-Identifier: GPL-3.0-or-later
// Picture files as cameras and mail leave them, and as they do not: whether they have their end,
// the lightness of a JPEG, and the codes in a small picture of any pixels.
#include "labels/read/file_end.h"
#include "labels/read/load_jpeg.h"
#include "labels/read/read_codes.h"
#include "tests/fuzz/must.h"

#include <vector>

using namespace coneline::labels;
using coneline::fuzz::must;

namespace {

/// The first byte says how wide, the rest are pixels; each is drawn four times as wide and high,
/// so that modules are large enough to be found.
void as_pixels(const std::uint8_t* data, std::size_t size) {
  const int wide = data[0] % 64 + 8;
  const int high = static_cast<int>((size - 1) / static_cast<std::size_t>(wide));
  if (high < 8 || high > 72)
    return;
  GrayImage picture(wide * 4, high * 4);
  for (int y = 0; y < high * 4; ++y)
    for (int x = 0; x < wide * 4; ++x)
      picture.row(y)[x] = data[1 + (y / 4) * wide + x / 4];
  for (const auto& code : read_codes(picture.view()))
    must(code.x >= 0 && code.x <= wide * 4 && code.y >= 0 && code.y <= high * 4,
         "a code lies in its picture");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size < 2)
    return 0;
  const auto bytes = coneline::fuzz::text_of(data, size);
  static_cast<void>(what_is_missing(bytes));
  if (bytes.starts_with("\xFF\xD8"))
    static_cast<void>(load_jpeg(bytes));
  else
    as_pixels(data, size);
  return 0;
}
