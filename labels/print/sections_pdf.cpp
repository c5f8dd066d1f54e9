// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/sections_pdf.h"

#include "core/base/heading.h"
#include "core/base/number.h"
#include "core/base/phrase.h"
#include "labels/sheet/wrap.h"

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
#include <functional>
#include <numeric>
#include <utility>

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

/// What of a cell stays on one line.
enum class Whole { cell, words, parts_of_words, nothing };

using Cells = std::vector<std::string>;

/// A row of a table as it stands on the page: the lines of each cell.
struct Row {
  std::vector<std::vector<std::string>> cells;
  std::size_t lines = 1;

  [[nodiscard]] double height() const { return static_cast<double>(lines) * line_height; }
};

/// A table before it is drawn.
struct Table {
  std::vector<double> widths;
  std::vector<bool> numbers; ///< which columns stand at their right end
  Row head;
  std::vector<Row> rows;
  std::vector<std::string> continued; ///< over the head on every page but the first

  /// 0 where it is so high that hardly a row would have room below it.
  [[nodiscard]] double head_again() const {
    const double height = static_cast<double>(continued.size()) * line_height + head.height();
    return height < (bottom - top) / 3 ? height : 0;
  }
  /// What has to find room at once: the row, or the first line of a long one.
  [[nodiscard]] static double together(const Row& row) {
    return row.height() < (bottom - top) / 3 ? row.height() : line_height;
  }
  [[nodiscard]] double beginning() const { return head.height() + together(rows.front()); }
};

/// Pages that are written from the top, line by line.
class Pages {
 public:
  Pages(QPdfWriter& writer, std::string foot)
      : writer_(writer), painter_(&writer), foot_(std::move(foot)) {
    write_foot();
  }
  [[nodiscard]] bool ready() const { return painter_.isActive(); }
  [[nodiscard]] int count() const { return count_; }

  void section(const report::PapersSection& section, bool first) {
    const double size = first ? 6.5 : 4.4;
    const double above = first ? 4 : 5;
    const auto titles = lines_of(section.title, right - left, size);
    const auto table = section.rows.empty() ? Table{} : laid_out(section);
    // A title stays with what it is of: some lines, or the table's head and first row.
    double follows = 3 * line_height;
    if (section.lines.empty() && !section.rows.empty())
      follows = std::max(follows, 1 + table.beginning());
    need(above + static_cast<double>(titles.size()) * size * 1.35 + follows);
    y_ += above;
    for (const auto& line : titles) {
      write(left, line, size, section.warns ? due : ink);
      y_ += size * 1.35;
    }
    for (const auto& [label, words] : section.lines)
      labelled(label, words);
    if (!section.rows.empty())
      draw(table);
  }

 private:
  void write(double x, const std::string& words, double size, const QColor& colour) {
    painter_.setFont(font_of(size));
    painter_.setPen(colour);
    painter_.drawText(QPointF(dots(x), dots(y_)), QString::fromStdString(words));
  }
  void write_foot() {
    const double kept = y_;
    y_ = 289;
    write(left, fmt::format("{}  ·  {}", foot_, phrase("page {}", count_)), 2.7, quiet);
    y_ = kept;
  }
  void need(double mm) {
    if (y_ + mm <= bottom)
      return;
    writer_.newPage();
    ++count_;
    y_ = top;
    write_foot();
    // Without itself while it is drawn, or a long one would call for itself.
    if (const auto head = std::exchange(head_, nullptr)) {
      head();
      head_ = head;
    }
  }

