// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/spreadsheet.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <utility>
#include <xlsxwriter.h>

namespace coneline::report {

namespace {

/// The most letters a cell and a sheet's name hold by the format of these files.
constexpr std::size_t longest_text = 32'767;
constexpr std::size_t longest_name = 31;

std::string cut(const std::string& text, std::size_t longest) {
  if (text.size() <= longest)
    return text;
  auto end = longest;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U)
    --end;
  return text.substr(0, end);
}

/// A name that a sheet may have, in whatever language it was said.
std::string sheet_name(std::string said) {
  std::ranges::replace_if(
      said,
      [](char letter) {
        return std::string_view("[]:*?/\\'").find(letter) != std::string_view::npos;
      },
      ' ');
  return cut(said, longest_name);
}

class OneSheet : public Sheet {
 public:
  OneSheet(lxw_workbook* book, lxw_worksheet* sheet, lxw_format* bold, lxw_format* two_decimals,
           const std::vector<Cell>& header)
      : book_(book), sheet_(sheet), two_decimals_(two_decimals) {
    if (header.empty())
      return;
    format_ = bold;
    row(header);
    format_ = nullptr;
    worksheet_freeze_panes(sheet_, 1, 0);
    worksheet_set_column(sheet_, 0, static_cast<lxw_col_t>(header.size() - 1), 14, nullptr);
  }

  void row(const std::vector<Cell>& cells) override {
    lxw_col_t column = 0;
    for (const auto& cell : cells) {
      const auto row = static_cast<lxw_row_t>(rows_);
      if (const auto* whole = std::get_if<std::int64_t>(&cell))
        worksheet_write_number(sheet_, row, column, static_cast<double>(*whole), format_);
      else if (const auto* number = std::get_if<double>(&cell))
        worksheet_write_number(sheet_, row, column, *number, format_);
      else if (const auto* money = std::get_if<Money>(&cell))
        worksheet_write_number(sheet_, row, column, static_cast<double>(money->cents) / 100,
                               two_decimals_);
      else if (!std::holds_alternative<std::monostate>(cell))
        worksheet_write_string(sheet_, row, column, cut(said(cell), longest_text).c_str(), format_);
      ++column;
    }
    ++rows_;
  }

  void chart(const Chart& chart, int place) override {
    auto* drawn = workbook_add_chart(book_, LXW_CHART_SCATTER_STRAIGHT);
    for (const auto& line : chart.lines)
      add(drawn, line);
    chart_title_set_name(drawn, chart.title.c_str());
    lxw_chart_font small{};
    small.size = 11;
    small.bold = LXW_FALSE;
    chart_title_set_name_font(drawn, &small);
    chart_axis_set_name(drawn->x_axis, chart.across.c_str());
    chart_axis_set_name(drawn->y_axis, chart.up.c_str());
    chart_axis_set_min(drawn->x_axis, 0);
    chart_axis_set_min(drawn->y_axis, 0);
    chart_axis_set_num_format(drawn->y_axis, "0%");
    lxw_chart_line faint{};
    faint.color = 0xD8D6CC;
    faint.width = 0.5;
    chart_axis_major_gridlines_set_line(drawn->y_axis, &faint);
    chart_legend_set_position(drawn, LXW_CHART_LEGEND_BOTTOM);
    constexpr int rows_of_one = 20;
    constexpr int columns_of_one = 9;
    lxw_chart_options size{};
    size.x_scale = 1.15;
    size.y_scale = 1.3;
    worksheet_insert_chart_opt(sheet_, static_cast<lxw_row_t>(place / 2 * rows_of_one),
                               static_cast<lxw_col_t>(place % 2 * columns_of_one), drawn, &size);
  }

  [[nodiscard]] int rows() const override { return rows_; }

