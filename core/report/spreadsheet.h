// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A spreadsheet file with typed cells and line charts. Texts are written as texts: none becomes a
// formula, whatever it begins with. Private to this room.

#include "core/report/germination_rows.h"

#include <functional>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace coneline::report {

enum class Stroke { seen, fitted, band, coming };

/// A line through rows of a sheet, both ends included; x and y are its columns, all from 0.
struct ChartLine {
  std::string name;
  std::string sheet;
  int first = 0;
  int last = 0;
  int x = 0;
  int y = 0;
  Stroke stroke = Stroke::seen;
};

struct Chart {
  std::string title;
  std::string across;
  std::string up;
  std::vector<ChartLine> lines;
};

class Sheet {
 public:
  virtual ~Sheet() = default;
  virtual void row(const std::vector<Cell>& cells) = 0;
  /// `place`: two beside each other, then the next two below.
  virtual void chart(const Chart& chart, int place) = 0;
  [[nodiscard]] virtual int rows() const = 0; ///< the header among them
};

class Spreadsheet {
 public:
  virtual ~Spreadsheet() = default;
  /// A new sheet whose first row, if there is one, stays in sight.
  virtual Sheet& sheet(const std::string& name, const std::vector<Cell>& header) = 0;

  /// The bytes of the file. Fails where no temporary file can be written.
  static Result<std::string> written(const std::function<void(Spreadsheet&)>& fill);
};

/// The sheets of a germination report.
void add_germination(Spreadsheet& book, const GerminationReport& report);

} // namespace coneline::report
