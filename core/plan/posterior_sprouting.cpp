// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/posterior_sprouting.h"

#include <boost/random/mersenne_twister.hpp>
#include <boost/random/uniform_01.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace coneline::plan {

namespace {

/// Shares d on an even grid of arcsin sqrt d, on which a beta density is smooth and nowhere thin.
class Grid {
 public:
  static constexpr std::size_t cells = 240;

  Grid() {
    for (std::size_t cell = 0; cell < cells; ++cell) {
      const double angle = this->angle(static_cast<double>(cell) + 0.5);
      log_sine_[cell] = std::log(std::sin(angle));
      log_cosine_[cell] = std::log(std::cos(angle));
      share_[cell] = std::sin(angle) * std::sin(angle);
    }
  }

  struct Density {
    double up = 0;      ///< exponent of d, and 1
    double not_up = 0;  ///< exponent of 1 - d, and 1
    double waiting = 0; ///< exponent of 1 - d H
    double over = 0;    ///< H
  };

  /// The share below which `even` of the density lies.
  double draw(const Density& density, double even) {
    double most = -std::numeric_limits<double>::infinity();
    for (std::size_t cell = 0; cell < cells; ++cell) {
      sums_[cell] =
          (2 * density.up - 1) * log_sine_[cell] + (2 * density.not_up - 1) * log_cosine_[cell];
      if (density.waiting > 0 && density.over > 0)
        sums_[cell] += density.waiting * std::log1p(-share_[cell] * density.over);
      most = std::max(most, sums_[cell]);
    }
    double sum = 0;
    for (auto& value : sums_)
      value = sum += std::exp(value - most);
    const double wanted = even * sum;
    const auto found = std::ranges::upper_bound(sums_, wanted);
    const auto cell = std::min(static_cast<std::size_t>(found - sums_.begin()), cells - 1);
    const double before = cell == 0 ? 0 : sums_[cell - 1];
    const double mass = sums_[cell] - before;
    const double within = mass > 0 ? std::clamp((wanted - before) / mass, 0.0, 1.0) : 0.5;
    const double sine = std::sin(angle(static_cast<double>(cell) + within));
    return sine * sine;
  }

 private:
  [[nodiscard]] static double angle(double cell) {
    return cell / static_cast<double>(cells) * std::numbers::pi / 2;
  }
  std::array<double, cells> log_sine_{};
  std::array<double, cells> log_cosine_{};
  std::array<double, cells> share_{};
  std::array<double, cells> sums_{};
};

double progress(const stats::Curve& curve, double day) {
  return day > 0 ? curve.progress_by(day) : 0;
}

/// Days from sowing to the end of each month, as the months of a plan run.
std::vector<double> month_ends(Date sown_on, Date today, int months) {
  std::vector<double> ends;
  for (int month = 1; month <= months; ++month)
    ends.push_back(
        static_cast<double>(days_between(sown_on, today.first_of_month().plus_months(month))));
  return ends;
}

} // namespace

CrossSprouting posterior_sprouting(std::span<const stats::PosteriorPoint> points,
                                   const std::vector<CountedTray>& trays, Date today, int months,
                                   std::uint32_t stream) {
  constexpr double hardly = 1e-7; // a rho below which trays do not differ
  boost::random::mt19937 source(stream);
  boost::random::uniform_01<double> even;
  Grid grid;
  CrossSprouting cross;
  cross.months = months;
  std::vector<std::vector<double>> ends;
  for (const auto& tray : trays) {
    cross.trays.push_back(tray.code);
    ends.push_back(month_ends(tray.sown_on, today, months));
  }
  for (const auto& point : points) {
    std::vector<double> chances;
    chances.reserve(trays.size() * static_cast<std::size_t>(months));
    for (std::size_t at = 0; at < trays.size(); ++at) {
      const auto& counts = trays[at].counts;
      const double over = progress(point.curve, counts.last_day());
      const double mean = point.curve.germinable;
      const double lucky = even(source); // drawn in any case, so that streams stay in step
      double share = mean;
      if (point.rho > hardly && mean > 0 && mean < 1) {
        const double weight = (1 - point.rho) / point.rho;
        share = grid.draw({mean * weight + static_cast<double>(counts.germinated()),
                           (1 - mean) * weight + static_cast<double>(counts.removed()),
                           static_cast<double>(counts.waiting()), over},
                          lucky);
      }
      const double ahead = 1 - share * over;
      double before = over;
      for (const double end : ends[at]) {
        const double by = std::max(before, progress(point.curve, end));
        chances.push_back(ahead > 0 ? share * (by - before) / ahead : 0);
        before = by;
      }
    }
    cross.draws.push_back(std::move(chances));
    cross.points.push_back(point);
  }
  return cross;
}

} // namespace coneline::plan
