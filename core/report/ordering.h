// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The order list of a forecast: what its parts need with an assurance, against what the book holds
// of offers and goods.

#include "core/book/plan_records.h"
#include "core/book/title.h"
#include "core/plan/assured_needs.h"
#include "core/plan/buying.h"
#include "core/report/plan_paper.h"

#include <nlohmann/json.hpp>

namespace coneline::report {

struct Ordered {
  double assurance = 0;
  double held = 0; ///< share of futures in which nothing runs short
  plan::OrderList list;
  std::vector<plan::GoodNeeded> goods; ///< what is needed of each, with how it is kept
  std::vector<plan::LeftOut> left_out; ///< lots that need nothing of it, and why
};

/// Where the list is empty: that nothing is to be ordered, or nothing for what can be planned.
std::string nothing_told(const Ordered& ordered);

/// Fails as assured_needs and order_list do.
Result<Ordered> ordered(const plan::Forecast& forecast, const std::vector<book::Offer>& offers,
                        const std::vector<book::Good>& goods, Date today, double assurance);

/// The same with several assurances, for what more of it costs.
Result<std::vector<Ordered>> ordered_with(const plan::Forecast& forecast,
                                          const std::vector<book::Offer>& offers,
                                          const std::vector<book::Good>& goods, Date today,
                                          const std::vector<double>& assurances);
/// 50, 70, 80, 90, 95 and 99 %.
const std::vector<double>& usual_assurances();

nlohmann::ordered_json order_json(const Ordered& ordered);
/// The list, and beside it what is needed by month.
PlanPaper order_paper(const Ordered& ordered, const book::Title& title, Date today,
                      const std::vector<Date>& months);

} // namespace coneline::report
