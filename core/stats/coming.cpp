// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/coming.h"

#include "core/stats/count_mixture.h"
#include "core/stats/waiting_seed.h"

#include <boost/random/mersenne_twister.hpp>
#include <boost/random/uniform_01.hpp>

#include <algorithm>
#include <cmath>

namespace coneline::stats {

namespace {

constexpr std::size_t points_for_counts = 400;
constexpr std::size_t points_for_days = 400;

/// 1 - H at a day.
double above(const Curve& curve, double day) {
  return day > 0 ? parts(curve.family, curve.shape * std::log(day / curve.scale)).above : 1;
}

TrayEnd end_of(const Tray& tray) {
  return {static_cast<double>(tray.germinated()), static_cast<double>(tray.removed()),
          static_cast<double>(tray.waiting())};
}

/// One count's distribution, gathered point by point.
struct Gathering {
  std::vector<CountPart> parts;
  double none = 0; ///< probability that nothing comes

  void add(double weight, double mean, double variance, double none_here) {
    parts.push_back({weight, mean, variance});
    none += weight * none_here;
  }

  [[nodiscard]] CountRange range(std::int64_t most, double confidence) const {
    const CountMixture mixture(most, parts);
    const auto shortest = mixture.shortest(confidence);
    CountRange range{mixture.median(), shortest.low, shortest.high, 0};
    for (const auto& part : parts)
      range.mean += part.weight * part.mean;
    return range;
  }
};

struct Gatherings {
  Gathering ever;
  std::vector<Gathering> within;
};

/// Of all trays together, at one point of the posterior.
void gather(Gatherings& all, std::span<const TrayNow> trays, const PosteriorPoint& point,
            const ComingAsked& asked) {
  struct Sum {
    double mean = 0;
    double variance = 0;
    double log_none = 0;
  };
  Sum ever;
  std::vector<Sum> within(asked.within.size());
  for (const auto& tray : trays) {
    if (tray.counts.waiting() == 0)
      continue;
    const auto end = end_of(tray.counts);
    const double ahead = above(point.curve, tray.counts.last_day());
    const auto to = [&](double left) {
      return to_come(end, point.curve.germinable, point.rho, left);
    };
    const auto here = to(ahead);
    ever.mean += here.mean;
    ever.variance += here.variance;
    ever.log_none += to(0).log_likelihood - here.log_likelihood;
    for (std::size_t i = 0; i < within.size(); ++i) {
      // No seed by then is the likelihood with only the rest of the curve ahead.
      const double later = above(point.curve, tray.now + asked.within[i]);
      const double part = ahead > 0 ? 1 - later / ahead : 0;
      within[i].mean += part * here.mean;
      within[i].variance += part * part * here.variance + part * (1 - part) * here.mean;
      within[i].log_none += to(later).log_likelihood - here.log_likelihood;
    }
  }
  const auto add = [&](Gathering& to, const Sum& sum) {
    to.add(point.weight, sum.mean, sum.variance, std::exp(std::min(0.0, sum.log_none)));
  };
  add(all.ever, ever);
  for (std::size_t i = 0; i < within.size(); ++i)
    add(all.within[i], within[i]);
}

/// Draws the days on which seeds come, at one point of the posterior after the other.
class Days {
 public:
  explicit Days(std::span<const TrayNow> trays) : trays_(trays) {}

  void draw(const PosteriorPoint& point) {
    std::vector<double> days;
    for (const auto& tray : trays_)
      if (tray.counts.waiting() > 0)
        draw(point, tray, days);
    if (days.empty())
      return;
    half_.push_back(reached(days, 0.5));
    nine_tenths_.push_back(reached(days, 0.9));
  }

  [[nodiscard]] std::optional<DayRange> half(double confidence) { return range(half_, confidence); }
  [[nodiscard]] std::optional<DayRange> nine_tenths(double confidence) {
    return range(nine_tenths_, confidence);
  }

