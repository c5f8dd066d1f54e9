// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/sheet/layout.h"

#include "core/base/phrase.h"
#include "labels/sheet/wrap.h"
#include "labels/symbol/symbol.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace coneline::labels {

namespace {

constexpr double largest_module = 1.0; // mm; larger ones only take room from the words
constexpr double padding = 1.6;        // mm kept from the label's edge
constexpr double line_height = 1.28;   // of the em, for words
constexpr double code_height = 1.12;   // of the em; a code has no letters below the line
constexpr double ascent = 0.98;        // of the em: from the top of a line to its baseline
constexpr double code_ascent = 0.9;
constexpr double capital_height = 0.71; // of the em
constexpr double smallest_words = 1.5;  // mm
constexpr double smallest_code = 1.6;   // mm
constexpr int with_quiet = symbol_modules + 2 * quiet_modules;

/// Where the symbol and the words go.
struct Parts {
  Box symbol;
  Box words;
  int dots = 0;
  double module = 0;
};

Parts parts_of(const Stock& stock, int dpi) {
  const double dot = 25.4 / dpi;
  const double width = stock.usable_width();
  const double height = stock.usable_height();
  const bool beside = width >= 1.25 * height;
  // Half of the label for the words, unless the modules would become too small for that.
  const double room = beside ? std::min(height, width / 2) : std::min(width, height / 2);
  const int fewest = static_cast<int>(std::ceil(least_module / dot - 1e-9));
  const int most = static_cast<int>(std::floor(largest_module / dot + 1e-9));
  const int fitting = static_cast<int>(std::floor(room / with_quiet / dot + 1e-9));
  Parts parts;
  parts.dots = std::clamp(fitting, fewest, std::max(fewest, most));
  parts.module = parts.dots * dot;
  const double side = parts.module * with_quiet;
  if (beside) {
    parts.symbol = {0, (height - side) / 2, side, side};
    const double edge = std::min(padding, height * 0.06);
    parts.words = {side, edge, width - side - padding, height - 2 * edge};
  } else {
    parts.symbol = {(width - side) / 2, 0, side, side};
    const double edge = std::min(padding, width * 0.06);
    parts.words = {edge, side, width - 2 * edge, height - side - edge};
  }
  return parts;
}

/// One way to set the words: how large, and in how many lines the cross may run.
struct Setting {
  double scale;
  std::size_t cross_lines;
};

// Shrink on one line, then wrap and shrink.
constexpr std::array<Setting, 17> settings{{{1, 1},
                                            {0.95, 1},
                                            {0.9, 1},
                                            {0.85, 1},
                                            {0.8, 1},
                                            {1, 2},
                                            {0.95, 2},
                                            {0.9, 2},
                                            {0.85, 2},
                                            {0.8, 2},
                                            {0.75, 2},
                                            {0.7, 2},
                                            {0.8, 3},
                                            {0.75, 3},
                                            {0.7, 3},
                                            {0.65, 3},
                                            {0.6, 4}}};

class Words {
 public:
  Words(const LabelText& text, const Parts& parts, const Measure& measure)
      : text_(text), room_(parts.words), measure_(measure) {
    const auto& room = parts.words;
    const double letters = measure(text.code, Face::code);
    const double tall = std::min(7.0, std::max(room.height * 0.27, smallest_code));
    code_size_ = std::min(tall, room.width / std::max(letters, 0.1));
    base_ = std::clamp(room.height * 0.105, smallest_words, 3.6);
    const double above_capitals = (code_ascent - capital_height) * code_size_;
    level_ = parts.symbol.y + quiet_modules * parts.module - above_capitals;
  }

  [[nodiscard]] bool code_fits() const {
    return code_size_ >= smallest_code && code_size_ * code_height <= room_.height + 1e-9;
  }

  /// Sets everything with the first setting that holds it whole, else with the last one as much as
  /// goes in.
  void set(LabelLayout& layout) const {
    for (const auto& setting : settings) {
      auto lines = lines_of(setting, all_details, false);
      if (lines.whole && height_of(lines) <= room_.height + 1e-9)
        return place(lines, layout);
    }
    layout.shortened = true;
    for (int details = all_details; details >= 0; --details)
      for (std::size_t cross_lines = 3; cross_lines >= 1; --cross_lines) {
        auto lines = lines_of({0.6, cross_lines}, details, true);
        if (height_of(lines) <= room_.height + 1e-9)
          return place(lines, layout);
      }
    place(code_alone(), layout);
  }

 private:
  static constexpr int all_details = 3;

  struct Line {
    std::string text;
    Face face;
    double size;
    double space_above;
  };
  struct Lines {
    std::vector<Line> lines;
    bool whole = true;
  };

  [[nodiscard]] WidthOf width(Face face, double size) const {
    return [this, face, size](std::string_view words) { return measure_(words, face) * size; };
  }

