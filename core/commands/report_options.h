// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a germination report is asked for, the same for every form it is written in.

#include "core/commands/book_options.h"
#include "core/report/germination_report.h"

namespace coneline::commands {

struct ReportOptions {
  BookOption book;
  std::string as_of;
  double confidence = 0.95;
  std::string by = "cross";
  int season_begins = 1;
  std::string time = "days";
  double base = 10;
  std::string method = "average";

  void add_to(Command& command);
  [[nodiscard]] Result<report::Asked> asked() const;
  /// Opens the book and makes the report.
  [[nodiscard]] Result<report::GerminationReport> report() const;
};

} // namespace coneline::commands
