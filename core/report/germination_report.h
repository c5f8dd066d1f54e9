// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a book says of germination, by cross: cones of one cross in different seasons are one cross.
// A share is that of the report's day; while trays still sprout it can rise, and the report says
// so.

#include "core/stats/germination_figures.h"
#include "core/work/germination.h"

#include <nlohmann/json.hpp>

#include <span>
#include <string>
#include <vector>

namespace coneline::report {

/// First leaves, which come weeks after the root.
struct LeafFigures {
  std::int64_t leaves = 0;
  stats::FinalShare share; ///< of the seed sown
  /// Median days from root to leaf, the earliest root taken to be the first to leaf, looks being as
  /// exact as their days. Nothing before half of the roots that were seen had their leaf.
  std::optional<double> days_from_root;
};

enum class Sprouting {
  not_looked_at,
  over,      ///< no seed waits in the tray
  still,     ///< seed waits, and the taxon's route gives it time
  past,      ///< seed waits, but the route's months are over
  not_known, ///< seed waits, and no route says for how long
};

struct TrayReport {
  work::ObservedTray seen;
  stats::TrayFigures figures;
  std::int64_t germinated = 0;
  std::int64_t removed = 0;
  std::int64_t waiting = 0; ///< neither germinated nor removed
  LeafFigures leaf;
  Sprouting sprouting = Sprouting::over;
  std::optional<Date> sprouts_until; ///< by the taxon's route
  std::string told;
};

/// Of the seed sown, the share that had germinated by a day after sowing.
struct CurvePoint {
  double day = 0;
  double share = 0;
};

struct CrossReport {
  std::string name;
  std::string taxon;                   ///< name or hybrid formula
  stats::GroupFigures figures;         ///< its places are those in `trays`
  stats::GerminationMeasures together; ///< of all trays as one, days since each one's sowing
  LeafFigures leaf;
  std::int64_t waiting = 0;
  std::int64_t trays_sprouting = 0;
  std::vector<CurvePoint> curve; ///< all trays as one, up to the last look
  std::string told;
  std::vector<TrayReport> trays; ///< in the order of codes
};

/// A tray whose counts cannot be worked with, and why.
struct TrayLeftOut {
  Code code;
  std::string why;
};

struct GerminationReport {
  book::Title title;
  Date as_of;
  double confidence = 0.95;
  std::vector<CrossReport> crosses; ///< in the order of their names
  std::vector<TrayLeftOut> left_out;
};

/// The forms it is written in. CSV has one row a cross and one a tray, told apart by `level`; texts
/// are safe to open in a spreadsheet. The page stands alone: no other file, no script.
std::string germination_csv(const GerminationReport& report);
nlohmann::ordered_json germination_json(const GerminationReport& report);
std::string germination_html(const GerminationReport& report);

/// Fails on a confidence outside 0 to 1.
Result<GerminationReport> germination_report(std::span<const work::ObservedTray> trays,
                                             const book::Registers& registers, Date as_of,
                                             double confidence = 0.95);

/// The same from a book.
Result<GerminationReport> germination_report(store::Reading& reading, Date as_of,
                                             double confidence = 0.95);

} // namespace coneline::report
