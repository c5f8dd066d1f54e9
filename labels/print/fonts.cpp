// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/fonts.h"

#include <QFontMetricsF>
#include <QString>
#include <QStringList>
#include <QTransform>

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
  return [plain = metrics(Face::plain), bold = metrics(Face::bold),
          code = metrics(Face::code)](std::string_view text, Face face) {
    const auto& used = face == Face::plain ? plain : face == Face::bold ? bold : code;
    const auto words = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
    return used.horizontalAdvance(words) / em;
  };
}

} // namespace coneline::labels
