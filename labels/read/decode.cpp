// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/decode.h"

#include "labels/read/survive.h"

#define ZX_USE_UTF8
#include <ZXing/ReadBarcode.h>

#include <algorithm>

namespace coneline::labels {

namespace {

ZXing::ImageView lens(GrayView picture) {
  return {picture.data, picture.width, picture.height, ZXing::ImageFormat::Lum,
          static_cast<int>(picture.stride)};
}

Sighting sighting(const ZXing::Result& result) {
  Sighting seen{result.text(), ZXing::ToString(result.format()), {}};
  for (std::size_t i = 0; i < seen.corners.size(); ++i) {
    const auto corner = result.position()[static_cast<int>(i)];
    seen.corners[i] = {static_cast<double>(corner.x), static_cast<double>(corner.y)};
  }
  return seen;
}

/// The library gives symbols without any text too, made of the remains of one.
bool says_something(const ZXing::Result& result) {
  return result.isValid() && !result.text().empty();
}

std::optional<Sighting> first(GrayView picture, const ZXing::DecodeHints& hints) {
  ZXing::Result result;
  survives([&] { result = ZXing::ReadBarcode(lens(picture), hints); });
  if (!says_something(result))
    return std::nullopt;
  return sighting(result);
}

} // namespace

std::vector<Sighting> decode_qr(GrayView picture, Threshold threshold, int most) {
  if (picture.width < 21 || picture.height < 21)
    return {};
  auto hints = ZXing::DecodeHints()
                   .setFormats(ZXing::BarcodeFormat::QRCode)
                   .setTryDownscale(false)
                   .setTryRotate(false) // its QR search sees every turn by itself
                   .setMaxNumberOfSymbols(static_cast<std::uint8_t>(std::clamp(most, 1, 255)))
                   .setBinarizer(threshold == Threshold::one ? ZXing::Binarizer::GlobalHistogram
                                                             : ZXing::Binarizer::LocalAverage);
  ZXing::Results results;
  survives([&] { results = ZXing::ReadBarcodes(lens(picture), hints); });
  std::vector<Sighting> seen;
  for (const auto& result : results)
    if (says_something(result))
      seen.push_back(sighting(result));
  return seen;
}

std::optional<Sighting> decode_clean_qr(GrayView picture) {
  const auto hints = ZXing::DecodeHints()
                         .setFormats(ZXing::BarcodeFormat::QRCode)
                         .setTryDownscale(false)
                         .setIsPure(true)
                         .setBinarizer(ZXing::Binarizer::BoolCast);
  return first(picture, hints);
}

std::optional<Sighting> decode_lone(GrayView picture) {
  if (picture.width < 8 || picture.height < 8)
    return std::nullopt;
  const auto hints = ZXing::DecodeHints().setFormats(ZXing::BarcodeFormat::DataMatrix |
                                                     ZXing::BarcodeFormat::Code128);
  return first(picture, hints);
}

} // namespace coneline::labels
