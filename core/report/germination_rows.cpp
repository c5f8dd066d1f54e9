// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/germination_rows.h"

#include "core/base/csv.h"
#include "core/base/heading.h"
#include "core/base/money.h"
#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/report/cross_said.h"

#include <array>

namespace coneline::report {

namespace {

constexpr std::array all_columns{
    Column{"level", "text", "",
           to_phrase("what the row is about: cross, season or cross-season, else tray")},
    Column{"rank", "whole", "",
           to_phrase("place by share among all crosses, 1 the highest; of crosses only")},
    Column{"alike", "text", "",
           to_phrase(
               "letters: crosses that share one cannot be told apart at the confidence, by Holm's "
               "adjustment over all pairs; of crosses only")},
    Column{"cross", "text", "",
           to_phrase("seed parent × pollen parents, or the season in a report by season")},
    Column{"taxon", "text", "", to_phrase("name or hybrid formula")},
    Column{"season", "text", "", to_phrase("season of sowing; empty for a cross over all seasons")},
    Column{"cone", "text", "", to_phrase("code of the cone or purchase; of trays only")},
    Column{"tray", "text", "", to_phrase("code of the tray; of trays only")},
    Column{"sown_on", "date", "", to_phrase("day of sowing, year-month-day; of trays only")},
    Column{"sown", "whole", "seeds", to_phrase("seed sown")},
    Column{"germinated", "whole", "seeds",
           to_phrase("seed that germinated by as_of: root, or leaf, seen")},
    Column{"removed", "whole", "seeds", to_phrase("seed taken out that had not germinated")},
    Column{"waiting", "whole", "seeds", to_phrase("neither germinated nor removed")},
    Column{"share", "number", "share", to_phrase("germinated of sown")},
    Column{"share_low", "number", "share", to_phrase("lower end of its range at the confidence")},
    Column{"share_high", "number", "share", to_phrase("upper end of its range")},
    Column{"share_method", "text", "", to_phrase("how the range was worked out")},
    Column{
        "spread_rho", "number", "",
        to_phrase(
            "spread between trays: beta-binomial correlation; of crosses with two trays and more")},
    Column{"mean_time", "number", "time_unit",
           to_phrase("mean time from sowing to the look at which seed was "
                     "seen, of the seed that came up")},
    Column{"t50", "number", "time_unit",
           to_phrase("time by which half of the seed that came up was up (Farooq et al. 2005)")},
    Column{"still_expected_low", "whole", "seeds",
           to_phrase("how many more will ever come up, lower end of its range; of crosses only")},
    Column{"still_expected_median", "whole", "seeds", to_phrase("the same, the middle")},
    Column{"still_expected_high", "whole", "seeds", to_phrase("the same, upper end")},
    Column{"known_to_come_low", "whole", "seeds",
           to_phrase(
               "the same with what the book knows of the taxon, lower end; of a report by cross")},
    Column{"known_to_come_median", "whole", "seeds", to_phrase("the same, the middle")},
    Column{"known_to_come_high", "whole", "seeds", to_phrase("the same, upper end")},
    Column{"known_beforehand", "text", "", to_phrase("what the book knew of the taxon")},
    Column{
        "curve_family", "text", "",
        to_phrase(
            "log-logistic, weibull or log-normal: F(t) = germinable · H(shape · ln(t / scale)); of "
            "crosses only")},
    Column{"curve_germinable", "number", "share", to_phrase("of the seed sown, sooner or later")},
    Column{"curve_germinable_error", "number", "share",
           to_phrase("its standard error; empty at its limit 1")},
    Column{"curve_shape", "number", "", to_phrase("steepness")},
    Column{"curve_shape_error", "number", "", to_phrase("its standard error")},
    Column{"curve_scale", "number", "time_unit", to_phrase("time scale")},
    Column{"curve_scale_error", "number", "time_unit", to_phrase("its standard error")},
    Column{"leaves", "whole", "seeds", to_phrase("seed with its first leaf")},
    Column{"leaf_share", "number", "share", to_phrase("leaves of sown")},
    Column{"leaf_share_low", "number", "share", to_phrase("lower end of its range")},
    Column{"leaf_share_high", "number", "share", to_phrase("upper end of its range")},
    Column{"leaf_share_method", "text", "", to_phrase("how the range was worked out")},
    Column{"days_from_root_to_leaf", "number", "days",
           to_phrase("median; empty before half of the roots have their leaf")},
    Column{"time_unit", "text", "",
           to_phrase("what times are counted in: days, or degree-days above a base")},
    Column{"days_without_temperature", "whole", "days",
           to_phrase("days to the last look without temperature, in a report by degree-days; of "
                     "trays only")},
    Column{"confidence", "number", "share", to_phrase("of every range")},
    Column{"as_of", "date", "",
           to_phrase("the day the row stands for; later entries are left out")},
    Column{"invented", "yes/no", "", to_phrase("yes where the book holds invented data")},
    Column{"told", "text", "", to_phrase("what can still come, in words")},
};

class Cells {
 public:
  Cells& text(std::string text) {
    if (text.empty())
      return none();
    return put(std::move(text));
  }
  Cells& name(std::string key, std::string said) {
    return put(Name{std::move(key), std::move(said)});
  }
  Cells& word(std::string_view english) { return put(Word{english}); }
  Cells& whole(std::int64_t number) { return put(number); }
  Cells& number(const std::optional<double>& number) { return number ? put(*number) : none(); }
  Cells& none(int many = 1) {
    cells_.insert(cells_.end(), static_cast<std::size_t>(many), Cell());
    return *this;
  }
  Cells& share(const stats::FinalShare& share) {
    number(share.share);
    number(share.range ? std::optional(share.range->low) : std::nullopt);
    number(share.range ? std::optional(share.range->high) : std::nullopt);
    return share.method.empty() ? none() : word(share.method);
  }
  Cells& curve(const std::optional<stats::CurveFit>& fit) {
    if (!fit)
      return none(7);
    return word(stats::family_word(fit->curve.family))
        .number(fit->curve.germinable)
        .number(fit->germinable_error)
        .number(fit->curve.shape)
        .number(fit->shape_error)
        .number(fit->curve.scale)
        .number(fit->scale_error);
  }
  Cells& known(const std::optional<KnownToCome>& known) {
    if (!known)
      return none(4);
    return whole(known->seeds.low)
        .whole(known->seeds.median)
        .whole(known->seeds.high)
        .text(known->beforehand);
  }
  Cells& leaf(const LeafFigures& leaf) {
    return whole(leaf.leaves).share(leaf.share).number(leaf.days_from_root);
  }
  Cells& ends(const GerminationReport& report, const std::string& told) {
    return number(report.confidence)
        .text(report.as_of.iso())
        .word(report.title.invented ? "yes" : "no")
        .text(told);
  }
  std::vector<Cell> done() { return std::move(cells_); }

