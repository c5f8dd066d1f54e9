// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/labels/read/scene.h"

#include "core/base/code.h"
#include "labels/symbol/symbol.h"
#include "tests/labels/read/blots.h"
#include "tests/labels/read/chance.h"

#include <QBuffer>
#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>
#include <QTransform>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace coneline::labels {

namespace {

QImage ground(const SceneWish& wish, Chance& chance) {
  QImage picture(wish.width, wish.height, QImage::Format_RGB32);
  picture.fill(QColor(150, 140, 125));
  if (!wish.busy)
    return picture;
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  const int things = wish.width * wish.height / 1500;
  for (int i = 0; i < things; ++i) {
    const double x = chance.between(0, wish.width);
    const double y = chance.between(0, wish.height);
    const int kind = chance.whole(0, 9);
    painter.save();
    painter.translate(x, y);
    painter.rotate(chance.between(0, 360));
    if (kind < 4) { // gravel
      const int grey = chance.whole(60, 210);
      painter.setBrush(QColor(grey, grey - 8, grey - 20));
      const double size = chance.between(6, 40);
      painter.drawEllipse(QPointF(), size, size * chance.between(0.5, 1));
    } else if (kind < 8) { // leaflets
      painter.setBrush(QColor(chance.whole(20, 90), chance.whole(60, 150), chance.whole(20, 70)));
      const double length = chance.between(30, 160);
      painter.drawEllipse(QPointF(), length, length * chance.between(0.05, 0.2));
    } else if (kind == 8) { // slats and wires
      painter.setBrush(QColor(chance.whole(20, 60), chance.whole(20, 60), chance.whole(20, 60)));
      painter.drawRect(QRectF(-100, -3, 200, chance.between(3, 12)));
    } else { // rims of pots
      painter.setBrush(Qt::NoBrush);
      painter.setPen(QPen(QColor(chance.whole(20, 90), 40, 30), chance.between(3, 9)));
      painter.drawEllipse(QPointF(), chance.between(10, 90), chance.between(10, 90));
      painter.setPen(Qt::NoPen);
    }
    painter.restore();
  }
  return picture;
}

/// Paper with the code on it, the paper a little larger than the quiet zone.
void draw_label(QPainter& painter, const Symbol& symbol, const std::vector<Blot>& blots,
                const QTransform& place) {
  painter.save();
  painter.setTransform(place);
  const double n = symbol.size();
  painter.fillRect(QRectF(-quiet_modules - 0.5, -quiet_modules - 0.5, n + 2 * quiet_modules + 1,
                          n + 2 * quiet_modules + 1),
                   QColor(238, 238, 232));
  QPainterPath path;
  path.setFillRule(Qt::WindingFill);
  for (const auto& run : symbol.runs())
    path.addRect(run.column, run.row, run.length, 1.002);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillPath(path, QColor(28, 28, 30));
  draw_blots(painter, blots);
  painter.restore();
}

/// The label alone, as sharp and upright as can be, through the library.
bool library_reads(const Symbol& symbol, const std::vector<Blot>& blots) {
  constexpr int scale = 8;
  const int side = (symbol.size() + 2 * quiet_modules) * scale;
  QImage crop(side, side, QImage::Format_RGB32);
  crop.fill(Qt::white);
  {
    QPainter painter(&crop);
    draw_label(painter, symbol, blots,
               QTransform::fromTranslate(quiet_modules * scale, quiet_modules * scale)
                   .scale(scale, scale));
  }
  return plain_pass(crop, 1) == 1;
}

void blur(QImage& picture, double sigma) {
  if (sigma <= 0)
    return;
  const int reach = std::max(1, static_cast<int>(std::ceil(2.5 * sigma)));
  std::vector<double> weights;
  double total = 0;
  for (int i = -reach; i <= reach; ++i) {
    weights.push_back(std::exp(-i * i / (2 * sigma * sigma)));
    total += weights.back();
  }
  std::vector<int> parts;
  for (const double w : weights)
    parts.push_back(static_cast<int>(std::lround(w / total * 4096)));
  const int wide = picture.width();
  const int high = picture.height();
  const auto source = picture.copy();
  // Rows first, then columns, both along the rows of memory.
  QImage half = picture.copy();
  std::vector<int> sums(static_cast<std::size_t>(wide));
  const auto blend = [&](uchar* out, const auto& row_at) {
    std::ranges::fill(sums, 2048);
    for (int k = -reach; k <= reach; ++k) {
      const uchar* row = row_at(k);
      const int part = parts[static_cast<std::size_t>(k + reach)];
      for (int x = 0; x < wide; ++x)
        sums[static_cast<std::size_t>(x)] += part * row[x];
    }
    for (int x = 0; x < wide; ++x)
      out[x] = static_cast<uchar>(std::min(255, sums[static_cast<std::size_t>(x)] / 4096));
  };
  std::vector<uchar> padded(static_cast<std::size_t>(wide + 2 * reach));
  for (int y = 0; y < high; ++y) {
    const auto* row = source.constScanLine(y);
    for (int i = 0; i < wide + 2 * reach; ++i)
      padded[static_cast<std::size_t>(i)] = row[std::clamp(i - reach, 0, wide - 1)];
    blend(half.scanLine(y), [&](int k) { return padded.data() + k + reach; });
  }
  for (int y = 0; y < high; ++y)
    blend(picture.scanLine(y),
          [&](int k) { return half.constScanLine(std::clamp(y + k, 0, high - 1)); });
}

/// The mean along a short line.
void smear(QImage& picture, double length, double turn) {
  const int steps = std::max(2, static_cast<int>(std::ceil(length * 2)));
  const auto source = picture.copy();
  std::vector<std::pair<int, int>> offsets;
  for (int i = 0; i < steps; ++i) {
    const double along = (i / (steps - 1.0) - 0.5) * length;
    offsets.emplace_back(static_cast<int>(std::lround(along * std::cos(turn))),
                         static_cast<int>(std::lround(along * std::sin(turn))));
  }
  for (int y = 0; y < picture.height(); ++y) {
    auto* out = picture.scanLine(y);
    for (int x = 0; x < picture.width(); ++x) {
      int sum = 0;
      for (const auto& [dx, dy] : offsets)
        sum += source.constScanLine(std::clamp(
            y + dy, 0, picture.height() - 1))[std::clamp(x + dx, 0, picture.width() - 1)];
      out[x] = static_cast<uchar>(sum / steps);
    }
  }
}

void light_and_grain(QImage& picture, const SceneWish& wish, Chance& chance) {
  const double turn = chance.between(0, 2 * std::numbers::pi);
  const double period = chance.between(0.7, 1.6);
  std::vector<int> grains(1U << 16U);
  for (auto& grain : grains)
    grain = static_cast<int>(std::lround(wish.grain * chance.normal()));
  constexpr int step = 16; // light changes slowly
  for (int y = 0; y < picture.height(); ++y) {
    auto* row = picture.scanLine(y);
    const auto offset = static_cast<std::size_t>(chance.whole(0, 65535));
    int light = 0;
    for (int x = 0; x < picture.width(); ++x) {
      if (x % step == 0) {
        const double along = (x * std::cos(turn) + y * std::sin(turn)) / picture.width();
        const double wave = 0.5 + 0.5 * std::sin(2 * std::numbers::pi * period * along);
        light = static_cast<int>(1024 * (1 - wish.shade * wave));
      }
      const int grain = grains[(offset + static_cast<std::size_t>(x)) % grains.size()];
      row[x] = static_cast<uchar>(std::clamp(row[x] * light / 1024 + grain, 0, 255));
    }
  }
}

QImage through_jpeg(const QImage& picture, int quality) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  picture.save(&buffer, "JPG", quality);
  return QImage::fromData(bytes, "JPG");
}

