// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What `placing` and `paper benches` are asked alike.

#include "core/commands/forecast_options.h"
#include "core/plan/placing.h"

namespace coneline::commands {

struct Placed {
  plan::PlacingInput input;
  plan::Placing placing;
};

struct PlacingOptions {
  ForecastOptions plan;
  std::optional<double> assurance;
  std::vector<std::string> pins; ///< CODE=PLACE, besides the book's
  double seconds = 20;

  void add_to(Command& command);
  [[nodiscard]] Result<Placed> placed(std::ostream& messages) const;
};

} // namespace coneline::commands
