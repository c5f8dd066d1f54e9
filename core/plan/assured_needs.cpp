// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/assured_needs.h"

#include "core/stats/probability.h"

#include <algorithm>

namespace coneline::plan {

namespace {

/// What was used by each month's end, by good, month and run.
class Used {
 public:
  Used(const Forecast& forecast, const std::vector<std::size_t>& goods)
      : runs_(static_cast<std::size_t>(forecast.runs())), months_(forecast.months().size()) {
    for (const auto series : goods) {
      std::vector<double> sum(runs_, 0);
      for (std::size_t month = 0; month < months_; ++month) {
        for (std::size_t run = 0; run < runs_; ++run)
          sum[run] += static_cast<double>(forecast.value(series, static_cast<int>(run), month));
        by_run_.push_back(sum);
        sorted_.push_back(sum);
        std::ranges::sort(sorted_.back());
      }
    }
  }

  /// The share of runs in which nothing runs short when each has the value of this rank.
  [[nodiscard]] double held(std::size_t rank) const {
    std::vector<bool> short_of(runs_, false);
    for (std::size_t cell = 0; cell < by_run_.size(); ++cell)
      for (std::size_t run = 0; run < runs_; ++run)
        if (by_run_[cell][run] > sorted_[cell][rank])
          short_of[run] = true;
    return 1 - static_cast<double>(std::ranges::count(short_of, true)) / static_cast<double>(runs_);
  }

  [[nodiscard]] std::vector<ByMonth> needs(std::size_t rank) const {
    std::vector<ByMonth> needs;
    for (std::size_t good = 0; good * months_ < sorted_.size(); ++good) {
      needs.emplace_back();
      double before = 0;
      for (std::size_t month = 0; month < months_; ++month) {
        const double by_now = sorted_[good * months_ + month][rank];
        needs.back().push_back(std::max(0.0, by_now - before));
        before = by_now;
      }
    }
    return needs;
  }

  [[nodiscard]] std::size_t runs() const { return runs_; }

 private:
  std::size_t runs_;
  std::size_t months_;
  std::vector<std::vector<double>> by_run_;
  std::vector<std::vector<double>> sorted_;
};

} // namespace

Result<AssuredNeeds> assured_needs(const Forecast& forecast, const std::vector<std::size_t>& goods,
                                   double assurance) {
  if (auto inside = stats::inside_0_and_1(assurance, "the assurance"); !inside)
    return refuse(inside.error());
  const Used used(forecast, goods);
  std::size_t low = 0;
  std::size_t high = used.runs() - 1; // holds in every run
  while (low < high) {
    const auto middle = low + (high - low) / 2;
    if (used.held(middle) + 1e-12 >= assurance)
      high = middle;
    else
      low = middle + 1;
  }
  return AssuredNeeds{used.needs(high), used.held(high)};
}

} // namespace coneline::plan
