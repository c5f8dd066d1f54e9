// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A part of the season plan as it is given away: sentences, tables and cautions, for paper, a
// spreadsheet or CSV.

#include "core/book/title.h"
#include "core/report/germination_rows.h"
#include "core/report/papers.h"

#include <filesystem>
#include <functional>

namespace coneline::report {

struct PlanTable {
  std::string name;                    ///< said
  std::vector<Cell> header;            ///< words of the program, or names the grower gave
  std::vector<std::vector<Cell>> rows; ///< each as long as the header
};

struct PlanPaper {
  std::string title;
  std::string foot; ///< the book, that it is invented, the day
  std::vector<std::string> sentences;
  std::vector<PlanTable> tables;
  std::vector<std::string> cautions;
};

/// Over values in the reader's units: as programs know it where these are those of the book.
Cell unit_heading(std::string_view metric, std::string readers_unit);

std::string foot_of(const book::Title& title, Date today);

/// One table; the last column says whether the data are invented.
std::string csv_of(const PlanTable& table, const book::Title& title);
/// A sheet a table, and one of the sentences. Fails where no temporary file can be written.
Result<std::string> xlsx_of(const PlanPaper& paper);
/// By the path's ending: .xlsx, .csv (the first table), else a PDF through `pdf`, which this room
/// cannot make.
Result<void>
write_paper(const PlanPaper& paper, const book::Title& title, const std::filesystem::path& path,
            const std::function<Result<int>(const std::string&, const PlanPaper&)>& pdf);
/// As sections to be read or printed.
std::vector<PapersSection> sections_of(const PlanPaper& paper);
/// The table as it is pasted into another program: cells with tabs between.
std::string tabbed(const PlanTable& table);

} // namespace coneline::report
