// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/coverage.h"

#include "core/stats/share_posterior.h"
#include "core/stats/simulated_cross.h"
#include "core/stats/still_expected.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::stats {

namespace {

std::string size_word(const SimulatedCross& cross) {
  return cross.sown() <= 150 ? "up to 150 seeds" : "more than 150 seeds";
}

std::string progress_word(double progress) {
  for (const double limit : {0.2, 0.5, 0.8, 0.95})
    if (progress < limit)
      return fmt::format("given up before {:.2f} of the curve", limit);
  return "given up later";
}

std::string spread_word(double rho) {
  return rho == 0 ? "no spread between trays"
                  : (rho < 0.075 ? "spread below 0.075" : "spread 0.075 to 0.15");
}

std::string trays_word(std::size_t trays) {
  return trays == 1 ? "1 tray" : (trays <= 4 ? "2 to 4 trays" : "5 to 8 trays");
}

bool holds(const Interval& range, double truth) {
  return range.low <= truth && truth <= range.high;
}

/// What the counts of a cross say of it: the ranges of germination_figures, without the rest.
struct Said {
  StillExpected more;
  Interval now;
};

class Cross {
 public:
  explicit Cross(std::span<const Tray> trays)
      : trays_(trays), counts_(interval_counts(trays)), share_(outcomes(trays)) {
    for (const auto family : all_families)
      families_.push_back({family, fit_curve(counts_, family)});
  }

  [[nodiscard]] Said says(double confidence) const {
    auto more = still_expected(trays_, counts_, families_, confidence);
    const auto now = share_range(share_, confidence, more.diluted);
    return {std::move(more), now};
  }

 private:
  static std::vector<Outcome> outcomes(std::span<const Tray> trays) {
    std::vector<Outcome> found;
    for (const auto& tray : trays)
      found.push_back({tray.sown, tray.germinated()});
    return found;
  }

  std::span<const Tray> trays_;
  IntervalCounts counts_;
  GroupShare share_;
  std::vector<FamilyFit> families_;
};

/// What the ranges at one confidence hold, counted by `held`.
void count_held(const SimulatedCross& cross, const Said& said, int Held::*level, CoverageRow& row) {
  const auto& more = said.more;
  row.still_expected.*level += more.low <= cross.more && cross.more <= more.high ? 1 : 0;
  const auto in_end = more.share_range.value_or(said.now);
  row.share_in_end.*level += holds(in_end, cross.germinable) ? 1 : 0;
  row.share_now.*level += holds(said.now, cross.germinable * cross.progress) ? 1 : 0;
}

CoverageRow& row_of(std::vector<CoverageRow>& rows, const std::string& of) {
  const auto found = std::ranges::find(rows, of, &CoverageRow::of);
  if (found != rows.end())
    return *found;
  rows.push_back({of, 0, {}, {}, {}, 0});
  return rows.back();
}

void add(std::vector<CoverageRow>& rows, const SimulatedCross& cross) {
  const Cross seen(cross.trays);
  const auto at_80 = seen.says(0.80);
  const auto at_95 = seen.says(0.95);
  for (const auto& of : {std::string("all"), size_word(cross), trays_word(cross.trays.size()),
                         spread_word(cross.rho), progress_word(cross.progress),
                         std::string(family_word(cross.family))}) {
    auto& row = row_of(rows, of);
    ++row.crosses;
    count_held(cross, at_80, &Held::at_80, row);
    count_held(cross, at_95, &Held::at_95, row);
    row.width +=
        static_cast<double>(at_95.more.high - at_95.more.low) / static_cast<double>(cross.sown());
  }
}

} // namespace

std::vector<CoverageRow> germination_coverage(const CoverageWanted& wanted,
                                              const std::function<bool(int)>& drawn) {
  Chance draw(wanted.seed);
  std::vector<CoverageRow> rows;
  for (int cross = 0; cross < wanted.crosses && drawn(cross); ++cross)
    add(rows, simulated_cross(draw));
  for (auto& row : rows)
    row.width /= row.crosses;
  if (rows.size() > 1)
    std::sort(rows.begin() + 1, rows.end(),
              [](const CoverageRow& a, const CoverageRow& b) { return a.of < b.of; });
  return rows;
}

} // namespace coneline::stats