/// A grid cell's label: its text, turned and tilted about the middle of the cell.
Placed place_label(QPainter& painter, const SceneWish& wish, QPointF cell, double room,
                   Chance& chance) {
  constexpr Kind kinds[] = {Kind::tray, Kind::pot_group, Kind::cone, Kind::plant};
  const auto code = Code::of(kinds[chance.whole(0, 3)], chance.whole(10, 99),
                             chance.whole(1, chance.whole(0, 1) == 0 ? 999 : 999'999))
                        .value()
                        .text();
  const auto symbol = symbol_of(code).value();
  const double paper = symbol.size() + 2 * quiet_modules + 1;
  // Turned by 45 degrees the paper is wider by the square root of two.
  const double module = std::min(chance.between(wish.least_module, wish.most_module),
                                 room / paper / (wish.turned ? 1.42 : 1.0));
  const double half = symbol.size() * module / 2;
  const double turn = wish.turned ? chance.between(0, 2 * std::numbers::pi) : 0;
  const double slack = (room - paper * module * (wish.turned ? 1.42 : 1.0)) / 2;
  const QPointF middle =
      cell + QPointF(chance.between(-slack, slack), chance.between(-slack, slack));
  QPolygonF from;
  QPolygonF to;
  for (const auto& [x, y] :
       {std::pair(-1, -1), std::pair(1, -1), std::pair(1, 1), std::pair(-1, 1)}) {
    from << QPointF((x + 1) * symbol.size() / 2.0, (y + 1) * symbol.size() / 2.0);
    const double px = x * half * (1 - chance.between(0, wish.tilt));
    const double py = y * half * (1 - chance.between(0, wish.tilt));
    to << middle + QPointF(px * std::cos(turn) - py * std::sin(turn),
                           px * std::sin(turn) + py * std::cos(turn));
  }
  QTransform place;
  QTransform::quadToQuad(from, to, place);
  const auto blots = make_blots(wish.dirt, symbol.size(), wish.corners_clean, chance);
  draw_label(painter, symbol, blots, place);
  const auto centre = place.map(QPointF(symbol.size() / 2.0, symbol.size() / 2.0));
  return {code, centre.x(), centre.y(), module, blots.empty() || library_reads(symbol, blots)};
}

} // namespace

Scene make_scene(const SceneWish& wish, std::uint64_t seed) {
  Chance chance(seed);
  Scene scene;
  auto picture = ground(wish, chance);
  const int across =
      std::max(1, static_cast<int>(std::ceil(
                      std::sqrt(wish.labels * static_cast<double>(wish.width) / wish.height))));
  const int down = std::max(1, (wish.labels + across - 1) / across);
  const double wide = static_cast<double>(wish.width) / across;
  const double high = static_cast<double>(wish.height) / down;
  {
    QPainter painter(&picture);
    for (int i = 0; i < wish.labels; ++i) {
      const QPointF cell((i % across + 0.5) * wide, (i / across + 0.5) * high);
      scene.labels.push_back(place_label(painter, wish, cell, std::min(wide, high), chance));
    }
  }
  auto grey = picture.convertToFormat(QImage::Format_Grayscale8);
  blur(grey, wish.blur);
  if (wish.motion > 0)
    smear(grey, wish.motion, chance.between(0, std::numbers::pi));
  light_and_grain(grey, wish, chance);
  scene.picture = wish.jpeg_quality > 0 ? through_jpeg(grey, wish.jpeg_quality) : grey;
  return scene;
}

} // namespace coneline::labels
