// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/heading.h"
#include "core/base/phrase.h"
#include "core/report/cross_chart.h"
#include "core/report/cross_said.h"
#include "core/report/germination_rows.h"
#include "core/report/spreadsheet.h"
#include "core/report/title_said.h"

#include <algorithm>

namespace coneline::report {

namespace {

/// Where the points of one cross stand on the sheet of curves.
struct Points {
  std::size_t cross = 0;
  int steps_from = 0;
  int steps_to = 0;
  int curve_from = 0;
  int curve_to = 0;
  int end = 0;
  bool fitted = false;
  bool band = false;
};

/// The sheets by their names, which are said; those of their columns are as in CSV and described on
/// a sheet of their own.
std::string curves_name() {
  return as_heading("curves");
}

std::vector<Cell> header() {
  std::vector<Cell> names;
  for (const auto& column : columns())
    names.emplace_back(std::string(column.name));
  return names;
}

void add_crosses(Spreadsheet& book, const GerminationReport& report) {
  auto& sheet = book.sheet(as_heading("crosses"), header());
  for (const auto place : report.ranking)
    sheet.row(cells_of(report, report.crosses[place]));
}

void add_trays(Spreadsheet& book, const GerminationReport& report) {
  auto& sheet = book.sheet(as_heading("trays"), header());
  for (const auto& cross : report.crosses)
    for (const auto& tray : cross.trays)
      sheet.row(cells_of(report, cross, tray));
}

void add_looks(Spreadsheet& book, const GerminationReport& report) {
  auto& sheet = book.sheet(as_heading("looks"), {"group", "tray", "sown", "day", "germinated",
                                                 "removed", "leaves", "date"});
  for (const auto& cross : report.crosses) {
    const auto name = name_said(cross);
    for (const auto& tray : cross.trays)
      for (const auto& look : tray.seen.looks)
        sheet.row({name, tray.seen.lot.code.text(), tray.seen.sown, look.day, look.germinated,
                   look.removed, look.leaves, look.date.iso()});
  }
}

Points add_points(Sheet& sheet, const CrossReport& cross) {
  const auto chart = cross_chart(cross);
  const auto name = name_said(cross);
  Points points;
  points.fitted = !chart.fitted.empty();
  points.band = !chart.band.empty();
  points.steps_from = sheet.rows();
  for (const auto& [time, share] : chart.steps)
    sheet.row({name, Word{"seen"}, time, share, Cell(), Cell(), Cell()});
  points.steps_to = points.curve_from = sheet.rows();
  for (std::size_t i = 0; i < chart.fitted.size(); ++i) {
    const auto& [time, share] = chart.fitted[i];
    if (points.band)
      sheet.row({name, Word{"fitted"}, time, share, chart.band[i].low, chart.band[i].high, Cell()});
    else
      sheet.row({name, Word{"fitted"}, time, share, Cell(), Cell(), Cell()});
  }
  points.curve_to = sheet.rows();
  if (chart.coming) {
    const auto& [from, low, likely, high] = *chart.coming;
    for (const double share : {low, likely, high})
      sheet.row({name, Word{"may end"}, chart.until, Cell(), Cell(), Cell(), share});
  }
  points.end = sheet.rows();
  return points;
}

std::vector<Points> add_curves(Spreadsheet& book, const GerminationReport& report) {
  auto& sheet = book.sheet(
      curves_name(), {"cross", "kind", "time", "share", "share_low", "share_high", "may_end"});
  std::vector<Points> all;
  for (std::size_t place = 0; place < report.crosses.size(); ++place) {
    all.push_back(add_points(sheet, report.crosses[place]));
    all.back().cross = place;
  }
  return all;
}

constexpr int time_column = 2;
constexpr int share_column = 3;
constexpr int low_column = 4;
constexpr int high_column = 5;
constexpr int end_column = 6;

Chart chart_of(const GerminationReport& report, const Points& points) {
  const auto& cross = report.crosses[points.cross];
  Chart chart{phrase("{}, as of {}", name_said(cross), report.as_of.iso()),
              phrase("{} since sowing", report.time_unit_said()),
              phrase("share of the seed sown"),
              {}};
  const auto line = [&](std::string name, int from, int to, int column, Stroke stroke) {
    if (from < to)
      chart.lines.push_back(
          {std::move(name), curves_name(), from, to - 1, time_column, column, stroke});
  };
  if (points.band) {
    line(phrase("range of the curve, low"), points.curve_from, points.curve_to, low_column,
         Stroke::band);
    line(phrase("range of the curve, high"), points.curve_from, points.curve_to, high_column,
         Stroke::band);
  }
  if (points.fitted)
    line(phrase("fitted curve"), points.curve_from, points.curve_to, share_column, Stroke::fitted);
  line(phrase("seen at the looks"), points.steps_from, points.steps_to, share_column, Stroke::seen);
  line(phrase("where it may end"), points.curve_to, points.end, end_column, Stroke::coming);
  return chart;
}

void add_charts(Spreadsheet& book, const GerminationReport& report,
                const std::vector<Points>& points) {
  auto& sheet = book.sheet(as_heading("charts"), {});
  int at = 0;
  for (const auto place : report.ranking) {
    if (report.crosses[place].curve.back().day <= 0)
      continue;
    sheet.chart(chart_of(report, points[place]), at++);
  }
}

void add_columns(Spreadsheet& book) {
  auto& sheet = book.sheet(as_heading("columns"), {Word{"column"}, Word{"type"}, Word{"unit"},
                                                   Word{"missing"}, Word{"meaning"}});
  for (const auto& column : columns())
    sheet.row({std::string(column.name), Word{column.type}, Word{column.unit}, Word{"empty"},
               phrase_of(column.meaning)});
}

void add_about(Spreadsheet& book, const GerminationReport& report) {
  auto& sheet = book.sheet(as_heading("about"), {Word{"what"}, Word{"is"}});
  const auto say = [&](Word what, std::string is) { sheet.row({what, std::move(is)}); };
  say(Word{"book"}, title_said(report.title));
  say(Word{"as of"}, report.as_of.iso());
  say(Word{"taken together by"}, as_heading(by_word(report.by)));
  say(Word{"times in"}, report.time_unit_said());
  if (report.degree_days)
    say(Word{"temperature"}, lacking_told(report));
  say(Word{"range of the curve"}, band_told());
  say(Word{"crosses alike"}, alike_method_told());
  for (const auto& sentence : alike_told(report))
    say(Word{"cannot be told apart"}, sentence);
  for (const auto& tray : report.left_out)
    say(Word{"left out"}, tray.code.text() + ": " + tray.why);
}

} // namespace

void add_germination(Spreadsheet& book, const GerminationReport& report) {
  add_crosses(book, report);
  add_trays(book, report);
  add_looks(book, report);
  const auto points = add_curves(book, report);
  add_charts(book, report, points);
  add_columns(book);
  add_about(book, report);
}

Result<std::string> germination_xlsx(const GerminationReport& report) {
  return Spreadsheet::written([&](Spreadsheet& book) { add_germination(book, report); });
}

} // namespace coneline::report
