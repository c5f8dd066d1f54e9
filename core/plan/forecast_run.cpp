// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_run.h"

#include <boost/random/beta_distribution.hpp>

#include <algorithm>
#include <cmath>

namespace coneline::plan {

namespace {

/// Neighbouring seeds must not give neighbouring streams: splitmix64 (Steele, Lea & Flood 2014,
/// OOPSLA, 453-472).
std::uint64_t mixed(std::uint64_t z) {
  z += 0x9e3779b97f4a7c15U;
  z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
  z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
  return z ^ (z >> 31U);
}

} // namespace

Stream::Stream(std::uint64_t seed, std::uint64_t run) : engine_(mixed(mixed(seed) ^ run)) {}

std::int64_t Stream::binomial(std::int64_t plants, double share) {
  if (plants == 0 || share <= 0)
    return 0;
  if (share >= 1)
    return plants;
  if (drawn_ != nullptr)
    drawn_->push_back({static_cast<std::int32_t>(plants), share});
  return boost::random::binomial_distribution<std::int64_t>(plants, share)(engine_);
}

double Stream::share(double mean, double weight) {
  if (!std::isfinite(weight) || mean <= 0 || mean >= 1)
    return mean;
  const double drawn =
      boost::random::beta_distribution<>(mean * weight, (1 - mean) * weight)(engine_);
  return std::isfinite(drawn) ? std::clamp(drawn, 0.0, 1.0) : mean;
}

int Stream::month(const LeaveMonths& leave) {
  if (leave.chance.size() == 1)
    return leave.first;
  double left = uniform();
  std::size_t at = 0;
  while (at + 1 < leave.chance.size() && left >= leave.chance[at])
    left -= leave.chance[at++];
  return leave.first + static_cast<int>(at);
}

Run::Run(const Ways& ways, const ForecastInput& input)
    : ways_(ways), input_(input), width_(static_cast<std::size_t>(ways.calendar.months()) + 1),
      seasons_(static_cast<std::size_t>(ways.calendar.seasons())), beyond_(ways.calendar.beyond()),
      shares_(ways.survivals.size() * seasons_), sprouting_(input.sprouting.size()),
      changes_(ways.spots.size() * width_), happened_(ways.events.size() * width_),
      potted_(width_) {}

void Run::walk(Stream& stream) {
  std::ranges::fill(changes_, 0);
  std::ranges::fill(happened_, 0);
  draw_what_is_shared(stream);
  for (const auto& lot : ways_.lots)
    this->lot(lot, stream);
}

void Run::draw_what_is_shared(Stream& stream) {
  const double long_run = input_.assumed.survival_weight;
  const double season = input_.assumed.season_weight;
  for (std::size_t of = 0; of < ways_.survivals.size(); ++of) {
    const auto& known = ways_.survivals[of];
    const double mean = std::isfinite(long_run)
                            ? stream.share(known.mean(), known.alive + known.died)
                            : known.mean();
    for (std::size_t year = 0; year < seasons_; ++year)
      shares_[of * seasons_ + year] = stream.share(mean, season);
  }
  for (std::size_t cross = 0; cross < sprouting_.size(); ++cross) {
    const auto& draws = input_.sprouting[cross].draws;
    const auto which =
        static_cast<std::size_t>(stream.uniform() * static_cast<double>(draws.size()));
    sprouting_[cross] = draws.empty() ? nullptr : draws[which].data();
  }
}

void Run::lot(const LotWay& lot, Stream& stream) {
  if (lot.tray_spot)
    tray(lot, stream);
  else
    cohort(lot, lot.plants, 0, stream.month(lot.leave), stream);
}

/// What comes up in one month after another, of what still waits. All that is potted in one month
/// goes on together.
void Run::tray(const LotWay& lot, Stream& stream) {
  const int due = stream.month(lot.leave);
  stand(*lot.tray_spot, 0,
        lot.plants > 0          ? std::max(due, lot.sprouts_until)
        : lot.sprouts_until > 0 ? std::max(due, lot.sprouts_until)
                                : 0,
        1);
  const auto spot = lot.spots.front();
  std::int64_t potted_when_due = lot.plants;
  stand(spot, 0, due, lot.plants);
  int last = -1;
  std::int64_t waiting = lot.waiting;
  const double* chances = lot.cross ? sprouting_[*lot.cross] : nullptr;
  if (chances != nullptr)
    chances += lot.tray * static_cast<std::size_t>(input_.sprouting[*lot.cross].months);
  double left = 1;
  for (int month = 0; chances != nullptr && month < lot.sprouts_until && waiting > 0; ++month) {
    const double chance = chances[month];
    if (chance <= 0)
      continue;
    const auto up = stream.binomial(waiting, std::min(1.0, chance / left));
    left -= chance;
    waiting -= up;
    if (up == 0)
      continue;
    if (month <= due) {
      potted_when_due += up;
      stand(spot, month, due, up);
      continue;
    }
    const int potting = lot.steps.size() == 1 ? month : ways_.calendar.potting_from(month);
    stand(spot, month, potting, up);
    potted_[static_cast<std::size_t>(potting)] += up;
    last = std::max(last, potting);
  }
  cohort(lot, potted_when_due, due, due, stream);
  for (int month = due + 1; month <= last; ++month)
    if (auto& late = potted_[static_cast<std::size_t>(month)]; late > 0) {
      cohort(lot, late, month, month, stream);
      late = 0;
    }
}

/// Plants that stand in the first step's spot from `from` until they leave it in `until`.
void Run::cohort(const LotWay& lot, std::int64_t plants, int from, int until, Stream& stream) {
  std::size_t step = 0;
  const auto steps = lot.steps.size();
  while (plants > 0) {
    stand(lot.spots[step], from, until, plants);
    if (until == beyond_)
      return;
    plants = stream.binomial(plants, survival(lot.steps[step]->survival, until));
    if (++step == steps)
      break;
    happened_[lot.events[step] * width_ + static_cast<std::size_t>(until)] += plants;
    from = until;
    until = stream.month(lot.steps[step]->leave[static_cast<std::size_t>(from)]);
  }
  if (plants == 0)
    return;
  happened_[lot.ready_event * width_ + static_cast<std::size_t>(until)] += plants;
  const int sold = ways_.sold_after ? std::min(beyond_, until + *ways_.sold_after) : beyond_;
  stand(lot.spots[steps - 1], until, sold, plants);
}

} // namespace coneline::plan
