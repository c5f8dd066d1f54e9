// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/csv.h"
#include "core/base/number.h"
#include "core/report/germination_report.h"

namespace coneline::report {

namespace {

using Fields = std::vector<std::string>;

std::string real(const std::optional<double>& value) {
  return value ? write_real(*value) : "";
}

std::string whole(std::int64_t value) {
  return std::to_string(value);
}

void add_share(Fields& fields, const stats::FinalShare& share) {
  fields.push_back(real(share.share));
  fields.push_back(share.range ? write_real(share.range->low) : "");
  fields.push_back(share.range ? write_real(share.range->high) : "");
  fields.push_back(share.method);
}

void add_measures(Fields& fields, const stats::GerminationMeasures& measures) {
  fields.push_back(real(measures.mean_time));
  fields.push_back(real(measures.t50_farooq));
}

void add_leaf(Fields& fields, const LeafFigures& leaf) {
  fields.push_back(whole(leaf.leaves));
  add_share(fields, leaf.share);
  fields.push_back(real(leaf.days_from_root));
}

void add_ends(Fields& fields, const GerminationReport& report, const std::string& told) {
  fields.push_back(write_real(report.confidence));
  fields.push_back(report.as_of.iso());
  fields.push_back(report.title.invented ? "yes" : "no");
  fields.push_back(for_spreadsheet(told));
}

std::string row_of(const GerminationReport& report, const CrossReport& cross) {
  Fields fields{"cross",
                for_spreadsheet(cross.name),
                for_spreadsheet(cross.taxon),
                "",
                "",
                "",
                whole(cross.figures.sown),
                whole(cross.figures.germinated),
                whole(cross.figures.removed),
                whole(cross.waiting)};
  add_share(fields, cross.figures.final);
  add_measures(fields, cross.together);
  fields.push_back(whole(cross.figures.still_expected.low));
  fields.push_back(whole(cross.figures.still_expected.median));
  fields.push_back(whole(cross.figures.still_expected.high));
  add_leaf(fields, cross.leaf);
  add_ends(fields, report, cross.told);
  return csv_line(fields);
}

std::string row_of(const GerminationReport& report, const CrossReport& cross,
                   const TrayReport& tray) {
  Fields fields{"tray",
                for_spreadsheet(cross.name),
                for_spreadsheet(cross.taxon),
                tray.seen.origin.code.text(),
                tray.seen.lot.code.text(),
                tray.seen.sown_on.iso(),
                whole(tray.seen.sown),
                whole(tray.germinated),
                whole(tray.removed),
                whole(tray.waiting)};
  add_share(fields, tray.figures.final);
  add_measures(fields, tray.figures.measures);
  fields.insert(fields.end(), 3, ""); // what is still expected is said of the cross
  add_leaf(fields, tray.leaf);
  add_ends(fields, report, tray.told);
  return csv_line(fields);
}

} // namespace

std::string germination_csv(const GerminationReport& report) {
  std::string text = csv_line({"level",
                               "cross",
                               "taxon",
                               "cone",
                               "tray",
                               "sown_on",
                               "sown",
                               "germinated",
                               "removed",
                               "waiting",
                               "share",
                               "share_low",
                               "share_high",
                               "share_method",
                               "mean_days",
                               "t50_days",
                               "still_expected_low",
                               "still_expected_median",
                               "still_expected_high",
                               "leaves",
                               "leaf_share",
                               "leaf_share_low",
                               "leaf_share_high",
                               "leaf_share_method",
                               "days_from_root_to_leaf",
                               "confidence",
                               "as_of",
                               "invented",
                               "told"});
  for (const auto& cross : report.crosses) {
    text += row_of(report, cross);
    for (const auto& tray : cross.trays)
      text += row_of(report, cross, tray);
  }
  return text;
}

} // namespace coneline::report
