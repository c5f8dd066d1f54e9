// SPDX-License-Identifier: GPL-3.0-or-later
// order: what to buy for the mixes of the months to come, at least cost, with a chosen assurance.
#include "core/base/csv.h"
#include "core/base/number.h"
#include "core/commands/commands.h"
#include "core/commands/forecast_options.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"
#include "core/plan/assured_needs.h"
#include "core/plan/fit.h"
#include "core/report/forecast_report.h"
#include "core/report/offers_csv.h"
#include "core/report/whole_file.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct Asked {
  ForecastOptions plan;
  std::string offers;
  double assurance = 0.9;
  bool compare = false;
  std::vector<std::string> on_hand;
  std::vector<std::string> room;
  std::vector<std::string> keeps;
  std::string csv;
};

/// What one assurance costs.
struct Ordered {
  double assurance = 0;
  double held = 0;
  plan::OrderList list;
};

std::string money(double cents) {
  return fmt::format("{:.2f}", cents / 100);
}

/// "bark=300" for a good that the plan needs.
Result<void> set_each(const std::vector<std::string>& given, std::string_view option,
                      std::vector<plan::GoodNeeded>& goods,
                      const std::function<void(plan::Store&, double)>& set) {
  for (const auto& text : given) {
    const auto equals = text.rfind('=');
    const auto good = std::ranges::find(goods, text.substr(0, equals), &plan::GoodNeeded::good);
    const auto amount =
        equals == std::string::npos ? Result<double>(0) : parse_real(text.substr(equals + 1));
    if (equals == std::string::npos || !amount || *amount < 0)
      return refuse(usage_fault(fmt::format("{} '{}' is no good with an amount", option, text),
                                "Write good=amount, such as peat=200."));
    if (good == goods.end())
      return refuse(
          usage_fault(fmt::format("{} '{}': no mix of this plan has that part", option, text),
                      "Take a part as the forecast shows it."));
    set(good->store, *amount);
  }
  return {};
}

Result<void> set_stores(const Asked& asked, std::vector<plan::GoodNeeded>& goods) {
  using plan::Store;
  if (auto set = set_each(asked.on_hand, "--on-hand", goods,
                          [](Store& store, double litres) { store.on_hand = litres; });
      !set)
    return set;
  if (auto set = set_each(asked.room, "--room", goods,
                          [](Store& store, double litres) { store.room = litres; });
      !set)
    return set;
  return set_each(asked.keeps, "--keeps", goods, [](Store& store, double months) {
    constexpr double longest = 1200;
    store.keeps = static_cast<int>(std::clamp(months, 1.0, longest));
  });
}

Result<Ordered> ordered(const Asked& asked, const plan::Forecast& forecast,
                        const std::vector<plan::Offer>& offers, Date today, double assurance) {
  std::vector<std::size_t> series;
  std::vector<plan::GoodNeeded> goods;
  for (std::size_t at = 0; at < forecast.series().size(); ++at)
    if (forecast.series()[at].shown == plan::Shown::part) {
      series.push_back(at);
      goods.push_back({forecast.series()[at].name, {}, {}});
    }
  auto needs = plan::assured_needs(forecast, series, assurance);
  if (!needs)
    return refuse(needs.error());
  for (std::size_t good = 0; good < goods.size(); ++good)
    goods[good].litres = std::move(needs->litres[good]);
  if (auto set = set_stores(asked, goods); !set)
    return refuse(set.error());
  auto list = plan::order_list(goods, offers, today, forecast.months());
  if (!list)
    return refuse(list.error());
  return Ordered{assurance, needs->held, std::move(*list)};
}

Json json_of(const Ordered& ordered) {
  Json json{{"assurance", ordered.assurance}, {"held", ordered.held},
            {"cents", ordered.list.cents},    {"bound_cents", ordered.list.bound},
            {"gap", ordered.list.gap},        {"orders", Json::array()}};
  for (const auto& line : ordered.list.lines)
    json["orders"].push_back({{"order_by", line.order_by.iso()},
                              {"good", line.good},
                              {"supplier", line.supplier},
                              {"form", report::word_of(line.form)},
                              {"packs", line.packs},
                              {"litres", line.litres},
                              {"cents", line.cents},
                              {"kilograms", line.kilograms ? Json(*line.kilograms) : Json(nullptr)},
                              {"for_month", line.for_month.iso().substr(0, 7)}});
  return json;
}

std::string csv_of(const Ordered& ordered, const book::Title& title) {
  auto text = csv_line({"order_by", "good", "supplier", "form", "packs", "litres", "cents",
                        "kilograms", "for_month", "invented"});
  for (const auto& line : ordered.list.lines)
    text += csv_line({line.order_by.iso(), for_spreadsheet(line.good),
                      for_spreadsheet(line.supplier), std::string(report::word_of(line.form)),
                      std::to_string(line.packs), write_real(line.litres),
                      std::to_string(line.cents), line.kilograms ? write_real(*line.kilograms) : "",
                      line.for_month.iso().substr(0, 7), title.invented ? "yes" : "no"});
  return text;
}

