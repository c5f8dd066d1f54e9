// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What `order` and `paper order` are asked alike.

#include "core/commands/forecast_options.h"
#include "core/report/ordering.h"

namespace coneline::commands {

/// A plan with its offers and goods, from the book or from options.
struct OrderAsked {
  plan::ForecastInput input;
  plan::Forecast forecast;
  std::vector<book::Offer> offers;
  std::vector<book::Good> goods;
  double assurance = 0.9;
};

struct OrderOptions {
  ForecastOptions plan;
  std::string offers; ///< a file, in place of the book's
  std::optional<double> assurance;
  std::vector<std::string> on_hand;
  std::vector<std::string> room;
  std::vector<std::string> keeps;

  void add_to(Command& command);
  [[nodiscard]] Result<OrderAsked> asked(std::ostream& messages) const;
};

} // namespace coneline::commands
