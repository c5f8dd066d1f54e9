// SPDX-License-Identifier: GPL-3.0-or-later
// report germination: germination per cross, on the terminal or as a file.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/table.h"
#include "core/report/germination_report.h"
#include "core/report/whole_file.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

struct Asked {
  BookOption book;
  std::string as_of;
  std::string format; ///< empty: by the file's name, else a table
  std::string out;
  double confidence = 0.95;
};

std::string range_text(const stats::FinalShare& share) {
  return share.range ? fmt::format("{:.1f}–{:.1f}", 100 * share.range->low, 100 * share.range->high)
                     : "–";
}

std::string share_text(const stats::FinalShare& share) {
  return share.share ? fmt::format("{:.1f}", 100 * *share.share) : "–";
}

std::vector<std::string> row_of(const report::CrossReport& cross) {
  const auto& more = cross.figures.still_expected;
  return {cross.name,
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

std::string table_of(const report::GerminationReport& report) {
  std::string text =
      fmt::format("Germination per cross, {}, as of {}{}\n", report.title.name, report.as_of.iso(),
                  report.title.invented ? " (invented data)" : "");
  if (report.crosses.empty())
    return text + "No tray had been sown by then.\n";
  Table table({"cross / tray", "sown", "up",
               fmt::format("{:g} % range, %", 100 * report.confidence), "% up", "still to come",
               "mean days", "T50 days", "leaves", "% in leaf", "root to leaf, days", "state"});
  for (const auto& cross : report.crosses) {
    table.row(row_of(cross));
    for (const auto& tray : cross.trays)
      table.row(row_of(tray));
  }
  text += table.text();
  for (const auto& tray : report.left_out)
    text += fmt::format("Left out: {}: {}\n", tray.code.text(), tray.why);
  return text;
}

std::string format_of(const Asked& asked) {
  if (!asked.format.empty())
    return asked.format;
  const auto ending = std::filesystem::path(asked.out).extension().string();
  if (ending == ".csv" || ending == ".json" || ending == ".html")
    return ending.substr(1);
  return "table";
}

std::string written_as(const report::GerminationReport& report, const std::string& format) {
  if (format == "csv")
    return report::germination_csv(report);
  if (format == "json")
    return report::germination_json(report).dump(2) + "\n";
  if (format == "html")
    return report::germination_html(report);
  return table_of(report);
}

Result<Answer> germination(const Asked& asked) {
  const auto as_of = date_or_today(asked.as_of, "--as-of");
  if (!as_of)
    return refuse(as_of.error());
  auto book = asked.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  const auto report = book->read([&](store::Reading& reading) {
    return report::germination_report(reading, *as_of, asked.confidence);
  });
  if (!report)
    return refuse(report.error());
  const auto format = format_of(asked);
  const auto text = written_as(*report, format);
  if (asked.out.empty())
    return Answer{report::germination_json(*report), text};
  return report::write_whole(asked.out, text).map([&] {
    return Answer{{{"file", asked.out}, {"format", format}},
                  fmt::format("{} crosses written to {}\n", report->crosses.size(), asked.out)};
  });
}

} // namespace

void add_report(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("report", "germination", "Germination per cross, with its range",
                           [asked] { return germination(*asked); });
  asked->book.add_to(command);
  command.add_option("--as-of", asked->as_of, "As it was known on that day; today when left out");
  command
      .add_option("--format", asked->format,
                  "table, csv, json or html; by the ending of --out when left out")
      ->check(CLI::IsMember({"table", "csv", "json", "html"}));
  command.add_option("--out", asked->out, "The file to write, whole or not at all");
  command.add_option("--confidence", asked->confidence, "Confidence of every range")
      ->capture_default_str();
}

} // namespace coneline::commands
