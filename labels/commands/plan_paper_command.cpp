// SPDX-License-Identifier: GPL-3.0-or-later
// coneline paper forecast | order | benches --out FILE.pdf: parts of the season plan on A4 paper
#include "core/commands/order_options.h"
#include "core/commands/placing_options.h"
#include "core/report/forecast_paper.h"
#include "core/report/placing_paper.h"
#include "core/work/resolve.h"
#include "labels/commands/commands.h"
#include "labels/print/plan_pdf.h"
#include "labels/print/without_display.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::labels {

namespace {

Result<commands::Answer> print(const report::PlanPaper& paper, const std::string& out) {
  const WithoutDisplay application;
  const auto pages = plan_pdf(out, paper);
  if (!pages)
    return refuse(pages.error());
  return commands::Answer{
      {{"file", out}, {"pages", *pages}},
      fmt::format("{}: {} in {}.\n", paper.title, work::counted(*pages, "page", "pages"), out)};
}

struct ForecastAsked {
  commands::ForecastOptions plan;
  std::string out;
};

Result<commands::Answer> forecast(const ForecastAsked& asked, std::ostream& messages) {
  const auto input = asked.plan.input();
  if (!input)
    return refuse(input.error());
  const auto drawn = plan::forecast_of(*input, asked.plan.wanted(messages));
  if (!drawn)
    return refuse(drawn.error());
  return print(report::forecast_paper(*drawn, *input), asked.out);
}

struct OrderPaperAsked {
  commands::OrderOptions order;
  std::string out;
};

Result<commands::Answer> order(const OrderPaperAsked& asked, std::ostream& messages) {
  const auto plan = asked.order.asked(messages);
  if (!plan)
    return refuse(plan.error());
  const auto& standing = plan->input.standing;
  const auto one =
      report::ordered(plan->forecast, plan->offers, plan->goods, standing.today, plan->assurance);
  if (!one)
    return refuse(one.error());
  return print(
      report::order_paper(*one, standing.registers.title, standing.today, plan->forecast.months()),
      asked.out);
}

struct BenchesAsked {
  commands::PlacingOptions placing;
  std::string out;
};

Result<commands::Answer> benches(const BenchesAsked& asked, std::ostream& messages) {
  const auto placed = asked.placing.placed(messages);
  if (!placed)
    return refuse(placed.error());
  return print(report::placing_paper(placed->input, placed->placing), asked.out);
}

} // namespace

void add_plan_paper_commands(commands::CommandLine& line) {
  const auto months = std::make_shared<ForecastAsked>();
  auto& all = line.add("paper", "forecast", "The months to come on A4 paper",
                       [months, &line] { return forecast(*months, line.messages()); });
  months->plan.add_to(all, 36);
  add_pdf_out(all, months->out);
  const auto orders = std::make_shared<OrderPaperAsked>();
  auto& list = line.add("paper", "order", "The order list on A4 paper",
                        [orders, &line] { return order(*orders, line.messages()); });
  orders->order.add_to(list);
  add_pdf_out(list, orders->out);
  const auto placing = std::make_shared<BenchesAsked>();
  auto& places = line.add("paper", "benches", "The bench list on A4 paper",
                          [placing, &line] { return benches(*placing, line.messages()); });
  placing->placing.add_to(places);
  add_pdf_out(places, placing->out);
}

} // namespace coneline::labels
