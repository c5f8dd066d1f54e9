// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The germination report as files, each written whole or not at all.

#include "core/report/germination_report.h"

#include <filesystem>

namespace coneline::report {

/// "csv", "counts", "json", "html" or "xlsx". Fails on another word, and where a spreadsheet's
/// temporary file cannot be written.
Result<std::string> germination_as(const GerminationReport& report, std::string_view form);

/// The same into a file. Beside rows.csv comes rows.dictionary.csv, which says what its columns
/// hold.
Result<void> write_germination(const GerminationReport& report, std::string_view form,
                               const std::filesystem::path& path);

} // namespace coneline::report