  [[nodiscard]] Lines code_alone() const {
    return {{{text_.code, Face::code, code_size_, 0}}, false};
  }

  /// The first `details` of sown, count and cone (in the order of need), packed into lines.
  [[nodiscard]] std::vector<std::string> details_of(int details, double size) const {
    std::vector<std::string> kept;
    const std::array<const std::string*, 3> needed{&text_.sown, &text_.count, &text_.cone};
    for (int i = 0; i < details; ++i)
      if (!needed[static_cast<std::size_t>(i)]->empty())
        kept.push_back(*needed[static_cast<std::size_t>(i)]);
    const auto wide = width(Face::plain, size);
    std::vector<std::string> lines;
    for (const auto& detail : kept) {
      const auto joined = lines.empty() ? detail : lines.back() + " · " + detail;
      if (!lines.empty() && wide(joined) <= room_.width)
        lines.back() = joined;
      else
        lines.push_back(detail);
    }
    return lines;
  }

  [[nodiscard]] Lines lines_of(Setting setting, int details, bool elide) const {
    const double large = std::max(base_ * setting.scale, smallest_words);
    const double small = std::max(large * 0.86, smallest_words);
    auto result = code_alone();
    result.whole = true;
    const auto add = [&](std::string_view words, Face face, double size, double above) {
      auto shown = std::string(words);
      if (width(face, size)(words) > room_.width) {
        result.whole = false;
        shown = elide ? elided(words, room_.width, width(face, size)) : shown;
      }
      if (!shown.empty())
        result.lines.push_back({shown, face, size, above});
    };
    auto cross = wrapped(text_.cross, room_.width, width(Face::bold, large));
    if (cross.size() > setting.cross_lines) {
      result.whole = false;
      for (auto i = setting.cross_lines; i < cross.size(); ++i)
        cross[setting.cross_lines - 1] += ' ' + cross[i];
      cross.resize(setting.cross_lines);
    }
    const auto add_all = [&](const std::vector<std::string>& some, Face face, double size) {
      for (std::size_t i = 0; i < some.size(); ++i)
        add(some[i], face, size, i == 0 ? size * 0.2 : 0);
    };
    add_all(cross, Face::bold, large);
    add_all(details_of(details, small), Face::plain, small);
    add_all(wrapped(text_.caution, room_.width, width(Face::bold, small)), Face::bold, small);
    return result;
  }

  [[nodiscard]] static double height_of(const Line& line) {
    return line.size * (line.face == Face::code ? code_height : line_height) + line.space_above;
  }
  [[nodiscard]] static double height_of(const Lines& lines) {
    double height = 0;
    for (const auto& line : lines.lines)
      height += height_of(line);
    return height;
  }

  void place(const Lines& lines, LabelLayout& layout) const {
    // The code stands level with the symbol's top wherever there is room, so that a sheet looks
    // even.
    double y = std::clamp(level_, room_.y, std::max(room_.y, room_.bottom() - height_of(lines)));
    for (const auto& line : lines.lines) {
      const double tall = height_of(line) - line.space_above;
      y += line.space_above;
      const double wide = measure_(line.text, line.face) * line.size;
      const double rise = line.face == Face::code ? code_ascent : ascent;
      layout.texts.push_back(
          {line.text, line.face, line.size, {room_.x, y, wide, tall}, y + rise * line.size});
      y += tall;
    }
  }

  const LabelText& text_;
  Box room_;
  const Measure& measure_;
  double code_size_ = 0;
  double base_ = 0;
  double level_ = 0; ///< where the words begin if they may
};

} // namespace

Result<LabelLayout> lay_out(const LabelText& text, const Stock& stock, int dpi,
                            const Measure& measure) {
  if (dpi < 150 || dpi > 2400)
    return refuse(fault(phrase("a printer of {} dots an inch", dpi), "Give 150 to 2400."));
  if (const auto sound = check(stock); !sound)
    return refuse(sound.error());
  if (const auto can = can_be_symbol(text.code); !can)
    return refuse(can.error());
  const auto parts = parts_of(stock, dpi);
  LabelLayout layout{parts.symbol, parts.dots, parts.module, {}, false};
  const double side = parts.symbol.width;
  const double over = side - std::min(stock.usable_width(), stock.usable_height());
  if (over > 1e-6)
    return refuse(fault(phrase("'{}': the code needs {:.1f} mm at {} dots an inch, {:.1f} mm "
                               "more than there is",
                               stock.name, side, dpi, over),
                        "Take a larger label or a finer printer."));
  const Words words(text, parts, measure);
  if (!words.code_fits())
    return refuse(
        fault(phrase("'{}': no room for the code in letters beside the symbol", stock.name),
              "Take a larger label."));
  words.set(layout);
  return layout;
}

} // namespace coneline::labels
