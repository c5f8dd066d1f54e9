// SPDX-License-Identifier: GPL-3.0-or-later
// The functions of the library that writes spreadsheets, each handed on to it, which is loaded with
// the first call.
#include "core/base/on_demand.h"

#include <xlsxwriter.h>

extern "C" {
lxw_chart_series* chart_add_series(lxw_chart* chart, const char* categories, const char* values) {
  return CONELINE_LOADED(chart_add_series)(chart, categories, values);
}
void chart_axis_major_gridlines_set_line(lxw_chart_axis* axis, lxw_chart_line* line) {
  CONELINE_LOADED(chart_axis_major_gridlines_set_line)(axis, line);
}
void chart_axis_set_min(lxw_chart_axis* axis, double min) {
  CONELINE_LOADED(chart_axis_set_min)(axis, min);
}
void chart_axis_set_name(lxw_chart_axis* axis, const char* name) {
  CONELINE_LOADED(chart_axis_set_name)(axis, name);
}
void chart_axis_set_num_format(lxw_chart_axis* axis, const char* num_format) {
  CONELINE_LOADED(chart_axis_set_num_format)(axis, num_format);
}
void chart_legend_set_position(lxw_chart* chart, uint8_t position) {
  CONELINE_LOADED(chart_legend_set_position)(chart, position);
}
void chart_series_set_categories(lxw_chart_series* series, const char* sheetname,
                                 lxw_row_t first_row, lxw_col_t first_col, lxw_row_t last_row,
                                 lxw_col_t last_col) {
  CONELINE_LOADED(chart_series_set_categories)
  (series, sheetname, first_row, first_col, last_row, last_col);
}
void chart_series_set_line(lxw_chart_series* series, lxw_chart_line* line) {
  CONELINE_LOADED(chart_series_set_line)(series, line);
}
void chart_series_set_marker_type(lxw_chart_series* series, uint8_t type) {
  CONELINE_LOADED(chart_series_set_marker_type)(series, type);
}
void chart_series_set_name(lxw_chart_series* series, const char* name) {
  CONELINE_LOADED(chart_series_set_name)(series, name);
}
void chart_series_set_values(lxw_chart_series* series, const char* sheetname, lxw_row_t first_row,
                             lxw_col_t first_col, lxw_row_t last_row, lxw_col_t last_col) {
  CONELINE_LOADED(chart_series_set_values)
  (series, sheetname, first_row, first_col, last_row, last_col);
}
void chart_title_set_name(lxw_chart* chart, const char* name) {
  CONELINE_LOADED(chart_title_set_name)(chart, name);
}
void chart_title_set_name_font(lxw_chart* chart, lxw_chart_font* font) {
  CONELINE_LOADED(chart_title_set_name_font)(chart, font);
}
void format_set_bold(lxw_format* format) {
  CONELINE_LOADED(format_set_bold)(format);
}
void format_set_num_format(lxw_format* format, const char* num_format) {
  CONELINE_LOADED(format_set_num_format)(format, num_format);
}
char* lxw_strerror(lxw_error error_num) {
  return CONELINE_LOADED(lxw_strerror)(error_num);
}
lxw_chart* workbook_add_chart(lxw_workbook* workbook, uint8_t chart_type) {
  return CONELINE_LOADED(workbook_add_chart)(workbook, chart_type);
}
void lxw_workbook_free(lxw_workbook* workbook) {
  CONELINE_LOADED(lxw_workbook_free)(workbook);
}
lxw_format* workbook_add_format(lxw_workbook* workbook) {
  return CONELINE_LOADED(workbook_add_format)(workbook);
}
lxw_worksheet* workbook_add_worksheet(lxw_workbook* workbook, const char* sheetname) {
  return CONELINE_LOADED(workbook_add_worksheet)(workbook, sheetname);
}
lxw_error workbook_close(lxw_workbook* workbook) {
  return CONELINE_LOADED(workbook_close)(workbook);
}
lxw_workbook* workbook_new(const char* filename) {
  return CONELINE_LOADED(workbook_new)(filename);
}
void worksheet_freeze_panes(lxw_worksheet* worksheet, lxw_row_t row, lxw_col_t col) {
  CONELINE_LOADED(worksheet_freeze_panes)(worksheet, row, col);
}
lxw_error worksheet_insert_chart_opt(lxw_worksheet* worksheet, lxw_row_t row, lxw_col_t col,
                                     lxw_chart* chart, lxw_chart_options* user_options) {
  return CONELINE_LOADED(worksheet_insert_chart_opt)(worksheet, row, col, chart, user_options);
}
lxw_error worksheet_set_column(lxw_worksheet* worksheet, lxw_col_t first_col, lxw_col_t last_col,
                               double width, lxw_format* format) {
  return CONELINE_LOADED(worksheet_set_column)(worksheet, first_col, last_col, width, format);
}
lxw_error worksheet_write_number(lxw_worksheet* worksheet, lxw_row_t row, lxw_col_t col,
                                 double number, lxw_format* format) {
  return CONELINE_LOADED(worksheet_write_number)(worksheet, row, col, number, format);
}
lxw_error worksheet_write_string(lxw_worksheet* worksheet, lxw_row_t row, lxw_col_t col,
                                 const char* string, lxw_format* format) {
  return CONELINE_LOADED(worksheet_write_string)(worksheet, row, col, string, format);
}
}
