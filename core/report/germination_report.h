// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a book says of germination, by cross, by season, or by both: by cross, cones of one cross in
// different seasons are one cross. A share is that of the report's day; while trays still sprout it
// can rise, and the report says so. Times are days since sowing, or degree-days where the book
// holds the temperature of the places.

#include "core/stats/coming.h"
#include "core/stats/curve_band.h"
#include "core/stats/germination_figures.h"
#include "core/work/temperature.h"

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
  std::string season;
  int days = 0;         ///< to the last look, in a report by degree-days
  int days_lacking = 0; ///< of them without temperature
};

/// Of the seed sown, the share that had germinated by a day after sowing.
struct CurvePoint {
  double day = 0;
  double share = 0;
};

/// What trays are taken together by.
enum class By { cross, season, cross_and_season };
std::string_view by_word(By by); ///< "cross", "season", "cross-season"
std::optional<By> by_named(std::string_view word);

/// The season a tray was sown in: "2025", or "2025/26" where seasons begin within a year.
std::string season_of(Date sown, int first_month);

struct Asked {
  Date as_of;
  double confidence = 0.95;
  By by = By::cross;
  int season_begins = 1;                             ///< month, 1 to 12
  std::optional<work::DegreeDayRules> degree_days{}; ///< none: times are days
};

/// What is still to come with what the book knows of the taxon (work/coming.h).
struct KnownToCome {
  stats::CountRange seeds;
  std::string beforehand; ///< what was known beforehand, in words
};

/// One cross; in a report by season, all of a season.
struct CrossReport {
  std::string name;
  std::string taxon;                   ///< name or hybrid formula; empty where there are several
  std::string season;                  ///< empty in a report by cross
  stats::GroupFigures figures;         ///< its places are those in `trays`
  stats::GerminationMeasures together; ///< of all trays as one, days since each one's sowing
  LeafFigures leaf;
  std::int64_t waiting = 0;
  std::int64_t trays_sprouting = 0;
  std::vector<CurvePoint> curve;        ///< all trays as one, up to the last look
  std::optional<stats::CurveBand> band; ///< of figures.curve, as far as the counts limit it
  std::size_t rank = 0;                 ///< from 1, by share
  std::string alike;                    ///< letters; crosses that share one cannot be told apart
  std::string told;
  std::optional<KnownToCome> known; ///< besides figures.still_expected, which knows no book
  std::vector<TrayReport> trays;    ///< in the order of codes

  /// What to expect: with what the book knows, else by the cross's own counts.
  [[nodiscard]] stats::CountRange expected() const;
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
  By by = By::cross;
  std::optional<work::DegreeDayRules> degree_days{};
  std::vector<CrossReport> crosses; ///< in the order of their names
  std::vector<TrayLeftOut> left_out;
  std::vector<stats::GroupComparison> comparisons; ///< of every two crosses, by their places
  std::vector<std::size_t> ranking;                ///< places of the crosses, highest share first
  /// Places of crosses that cannot be told apart, the higher share first: no two of a set differ
  /// beyond chance by Holm's adjustment over all pairs. Sets of one are crosses apart from all.
  std::vector<std::vector<std::size_t>> alike;

  /// "days", or "degree-days above 10 °C": as files have it, and as it is said.
  [[nodiscard]] std::string time_unit() const;
  [[nodiscard]] std::string time_unit_said() const;
};

/// The sets of two and more in words, each a sentence.
std::vector<std::string> alike_told(const GerminationReport& report);
/// How the sets came about, and how the band around a curve is worked out; the same for all
/// reports.
std::string alike_method_told();
std::string band_told();
/// Why a report has no cross: nothing was sown by then, or all of it is left out.
std::string no_cross_told(const GerminationReport& report);
/// Days that lack a temperature, in a report by degree-days; empty otherwise.
std::string lacking_told(const GerminationReport& report);

/// The forms it is written in. CSV has one row a cross and one a tray, told apart by `level`; texts
/// are safe to open in a spreadsheet (see germination_rows.h for the columns). The page stands
/// alone: no other file, no script.
std::string germination_csv(const GerminationReport& report);
/// What each column of it holds, one row a column.
std::string germination_dictionary();
/// Every look as `coneline germination` reads it: group,tray,sown,day,germinated,removed.
std::string germination_counts_csv(const GerminationReport& report);
/// A spreadsheet file: crosses, trays, looks and curves with a chart of each cross, the columns
/// described. Fails where no temporary file can be written.
Result<std::string> germination_xlsx(const GerminationReport& report);
nlohmann::ordered_json germination_json(const GerminationReport& report);
std::string germination_html(const GerminationReport& report);
/// "Germination per cross", "per season" and so on, as it is said.
std::string title_of(const GerminationReport& report);
/// "cross" or "season": what a row of the ranking is, as it is said over them.
std::string ranked_said(const GerminationReport& report);

/// Fails on a confidence outside 0 to 1 or a month outside 1 to 12. `warmth` is needed for
/// degree-days alone.
Result<GerminationReport> germination_report(std::span<const work::ObservedTray> trays,
                                             const book::Registers& registers, const Asked& asked,
                                             const work::Warmth* warmth = nullptr);

/// The same from a book. A report by cross and by days says what the book knows beforehand, too.
Result<GerminationReport> germination_report(store::Reading& reading, const Asked& asked);

} // namespace coneline::report
