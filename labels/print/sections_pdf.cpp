// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/sections_pdf.h"

#include "core/base/heading.h"
#include "core/base/number.h"
#include "core/base/phrase.h"

#include <QBuffer>
#include <QFontMetricsF>
#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace coneline::labels {

namespace {

// All in mm.
constexpr int dots_an_inch = 600;
constexpr double left = 18;
constexpr double right = 192;
constexpr double top = 20;
constexpr double bottom = 278;
constexpr double label_width = 34;
constexpr double gap = 3; ///< between columns
constexpr double text_size = 3.3;
constexpr double line_height = 4.9;

const QColor ink(0x20, 0x28, 0x1F);
const QColor quiet(0x5A, 0x61, 0x56);
const QColor due(0x8A, 0x4B, 0x16);
const QColor rule(0xC9, 0xCB, 0xC3);

double dots(double mm) {
  return mm * dots_an_inch / 25.4;
}

QFont font_of(double size) {
  QFont font(QStringLiteral("Noto Sans"));
  font.setPixelSize(static_cast<int>(std::lround(dots(size))));
  return font;
}

/// Pages that are written from the top, line by line.
class Pages {
 public:
  Pages(QPdfWriter& writer, QString foot)
      : writer_(writer), painter_(&writer), foot_(std::move(foot)) {
    write_foot();
  }
  [[nodiscard]] bool ready() const { return painter_.isActive(); }
  [[nodiscard]] int count() const { return count_; }

  void section(const report::PapersSection& section, bool first) {
    const double size = first ? 6.5 : 4.4;
    need(size + 4 * line_height);
    y_ += first ? 4 : 5;
    const auto title = QString::fromStdString(section.title);
    for (const auto& line : wrapped(title, right - left, size)) {
      write(left, line, size, section.warns ? due : ink);
      y_ += size * 1.35;
    }
    for (const auto& [label, words] : section.lines)
      labelled(QString::fromStdString(label), QString::fromStdString(words));
    if (!section.rows.empty())
      table(section);
  }

 private:
  void write(double x, const QString& words, double size, const QColor& colour) {
    painter_.setFont(font_of(size));
    painter_.setPen(colour);
    painter_.drawText(QPointF(dots(x), dots(y_)), words);
  }
  void write_foot() {
    const double kept = y_;
    y_ = 289;
    write(left, foot_ + QStringLiteral("  ·  ") + QString::fromStdString(phrase("page {}", count_)),
          2.7, quiet);
    y_ = kept;
  }
  void need(double mm) {
    if (y_ + mm <= bottom)
      return;
    writer_.newPage();
    ++count_;
    y_ = top;
    write_foot();
  }

  [[nodiscard]] double width(const QString& words, double size) const {
    return QFontMetricsF(font_of(size), &writer_).horizontalAdvance(words) * 25.4 / dots_an_inch;
  }

  /// Broken at blanks, and within a word that is longer than the line.
  [[nodiscard]] QStringList wrapped(const QString& words, double room, double size) const {
    QStringList lines;
    QString line;
    for (auto word : words.simplified().split(QLatin1Char(' '))) {
      const auto longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
      if (width(longer, size) <= room) {
        line = longer;
        continue;
      }
      if (!line.isEmpty())
        lines.append(line);
      while (width(word, size) > room && word.size() > 1) {
        qsizetype fits = 1;
        while (fits < word.size() && width(word.left(fits + 1), size) <= room)
          ++fits;
        lines.append(word.left(fits));
        word = word.mid(fits);
      }
      line = word;
    }
    lines.append(line);
    return lines;
  }

  void labelled(const QString& label, const QString& words) {
    const double x = label.isEmpty() ? left : left + label_width;
    const auto lines = wrapped(words, right - x, text_size);
    const auto labels = wrapped(label, label_width - gap, text_size);
    for (qsizetype at = 0; at < std::max(lines.size(), label.isEmpty() ? 0 : labels.size()); ++at) {
      need(line_height);
      if (at < labels.size() && !label.isEmpty())
        write(left, labels[at], text_size, quiet);
      if (at < lines.size())
        write(x, lines[at], text_size, ink);
      y_ += line_height;
    }
  }