 private:
  double even() { return boost::random::uniform_01<double>()(source_); }

  /// As many seeds as chance gives: the terms of the sum in waiting_seed.cpp, as logarithms, since
  /// the first can be too small for a double.
  std::int64_t number(const PosteriorPoint& point, const TrayEnd& tray, double ahead) {
    if (ahead <= 0)
      return 0;
    const double total = (1 - point.rho) / point.rho;
    const double a = point.curve.germinable * total + tray.germinated;
    const double b = (1 - point.curve.germinable) * total + tray.removed + tray.waiting;
    terms_.assign(1, 0);
    for (double y = 0; y < tray.waiting; ++y)
      terms_.push_back(terms_.back() +
                       std::log(ahead * (tray.waiting - y) * (a + y) / ((y + 1) * (b - y - 1))));
    const double highest = *std::ranges::max_element(terms_);
    double sum = 0;
    for (auto& term : terms_)
      sum += term = std::exp(term - highest);
    double left = even() * sum;
    std::size_t y = 0;
    while (y + 1 < terms_.size() && left >= terms_[y])
      left -= terms_[y++];
    return static_cast<std::int64_t>(y);
  }

  void draw(const PosteriorPoint& point, const TrayNow& tray, std::vector<double>& days) {
    const double ahead = above(point.curve, tray.counts.last_day());
    const auto seeds = number(point, end_of(tray.counts), ahead);
    for (std::int64_t seed = 0; seed < seeds; ++seed) {
      const double progress = 1 - ahead * (1 - even());
      const double day = progress < 1 ? point.curve.day_of_progress(progress) : HUGE_VAL;
      days.push_back(std::max(0.0, day - tray.now));
    }
  }

  static double reached(std::vector<double>& days, double share) {
    const auto place =
        static_cast<std::ptrdiff_t>(std::ceil(share * static_cast<double>(days.size()))) - 1;
    const auto at = days.begin() + std::max<std::ptrdiff_t>(place, 0);
    std::nth_element(days.begin(), at, days.end());
    return *at;
  }

  static std::optional<DayRange> range(std::vector<double>& drawn, double confidence) {
    if (drawn.size() < points_for_days / 2)
      return std::nullopt;
    std::ranges::sort(drawn);
    const auto at = [&](double share) -> std::optional<double> {
      const auto place = static_cast<std::size_t>(share * static_cast<double>(drawn.size() - 1));
      return drawn[place] <= Coming::furthest ? std::optional(drawn[place]) : std::nullopt;
    };
    const double tail = (1 - confidence) / 2;
    return DayRange{at(0.5), at(tail), at(1 - tail)};
  }

  std::span<const TrayNow> trays_;
  boost::random::mt19937 source_{1};
  std::vector<double> terms_;
  std::vector<double> half_;
  std::vector<double> nine_tenths_;
};

} // namespace

Coming coming(std::span<const TrayNow> trays, const GerminationPosterior& cross,
              const ComingAsked& asked) {
  Coming found;
  for (const auto& tray : trays)
    found.waiting += tray.counts.waiting();
  for (const double days : asked.within)
    found.within.push_back({days, {}, 0});
  if (found.waiting == 0)
    return found;
  Gatherings all;
  all.within.resize(asked.within.size());
  for (const auto& point : cross.thinned(points_for_counts))
    gather(all, trays, point, asked);
  found.seeds = all.ever.range(found.waiting, asked.confidence);
  found.chance_of_one = 1 - all.ever.none;
  for (std::size_t i = 0; i < found.within.size(); ++i) {
    found.within[i].seeds = all.within[i].range(found.waiting, asked.confidence);
    found.within[i].chance_of_one = 1 - all.within[i].none;
  }
  Days days(trays);
  for (const auto& point : cross.thinned(points_for_days))
    days.draw(point);
  found.half = days.half(asked.confidence);
  found.nine_tenths = days.nine_tenths(asked.confidence);
  return found;
}

} // namespace coneline::stats
