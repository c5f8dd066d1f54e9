// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is drawn of one cross, for page, paper, spreadsheet and window alike: what was seen as steps
// (the stepwise estimate, in which a tray counts for as long as it was looked at), the fitted curve
// with its band, and between which shares the cross will end.

#include "core/report/germination_report.h"

#include <span>
#include <string>

namespace coneline::report {

struct BandPoint {
  double day = 0;
  double low = 0;
  double high = 0;
};

/// Shares of the seed sown by the end, from the last look on.
struct Coming {
  double from = 0;
  double low = 0;
  double likely = 0;
  double high = 0;
};

struct CrossChart {
  std::vector<CurvePoint> steps; ///< corners of the stair, from (0, 0)
  std::vector<CurvePoint> fitted;
  std::vector<BandPoint> band;  ///< at the days of `fitted`
  std::optional<Coming> coming; ///< where more can come up
  double last = 0;              ///< the last look
  double until = 1;             ///< how far it is drawn: a quarter beyond the last look
};

CrossChart cross_chart(const CrossReport& cross);

/// The chart as SVG. `unit` is that of the times. Its classes are those of the report's page.
std::string cross_svg(const CrossChart& chart, const std::string& unit);

} // namespace coneline::report