  /// As wide as its longest cell where there is room for all; else what is above a fair share is
  /// cut back and wrapped.
  [[nodiscard]] std::vector<double> column_widths(const report::PapersSection& section) const {
    std::vector<double> widths(section.header.size(), 0);
    const auto widen = [&](const std::vector<std::string>& row) {
      for (std::size_t at = 0; at < widths.size(); ++at)
        widths[at] = std::max(widths[at], width(QString::fromStdString(row[at]), text_size) + gap);
    };
    widen(section.header);
    std::ranges::for_each(section.rows, widen);
    double room = right - left;
    std::vector<std::size_t> order(widths.size());
    for (std::size_t at = 0; at < order.size(); ++at)
      order[at] = at;
    std::ranges::sort(order, {}, [&](std::size_t at) { return widths[at]; });
    auto still = static_cast<double>(order.size());
    for (const auto at : order) { // the narrowest first, each up to a fair share of what is left
      widths[at] = std::min(widths[at], room / still);
      room -= widths[at];
      --still;
    }
    return widths;
  }

  /// As people write it: 1.5, or 1,5.
  static bool is_number(const std::string& cell) {
    const auto sign = language().decimal(".");
    const auto at = cell.find(sign);
    return parse_real(at == std::string::npos
                          ? cell
                          : fmt::format("{}.{}", std::string_view(cell).substr(0, at),
                                        std::string_view(cell).substr(at + sign.size())))
        .has_value();
  }

  /// They stand at the right end of their column.
  static std::vector<bool> columns_of_numbers(const report::PapersSection& section) {
    std::vector<bool> numbers(section.header.size(), !section.rows.empty());
    for (const auto& cells : section.rows)
      for (std::size_t at = 0; at < cells.size(); ++at)
        numbers[at] = numbers[at] && (cells[at].empty() || is_number(cells[at]));
    return numbers;
  }

  void table(const report::PapersSection& section) {
    const auto widths = column_widths(section);
    const auto numbers = columns_of_numbers(section);
    y_ += 1;
    row(section.header, widths, numbers, quiet);
    for (const auto& cells : section.rows)
      row(cells, widths, numbers, ink);
    y_ += 1;
  }

  void row(const std::vector<std::string>& cells, const std::vector<double>& widths,
           const std::vector<bool>& numbers, const QColor& colour) {
    std::vector<QStringList> wrapped_cells;
    qsizetype lines = 1;
    for (std::size_t at = 0; at < cells.size(); ++at) {
      wrapped_cells.push_back(
          wrapped(QString::fromStdString(cells[at]), widths[at] - gap + 0.01, text_size));
      lines = std::max(lines, wrapped_cells.back().size());
    }
    need(std::min(static_cast<double>(lines) * line_height, bottom - top));
    for (qsizetype line = 0; line < lines; ++line) {
      need(line_height);
      double x = left;
      for (std::size_t at = 0; at < cells.size(); ++at) {
        if (line < wrapped_cells[at].size()) {
          const auto& words = wrapped_cells[at][line];
          const double inset = numbers[at] ? widths[at] - gap - width(words, text_size) : 0;
          write(x + std::max(0.0, inset), words, text_size, colour);
        }
        x += widths[at];
      }
      y_ += line_height;
    }
    painter_.setPen(QPen(rule, dots(0.15)));
    const double at = y_ - line_height + 1.4;
    painter_.drawLine(QPointF(dots(left), dots(at)), QPointF(dots(right), dots(at)));
  }

  QPdfWriter& writer_;
  QPainter painter_;
  QString foot_;
  double y_ = top;
  int count_ = 1;
};

int draw(QPdfWriter& writer, const PrintedSections& what) {
  Pages pages(writer, QString::fromStdString(what.foot));
  if (!pages.ready())
    return 0;
  bool first = true;
  for (const auto& section : what.sections) {
    pages.section(section, first);
    first = false;
  }
  return pages.count();
}

} // namespace

Result<int> sections_pdf(const std::string& path, const PrintedSections& what) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  int pages = 0;
  {
    QPdfWriter writer(&buffer);
    writer.setResolution(dots_an_inch);
    writer.setPageLayout(QPageLayout(QPageSize(QPageSize::A4), QPageLayout::Portrait,
                                     QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter));
    writer.setTitle(QString::fromStdString(what.title));
    pages = draw(writer, what);
  }
  if (pages == 0)
    return refuse(program_fault(fmt::format("'{}' could not be drawn", what.title)));
  const auto& bytes = buffer.data();
  return report::write_whole(path, {bytes.constData(), static_cast<std::size_t>(bytes.size())},
                             what.readers)
      .map([&] { return pages; });
}

} // namespace coneline::labels