std::string table_of(const Ordered& ordered, const book::Title& title) {
  Table table({"order by", "good", "supplier", "form", "packs", "litres", "price", "kg", "for"});
  for (const auto& line : ordered.list.lines)
    table.row({line.order_by.iso(), line.good, line.supplier,
               std::string(report::word_of(line.form)), std::to_string(line.packs),
               shown(line.litres, 0), money(static_cast<double>(line.cents)),
               shown(line.kilograms, 0), line.for_month.iso().substr(0, 7)});
  std::string text =
      fmt::format("Order list of {}{}\n{}", title.name, title.invented ? " (invented data)" : "",
                  ordered.list.lines.empty() ? "Nothing has to be ordered.\n" : table.text());
  text += fmt::format("{} in all; no list costs less than {} (gap {:.2f} %). Nothing runs short "
                      "in {:.1f} of 100 futures.\n",
                      money(ordered.list.cents), money(ordered.list.bound), 100 * ordered.list.gap,
                      100 * ordered.held);
  return text;
}

/// What more or less assurance would cost.
Result<void> add_comparison(const Asked& asked, const plan::Forecast& forecast,
                            const std::vector<plan::Offer>& offers, Date today, Answer& answer) {
  Table table({"assurance", "price", "litres"});
  answer.json["by_assurance"] = Json::array();
  for (const double assurance : {0.5, 0.7, 0.8, 0.9, 0.95, 0.99}) {
    const auto one = ordered(asked, forecast, offers, today, assurance);
    if (!one)
      return refuse(one.error());
    double litres = 0;
    for (const auto& line : one->list.lines)
      litres += line.litres;
    answer.json["by_assurance"].push_back({{"assurance", assurance},
                                           {"held", one->held},
                                           {"cents", one->list.cents},
                                           {"bound_cents", one->list.bound},
                                           {"litres", litres}});
    table.row({fmt::format("{:g} %", 100 * assurance), money(one->list.cents), shown(litres, 0)});
  }
  answer.table += "\nWhat the assurance costs\n" + table.text();
  return {};
}

Result<Answer> run(const Asked& asked, std::ostream& messages) {
  const auto offers = report::read_offers(asked.offers);
  if (!offers)
    return refuse(offers.error());
  const auto input = asked.plan.input();
  if (!input)
    return refuse(input.error());
  const auto forecast = plan::forecast_of(*input, asked.plan.wanted(messages));
  if (!forecast)
    return refuse(forecast.error());
  const auto today = input->standing.today;
  const auto& title = input->standing.registers.title;
  const auto one = ordered(asked, *forecast, *offers, today, asked.assurance);
  if (!one)
    return refuse(one.error());
  Answer answer;
  answer.json = {{"book", title.name}, {"invented", title.invented}, {"today", today.iso()}};
  answer.json.update(json_of(*one));
  answer.table = table_of(*one, title);
  if (asked.compare)
    if (auto added = add_comparison(asked, *forecast, *offers, today, answer); !added)
      return refuse(added.error());
  answer.table += "A season is the months planned. What is left at a month's end has to find room; "
                  "what is used within it does not.\n"
                  "Caution: lift 25 kg at most, close to the body. Dry mix dusts and can carry "
                  "Legionella: wet it, wear mask and gloves.\n";
  if (!asked.csv.empty())
    if (auto written = report::write_whole(asked.csv, csv_of(*one, title)); !written)
      return refuse(written.error());
  return answer;
}

} // namespace

void add_order(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("order", "What to buy for the mixes to come, by when, at least cost",
                           [asked, &line] { return run(*asked, line.messages()); });
  asked->plan.add_to(command, 12);
  command
      .add_option("--offers", asked->offers,
                  "CSV of offers: good,supplier,form,litres,cents and, where wanted, expansion, "
                  "delivery_cents, lead_days, least, kilograms")
      ->required();
  real_option(command, "--assurance", asked->assurance,
              "Share of futures in which nothing runs short; 0.9 unless said");
  command.add_flag("--compare", asked->compare, "Show what more or less assurance costs");
  command.add_option("--on-hand", asked->on_hand, "Litres in store today, as peat=200");
  command.add_option("--room", asked->room, "Litres that can be stored, as peat=1500");
  command.add_option("--keeps", asked->keeps, "Months a good keeps, as peat=12");
  command.add_option("--csv", asked->csv, "A file to write the order list to as well");
}

} // namespace coneline::commands
