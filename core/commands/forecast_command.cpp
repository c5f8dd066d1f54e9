// SPDX-License-Identifier: GPL-3.0-or-later
// forecast: what the months to come may bring, and what one number is made of.
#include "core/base/month.h"
#include "core/commands/commands.h"
#include "core/commands/forecast_options.h"
#include "core/commands/table.h"
#include "core/plan/fit.h"
#include "core/plan/forecast_expected.h"
#include "core/report/forecast_paper.h"
#include "core/report/forecast_report.h"
#include "core/report/title_said.h"
#include "core/report/whole_file.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct Asked {
  ForecastOptions plan;
  std::string csv;
  std::string xlsx;
  std::string what;
  std::string name;
  std::string month;
};

/// Months down, one column a series: low - middle - high.
std::string ranges_text(const plan::Forecast& forecast, plan::Shown shown,
                        const std::string& title) {
  std::vector<std::size_t> columns;
  std::vector<std::string> header{"month"};
  for (std::size_t at = 0; at < forecast.series().size(); ++at)
    if (forecast.series()[at].shown == shown) {
      columns.push_back(at);
      header.push_back(forecast.series()[at].name);
    }
  if (columns.empty())
    return "";
  Table table(header);
  const int decimals = report::decimals_of(shown);
  for (std::size_t month = 0; month < forecast.months().size(); ++month) {
    std::vector<std::string> cells{iso_month(forecast.months()[month])};
    for (const auto at : columns) {
      const auto range = forecast.range(at, month);
      cells.push_back(range.high <= 0
                          ? "-"
                          : fmt::format("{:.{}f} - {:.{}f} - {:.{}f}", range.low, decimals,
                                        range.middle, decimals, range.high, decimals));
    }
    table.row(std::move(cells));
  }
  return fmt::format("\n{} (10 - 50 - 90 %)\n{}", title, table.text());
}

std::string ready_text(const plan::Forecast& forecast) {
  Table table({"year", "cross", "10 - 50 - 90 %"});
  bool some = false;
  const auto months = forecast.months().size();
  for (std::size_t first = 0; first < months; first += 12)
    for (std::size_t at = 0; at < forecast.series().size(); ++at) {
      if (forecast.series()[at].shown != plan::Shown::ready)
        continue;
      const auto last = std::min(first + 12, months);
      const auto range = forecast.range_of_sum(at, first, last);
      if (range.high <= 0)
        continue;
      some = true;
      table.row({fmt::format("{} to {}", iso_month(forecast.months()[first]),
                             iso_month(forecast.months()[last - 1])),
                 forecast.series()[at].name,
                 fmt::format("{:.0f} - {:.0f} - {:.0f}", range.low, range.middle, range.high)});
    }
  return some ? "\nPlants becoming ready, by cross\n" + table.text() : "";
}

std::string table_of(const plan::Forecast& forecast, const plan::ForecastInput& input) {
  const auto& title = input.standing.registers.title;
  using plan::Shown;
  std::string text = fmt::format(
      "{} from {} in {}, {}\n", work::counted(std::ssize(forecast.months()), "month", "months"),
      input.standing.today.iso(), work::counted(forecast.runs(), "future", "futures"),
      report::title_said(title));
  for (const auto& told : report::crowding_told(forecast, input.standing.registers))
    text += told + "\n";
  text += ranges_text(forecast, Shown::into, "Plants into each pot");
  text += ranges_text(forecast, Shown::mix, "Finished mix, litres");
  text += ranges_text(forecast, Shown::part, "Parts of the mixes, litres");
  text += ranges_text(forecast, Shown::standing, "Plants standing at the month's end");
  text += ranges_text(forecast, Shown::square_metres, "Bench at the month's end, square metres");
  text += ranges_text(forecast, Shown::load, "Load where pots stand, kg a square metre");
  text += ready_text(forecast) + "\n";
  for (const auto& told : report::left_out_told(forecast.ways().left_out))
    text += told + "\n";
  for (const auto& remark : forecast.ways().remarks)
    text += remark + "\n";
  for (const auto& rule : report::forecast_rules(input))
    text += rule + "\n";
  text += "Caution: dry mix dusts and can carry Legionella; wet it, wear mask and gloves. Watered "
          "pots are heavy: mind the bench and your back.\n";
  return text;
}

/// One number, opened into its lots.
Result<Answer> opened(const Asked& asked, const plan::ForecastInput& input) {
  const auto shown = report::read_shown(asked.what);
  if (!shown)
    return refuse(shown.error());
  const plan::Forecast months(plan::ways_of(input), input.standing.today, 0);
  const auto series = months.find({*shown, asked.name});
  if (!series || *shown == plan::Shown::load)
    return refuse(usage_fault(
        fmt::format("the plan has no {} '{}' that is made of lots", asked.what, asked.name),
        "Take a name as the forecast shows it."));
  const auto month = month_given(asked.month, months.months());
  if (!month)
    return refuse(month.error());
  const auto lots = plan::made_of(months.ways(), input, *series, *month);
  Answer answer;
  answer.json = {{"what", asked.what},
                 {"name", asked.name},
                 {"month", asked.month},
                 {"unit", report::unit_of(*shown)},
                 {"lots", Json::array()}};
  Table table({"lot", "expected"});
  double sum = months.ways().always[*series];
  for (const auto& lot : lots) {
    const double value = lot.values[*month];
    sum += value;
    answer.json["lots"].push_back({{"code", lot.lot}, {"expected", value}});
    table.row({lot.lot, commands::shown(value, 2)});
  }
  answer.json["expected"] = sum;
  answer.table = fmt::format("{} '{}' in {}: {:.2f} {} expected, from\n{}", asked.what, asked.name,
                             asked.month, sum, report::unit_of(*shown), table.text());
  return answer;
}

Result<Answer> run(const Asked& asked, std::ostream& messages) {
  const auto input = asked.plan.input();
  if (!input)
    return refuse(input.error());
  if (auto can = plan::can_be_planned(*input); !can)
    return refuse(can.error());
  if (!asked.what.empty())
    return opened(asked, *input);
  const auto forecast = plan::forecast_of(*input, asked.plan.wanted(messages));
  if (!forecast)
    return refuse(forecast.error());
  if (!asked.csv.empty())
    if (auto written = report::write_whole(
            asked.csv, report::forecast_csv(*forecast, input->standing.registers.title));
        !written)
      return refuse(written.error());
  if (!asked.xlsx.empty()) {
    const auto sheets = report::xlsx_of(report::forecast_sheets(*forecast, *input));
    if (!sheets)
      return refuse(sheets.error());
    if (auto written = report::write_whole(asked.xlsx, *sheets); !written)
      return refuse(written.error());
  }
  return Answer{report::forecast_json(*forecast, *input, asked.plan.seed),
                table_of(*forecast, *input)};
}

} // namespace

void add_forecast(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("forecast", "What the months to come may bring: pots, mix, room, sales",
                           [asked, &line] { return run(*asked, line.messages()); });
  asked->plan.add_to(command, 36);
  command.add_option("--csv", asked->csv, "A file to write the values to as well, one row a value");
  command.add_option("--xlsx", asked->xlsx, "A spreadsheet to write them to");
  const auto what =
      command.add_option("--what", asked->what,
                         "Open one number into its lots: 'plants into', mix, part, bench, "
                         "place, ready ...");
  const auto name =
      command.add_option("--name", asked->name, "Of the pot, mix, part, place or cross");
  const auto month = command.add_option("--month", asked->month, "As 2027-05");
  what.needs(name).needs(month);
  name.needs(what);
  month.needs(what);
}

} // namespace coneline::commands
