// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/phrase.h"
#include "core/book/plan_records.h"

#include <cmath>
#include <initializer_list>

namespace coneline::book {

namespace {

constexpr double most_litres = 1e7;
constexpr int most_days = 3650;

bool from_zero(double value, double most) {
  return std::isfinite(value) && value >= 0 && value <= most;
}

} // namespace

Result<void> is_sound(const Offer& offer) {
  if (offer.good.empty())
    return refuse(fault("an offer without a good", "Name it."));
  if (offer.supplier.empty())
    return refuse(fault("an offer without a supplier", "Name it."));
  const auto wrong = [&](const std::string& what, const std::string& next) {
    return refuse(
        fault(phrase("the offer of '{}' by '{}' has {}", offer.good, offer.supplier, what), next));
  };
  if (!from_zero(offer.litres, most_litres) || offer.litres <= 0)
    return wrong(phrase("{:g} litres in a pack", offer.litres),
                 "Give the litres that stand on the pack, above 0.");
  if (!from_zero(offer.expansion, 100) || offer.expansion < 1)
    return wrong(phrase("{:g} loose litres from one that is pressed", offer.expansion),
                 "Give 1 where it is not pressed, at most 100.");
  if (offer.cents < 0 || offer.delivery_cents < 0)
    return wrong(phrase("a price below 0"), "Give 0 or more.");
  if (offer.lead_days < 0 || offer.lead_days > most_days)
    return wrong(phrase("{} days of waiting", offer.lead_days), "Give 0 to 3650 days.");
  if (offer.least < 1)
    return wrong(phrase("{} packs as its least order", offer.least), "Give 1 or more.");
  if (offer.kilograms && !(from_zero(*offer.kilograms, 1e6) && *offer.kilograms > 0))
    return wrong(phrase("a pack of {:g} kg", *offer.kilograms),
                 "Give its weight, or leave it out.");
  return {};
}

Result<void> is_sound(const Good& good) {
  if (good.name.empty())
    return refuse(fault("a good without a name", "Name it."));
  const auto wrong = [&](const std::string& what, const std::string& next) {
    return refuse(fault(phrase("'{}': {}", good.name, what), next));
  };
  if (!from_zero(good.on_hand, most_litres))
    return wrong(phrase("{:g} litres on hand", good.on_hand), "Give 0 or more.");
  if (good.room && !from_zero(*good.room, most_litres))
    return wrong(phrase("room for {:g} litres", *good.room), "Give 0 or more.");
  if (good.keeps && (*good.keeps < 1 || *good.keeps > 1200))
    return wrong(phrase("keeps for {} months", *good.keeps), "Give 1 to 1200.");
  if (!from_zero(good.cents_a_litre_and_month, 1e6))
    return wrong(phrase("{:g} cents a litre and month", good.cents_a_litre_and_month),
                 "Give 0 or more.");
  return {};
}

Result<void> is_sound(const Target& target) {
  constexpr std::int64_t most = 1'000'000;
  if (target.cross.empty())
    return refuse(fault("a target without a cross", "Say which cross it is of."));
  if (target.plants < 1 || target.plants > most)
    return refuse(fault(phrase("a target of {} plants of '{}'", target.plants, target.cross),
                        "Give 1 to 1000000."));
  if (!(target.assurance > 0 && target.assurance < 1))
    return refuse(fault(phrase("an assurance of {:g}", target.assurance),
                        "Give a share above 0 and below 1, such as 0.9."));
  return {};
}

Result<void> is_sound(const PlaceLimits& limits) {
  const auto& load = limits.kilograms_a_square_metre;
  constexpr double most = 1e5;
  if (load && !(*load > 0 && *load <= most))
    return refuse(fault(phrase("a place that bears {:g} kg a square metre", *load),
                        "Give what its maker says, above 0, or leave it out."));
  return {};
}

} // namespace coneline::book
