// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/share_interval.h"

#include "core/base/phrase.h"
#include "core/stats/probability.h"

#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/binomial.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <fmt/format.h>

#include <cmath>

namespace coneline::stats {

namespace {

/// What was seen, once it is known to make sense.
struct Seen {
  double successes;
  double trials;
  double tail; ///< (1 - confidence)/2

  [[nodiscard]] double failures() const { return trials - successes; }
  [[nodiscard]] double share() const { return successes / trials; }
  [[nodiscard]] bool none() const { return successes == 0; }
  [[nodiscard]] bool all() const { return successes == trials; }
  [[nodiscard]] double z() const {
    return boost::math::quantile(boost::math::complement(boost::math::normal(), tail));
  }
};

Result<Seen> seen(std::int64_t successes, std::int64_t trials, double confidence) {
  if (trials < 1)
    return refuse(
        fault(phrase("a share of {} has no value", trials), "Give at least one that was tried."));
  if (successes < 0 || successes > trials)
    return refuse(fault(phrase("{} of {} is no share", successes, trials),
                        phrase("The first number is from 0 to {}.", trials)));
  return inside_0_and_1(confidence, "the confidence").transform([&](double known) {
    return Seen{static_cast<double>(successes), static_cast<double>(trials), (1 - known) / 2};
  });
}

Interval clopper_pearson_of(const Seen& s) {
  using boost::math::beta_distribution;
  using boost::math::complement;
  using boost::math::quantile;
  return {s.none() ? 0 : quantile(beta_distribution<>(s.successes, s.failures() + 1), s.tail),
          s.all()
              ? 1
              : quantile(complement(beta_distribution<>(s.successes + 1, s.failures()), s.tail))};
}

/// P(X > successes) + P(X = successes)/2 where the share is p.
double mid_upper_tail(const Seen& s, double p) {
  const boost::math::binomial_distribution<> x(s.trials, p);
  const double above = s.all() ? 0 : boost::math::cdf(boost::math::complement(x, s.successes));
  return above + boost::math::pdf(x, s.successes) / 2;
}

double share_where_mid_upper_tail_is(const Seen& s, double tail, double from, double to) {
  std::uintmax_t rounds = 200;
  const auto found =
      boost::math::tools::toms748_solve([&](double p) { return mid_upper_tail(s, p) - tail; }, from,
                                        to, boost::math::tools::eps_tolerance<double>(50), rounds);
  return (found.first + found.second) / 2;
}

} // namespace

Result<Interval> wald(std::int64_t successes, std::int64_t trials, double confidence) {
  return seen(successes, trials, confidence).transform([](const Seen& s) {
    const double p = s.share();
    const double half = s.z() * std::sqrt(p * (1 - p) / s.trials);
    return Interval{p - half, p + half};
  });
}

Result<Interval> wilson(std::int64_t successes, std::int64_t trials, double confidence) {
  return seen(successes, trials, confidence).transform([](const Seen& s) {
    const double z = s.z();
    const double n = s.trials;
    const double centre = s.successes + z * z / 2;
    const double half = z * std::sqrt(s.successes * s.failures() / n + z * z / 4);
    // At the ends the difference is 0 but for rounding.
    return Interval{s.none() ? 0 : (centre - half) / (n + z * z),
                    s.all() ? 1 : (centre + half) / (n + z * z)};
  });
}

Result<Interval> wilson_corrected(std::int64_t successes, std::int64_t trials, double confidence) {
  return seen(successes, trials, confidence).transform([](const Seen& s) {
    const double z = s.z();
    const double n = s.trials;
    const double p = s.share();
    const double q = 1 - p;
    const double below = z * std::sqrt(z * z - 2 - 1 / n + 4 * p * (n * q + 1));
    const double above = z * std::sqrt(z * z + 2 - 1 / n + 4 * p * (n * q - 1));
    const double centre = 2 * n * p + z * z;
    const double scale = 2 * (n + z * z);
    return Interval{s.none() ? 0 : std::max(0.0, (centre - 1 - below) / scale),
                    s.all() ? 1 : std::min(1.0, (centre + 1 + above) / scale)};
  });
}

Result<Interval> clopper_pearson(std::int64_t successes, std::int64_t trials, double confidence) {
  return seen(successes, trials, confidence).transform(clopper_pearson_of);
}

Result<Interval> mid_p(std::int64_t successes, std::int64_t trials, double confidence) {
  return seen(successes, trials, confidence).transform([](const Seen& s) {
    // It lies inside the Clopper-Pearson interval, whose ends therefore bracket its own.
    const Interval outer = clopper_pearson_of(s);
    return Interval{s.none() ? 0 : share_where_mid_upper_tail_is(s, s.tail, outer.low, 1),
                    s.all() ? 1 : share_where_mid_upper_tail_is(s, 1 - s.tail, 0, outer.high)};
  });
}

Result<Interval> jeffreys(std::int64_t successes, std::int64_t trials, double confidence) {
  return seen(successes, trials, confidence).transform([](const Seen& s) {
    const boost::math::beta_distribution<> posterior(s.successes + 0.5, s.failures() + 0.5);
    return Interval{s.none() ? 0 : boost::math::quantile(posterior, s.tail),
                    s.all() ? 1
                            : boost::math::quantile(boost::math::complement(posterior, s.tail))};
  });
}

Result<double> exact_upper(std::int64_t successes, std::int64_t trials, double confidence) {
  return seen(successes, trials, confidence).transform([confidence](const Seen& s) {
    if (s.all())
      return 1.0;
    return boost::math::quantile(boost::math::complement(
        boost::math::beta_distribution<>(s.successes + 1, s.failures()), 1 - confidence));
  });
}

} // namespace coneline::stats
