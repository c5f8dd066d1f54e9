// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/benchmark/large_book.h"

#include "core/stats/curve.h"

#include <boost/random/beta_distribution.hpp>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/uniform_01.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace coneline::tests {

namespace {

class Draw {
 public:
  double even() { return boost::random::uniform_01<double>()(source_); }
  double between(double low, double high) { return low + (high - low) * even(); }
  double share(double mean, double rho) {
    const double total = (1 - rho) / rho;
    return boost::random::beta_distribution<double>(mean * total, (1 - mean) * total)(source_);
  }

 private:
  boost::random::mt19937 source_{20261125};
};

stats::Tray tray_of(Draw& draw, const stats::Curve& curve, double share, int number) {
  stats::Tray tray{{}, fmt::format("T{}", number), 40 + static_cast<int>(draw.even() * 60), {}};
  const double end = curve.scale * draw.between(1, 3);
  double day = 0;
  for (int look = 0; look < looks_of_a_tray; ++look) {
    day = std::round(day + std::max(1.0, end / looks_of_a_tray * draw.between(0.5, 1.5)));
    tray.looks.push_back({day, 0, 0});
  }
  for (std::int64_t seed = 0; seed < tray.sown; ++seed) {
    if (draw.even() >= share)
      continue;
    const double up = curve.day_of_progress(std::clamp(draw.even(), 1e-9, 1 - 1e-9));
    const auto seen = std::ranges::lower_bound(tray.looks, up, {}, &stats::Look::day);
    if (seen != tray.looks.end())
      ++seen->germinated;
  }
  return tray;
}

} // namespace

std::vector<stats::Tray> large_counts(int trays) {
  Draw draw;
  std::vector<stats::Tray> all;
  stats::Curve curve;
  double mean = 0;
  for (int number = 0; number < trays; ++number) {
    if (number % trays_of_a_cross == 0) {
      curve = {stats::Family::log_logistic, 1, draw.between(2, 6), draw.between(40, 150)};
      mean = draw.between(0.1, 0.9);
    }
    const double share = std::clamp(draw.share(mean, 0.05), 0.0, 1.0);
    all.push_back(tray_of(draw, curve, share, number + 1));
    all.back().group = fmt::format("cross {:03}", number / trays_of_a_cross + 1);
  }
  return all;
}

std::vector<work::ObservedTray> large_book(int trays) {
  std::vector<work::ObservedTray> book;
  const auto sown_on = Date::of(2024, 1, 1).value();
  for (const auto& counts : large_counts(trays)) {
    work::ObservedTray tray;
    tray.lot.code = Code::of(Kind::tray, 17, static_cast<std::int64_t>(book.size()) + 1).value();
    tray.lot.id = {static_cast<std::int64_t>(book.size()) + 1};
    tray.origin.code = Code::of(Kind::cone, 17, 1).value();
    tray.origin.name = counts.group;
    tray.origin.taxon = "Cycas revoluta";
    tray.sown_on = sown_on;
    tray.sown = counts.sown;
    for (const auto& look : counts.looks) {
      work::Observed seen;
      seen.date = sown_on.plus_days(static_cast<int>(look.day));
      seen.day = look.day;
      seen.germinated = look.germinated;
      tray.looks.push_back(seen);
    }
    book.push_back(std::move(tray));
  }
  return book;
}

} // namespace coneline::tests
