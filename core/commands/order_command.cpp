// SPDX-License-Identifier: GPL-3.0-or-later
// order: what to buy for the mixes of the months to come, at least cost, with a chosen assurance.
#include "core/base/money.h"
#include "core/base/month.h"
#include "core/commands/commands.h"
#include "core/commands/order_options.h"
#include "core/commands/table.h"
#include "core/report/forecast_report.h"
#include "core/report/title_said.h"
#include "core/report/whole_file.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

struct Asked {
  OrderOptions order;
  bool compare = false;
  std::string csv;
  std::string xlsx;
};

std::string table_of(const report::Ordered& ordered, const book::Title& title) {
  Table table({"order by", "good", "supplier", "form", "packs", "litres", "price", "kg", "for"});
  for (const auto& line : ordered.list.lines)
    table.row({line.order_by.iso(), line.good, line.supplier, std::string(book::word(line.form)),
               std::to_string(line.packs), shown(line.litres, 0),
               money_said(static_cast<double>(line.cents)), shown(line.kilograms, 0),
               iso_month(line.for_month)});
  std::string text =
      fmt::format("Order list of {}\n{}", report::title_said(title),
                  ordered.list.lines.empty() ? report::nothing_told(ordered) + "\n" : table.text());
  text += fmt::format("{} in all; no list costs less than {} (gap {:.2f} %). Nothing runs short "
                      "in {:.1f} of 100 futures.\n",
                      money_said(ordered.list.cents), money_said(ordered.list.bound),
                      100 * ordered.list.gap, 100 * ordered.held);
  for (const auto& told : report::left_out_told(ordered.left_out))
    text += told + "\n";
  return text;
}

/// What more or less assurance would cost.
Result<void> add_comparison(const OrderAsked& asked, Answer& answer) {
  const auto all = report::ordered_with(asked.forecast, asked.offers, asked.goods,
                                        asked.input.standing.today, report::usual_assurances());
  if (!all)
    return refuse(all.error());
  Table table({"assurance", "price", "litres"});
  answer.json["by_assurance"] = Json::array();
  for (const auto& one : *all) {
    double litres = 0;
    for (const auto& line : one.list.lines)
      litres += line.litres;
    answer.json["by_assurance"].push_back({{"assurance", one.assurance},
                                           {"held", one.held},
                                           {"cents", one.list.cents},
                                           {"bound_cents", one.list.bound},
                                           {"litres", litres}});
    table.row(
        {fmt::format("{:g} %", 100 * one.assurance), money_said(one.list.cents), shown(litres, 0)});
  }
  answer.table += "\nWhat the assurance costs\n" + table.text();
  return {};
}

Result<void> write_files(const Asked& asked, const report::PlanPaper& paper,
                         const book::Title& title) {
  if (!asked.csv.empty())
    if (auto written = report::write_whole(asked.csv, report::csv_of(paper.tables.front(), title));
        !written)
      return written;
  if (asked.xlsx.empty())
    return {};
  const auto sheets = report::xlsx_of(paper);
  if (!sheets)
    return refuse(sheets.error());
  return report::write_whole(asked.xlsx, *sheets);
}

Result<Answer> run(const Asked& asked, std::ostream& messages) {
  const auto plan = asked.order.asked(messages);
  if (!plan)
    return refuse(plan.error());
  const auto today = plan->input.standing.today;
  const auto& title = plan->input.standing.registers.title;
  const auto one =
      report::ordered(plan->forecast, plan->offers, plan->goods, today, plan->assurance);
  if (!one)
    return refuse(one.error());
  Answer answer;
  answer.json = {{"book", title.name}, {"invented", title.invented}, {"today", today.iso()}};
  answer.json.update(report::order_json(*one));
  answer.table = table_of(*one, title);
  if (asked.compare)
    if (auto added = add_comparison(*plan, answer); !added)
      return refuse(added.error());
  answer.table += "A season is the months planned. What is left at a month's end has to find room; "
                  "what is used within it does not.\n";
  const auto paper = report::order_paper(*one, title, today, plan->forecast.months());
  for (const auto& caution : paper.cautions)
    answer.table += "Caution: " + caution + "\n";
  if (auto written = write_files(asked, paper, title); !written)
    return refuse(written.error());
  return answer;
}

} // namespace

void add_order(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("order", "What to buy for the mixes to come, by when, at least cost",
                           [asked, &line] { return run(*asked, line.messages()); });
  asked->order.add_to(command);
  command.add_flag("--compare", asked->compare, "Show what more or less assurance costs");
  command.add_option("--csv", asked->csv, "A file to write the order list to as well");
  command.add_option("--xlsx", asked->xlsx, "A spreadsheet to write it to");
}

} // namespace coneline::commands
