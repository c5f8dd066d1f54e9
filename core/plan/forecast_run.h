// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// One possible future of the nursery.

#include "core/plan/forecast_ways.h"

#include <boost/random/binomial_distribution.hpp>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/uniform_01.hpp>

namespace coneline::plan {

/// A draw of how many of `plants` live, each with probability `share`.
struct Drawn {
  std::int32_t plants = 0;
  double share = 0;
};

/// The random numbers of one run.
class Stream {
 public:
  using Engine = boost::random::mt19937_64;

  Stream(std::uint64_t seed, std::uint64_t run);

  /// Whole number from 0 to plants. What is certain takes no random number.
  std::int64_t binomial(std::int64_t plants, double share);
  double uniform() { return uniform_(engine_); } ///< 0 to below 1
  /// Around `mean`, as sure as `weight` observations; the mean itself when the weight is infinite.
  double share(double mean, double weight);
  int month(const LeaveMonths& leave);

  /// Keeps what is drawn from now on; to measure what the draws alone cost.
  void keep(std::vector<Drawn>* drawn) { drawn_ = drawn; }

 private:
  Engine engine_;
  boost::random::uniform_01<double> uniform_;
  std::vector<Drawn>* drawn_ = nullptr;
};

/// Walks all lots of a nursery once a call. Keeps its tables between calls.
class Run {
 public:
  Run(const Ways& ways, const ForecastInput& input);

  void walk(Stream& stream);

  [[nodiscard]] std::size_t width() const { return width_; } ///< months and beyond
  /// By spot and month: plants that come less those that go.
  [[nodiscard]] const std::vector<std::int64_t>& changes() const { return changes_; }
  /// By event and month.
  [[nodiscard]] const std::vector<std::int64_t>& happened() const { return happened_; }

 private:
  void draw_what_is_shared(Stream& stream);
  void lot(const LotWay& lot, Stream& stream);
  void tray(const LotWay& lot, Stream& stream);
  void cohort(const LotWay& lot, std::int64_t plants, int from, int until, Stream& stream);
  void stand(std::size_t spot, int from, int until, std::int64_t plants) {
    changes_[spot * width_ + static_cast<std::size_t>(from)] += plants;
    changes_[spot * width_ + static_cast<std::size_t>(until)] -= plants;
  }
  [[nodiscard]] double survival(std::size_t of, int month) const {
    return shares_[of * seasons_ + static_cast<std::size_t>(ways_.calendar.season(month))];
  }

  const Ways& ways_;
  const ForecastInput& input_;
  std::size_t width_;
  std::size_t seasons_;
  int beyond_;
  std::vector<double> shares_;           ///< by survival and season
  std::vector<const double*> sprouting_; ///< by cross, the draw of this run
  std::vector<std::int64_t> changes_;
  std::vector<std::int64_t> happened_;
  std::vector<std::int64_t> potted_; ///< by month, of the tray at hand
};

} // namespace coneline::plan
