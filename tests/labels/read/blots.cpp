// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/labels/read/blots.h"

#include "labels/read/survive.h"

#define ZX_USE_UTF8
#include <ZXing/ReadBarcode.h>

#include <algorithm>
#include <array>
#include <numbers>

namespace coneline::labels {

namespace {

bool covers(const Blot& blot, double x, double y) {
  const double turn = blot.turn * std::numbers::pi / 180;
  const double along = (x - blot.x) * std::cos(turn) + (y - blot.y) * std::sin(turn);
  const double aside = (y - blot.y) * std::cos(turn) - (x - blot.x) * std::sin(turn);
  return std::hypot(along, aside / blot.flat) <= blot.radius;
}

bool touches_a_square(const Blot& blot, int modules) {
  const std::array<std::pair<double, double>, 3> squares{
      {{0, 0}, {modules - 7.0, 0}, {0, modules - 7.0}}};
  return std::ranges::any_of(squares, [&](const auto& corner) {
    const double x = std::clamp(blot.x, corner.first, corner.first + 7);
    const double y = std::clamp(blot.y, corner.second, corner.second + 7);
    return std::hypot(x - blot.x, y - blot.y) < blot.radius;
  });
}

} // namespace

std::vector<Blot> make_blots(double share, int modules, bool corners_clean, Chance& chance) {
  std::vector<Blot> blots;
  constexpr int fine = 4; // places looked at along a module
  const auto across = static_cast<std::size_t>(modules * fine);
  std::vector<bool> covered(across * across, false);
  const auto wanted = static_cast<std::size_t>(share * static_cast<double>(covered.size()));
  std::size_t so_far = 0;
  for (int tries = 0; so_far < wanted && tries < 1000; ++tries) {
    const double room = std::sqrt(static_cast<double>(wanted - so_far)) / fine;
    Blot blot{chance.between(0, modules),
              chance.between(0, modules),
              std::min(chance.between(0.5, 2.2), 0.35 + room * 0.6),
              chance.between(0.5, 1),
              chance.between(0, 360),
              QColor()};
    const int light = chance.whole(30, 130); // mud, wet or drying
    blot.colour = QColor(light + 15, light, light * 3 / 4);
    if (corners_clean && touches_a_square(blot, modules))
      continue;
    for (std::size_t i = 0; i < covered.size(); ++i)
      if (!covered[i] && covers(blot, (static_cast<double>(i % across) + 0.5) / fine,
                                (static_cast<double>(i / across) + 0.5) / fine)) {
        covered[i] = true;
        ++so_far;
      }
    blots.push_back(blot);
  }
  return blots;
}

void draw_blots(QPainter& painter, const std::vector<Blot>& blots) {
  painter.save();
  painter.setPen(Qt::NoPen);
  painter.setRenderHint(QPainter::Antialiasing);
  for (const auto& blot : blots) {
    painter.save();
    painter.translate(blot.x, blot.y);
    painter.rotate(blot.turn);
    painter.setBrush(blot.colour);
    painter.drawEllipse(QPointF(), blot.radius, blot.radius * blot.flat);
    painter.restore();
  }
  painter.restore();
}

int plain_pass(const QImage& picture, int most) {
  const auto grey = picture.convertToFormat(QImage::Format_Grayscale8);
  const auto hints = ZXing::DecodeHints()
                         .setFormats(ZXing::BarcodeFormat::QRCode)
                         .setMaxNumberOfSymbols(static_cast<std::uint8_t>(most));
  ZXing::Results results;
  survives([&] {
    results = ZXing::ReadBarcodes({grey.constBits(), grey.width(), grey.height(),
                                   ZXing::ImageFormat::Lum, static_cast<int>(grey.bytesPerLine())},
                                  hints);
  });
  return static_cast<int>(
      std::ranges::count_if(results, [](const auto& result) { return result.isValid(); }));
}

} // namespace coneline::labels
