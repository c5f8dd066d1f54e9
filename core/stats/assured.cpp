// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/assured.h"

#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/stats/as_written.h"
#include "core/stats/probability.h"

#include <boost/math/special_functions/beta.hpp>
#include <fmt/format.h>

#include <cmath>

namespace coneline::stats {

namespace {
using boost::multiprecision::cpp_int;

constexpr std::int64_t most_seeds = 1'000'000'000'000;
/// Doubles decide where they are further than this from the assurance.
constexpr double surely_apart = 1e-9;
/// Where n * log2(denominator) is above this, an exact tie would need more digits than a share
/// that a person wrote can bring about.
constexpr double most_exact_bits = 20'000;

std::int64_t rounded_up(const Rational& value) {
  const cpp_int whole = (numerator(value) + denominator(value) - 1) / denominator(value);
  return static_cast<std::int64_t>(whole);
}

/// P(Binomial(n, share) >= plants) >= assurance, in whole numbers.
bool exactly_enough(std::int64_t n, std::int64_t plants, const Rational& share,
                    const Rational& assurance) {
  const cpp_int yes = numerator(share);
  const cpp_int no = denominator(share) - yes;
  const auto sure = static_cast<unsigned>(n);
  cpp_int term = pow(no, sure); // C(n, i) yes^i no^(n - i)
  cpp_int too_few = 0;
  for (std::int64_t i = 0; i < plants; ++i) {
    too_few += term;
    term *= yes * (n - i);
    term /= no * (i + 1);
  }
  const cpp_int all = pow(denominator(share), sure);
  return (all - too_few) * denominator(assurance) >= all * numerator(assurance);
}

class Assurance {
 public:
  Assurance(std::int64_t plants, Rational share, double assurance)
      : plants_(plants), share_(std::move(share)), p_(static_cast<double>(share_)),
        assurance_(assurance),
        bits_(std::log2(static_cast<double>(Rational(denominator(share_))))) {}

  [[nodiscard]] bool enough(std::int64_t n) const {
    if (n < plants_)
      return false;
    const auto plants = static_cast<double>(plants_);
    // P(Binomial(n, p) >= k) is the regularised incomplete beta function I_p(k, n - k + 1).
    const double chance = boost::math::ibeta(plants, static_cast<double>(n) - plants + 1, p_);
    const bool by_doubles = chance >= assurance_;
    if (std::abs(chance - assurance_) > surely_apart || share_ == 1 ||
        static_cast<double>(n) * bits_ > most_exact_bits)
      return by_doubles;
    return exactly_enough(n, plants_, share_, as_written(assurance_));
  }

 private:
  std::int64_t plants_;
  Rational share_;
  double p_;
  double assurance_;
  double bits_;
};

Result<Rational> product(std::span<const double> shares) {
  if (shares.empty())
    return refuse(fault("no stage was given", "Give the share that survives each, as 0.75,0.8."));
  Rational all = 1;
  for (const double share : shares) {
    if (!(share > 0 && share <= 1))
      return refuse(fault(phrase("a stage in which {} survive cannot be", write_real(share)),
                          "Give the share that survives: above 0 and at most 1, so 80 % is 0.8."));
    all *= as_written(share);
  }
  return all;
}

} // namespace

Result<Sowing> seeds_to_sow(std::int64_t plants, std::span<const double> shares, double assurance) {
  if (plants < 1)
    return refuse(fault(phrase("{} plants need no seeds", plants), "Give 1 or more."));
  const auto share = product(shares);
  if (!share)
    return refuse(share.error());
  if (const auto ok = inside_0_and_1(assurance, "the assurance"); !ok)
    return refuse(ok.error());
  const Rational wanted = plants / *share;
  if (wanted > most_seeds)
    return refuse(fault(phrase("{} plants would take {:.3g} seeds, more than any nursery sows",
                               plants, static_cast<double>(wanted)),
                        "Check the plants and the shares."));
  const auto expected = rounded_up(wanted);
  const Assurance known(plants, *share, assurance);
  std::int64_t low = plants;
  std::int64_t high = expected;
  while (!known.enough(high)) {
    low = high + 1;
    high *= 2;
  }
  while (low < high) {
    const auto middle = low + (high - low) / 2;
    if (known.enough(middle))
      high = middle;
    else
      low = middle + 1;
  }
  return Sowing{expected, low};
}

} // namespace coneline::stats
