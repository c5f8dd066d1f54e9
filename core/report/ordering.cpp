// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/ordering.h"

#include "core/base/money.h"
#include "core/base/month.h"
#include "core/base/phrase.h"
#include "core/report/forecast_report.h"
#include "core/work/cautions.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace coneline::report {

namespace {

using Json = nlohmann::ordered_json;

plan::Store store_of(const std::vector<book::Good>& goods, const std::string& name) {
  const auto found = std::ranges::find(goods, name, &book::Good::name);
  return found == goods.end() ? plan::Store{}
                              : plan::Store{found->on_hand, found->room, found->keeps,
                                            found->cents_a_litre_and_month};
}

double rounded(double value) {
  constexpr double tenths = 10;
  return std::round(value * tenths) / tenths;
}

} // namespace

Result<Ordered> ordered(const plan::Forecast& forecast, const std::vector<book::Offer>& offers,
                        const std::vector<book::Good>& goods, Date today, double assurance) {
  std::vector<std::size_t> series;
  std::vector<plan::GoodNeeded> needed;
  for (std::size_t at = 0; at < forecast.series().size(); ++at)
    if (const auto& one = forecast.series()[at]; one.shown == plan::Shown::part) {
      series.push_back(at);
      needed.push_back({one.name, {}, store_of(goods, one.name)});
    }
  auto needs = plan::assured_needs(forecast, series, assurance);
  if (!needs)
    return refuse(needs.error());
  for (std::size_t good = 0; good < needed.size(); ++good)
    needed[good].litres = std::move(needs->litres[good]);
  auto list = plan::order_list(needed, offers, today, forecast.months());
  if (!list)
    return refuse(list.error());
  return Ordered{assurance, needs->held, std::move(*list), std::move(needed),
                 forecast.ways().left_out};
}

Result<std::vector<Ordered>> ordered_with(const plan::Forecast& forecast,
                                          const std::vector<book::Offer>& offers,
                                          const std::vector<book::Good>& goods, Date today,
                                          const std::vector<double>& assurances) {
  std::vector<Ordered> all;
  for (const auto assurance : assurances) {
    auto one = ordered(forecast, offers, goods, today, assurance);
    if (!one)
      return refuse(one.error());
    all.push_back(std::move(*one));
  }
  return all;
}

const std::vector<double>& usual_assurances() {
  static const std::vector<double> shares{0.5, 0.7, 0.8, 0.9, 0.95, 0.99};
  return shares;
}

std::string nothing_told(const Ordered& ordered) {
  return ordered.left_out.empty()
             ? phrase("Nothing has to be ordered.")
             : phrase("Nothing has to be ordered for the lots that can be planned.");
}

Json order_json(const Ordered& ordered) {
  Json json{{"assurance", ordered.assurance},
            {"held", ordered.held},
            {"cents", ordered.list.cents},
            {"bound_cents", ordered.list.bound},
            {"gap", ordered.list.gap},
            {"orders", Json::array()},
            {"left_out", left_out_json(ordered.left_out)}};
  for (const auto& line : ordered.list.lines)
    json["orders"].push_back({{"order_by", line.order_by.iso()},
                              {"good", line.good},
                              {"supplier", line.supplier},
                              {"form", book::word(line.form)},
                              {"packs", line.packs},
                              {"litres", line.litres},
                              {"cents", line.cents},
                              {"kilograms", line.kilograms ? Json(*line.kilograms) : Json(nullptr)},
                              {"for_month", iso_month(line.for_month)}});
  return json;
}

PlanPaper order_paper(const Ordered& ordered, const book::Title& title, Date today,
                      const std::vector<Date>& months) {
  constexpr double per_cent = 100;
  PlanPaper paper{phrase("Order list"), foot_of(title, today), {}, {}, {}};
  paper.sentences.push_back(ordered.list.lines.empty()
                                ? nothing_told(ordered)
                                : phrase("{} in all.", money_said(ordered.list.cents)));
  paper.sentences.push_back(
      phrase("No list costs less than {} (gap {:.2f} %). Nothing runs short in {:.1f} of 100 "
             "futures; {:g} were asked for.",
             money_said(ordered.list.bound), per_cent * ordered.list.gap, per_cent * ordered.held,
             per_cent * ordered.assurance));
  for (auto& told : left_out_told(ordered.left_out))
    paper.sentences.push_back(std::move(told));
  const auto readers = [](Quantity quantity, double kept) {
    return rounded(in_units(language().units(), quantity, kept));
  };
  const auto heading = [](std::string_view metric, Quantity quantity) {
    return unit_heading(metric, std::string(unit_word(language().units(), quantity)));
  };
  PlanTable orders{phrase("orders"),
                   {Word{"order by"}, Word{"good"}, Word{"supplier"}, Word{"form"}, Word{"packs"},
                    heading("litres", Quantity::litres), Word{"price"},
                    heading("kg", Quantity::kilograms), Word{"for month"}},
                   {}};
  for (const auto& line : ordered.list.lines)
    orders.rows.push_back(
        {line.order_by.iso(), line.good, line.supplier, Word{book::word(line.form)}, line.packs,
         readers(Quantity::litres, line.litres), Money{line.cents},
         line.kilograms ? Cell(readers(Quantity::kilograms, *line.kilograms)) : Cell(),
         iso_month(line.for_month)});
  paper.tables.push_back(std::move(orders));
  PlanTable needs{
      phrase("needed, {}", unit_word(language().units(), Quantity::litres)), {Word{"month"}}, {}};
  for (const auto& good : ordered.goods)
    needs.header.emplace_back(good.good);
  for (std::size_t month = 0; month < months.size(); ++month) {
    std::vector<Cell> row{iso_month(months[month])};
    for (const auto& good : ordered.goods)
      row.emplace_back(readers(Quantity::litres, good.litres[month]));
    needs.rows.push_back(std::move(row));
  }
  paper.tables.push_back(std::move(needs));
  paper.cautions = {phrase_of(work::caution::lifting), phrase_of(work::caution::dust)};
  return paper;
}

} // namespace coneline::report
