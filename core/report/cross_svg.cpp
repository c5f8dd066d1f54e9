// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/phrase.h"
#include "core/report/chart_axes.h"
#include "core/report/cross_chart.h"
#include "core/report/step_chart.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::report {

namespace {

constexpr double left = 56;
constexpr double right = 620; ///< where the chart ends and the names begin
constexpr double width = 800;
constexpr double top = 16;
constexpr double bottom = 236;
constexpr double height = 284;

class Drawing {
 public:
  Drawing(const CrossChart& chart, double highest) : chart_(chart), highest_(highest) {}

  [[nodiscard]] double x(double day) const { return left + day / chart_.until * (right - left); }
  [[nodiscard]] double y(double share) const {
    return bottom - std::clamp(share / highest_, 0.0, 1.0) * (bottom - top);
  }
  [[nodiscard]] std::string path(const std::vector<CurvePoint>& points) const {
    std::string path;
    for (const auto& [day, share] : points)
      path += fmt::format("{}{:.1f} {:.1f}", path.empty() ? "M" : "L", x(day), y(share));
    return path;
  }
  [[nodiscard]] std::string band() const {
    std::string path;
    for (const auto& point : chart_.band)
      path += fmt::format("{}{:.1f} {:.1f}", path.empty() ? "M" : "L", x(point.day), y(point.high));
    for (auto point = chart_.band.rbegin(); point != chart_.band.rend(); ++point)
      path += fmt::format("L{:.1f} {:.1f}", x(point->day), y(point->low));
    return path + "Z";
  }

 private:
  const CrossChart& chart_;
  double highest_;
};

double highest_of(const CrossChart& chart) {
  double most = chart.coming ? chart.coming->high : 0;
  for (const auto& point : chart.steps)
    most = std::max(most, point.share);
  for (const auto& point : chart.band)
    most = std::max(most, point.high);
  return round_top(most);
}

std::string axes(const CrossChart& chart, const Drawing& at, double highest,
                 const std::string& unit) {
  std::string svg;
  for (int part = 0; part <= 4; ++part) {
    const double share = highest * part / 4;
    svg += fmt::format("<line class=\"grid\" x1=\"{0}\" x2=\"{1}\" y1=\"{2:.1f}\" y2=\"{2:.1f}\"/>"
                       "<text class=\"axis\" text-anchor=\"end\" x=\"{3}\" y=\"{4:.1f}\">{5} "
                       "%</text>",
                       left, right, at.y(share), left - 8, at.y(share) + 4,
                       phrase("{:g}", 100 * share));
  }
  const double step = round_step(chart.until);
  for (double day = 0; day <= chart.until; day += step)
    svg +=
        fmt::format("<text class=\"axis\" text-anchor=\"middle\" x=\"{:.1f}\" y=\"{}\">{:g}</text>",
                    at.x(day), bottom + 18, day);
  return svg +
         fmt::format("<text class=\"axis\" text-anchor=\"middle\" x=\"{}\" y=\"{}\">{}</text>",
                     (left + right) / 2, bottom + 38, escaped(phrase("{} since sowing", unit)));
}

/// What is what, beside the chart; by its kind of line first.
std::string key(const CrossChart& chart) {
  std::string svg;
  double y = top + 12;
  const auto say = [&](std::string_view mark, const std::string& word) {
    svg += fmt::format("<g transform=\"translate({}, {})\">{}</g><text class=\"name\" x=\"{}\" "
                       "y=\"{:.1f}\">{}</text>",
                       right + 14, y, mark, right + 52, y + 4, escaped(word));
    y += 24;
  };
  say("<line class=\"curve c0\" x1=\"0\" x2=\"30\" y1=\"0\" y2=\"0\"/>",
      phrase("seen at the looks"));
  if (!chart.fitted.empty())
    say("<line class=\"curve c1\" stroke-dasharray=\"7 3\" x1=\"0\" x2=\"30\" y1=\"0\" y2=\"0\"/>",
        phrase("fitted curve"));
  if (!chart.band.empty())
    say("<rect class=\"band\" x=\"0\" y=\"-7\" width=\"30\" height=\"14\"/>",
        phrase("range of the curve"));
  if (chart.coming)
    say("<rect class=\"coming\" x=\"0\" y=\"-7\" width=\"30\" height=\"14\"/>",
        phrase("where it may end"));
  return svg;
}

} // namespace

std::string cross_svg(const CrossChart& chart, const std::string& unit) {
  const double highest = highest_of(chart);
  const Drawing at(chart, highest);
  auto svg =
      fmt::format("<svg viewBox=\"0 0 {} {}\" role=\"img\" aria-label=\"{}\">", width, height,
                  escaped(phrase("Share of the seed sown that had germinated, with fitted "
                                 "curve, its range, and where it may end")));
  svg += axes(chart, at, highest, unit);
  if (!chart.band.empty())
    svg += fmt::format("<path class=\"band\" d=\"{}\"/>", at.band());
  if (chart.coming) {
    const auto& [from, low, likely, high] = *chart.coming;
    svg += fmt::format("<rect class=\"coming\" x=\"{:.1f}\" width=\"{:.1f}\" y=\"{:.1f}\" "
                       "height=\"{:.1f}\"/><line class=\"likelycoming\" x1=\"{:.1f}\" "
                       "x2=\"{}\" y1=\"{:.1f}\" y2=\"{:.1f}\"/>",
                       at.x(from), right - at.x(from), at.y(high),
                       std::max(2.0, at.y(low) - at.y(high)), at.x(from), right, at.y(likely),
                       at.y(likely));
  }
  if (!chart.fitted.empty())
    svg += fmt::format("<path class=\"curve c1\" stroke-dasharray=\"7 3\" d=\"{}\"/>",
                       at.path(chart.fitted));
  svg += fmt::format("<path class=\"curve c0\" d=\"{}\"/>", at.path(chart.steps));
  return svg + key(chart) + "</svg>\n";
}

} // namespace coneline::report