  [[nodiscard]] double width(std::string_view words, double size) const {
    return QFontMetricsF(font_of(size), &writer_)
               .horizontalAdvance(
                   QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()))) *
           25.4 / dots_an_inch;
  }

  [[nodiscard]] std::vector<std::string> lines_of(const std::string& words, double room,
                                                  double size) const {
    return wrapped(words, room, [&](std::string_view text) { return width(text, size); });
  }

  void labelled(const std::string& label, const std::string& words) {
    const double x = label.empty() ? left : left + label_width;
    const auto lines = lines_of(words, right - x, text_size);
    const auto labels = lines_of(label, label_width - gap, text_size);
    for (std::size_t at = 0; at < std::max({lines.size(), labels.size(), std::size_t{1}}); ++at) {
      need(line_height);
      if (at < labels.size())
        write(left, labels[at], text_size, quiet);
      if (at < lines.size())
        write(x, lines[at], text_size, ink);
      y_ += line_height;
    }
  }

  /// The widest of what has to stay whole.
  [[nodiscard]] double width_of(const std::string& cell, Whole whole) const {
    if (whole == Whole::nothing)
      return 0;
    if (whole == Whole::cell)
      return width(cell, text_size);
    double widest = 0;
    for (const std::string_view word : words_of(cell))
      for (std::size_t from = 0; from < word.size();) {
        const auto hyphen = whole == Whole::words ? word.npos : word.find('-', from);
        const auto end = hyphen == word.npos ? word.size() : hyphen + 1;
        widest = std::max(widest, width(word.substr(from, end - from), text_size));
        from = end;
      }
    return widest;
  }
  [[nodiscard]] std::vector<double> widths_keeping(const report::PapersSection& section,
                                                   Whole whole) const {
    std::vector<double> widths(section.header.size(), whole == Whole::nothing ? 0 : gap);
    const auto widen = [&](const Cells& row) {
      for (std::size_t at = 0; at < widths.size(); ++at)
        widths[at] = std::max(widths[at], width_of(row[at], whole) + gap);
    };
    if (whole != Whole::nothing) {
      widen(section.header);
      std::ranges::for_each(section.rows, widen);
    }
    return widths;
  }

  /// Gives the room to the columns, those that want least of it first, each up to a fair share of
  /// what is left.
  static std::vector<double> widened(std::vector<double> least, const std::vector<double>& most,
                                     double room) {
    std::vector<std::size_t> order(least.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::sort(order, {}, [&](std::size_t at) { return most[at] - least[at]; });
    auto still = static_cast<double>(order.size());
    for (const auto at : order) {
      const double more = std::min(most[at] - least[at], room / still);
      least[at] += more;
      room -= more;
      --still;
    }
    return least;
  }

  /// As wide as its longest cell where there is room for all. Else cells break at blanks; words
  /// break only where not all have room side by side, after hyphens first.
  [[nodiscard]] std::vector<double> column_widths(const report::PapersSection& section) const {
    auto most = widths_keeping(section, Whole::cell);
    for (const auto whole : {Whole::cell, Whole::words, Whole::parts_of_words}) {
      auto least = widths_keeping(section, whole);
      const double room = right - left - std::accumulate(least.begin(), least.end(), 0.0);
      if (room >= 0)
        return widened(std::move(least), most, room);
      most = std::move(least);
    }
    return widened(widths_keeping(section, Whole::nothing), most, right - left);
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

  [[nodiscard]] Row laid_out(const Cells& cells, const std::vector<double>& widths) const {
    Row row;
    for (std::size_t at = 0; at < cells.size(); ++at) {
      row.cells.push_back(lines_of(cells[at], widths[at] - gap + 0.01, text_size));
      row.lines = std::max(row.lines, row.cells.back().size());
    }
    return row;
  }
  [[nodiscard]] Table laid_out(const report::PapersSection& section) const {
    Table table{column_widths(section),
                columns_of_numbers(section),
                {},
                {},
                lines_of(phrase("{}, continued", section.title), right - left, text_size)};
    table.head = laid_out(section.header, table.widths);
    for (const auto& cells : section.rows)
      table.rows.push_back(laid_out(cells, table.widths));
    return table;
  }

  /// Its head stands over the first row, and again on every page it runs on to.
  void draw(const Table& table) {
    y_ += 1;
    need(table.beginning());
    draw(table.head, table, quiet);
    if (table.head_again() > 0)
      head_ = [&] {
        for (const auto& line : table.continued) {
          write(left, line, text_size, quiet);
          y_ += line_height;
        }
        draw(table.head, table, quiet);
      };
    for (const auto& row : table.rows)
      draw(row, table, ink);
    head_ = nullptr;
    y_ += 1;
  }

  void draw(const Row& row, const Table& table, const QColor& colour) {
    need(Table::together(row));
    for (std::size_t line = 0; line < row.lines; ++line) {
      need(line_height);
      double x = left;
      for (std::size_t at = 0; at < row.cells.size(); ++at) {
        if (line < row.cells[at].size()) {
          const auto& words = row.cells[at][line];
          const double inset =
              table.numbers[at] ? table.widths[at] - gap - width(words, text_size) : 0;
          write(x + std::max(0.0, inset), words, text_size, colour);
        }
        x += table.widths[at];
      }
      y_ += line_height;
    }
    painter_.setPen(QPen(rule, dots(0.15)));
    const double at = y_ - line_height + 1.4;
    painter_.drawLine(QPointF(dots(left), dots(at)), QPointF(dots(right), dots(at)));
  }

  QPdfWriter& writer_;
  QPainter painter_;
  std::string foot_;
  std::function<void()> head_; ///< of a table, for the pages it runs on to
  double y_ = top;
  int count_ = 1;
};

int draw(QPdfWriter& writer, const PrintedSections& what) {
  Pages pages(writer, what.foot);
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
