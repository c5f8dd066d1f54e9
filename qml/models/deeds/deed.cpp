// SPDX-License-Identifier: GPL-3.0-or-later
#include "deed.h"

#include "../station.h"

#include <array>

namespace coneline::window {

namespace {

std::array<std::span<const Deed>, 10> all_deeds() {
  return {cone_deeds(),      diary_deeds(),   seed_deeds(),  growing_deeds(),    leaving_deeds(),
          beginning_deeds(), nursery_deeds(), plant_deeds(), first_cone_deeds(), register_deeds()};
}

} // namespace

std::vector<const Deed*> deeds_for(const Subject& subject) {
  std::vector<const Deed*> fitting;
  for (const auto& some : all_deeds())
    for (const auto& deed : some)
      if (deed.fits && deed.fits(subject))
        fitting.push_back(&deed);
  // What is due comes before all else.
  std::ranges::stable_partition(fitting, [&](const Deed* deed) {
    return std::ranges::any_of(subject.standing->due, [&](const work::Due& due) {
      return due.code == subject.code && verb_of(due.kind) == QLatin1String(deed->name);
    });
  });
  std::ranges::stable_partition(
      fitting, [&](const Deed* deed) { return !deed->unlikely || !deed->unlikely(subject); });
  return fitting;
}

const Deed* deed_named(const QString& name) {
  for (const auto& some : all_deeds())
    for (const auto& deed : some)
      if (name == QLatin1String(deed.name))
        return &deed;
  return nullptr;
}

} // namespace coneline::window
