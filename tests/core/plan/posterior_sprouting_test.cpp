// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/posterior_sprouting.h"
#include "core/stats/coming.h"
#include "core/stats/simulated_cross.h"
#include "tests/core/plan/small_plan.h"

#include <cmath>
#include <numeric>

namespace coneline::plan {
namespace {

using namespace coneline::tests;

constexpr int ten_years = 120;

/// Expected number still to come, and its variance over the draws and the chance in each seed.
std::pair<double, double> drawn(const CrossSprouting& cross,
                                const std::vector<stats::Tray>& trays) {
  std::vector<double> means;
  double within = 0;
  for (const auto& draw : cross.draws) {
    double mean = 0;
    for (std::size_t tray = 0; tray < trays.size(); ++tray) {
      const auto from = draw.begin() + static_cast<std::ptrdiff_t>(tray * ten_years);
      const double chance = std::accumulate(from, from + ten_years, 0.0);
      const auto waiting = static_cast<double>(trays[tray].waiting());
      mean += waiting * chance;
      within += waiting * chance * (1 - chance);
    }
    means.push_back(mean);
  }
  const auto n = static_cast<double>(means.size());
  const double mean = std::accumulate(means.begin(), means.end(), 0.0) / n;
  double between = 0;
  for (const double one : means)
    between += (one - mean) * (one - mean) / n;
  return {mean, within / n + between};
}

// stats::coming sums the same by beta-binomials in closed form, without drawing a tray's share.
TEST(PosteriorSprouting, BringsWhatIsStillToComeOfTheCross) {
  stats::Chance draw(4);
  for (int number = 0; number < 12; ++number) {
    const auto cross = stats::simulated_cross(draw);
    const auto posterior = stats::germination_posterior(
        cross.trays, stats::weak_prior(cross.trays.front().last_day()));
    std::vector<CountedTray> counted;
    std::vector<stats::TrayNow> now;
    const auto today = day("2026-03-01");
    for (std::size_t at = 0; at < cross.trays.size(); ++at) {
      const auto& tray = cross.trays[at];
      const auto age = static_cast<int>(std::ceil(tray.last_day()));
      counted.push_back({Code::of(Kind::tray, 17, static_cast<std::int64_t>(at) + 1).value(),
                         today.plus_days(-age), tray});
      now.push_back({tray, static_cast<double>(age)});
    }
    const auto sprouting = posterior_sprouting(posterior.thinned(1000), counted, today, ten_years);
    stats::ComingAsked asked;
    asked.within = {3652};
    const auto exact = stats::coming(now, posterior, asked);
    const auto [mean, variance] = drawn(sprouting, cross.trays);
    const double error = std::sqrt(variance / 1000);
    EXPECT_NEAR(mean, exact.within.front().seeds.mean, 4 * error + 0.02 * mean + 0.05) << number;
  }
}

TEST(PosteriorSprouting, ABadCrossIsBadInAllItsTrays) {
  const stats::PosteriorPoint good{{stats::Family::log_logistic, 0.9, 4, 100}, 0, 0.5};
  const stats::PosteriorPoint bad{{stats::Family::log_logistic, 0.1, 4, 100}, 0, 0.5};
  const std::array points{good, bad};
  const stats::Tray unseen{"", "", 100, {}};
  const auto today = day("2026-03-01");
  const std::vector<CountedTray> trays{{Code::of(Kind::tray, 17, 1).value(), today, unseen},
                                       {Code::of(Kind::tray, 17, 2).value(), today, unseen}};
  const auto cross = posterior_sprouting(points, trays, today, ten_years);
  for (std::size_t draw = 0; draw < 2; ++draw)
    for (std::size_t tray = 0; tray < 2; ++tray) {
      const auto from = cross.draws[draw].begin() + static_cast<std::ptrdiff_t>(tray * ten_years);
      EXPECT_NEAR(std::accumulate(from, from + ten_years, 0.0), draw == 0 ? 0.9 : 0.1, 1e-4);
    }
  // March has 31 days: F(31) of a log-logistic curve with shape 4 and half of it by day 100.
  EXPECT_NEAR(cross.draws[0][0], 0.9 / (1 + std::pow(31.0 / 100, -4)), 1e-12);
}

TEST(PosteriorSprouting, ATrayOfItsOwnLuckKeepsItInAllMonths) {
  const stats::PosteriorPoint spread{{stats::Family::log_logistic, 0.5, 4, 100}, 0.2, 1};
  const std::vector<stats::PosteriorPoint> points(4000, spread);
  const auto today = day("2026-03-01");
  const auto cross = posterior_sprouting(
      points, {{Code::of(Kind::tray, 17, 1).value(), today, {"", "", 100, {}}}}, today, ten_years);
  double mean = 0;
  double square = 0;
  for (const auto& draw : cross.draws) {
    const double share = std::accumulate(draw.begin(), draw.end(), 0.0);
    mean += share / 4000;
    square += share * share / 4000;
  }
  EXPECT_NEAR(mean, 0.5, 0.015);
  EXPECT_NEAR(square - mean * mean, 0.2 * 0.5 * 0.5, 0.004); // of a beta: rho p q
}

} // namespace
} // namespace coneline::plan
