// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/floaters.h"

#include "core/base/phrase.h"
#include "core/stats/opening.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace coneline::plan {

namespace {

Result<void> sound(const FloatersAsked& asked) {
  const auto seeds = static_cast<double>(asked.seeds);
  if (asked.seeds < 0 || asked.opened < 0)
    return refuse(fault(phrase("{} floaters, {} opened", asked.seeds, asked.opened),
                        "Counts are 0 or more."));
  if (!(0 <= asked.filled_low && asked.filled_low <= asked.filled_middle &&
        asked.filled_middle <= asked.filled_high && asked.filled_high <= seeds))
    return refuse(fault(phrase("{:g} to {:g} filled of {} floaters", asked.filled_low,
                               asked.filled_high, asked.seeds),
                        "The range lies within the floaters."));
  if (!(asked.worth > 0))
    return refuse(fault(phrase("a plant worth {:g}", asked.worth), "Give more than 0."));
  if (!(asked.cost >= 0) || !(asked.keep_cost >= 0))
    return refuse(
        fault(phrase("a sown seed at {:g}, a kept one at {:g}", asked.cost, asked.keep_cost),
              "Give 0 or more."));
  if (!(asked.plant_of_filled.low >= 0 && asked.plant_of_filled.high <= 1 &&
        asked.plant_of_filled.low <= asked.plant_of_filled_middle &&
        asked.plant_of_filled_middle <= asked.plant_of_filled.high))
    return refuse(fault(phrase("a filled seed becomes a plant {:g} to {:g} times",
                               asked.plant_of_filled.low, asked.plant_of_filled.high),
                        "Give shares from 0 to 1."));
  return {};
}

Choice choice(const FloatersAsked& asked, double cost_of_all) {
  Choice made;
  made.plants = asked.filled_middle * asked.plant_of_filled_middle;
  made.plants_low = asked.filled_low * asked.plant_of_filled.low;
  made.plants_high = asked.filled_high * asked.plant_of_filled.high;
  made.cost = cost_of_all;
  made.gain = made.plants * asked.worth - cost_of_all;
  made.gain_low = made.plants_low * asked.worth - cost_of_all;
  made.gain_high = made.plants_high * asked.worth - cost_of_all;
  return made;
}

/// Seeds still to cut before floaters with a filled share at the break-even would have shown.
std::int64_t to_open(const FloatersAsked& asked, double break_even) {
  const auto all = asked.seeds + asked.opened;
  const auto filled = static_cast<std::int64_t>(
      std::ceil(std::clamp(break_even, 0.0, 1.0) * static_cast<double>(all)));
  if (all == 0 || filled < 1)
    return asked.seeds;
  const auto wanted = stats::seeds_to_open(all, std::min(filled, all), asked.assurance);
  return wanted ? std::max<std::int64_t>(0, *wanted - asked.opened) : asked.seeds;
}

std::string per_cent(double share) {
  return fmt::format("{:.1f} %", 100 * share);
}

void advise(const FloatersAsked& asked, FloatersDecision& decision) {
  const auto seeds = static_cast<double>(asked.seeds);
  const double low = asked.filled_low / seeds;
  const double high = asked.filled_high / seeds;
  const auto filled =
      phrase("{} to {} of the floaters may be filled", per_cent(low), per_cent(high));
  const auto pays = decision.break_even <= 1
                        ? phrase("sowing pays above {}", per_cent(decision.break_even))
                        : std::string(phrase("sowing costs more than the plants would be worth"));
  const bool may_trust = asked.known == FloatKnown::trusted;
  if (low >= decision.break_even) {
    decision.advice = FloatersAdvice::sow;
    decision.why = phrase("{}; {}. Sow them.", filled, pays);
  } else if (high >= decision.break_even) {
    decision.advice = decision.open_more > 0 && decision.open_more < asked.seeds
                          ? FloatersAdvice::open_more
                          : FloatersAdvice::keep;
    decision.why =
        decision.advice == FloatersAdvice::open_more
            ? phrase("{}; {}, which lies within that. Open {} more before you decide.", filled,
                     pays, decision.open_more)
            : phrase("{}; {}, which lies within that, and opening more would leave too few. "
                     "Keep them and float them again later.",
                     filled, pays);
  } else if (!may_trust && decision.open_more > 0) {
    decision.advice = FloatersAdvice::open_more;
    decision.why = phrase("{}; {}. But {}: open {} more before any are thrown away.", filled, pays,
                          asked.known == FloatKnown::unknown
                              ? phrase("whether the float test holds for this taxon is not known")
                              : phrase("good seed of this taxon floats too"),
                          decision.open_more);
  } else {
    decision.advice = FloatersAdvice::discard;
    decision.why = phrase("{}; {}. Discard them.", filled, pays);
  }
}

} // namespace

Result<FloatersDecision> decide_on_floaters(const FloatersAsked& asked) {
  if (auto is = sound(asked); !is)
    return refuse(is.error());
  FloatersDecision decision;
  const double worth_of_filled = asked.worth * asked.plant_of_filled_middle;
  decision.break_even = worth_of_filled > 0 ? asked.cost / worth_of_filled : 2;
  const auto seeds = static_cast<double>(asked.seeds);
  decision.sow = choice(asked, seeds * asked.cost);
  decision.keep = choice(asked, seeds * (asked.cost + asked.keep_cost));
  decision.keep.gain_low = -seeds * asked.keep_cost;
  decision.keep.plants_low = 0;
  decision.open_more = to_open(asked, decision.break_even);
  if (asked.seeds == 0) {
    decision.advice = FloatersAdvice::discard;
    decision.why = phrase("There are no floaters.");
    return decision;
  }
  advise(asked, decision);
  return decision;
}

} // namespace coneline::plan