 private:
  static void add(lxw_chart* chart, const ChartLine& from) {
    const auto row = [](int number) { return static_cast<lxw_row_t>(number); };
    const auto column = [](int number) { return static_cast<lxw_col_t>(number); };
    auto* series = chart_add_series(chart, nullptr, nullptr);
    const auto sheet = sheet_name(from.sheet);
    chart_series_set_categories(series, sheet.c_str(), row(from.first), column(from.x),
                                row(from.last), column(from.x));
    chart_series_set_values(series, sheet.c_str(), row(from.first), column(from.y), row(from.last),
                            column(from.y));
    chart_series_set_name(series, from.name.c_str());
    lxw_chart_line line{};
    line.width = 2;
    switch (from.stroke) {
    case Stroke::seen:
      line.color = 0x20281F;
      break;
    case Stroke::fitted:
      line.color = 0x0072B2;
      line.dash_type = LXW_CHART_LINE_DASH_DASH;
      break;
    case Stroke::band:
      line.color = 0x0072B2;
      line.width = 0.75;
      line.dash_type = LXW_CHART_LINE_DASH_SQUARE_DOT;
      break;
    case Stroke::coming:
      line.color = 0x5B4B8A;
      line.width = 6;
      break;
    }
    chart_series_set_line(series, &line);
    chart_series_set_marker_type(series, LXW_CHART_MARKER_NONE);
  }

  lxw_workbook* book_;
  lxw_worksheet* sheet_;
  lxw_format* format_ = nullptr;
  lxw_format* two_decimals_;
  int rows_ = 0;
};

class Book : public Spreadsheet {
 public:
  explicit Book(const std::string& path) : book_(workbook_new(path.c_str())) {
    bold_ = workbook_add_format(book_);
    format_set_bold(bold_);
    two_decimals_ = workbook_add_format(book_);
    format_set_num_format(two_decimals_, "0.00");
  }
  Book(const Book&) = delete;
  Book& operator=(const Book&) = delete;
  ~Book() override {
    if (book_ != nullptr)
      lxw_workbook_free(book_);
  }

  Sheet& sheet(const std::string& name, const std::vector<Cell>& header) override {
    auto* made = workbook_add_worksheet(book_, sheet_name(name).c_str());
    sheets_.push_back(std::make_unique<OneSheet>(book_, made, bold_, two_decimals_, header));
    return *sheets_.back();
  }
  /// Writes the file, and is done with it.
  lxw_error close() { return workbook_close(std::exchange(book_, nullptr)); }

 private:
  lxw_workbook* book_;
  lxw_format* bold_ = nullptr;
  lxw_format* two_decimals_ = nullptr;
  std::vector<std::unique_ptr<OneSheet>> sheets_;
};

/// A folder of its own for the one file; taken away at the end.
class Beside {
 public:
  Beside() {
    std::error_code missing;
    const auto temporary = std::filesystem::temp_directory_path(missing);
    auto name = (temporary / "coneline-XXXXXX").string();
    if (!missing && ::mkdtemp(name.data()) != nullptr)
      folder_ = name;
  }
  Beside(const Beside&) = delete;
  Beside& operator=(const Beside&) = delete;
  ~Beside() {
    std::error_code ignored;
    if (!folder_.empty())
      std::filesystem::remove_all(folder_, ignored);
  }
  [[nodiscard]] std::string file() const {
    return folder_.empty() ? "" : (folder_ / "report.xlsx").string();
  }

 private:
  std::filesystem::path folder_;
};

} // namespace

Result<std::string> Spreadsheet::written(const std::function<void(Spreadsheet&)>& fill) {
  const Beside beside;
  const auto failed = [](std::string_view why) {
    return refuse(fault(phrase("no temporary file could be written: {}", why),
                        "Check the room left on the disk and the folder for temporary files."));
  };
  if (beside.file().empty())
    return failed("no folder");
  try {
    Book book(beside.file());
    fill(book);
    if (const auto error = book.close(); error != LXW_NO_ERROR)
      return failed(lxw_strerror(error));
  } catch (const std::runtime_error& missing) { // its library
    return failed(missing.what());
  }
  std::ifstream file(beside.file(), std::ios::binary);
  std::string bytes{std::istreambuf_iterator<char>(file), {}};
  if (bytes.empty())
    return failed("it is empty");
  return bytes;
}

} // namespace coneline::report
