// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cross_chart.h"

#include <algorithm>

namespace coneline::report {

namespace {

/// The stepwise estimate, not the sum of what was seen: of a young tray that still holds seed the
/// sum would count the future as nothing, and lie below the curve without reason.
std::vector<CurvePoint> stair(const stats::Stepwise& stepwise, double last) {
  std::vector<CurvePoint> corners{{0, 0}};
  double share = 0;
  for (const auto& step : stepwise.steps) {
    corners.push_back({step.to, share});
    share += step.mass;
    corners.push_back({step.to, share});
  }
  corners.push_back({last, share});
  return corners;
}

std::optional<Coming> coming_of(const CrossReport& cross) {
  const auto& figures = cross.figures;
  const auto expected = cross.expected();
  if (figures.sown == 0 || expected.high == 0)
    return std::nullopt;
  const auto share = [&](std::int64_t more) {
    return static_cast<double>(figures.germinated + more) / static_cast<double>(figures.sown);
  };
  return Coming{cross.curve.back().day, share(expected.low), share(expected.median),
                share(expected.high)};
}

} // namespace

CrossChart cross_chart(const CrossReport& cross) {
  constexpr int pieces = 80;
  CrossChart chart;
  chart.last = cross.curve.empty() ? 0 : cross.curve.back().day;
  chart.until = std::max(1.0, chart.last * 1.25);
  if (chart.last <= 0)
    return chart;
  chart.steps = stair(cross.figures.stepwise, chart.last);
  chart.coming = coming_of(cross);
  if (const auto& fit = cross.figures.curve)
    for (int piece = 0; piece <= pieces; ++piece) {
      const double day = chart.until * piece / pieces;
      chart.fitted.push_back({day, day > 0 ? fit->curve.germinated_by(day) : 0});
      if (cross.band) {
        const auto range = cross.band->at(day);
        chart.band.push_back({day, range.low, range.high});
      }
    }
  return chart;
}

} // namespace coneline::report
