// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/report_file.h"

#include "core/base/phrase.h"
#include "core/report/whole_file.h"

#include <fmt/format.h>

namespace coneline::report {

Result<std::string> germination_as(const GerminationReport& report, std::string_view form) {
  if (form == "csv")
    return germination_csv(report);
  if (form == "counts")
    return germination_counts_csv(report);
  if (form == "json")
    return germination_json(report).dump(2) + "\n";
  if (form == "html")
    return germination_html(report);
  if (form == "xlsx")
    return germination_xlsx(report);
  return refuse(usage_fault(phrase("no report is written as '{}'", form),
                            "Choose csv, counts, json, html or xlsx."));
}

Result<void> write_germination(const GerminationReport& report, std::string_view form,
                               const std::filesystem::path& path) {
  const auto text = germination_as(report, form);
  if (!text)
    return refuse(text.error());
  if (auto written = write_whole(path, *text); !written || form != "csv")
    return written;
  auto beside = path;
  beside.replace_extension(".dictionary.csv");
  return write_whole(beside, germination_dictionary());
}

} // namespace coneline::report
