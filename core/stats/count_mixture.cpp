// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/count_mixture.h"

#include "core/stats/log_gamma.h"

#include <algorithm>
#include <cmath>

namespace coneline::stats {

namespace {

/// Adds a beta-binomial to `probability`, as far from its mean as it matters.
void add(std::vector<double>& probability, const CountPart& part) {
  const double most = static_cast<double>(probability.size() - 1);
  constexpr double edge = 1e-12;
  const double share = std::clamp(part.mean / most, edge, 1 - edge);
  const double binomial = most * share * (1 - share);
  constexpr double least_rho = 1e-7; // next to a binomial, and still exact with these formulas
  const double rho = most > 1
                         ? std::clamp((part.variance / binomial - 1) / (most - 1), least_rho, 0.999)
                         : least_rho;
  const double total = (1 - rho) / rho;
  const double a = share * total;
  const double b = (1 - share) * total;
  const double spread = std::sqrt(binomial * (1 + (most - 1) * rho));
  constexpr double far = 12;
  const double from = std::floor(std::clamp(part.mean - far * spread - 5, 0.0, most));
  const double to = std::ceil(std::clamp(part.mean + far * spread + 5, 0.0, most));
  double here =
      std::exp(log_choose(most, from) + log_beta(a + from, b + most - from) - log_beta(a, b));
  for (double y = from; y <= to; ++y) {
    probability[static_cast<std::size_t>(y)] += part.weight * here;
    here *= (most - y) / (y + 1) * (a + y) / (b + most - y - 1);
  }
}

} // namespace

CountMixture::CountMixture(std::int64_t most, std::span<const CountPart> parts)
    : probability_(static_cast<std::size_t>(most) + 1, 0) {
  if (most == 0) {
    probability_[0] = 1;
    return;
  }
  for (const auto& part : parts)
    add(probability_, part);
  double sum = 0;
  for (const double value : probability_)
    sum += value;
  for (auto& value : probability_)
    value /= sum;
}

CountMixture::Range CountMixture::shortest(double confidence) const {
  const auto last = std::ssize(probability_) - 1;
  const auto at = [&](std::ptrdiff_t y) {
    return y < 0 || y > last ? -1.0 : probability_[static_cast<std::size_t>(y)];
  };
  auto low = std::ranges::max_element(probability_) - probability_.begin();
  auto high = low;
  double held = at(low);
  while (low > 0 || high < last) {
    const bool down = at(low - 1) > at(high + 1);
    const double next = down ? at(low - 1) : at(high + 1);
    if (held + next / 2 >= confidence)
      break;
    held += next;
    down ? --low : ++high;
  }
  return {std::min<std::int64_t>(low, median()), std::max<std::int64_t>(high, median())};
}

std::int64_t CountMixture::median() const {
  double sum = 0;
  for (std::size_t y = 0; y < probability_.size(); ++y) {
    sum += probability_[y];
    if (sum >= 0.5)
      return static_cast<std::int64_t>(y);
  }
  return std::ssize(probability_) - 1;
}

} // namespace coneline::stats
