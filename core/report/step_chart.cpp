// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/step_chart.h"

#include "core/base/phrase.h"
#include "core/report/chart_axes.h"
#include "core/report/cross_said.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <numeric>

namespace coneline::report {

namespace {

// The chart in its own units; the page scales it.
constexpr double left = 56;
constexpr double right = 560; ///< where the curves end and their names begin
constexpr double width = 800;
constexpr double top = 16;
constexpr double bottom = 316;
constexpr double height = 364;
constexpr double line_of_text = 18;

constexpr std::array<std::string_view, curves_in_chart> dashes{
    "none", "9 4", "3 3", "14 4 3 4", "6 2 2 2 2 2", "18 5", "1 4"};

double y_of(double share) {
  return bottom - std::clamp(share, 0.0, 1.0) * (bottom - top);
}

std::string axes(double last_day, const std::string& unit) {
  std::string svg;
  for (int percent = 0; percent <= 100; percent += 25)
    svg += fmt::format("<line class=\"grid\" x1=\"{}\" x2=\"{}\" y1=\"{:.1f}\" y2=\"{:.1f}\"/>"
                       "<text class=\"axis\" text-anchor=\"end\" x=\"{}\" y=\"{:.1f}\">{} %</text>",
                       left, right, y_of(percent / 100.0), y_of(percent / 100.0), left - 8,
                       y_of(percent / 100.0) + 4, percent);
  const double step = round_step(last_day);
  for (double day = 0; day <= last_day; day += step)
    svg +=
        fmt::format("<text class=\"axis\" text-anchor=\"middle\" x=\"{:.1f}\" y=\"{}\">{:g}</text>",
                    left + day / last_day * (right - left), bottom + line_of_text, day);
  svg += fmt::format("<text class=\"axis\" text-anchor=\"middle\" x=\"{}\" y=\"{}\">{}</text>",
                     (left + right) / 2, bottom + 2 * line_of_text,
                     escaped(phrase("{} since sowing", unit)));
  return svg;
}

std::string path_of(const CrossReport& cross, double last_day) {
  std::string path;
  for (const auto& point : cross.curve) {
    const double x = left + point.day / last_day * (right - left);
    path += path.empty() ? fmt::format("M{:.1f} {:.1f}", x, y_of(point.share))
                         : fmt::format("H{:.1f}V{:.1f}", x, y_of(point.share));
  }
  return path;
}

/// Heights for the names, each as near its curve's end as room allows, none over another.
std::vector<double> name_heights(std::span<const CrossReport> crosses) {
  std::vector<double> heights;
  for (const auto& cross : crosses)
    heights.push_back(y_of(cross.curve.back().share));
  std::vector<std::size_t> order(crosses.size());
  std::iota(order.begin(), order.end(), 0);
  std::ranges::stable_sort(order, {}, [&](std::size_t at) { return heights[at]; });
  double free_from = top;
  for (const auto at : order) {
    heights[at] = std::max(heights[at], free_from);
    free_from = heights[at] + line_of_text;
  }
  double free_to = bottom;
  for (auto at = order.rbegin(); at != order.rend(); ++at) {
    heights[*at] = std::min(heights[*at], free_to);
    free_to = heights[*at] - line_of_text;
  }
  return heights;
}

/// So much of a name as fits beside the chart; the table has all of it.
std::string shortened(const std::string& name) {
  constexpr std::size_t most = 28;
  std::string text;
  std::size_t letters = 0;
  for (std::size_t at = 0; at < name.size(); ++at) {
    const bool begins = (static_cast<unsigned char>(name[at]) & 0xC0U) != 0x80U;
    if (begins && ++letters > most)
      return text + "…";
    text += name[at];
  }
  return text;
}

} // namespace

std::string escaped(std::string_view text) {
  std::string safe;
  for (const char letter : text) {
    if (letter == '&')
      safe += "&amp;";
    else if (letter == '<')
      safe += "&lt;";
    else if (letter == '>')
      safe += "&gt;";
    else if (letter == '"')
      safe += "&quot;";
    else if (letter == '\'')
      safe += "&#39;";
    else if (static_cast<unsigned char>(letter) < 0x20 && letter != '\n' && letter != '\t')
      safe += "\xEF\xBF\xBD";
    else
      safe += letter;
  }
  return safe;
}

std::string step_chart(std::span<const CrossReport> crosses, double last_day,
                       const std::string& unit) {
  std::string svg = fmt::format(
      "<svg viewBox=\"0 0 {} {}\" role=\"img\" aria-label=\"{}\">", width, height,
      escaped(phrase("Share of the seed sown that had germinated, by time since sowing")));
  svg += axes(last_day, unit);
  const auto heights = name_heights(crosses);
  for (std::size_t at = 0; at < crosses.size(); ++at) {
    const auto& last = crosses[at].curve.back();
    const double end = left + last.day / last_day * (right - left);
    svg += fmt::format("<path class=\"curve c{}\" stroke-dasharray=\"{}\" d=\"{}\"/>", at,
                       dashes.at(at), path_of(crosses[at], last_day));
    svg += fmt::format("<line class=\"lead\" x1=\"{:.1f}\" y1=\"{:.1f}\" x2=\"{}\" y2=\"{:.1f}\"/>",
                       end, y_of(last.share), right + 8, heights[at]);
    // Beside the name a piece of its line: the dash is then known without following the curve.
    svg += fmt::format("<line class=\"curve c{}\" stroke-dasharray=\"{}\" x1=\"{}\" x2=\"{}\" "
                       "y1=\"{:.1f}\" y2=\"{:.1f}\"/>",
                       at, dashes.at(at), right + 8, right + 38, heights[at], heights[at]);
    svg += fmt::format("<text class=\"name\" x=\"{}\" y=\"{:.1f}\">{}</text>", right + 42,
                       heights[at] + 4, escaped(shortened(name_said(crosses[at]))));
  }
  return svg + "</svg>\n";
}

} // namespace coneline::report
