// SPDX-License-Identifier: GPL-3.0-or-later
// report germination: germination per cross, on the terminal or as a file.
#include "core/commands/commands.h"
#include "core/commands/report_options.h"
#include "core/commands/table.h"
#include "core/report/germination_rows.h"
#include "core/report/report_file.h"
#include "core/report/whole_file.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <memory>
#include <ostream>

namespace coneline::commands {

namespace {

struct Options {
  ReportOptions report;
  std::string format; ///< empty: by the file's name, else a table
  std::string out;
};

std::string range_text(const stats::FinalShare& share) {
  return share.range ? fmt::format("{:.1f}–{:.1f}", 100 * share.range->low, 100 * share.range->high)
                     : "–";
}

std::string share_text(const stats::FinalShare& share) {
  return share.share ? fmt::format("{:.1f}", 100 * *share.share) : "–";
}

std::vector<std::string> row_of(const report::CrossReport& cross) {
  const auto more = cross.expected();
  return {cross.name,
          cross.alike,
          std::to_string(cross.figures.sown),
          std::to_string(cross.figures.germinated),
          range_text(cross.figures.final),
          share_text(cross.figures.final),
          more.high == 0 ? "0" : fmt::format("{}–{}", more.low, more.high),
          shown(cross.together.mean_time, 1),
          shown(cross.together.t50_farooq, 1),
          std::to_string(cross.leaf.leaves),
          share_text(cross.leaf.share),
          shown(cross.leaf.days_from_root, 0),
          cross.told};
}

std::vector<std::string> row_of(const report::TrayReport& tray) {
  return {"  " + tray.seen.lot.code.text(),
          "",
          std::to_string(tray.seen.sown),
          std::to_string(tray.germinated),
          range_text(tray.figures.final),
          share_text(tray.figures.final),
          "",
          shown(tray.figures.measures.mean_time, 1),
          shown(tray.figures.measures.t50_farooq, 1),
          std::to_string(tray.leaf.leaves),
          share_text(tray.leaf.share),
          shown(tray.leaf.days_from_root, 0),
          tray.told};
}

std::string left_out_text(const report::GerminationReport& report) {
  std::string text;
  for (const auto& tray : report.left_out)
    text += fmt::format("Left out: {}: {}\n", tray.code.text(), tray.why);
  return text;
}

std::string table_of(const report::GerminationReport& report) {
  std::string text = fmt::format("Germination per {}, {}, as of {}{}\n", report::by_word(report.by),
                                 report.title.name, report.as_of.iso(),
                                 report.title.invented ? " (invented data)" : "");
  if (report.crosses.empty()) {
    text += report::no_cross_told(report) + "\n" + left_out_text(report);
    if (report.degree_days && !report.left_out.empty())
      text += "'coneline temperature take-in' takes in what the logger of their place measured.\n";
    return text;
  }
  const auto unit = report.degree_days ? "degree-days" : "days";
  Table table({"cross / tray", "alike", "sown", "up",
               fmt::format("{:g} % range, %", 100 * report.confidence), "% up", "still to come",
               fmt::format("mean {}", unit), fmt::format("T50 {}", unit), "leaves", "% in leaf",
               "root to leaf, days", "state"});
  for (const auto place : report.ranking) {
    const auto& cross = report.crosses[place];
    table.row(row_of(cross));
    for (const auto& tray : cross.trays)
      table.row(row_of(tray));
  }
  text += table.text();
  if (report.crosses.size() > 1)
    text += fmt::format("{}\n", report::alike_method_told());
  for (const auto& sentence : report::alike_told(report))
    text += sentence + "\n";
  if (report.degree_days)
    text += report::lacking_told(report) + "\n";
  return text + left_out_text(report);
}

/// Without --format by the ending of --out, whose own form no other may stand in.
Result<std::string> format_of(const Options& options) {
  auto ending = std::filesystem::path(options.out).extension().string();
  std::ranges::transform(ending, ending.begin(),
                         [](unsigned char letter) { return std::tolower(letter); });
  if (ending == ".pdf")
    return refuse(usage_fault(fmt::format("'{}' would be no PDF", options.out),
                              "'coneline report pdf' makes one."));
  if (!options.format.empty())
    return options.format;
  if (ending == ".csv" || ending == ".json" || ending == ".html" || ending == ".xlsx")
    return ending.substr(1);
  if (ending.empty() || ending == ".txt")
    return "table";
  return refuse(usage_fault(fmt::format("no report is written as '{}'", ending),
                            "End the file's name with .csv, .json, .html, .xlsx or .txt, or give "
                            "--format as well."));
}

Answer dictionary() {
  Answer answer;
  Table table({"column", "type", "unit", "meaning"});
  answer.json = Json::array();
  for (const auto& column : report::columns()) {
    table.row({std::string(column.name), std::string(column.type), std::string(column.unit),
               std::string(column.meaning)});
    answer.json.push_back({{"column", column.name},
                           {"type", column.type},
                           {"unit", column.unit},
                           {"meaning", column.meaning}});
  }
  answer.table = table.text();
  return answer;
}

/// What was written where, and what of it is missing in a file that has no line for that.
Answer written_answer(const Options& options, const std::string& format,
                      const report::GerminationReport& report) {
  Answer answer{{{"file", options.out},
                 {"format", format},
                 {"as_of", report.as_of.iso()},
                 {"left_out", Json::array()}},
                fmt::format("{} {} as of {} written to {}\n", report.crosses.size(),
                            report.crosses.size() == 1 ? "cross" : "crosses", report.as_of.iso(),
                            options.out) +
                    left_out_text(report)};
  for (const auto& tray : report.left_out)
    answer.json["left_out"].push_back({{"tray", tray.code.text()}, {"why", tray.why}});
  return answer;
}

Result<Answer> germination(const Options& options, std::ostream& messages) {
  const auto named = format_of(options);
  if (!named)
    return refuse(named.error());
  const auto& format = *named;
  if (format == "xlsx" && options.out.empty())
    return refuse(usage_fault("a spreadsheet cannot be shown here", "Name its file with --out."));
  const auto report = options.report.report();
  if (!report)
    return refuse(report.error());
  if (options.out.empty()) {
    if (format == "csv" || format == "counts")
      messages << left_out_text(*report); // rows have no place for it
    const auto text = format == "table" ? Result<std::string>(table_of(*report))
                                        : report::germination_as(*report, format);
    return text.map([&](const std::string& shown) {
      return Answer{report::germination_json(*report), shown};
    });
  }
  const auto written = format == "table" ? report::write_whole(options.out, table_of(*report))
                                         : report::write_germination(*report, format, options.out);
  return written.map([&] { return written_answer(options, format, *report); });
}

} // namespace

void add_report(CommandLine& line) {
  auto options = std::make_shared<Options>();
  auto& command = line.add("report", "germination", "Germination per cross or season, with ranges",
                           [options, &line] { return germination(*options, line.messages()); });
  options->report.add_to(command);
  command
      .add_option(
          "--format", options->format,
          "table, csv, json, html, xlsx, or counts as 'coneline germination' reads them; by "
          "the ending of --out when left out")
      .one_of({"table", "csv", "json", "html", "xlsx", "counts"});
  command.add_option("--out", options->out, "The file to write, whole or not at all");
  line.add("report", "dictionary",
           "What the columns of the report's CSV and spreadsheet hold; needs no book",
           []() -> Result<Answer> { return dictionary(); });
}

} // namespace coneline::commands
