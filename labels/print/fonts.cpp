// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/fonts.h"

#include <QFontMetricsF>
#include <QString>
#include <QStringList>
#include <QTransform>

#include <memory>
#include <unordered_map>

namespace coneline::labels {

namespace {
constexpr double points_per_millimetre = 72 / 25.4;
constexpr int em = 512; // pixels; large enough for rounding not to matter

QFont bare_font(Face face) {
  QFont font;
  const bool code = face == Face::code;
  font.setFamilies(code ? QStringList{"Noto Sans Mono", "monospace"}
                        : QStringList{"Noto Sans", "sans-serif"});
  font.setStyleHint(code ? QFont::Monospace : QFont::SansSerif);
  font.setWeight(face == Face::plain ? QFont::Normal : QFont::Bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  font.setKerning(true);
  return font;
}
} // namespace

QFont font_of(Face face, double size) {
  auto font = bare_font(face);
  font.setPointSizeF(size * points_per_millimetre);
  return font;
}

const QFont& Fonts::of(Face face, double size) {
  const auto key = std::pair(face, size);
  auto found = made_.find(key);
  if (found == made_.end())
    found = made_.emplace(key, font_of(face, size)).first;
  return found->second;
}

QPainterPath outlines(const std::string& text, Face face, double size) {
  auto font = bare_font(face);
  font.setPixelSize(em);
  QPainterPath path;
  path.addText(0, 0, font, QString::fromStdString(text));
  return QTransform::fromScale(size / em, size / em).map(path);
}

Measure font_measure() {
  const auto metrics = [](Face face) {
    auto font = bare_font(face);
    font.setPixelSize(em);
    return QFontMetricsF(font);
  };
  struct Known {
    QFontMetricsF metrics;
    std::unordered_map<std::string, double> widths{};
  };
  const auto known = std::make_shared<std::map<Face, Known>>();
  for (const auto face : {Face::plain, Face::bold, Face::code})
    known->emplace(face, Known{metrics(face)});
  return [known](std::string_view text, Face face) {
    auto& [used, widths] = known->at(face);
    const auto [width, is_new] = widths.try_emplace(std::string(text));
    if (is_new)
      width->second = used.horizontalAdvance(QString::fromStdString(width->first)) / em;
    return width->second;
  };
}

} // namespace coneline::labels
