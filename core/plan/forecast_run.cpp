// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_run.h"

#include <boost/random/beta_distribution.hpp>

#include <algorithm>
#include <cmath>

namespace coneline::plan {

namespace {

/// What is drawn of a lot, each kind of draw apart from the others.
enum class Draw : std::uint64_t { leave = 1, sprouts = 2, step = 3 };

std::uint64_t key_of(const LotWay& lot, Draw draw, int month, std::size_t step = 0) {
  return lot.key + (static_cast<std::uint64_t>(draw) << 40U) +
         (static_cast<std::uint64_t>(month) << 20U) + step;
}

std::size_t one_of(std::size_t draws, double even) {
  return static_cast<std::size_t>(even * static_cast<double>(draws));
}

} // namespace

Stream::Stream(std::uint64_t seed, std::uint64_t run)
    : own_(mixed(mixed(seed + 1) + run)), engine_(own_) {}

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

int Stream::month(const LeaveMonths& leave, double even) {
  std::size_t at = 0;
  while (at + 1 < leave.chance.size() && even >= leave.chance[at])
    even -= leave.chance[at++];
  return leave.first + static_cast<int>(at);
}

Run::Run(const Ways& ways, const ForecastInput& input)
    : ways_(ways), input_(input), width_(static_cast<std::size_t>(ways.calendar.months()) + 1),
      seasons_(static_cast<std::size_t>(ways.calendar.seasons())), beyond_(ways.calendar.beyond()),
      shares_(ways.survivals.size() * seasons_), which_(ways.crosses.size()),
      which_seeds_(ways.sowings.size()), changes_(ways.spots.size() * width_),
      happened_(ways.events.size() * width_), potted_(width_) {}

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
    stream.turn_to(known.key);
    const double mean = std::isfinite(long_run)
                            ? stream.share(known.mean(), known.alive + known.died)
                            : known.mean();
    for (std::size_t year = 0; year < seasons_; ++year) {
      stream.turn_to(known.key + year + 1);
      shares_[of * seasons_ + year] = stream.share(mean, season);
    }
  }
  const auto choose = [&](const auto& ways, std::vector<std::size_t>& which) {
    for (std::size_t at = 0; at < ways.size(); ++at) {
      stream.turn_to(ways[at].key);
      which[at] = one_of(ways[at].draws, stream.uniform());
    }
  };
  choose(ways_.crosses, which_);
  choose(ways_.sowings, which_seeds_);
}

void Run::lot(const LotWay& lot, Stream& stream) {
  stream.turn_to(key_of(lot, Draw::leave, 0));
  if (lot.tray_spot)
    tray(lot, stream);
  else
    cohort(lot, lot.plants, 0, stream.month(lot.leave), stream);
}

/// Of this run, by month; null where nothing is known to come up.
const double* Run::chances_of(const LotWay& lot) const {
  if (!lot.cross)
    return nullptr;
  const auto which = which_[*lot.cross];
  if (lot.sowing)
    return which < lot.chances.size() ? lot.chances[which].data() : nullptr;
  const auto& cross = input_.sprouting[*lot.cross];
  return which < cross.draws.size()
             ? cross.draws[which].data() + lot.tray * static_cast<std::size_t>(cross.months)
             : nullptr;
}

/// What comes up in one month after another, of what still waits. All that is potted in one month
/// goes on together.
void Run::tray(const LotWay& lot, Stream& stream) {
  auto waiting = lot.waiting;
  if (lot.sowing) {
    waiting = lot.seeds[which_seeds_[*lot.sowing]];
    if (waiting == 0)
      return;
  }
  const int due = stream.month(lot.leave);
  const bool kept = lot.plants > 0 || lot.sprouts_until > 0;
  stand(*lot.tray_spot, lot.sown_in, kept ? std::max(due, lot.sprouts_until) : lot.sown_in,
        lot.sowing ? lot.trays_of(waiting) : 1);
  const auto spot = lot.spots.front();
  std::int64_t potted_when_due = lot.plants;
  stand(spot, 0, due, lot.plants);
  int last = -1;
  const double* chances = chances_of(lot);
  double left = 1;
  for (int month = lot.sown_in; chances != nullptr && month < lot.sprouts_until && waiting > 0;
       ++month) {
    const double chance = chances[month];
    if (chance <= 0)
      continue;
    stream.turn_to(key_of(lot, Draw::sprouts, month));
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
  const int first = from;
  std::size_t step = 0;
  const auto steps = lot.steps.size();
  while (plants > 0) {
    stand(lot.spots[step], from, until, plants);
    if (until == beyond_)
      return;
    stream.turn_to(key_of(lot, Draw::step, first, step));
    const double even = stream.uniform();
    plants = stream.binomial(plants, survival(lot.steps[step]->survival, until));
    if (++step == steps)
      break;
    happened_[lot.events[step] * width_ + static_cast<std::size_t>(until)] += plants;
    from = until;
    until = Stream::month(lot.steps[step]->leave[static_cast<std::size_t>(from)], even);
  }
  if (plants == 0)
    return;
  happened_[lot.ready_event * width_ + static_cast<std::size_t>(until)] += plants;
  const int sold = ways_.sold_after ? std::min(beyond_, until + *ways_.sold_after) : beyond_;
  stand(lot.spots[steps - 1], until, sold, plants);
}

} // namespace coneline::plan
