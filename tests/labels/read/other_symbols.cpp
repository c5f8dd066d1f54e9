// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/labels/read/other_symbols.h"

#define ZX_USE_UTF8
#include <ZXing/BitMatrix.h>
#include <ZXing/MultiFormatWriter.h>

namespace coneline::labels {

QImage other_symbol(const std::string& text, OtherSymbol kind, int scale) {
  const auto format = kind == OtherSymbol::qr            ? ZXing::BarcodeFormat::QRCode
                      : kind == OtherSymbol::data_matrix ? ZXing::BarcodeFormat::DataMatrix
                                                         : ZXing::BarcodeFormat::Code128;
  auto writer = ZXing::MultiFormatWriter(format).setMargin(0);
  writer.setEncoding(ZXing::CharacterSet::UTF8);
  const auto bits = writer.encode(text, 0, kind == OtherSymbol::code_128 ? 40 : 0);
  const int border = kind == OtherSymbol::code_128 ? 12 : 4;
  const int across = bits.width() + 2 * border;
  const int down = bits.height() + 2 * border;
  QImage image(across * scale, down * scale, QImage::Format_Grayscale8);
  image.fill(255);
  for (int y = border * scale; y < (down - border) * scale; ++y)
    for (int x = border * scale; x < (across - border) * scale; ++x)
      if (bits.get(x / scale - border, y / scale - border))
        image.scanLine(y)[x] = 0;
  return image;
}

} // namespace coneline::labels
