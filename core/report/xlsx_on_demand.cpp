// SPDX-License-Identifier: GPL-3.0-or-later
// The functions of the library that writes spreadsheets, each handed on to it, which is loaded with
// the first call.
#include "core/base/on_demand.h"

#include <xlsxwriter.h>

namespace {

template <auto* Function>
decltype(Function) library(const char* name) {
  return coneline::on_demand<Function>(CONELINE_XLSX, name);
}

} // namespace

extern "C" {
lxw_chart_series* chart_add_series(lxw_chart* chart, const char* categories, const char* values) {
  return library<&::chart_add_series>("chart_add_series")(chart, categories, values);
}
void chart_axis_major_gridlines_set_line(lxw_chart_axis* axis, lxw_chart_line* line) {
  library<&::chart_axis_major_gridlines_set_line>("chart_axis_major_gridlines_set_line")(axis,
                                                                                         line);
}
void chart_axis_set_min(lxw_chart_axis* axis, double min) {
  library<&::chart_axis_set_min>("chart_axis_set_min")(axis, min);
}
void chart_axis_set_name(lxw_chart_axis* axis, const char* name) {
  library<&::chart_axis_set_name>("chart_axis_set_name")(axis, name);
}
void chart_axis_set_num_format(lxw_chart_axis* axis, const char* num_format) {
  library<&::chart_axis_set_num_format>("chart_axis_set_num_format")(axis, num_format);
}
void chart_legend_set_position(lxw_chart* chart, uint8_t position) {
  library<&::chart_legend_set_position>("chart_legend_set_position")(chart, position);
}
void chart_series_set_categories(lxw_chart_series* series, const char* sheetname,
                                 lxw_row_t first_row, lxw_col_t first_col, lxw_row_t last_row,
                                 lxw_col_t last_col) {
  library<&::chart_series_set_categories>("chart_series_set_categories")(
      series, sheetname, first_row, first_col, last_row, last_col);
}
void chart_series_set_line(lxw_chart_series* series, lxw_chart_line* line) {
  library<&::chart_series_set_line>("chart_series_set_line")(series, line);
}
void chart_series_set_marker_type(lxw_chart_series* series, uint8_t type) {
  library<&::chart_series_set_marker_type>("chart_series_set_marker_type")(series, type);
}
void chart_series_set_name(lxw_chart_series* series, const char* name) {
  library<&::chart_series_set_name>("chart_series_set_name")(series, name);
}
void chart_series_set_values(lxw_chart_series* series, const char* sheetname, lxw_row_t first_row,
                             lxw_col_t first_col, lxw_row_t last_row, lxw_col_t last_col) {
  library<&::chart_series_set_values>("chart_series_set_values")(series, sheetname, first_row,
                                                                 first_col, last_row, last_col);
}
void chart_title_set_name(lxw_chart* chart, const char* name) {
  library<&::chart_title_set_name>("chart_title_set_name")(chart, name);
}
void chart_title_set_name_font(lxw_chart* chart, lxw_chart_font* font) {
  library<&::chart_title_set_name_font>("chart_title_set_name_font")(chart, font);
}
void format_set_bold(lxw_format* format) {
  library<&::format_set_bold>("format_set_bold")(format);
}
char* lxw_strerror(lxw_error error_num) {
  return library<&::lxw_strerror>("lxw_strerror")(error_num);
}
lxw_chart* workbook_add_chart(lxw_workbook* workbook, uint8_t chart_type) {
  return library<&::workbook_add_chart>("workbook_add_chart")(workbook, chart_type);
}
void lxw_workbook_free(lxw_workbook* workbook) {
  library<&::lxw_workbook_free>("lxw_workbook_free")(workbook);
}
lxw_format* workbook_add_format(lxw_workbook* workbook) {
  return library<&::workbook_add_format>("workbook_add_format")(workbook);
}
lxw_worksheet* workbook_add_worksheet(lxw_workbook* workbook, const char* sheetname) {
  return library<&::workbook_add_worksheet>("workbook_add_worksheet")(workbook, sheetname);
}
lxw_error workbook_close(lxw_workbook* workbook) {
  return library<&::workbook_close>("workbook_close")(workbook);
}
lxw_workbook* workbook_new(const char* filename) {
  return library<&::workbook_new>("workbook_new")(filename);
}
void worksheet_freeze_panes(lxw_worksheet* worksheet, lxw_row_t row, lxw_col_t col) {
  library<&::worksheet_freeze_panes>("worksheet_freeze_panes")(worksheet, row, col);
}
lxw_error worksheet_insert_chart_opt(lxw_worksheet* worksheet, lxw_row_t row, lxw_col_t col,
                                     lxw_chart* chart, lxw_chart_options* user_options) {
  return library<&::worksheet_insert_chart_opt>("worksheet_insert_chart_opt")(worksheet, row, col,
                                                                              chart, user_options);
}
lxw_error worksheet_set_column(lxw_worksheet* worksheet, lxw_col_t first_col, lxw_col_t last_col,
                               double width, lxw_format* format) {
  return library<&::worksheet_set_column>("worksheet_set_column")(worksheet, first_col, last_col,
                                                                  width, format);
}
lxw_error worksheet_write_number(lxw_worksheet* worksheet, lxw_row_t row, lxw_col_t col,
                                 double number, lxw_format* format) {
  return library<&::worksheet_write_number>("worksheet_write_number")(worksheet, row, col, number,
                                                                      format);
}
lxw_error worksheet_write_string(lxw_worksheet* worksheet, lxw_row_t row, lxw_col_t col,
                                 const char* string, lxw_format* format) {
  return library<&::worksheet_write_string>("worksheet_write_string")(worksheet, row, col, string,
                                                                      format);
}
}
