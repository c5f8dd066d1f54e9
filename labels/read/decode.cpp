// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/decode.h"

#include "labels/read/survive.h"

#define ZX_USE_UTF8
#include <ZXing/ReadBarcode.h>

#include <algorithm>
#include <cmath>

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

double grey_at(GrayView picture, Point at) {
  const int x = std::clamp(static_cast<int>(std::lround(at.x)), 0, picture.width - 1);
  const int y = std::clamp(static_cast<int>(std::lround(at.y)), 0, picture.height - 1);
  return picture.row(y)[x];
}

/// The library says where the one line runs along which it read the bars. They reach as far to
/// either side as the same dark and light is met there.
void reach_to_ends_of_bars(GrayView picture, Sighting& seen) {
  constexpr int samples = 256;
  constexpr double alike = 0.85;
  const auto from = seen.corners[0];
  const auto to = seen.corners[1];
  const double length = std::hypot(to.x - from.x, to.y - from.y);
  if (length < 1)
    return;
  const Point across{-(to.y - from.y) / length, (to.x - from.x) / length};
  const auto row = [&](int away) {
    std::array<double, samples> greys{};
    for (int i = 0; i < samples; ++i) {
      const double part = (i + 0.5) / samples;
      greys[static_cast<std::size_t>(i)] =
          grey_at(picture, {from.x + part * (to.x - from.x) + away * across.x,
                            from.y + part * (to.y - from.y) + away * across.y});
    }
    return greys;
  };
  const auto read = row(0);
  const auto [darkest, lightest] = std::ranges::minmax(read);
  const double limit = (darkest + lightest) / 2;
  const auto is_of_the_bars = [&](int away) {
    const auto here = row(away);
    int same = 0;
    for (std::size_t i = 0; i < samples; ++i)
      same += (here[i] < limit) == (read[i] < limit) ? 1 : 0;
    return same >= alike * samples;
  };
  const auto ends = [&](int step) {
    const int most = std::max(picture.width, picture.height);
    int away = 0;
    while (std::abs(away) < most && is_of_the_bars(away + step))
      away += step;
    return away;
  };
  const int above = ends(-1);
  const int below = ends(1);
  const auto moved = [&](Point at, int away) {
    return Point{at.x + away * across.x, at.y + away * across.y};
  };
  seen.corners = {moved(from, above), moved(to, above), moved(to, below), moved(from, below)};
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
  auto seen = first(picture, hints);
  if (seen && seen->format == "Code128")
    reach_to_ends_of_bars(picture, *seen);
  return seen;
}

std::optional<Sighting> decode_data_matrix(GrayView picture) {
  if (picture.width < 8 || picture.height < 8)
    return std::nullopt;
  return first(picture, ZXing::DecodeHints().setFormats(ZXing::BarcodeFormat::DataMatrix));
}

} // namespace coneline::labels