 private:
  /// Made in its place: a cell that is moved in looks half made to GCC 12.
  template <class Value>
  Cells& put(Value value) {
    cells_.emplace_back(std::in_place_type<Value>, std::move(value));
    return *this;
  }
  std::vector<Cell> cells_;
};

} // namespace

std::string written(const Cell& cell) {
  struct Written {
    std::string operator()(std::monostate) const { return ""; }
    std::string operator()(const std::string& text) const { return for_spreadsheet(text); }
    std::string operator()(Word word) const { return std::string(word.english); }
    std::string operator()(const Name& name) const { return for_spreadsheet(name.key); }
    std::string operator()(std::int64_t number) const { return std::to_string(number); }
    std::string operator()(double number) const { return write_real(number); }
    std::string operator()(Money money) const {
      return write_real(static_cast<double>(money.cents) / 100);
    }
  };
  return std::visit(Written(), cell);
}

std::string said(const Cell& cell) {
  struct Said {
    std::string operator()(std::monostate) const { return ""; }
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(Word word) const { return as_heading(word.english); }
    std::string operator()(const Name& name) const { return name.said; }
    std::string operator()(std::int64_t number) const { return std::to_string(number); }
    std::string operator()(double number) const { return language().decimal(write_real(number)); }
    std::string operator()(Money money) const {
      return money_said(static_cast<double>(money.cents));
    }
  };
  return std::visit(Said(), cell);
}

std::span<const Column> columns() {
  return all_columns;
}

std::vector<Cell> cells_of(const GerminationReport& report, const CrossReport& cross) {
  const auto& figures = cross.figures;
  return Cells()
      .word(by_word(report.by))
      .whole(static_cast<std::int64_t>(cross.rank))
      .text(cross.alike)
      .name(cross.name, name_said(cross))
      .text(cross.taxon)
      .text(cross.season)
      .none(3)
      .whole(figures.sown)
      .whole(figures.germinated)
      .whole(figures.removed)
      .whole(cross.waiting)
      .share(figures.final)
      .number(figures.spread ? std::optional(figures.spread->rho) : std::nullopt)
      .number(cross.together.mean_time)
      .number(cross.together.t50_farooq)
      .whole(figures.still_expected.low)
      .whole(figures.still_expected.median)
      .whole(figures.still_expected.high)
      .known(cross.known)
      .curve(figures.curve)
      .leaf(cross.leaf)
      .name(report.time_unit(), report.time_unit_said())
      .none()
      .ends(report, cross.told)
      .done();
}

std::vector<Cell> cells_of(const GerminationReport& report, const CrossReport& cross,
                           const TrayReport& tray) {
  Cells cells;
  cells.word("tray")
      .none(2)
      .name(cross.name, name_said(cross))
      .text(cross.taxon)
      .text(tray.season)
      .text(tray.seen.origin.code.text())
      .text(tray.seen.lot.code.text())
      .text(tray.seen.sown_on.iso())
      .whole(tray.seen.sown)
      .whole(tray.germinated)
      .whole(tray.removed)
      .whole(tray.waiting)
      .share(tray.figures.final)
      .none()
      .number(tray.figures.measures.mean_time)
      .number(tray.figures.measures.t50_farooq)
      .none(3 + 4 + 7) // what is still expected and the curve are said of the cross
      .leaf(tray.leaf)
      .name(report.time_unit(), report.time_unit_said());
  if (report.degree_days)
    cells.whole(tray.days_lacking);
  else
    cells.none();
  return cells.ends(report, tray.told).done();
}

} // namespace coneline::report
