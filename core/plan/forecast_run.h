// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// One possible future of the nursery.

#include "core/plan/forecast_ways.h"
#include "core/plan/stream_key.h"

#include <boost/random/binomial_distribution.hpp>
#include <boost/random/uniform_01.hpp>

#include <limits>

namespace coneline::plan {

/// A draw of how many of `plants` live, each with probability `share`.
struct Drawn {
  std::int32_t plants = 0;
  double share = 0;
};

/// Random numbers that begin anew at no cost: splitmix64 (Steele, Lea & Flood 2014, OOPSLA,
/// 453-472).
class SplitMix {
 public:
  using result_type = std::uint64_t;
  explicit SplitMix(std::uint64_t state) : state_(state) {}
  static constexpr result_type min() { return 0; }
  static constexpr result_type max() { return std::numeric_limits<result_type>::max(); }
  result_type operator()() { return mixed(state_ += 0x9e3779b97f4a7c15U); }

 private:
  std::uint64_t state_;
};

/// The random numbers of one run. What is drawn after `turn_to` depends on seed, run and key alone:
/// two plans that have a lot, a cross or a season in common draw the same for it, so that what
/// differs between them is no chance.
class Stream {
 public:
  using Engine = SplitMix;

  Stream(std::uint64_t seed, std::uint64_t run);

  void turn_to(std::uint64_t key) { engine_ = Engine(mixed(own_ ^ key)); }

  /// Whole number from 0 to plants. What is certain takes no random number.
  std::int64_t binomial(std::int64_t plants, double share);
  double uniform() { return uniform_(engine_); } ///< 0 to below 1
  /// Around `mean`, as sure as `weight` observations; the mean itself when the weight is infinite.
  double share(double mean, double weight);
  int month(const LeaveMonths& leave) { return month(leave, uniform()); }
  /// The month below which `even`, 0 to below 1, of the chances lie.
  static int month(const LeaveMonths& leave, double even);

  /// Keeps what is drawn from now on; to measure what the draws alone cost.
  void keep(std::vector<Drawn>* drawn) { drawn_ = drawn; }

 private:
  std::uint64_t own_;
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
  [[nodiscard]] const double* chances_of(const LotWay& lot) const;
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
  std::vector<std::size_t> which_;       ///< by cross, the draw of this run
  std::vector<std::size_t> which_seeds_; ///< by sowing, the draw of this run
  std::vector<std::int64_t> changes_;
  std::vector<std::int64_t> happened_;
  std::vector<std::int64_t> potted_; ///< by month, of the tray at hand
};

} // namespace coneline::plan
