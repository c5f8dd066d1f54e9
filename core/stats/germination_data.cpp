// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_data.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <cmath>
#include <map>
#include <numeric>

namespace coneline::stats {

namespace {

void faults_of_look(const Look& look, std::size_t place, std::vector<TrayFault>& faults) {
  const auto add = [&](TrayColumn column, std::string what, std::string remedy) {
    faults.push_back({place, column, std::move(what), std::move(remedy)});
  };
  if (!std::isfinite(look.day) || look.day < 0)
    add(TrayColumn::day, phrase("day {} lies before the sowing", look.day),
        "Days count from the day of sowing, which is 0.");
  if (look.germinated < 0)
    add(TrayColumn::germinated, phrase("{} germinated is below zero", look.germinated),
        "Write how many germinated since the inspection before.");
  if (look.removed < 0)
    add(TrayColumn::removed, phrase("{} removed is below zero", look.removed),
        "Write how many were taken out dead since the inspection before.");
  if (look.day == 0 && look.germinated > 0)
    add(TrayColumn::germinated,
        phrase("{} germinated on day 0, the day of sowing", look.germinated), "Check the day.");
}

/// The sums are compared after every look, so that the look is named at which they pass the seeds
/// sown. Written as differences, which cannot overflow.
void faults_of_sums(const Tray& tray, std::vector<TrayFault>& faults) {
  auto left = tray.sown;
  std::int64_t germinated = 0;
  std::int64_t removed = 0;
  for (std::size_t i = 0; i < tray.looks.size(); ++i) {
    const auto& look = tray.looks[i];
    if (look.germinated < 0 || look.removed < 0)
      return;
    const bool by_germinated = look.germinated > left;
    if (!by_germinated && look.removed <= left - look.germinated) {
      left -= look.germinated + look.removed;
      germinated += look.germinated;
      removed += look.removed;
      continue;
    }
    const auto column = by_germinated ? TrayColumn::germinated : TrayColumn::removed;
    const auto too_many =
        by_germinated ? look.germinated - left : look.removed - (left - look.germinated);
    const auto found = removed == 0 && look.removed == 0
                           ? phrase("{} germinated", germinated + look.germinated)
                           : phrase("{} germinated and {} removed", germinated + look.germinated,
                                    removed + (by_germinated ? 0 : look.removed));
    faults.push_back({i, column, phrase("{} of {} sown: {} too many", found, tray.sown, too_many),
                      "Correct the count or the seeds sown."});
    return;
  }
}

} // namespace

std::int64_t Tray::germinated() const {
  return std::accumulate(looks.begin(), looks.end(), std::int64_t{0},
                         [](std::int64_t sum, const Look& look) { return sum + look.germinated; });
}

std::int64_t Tray::removed() const {
  return std::accumulate(looks.begin(), looks.end(), std::int64_t{0},
                         [](std::int64_t sum, const Look& look) { return sum + look.removed; });
}

std::vector<TrayFault> faults_of(const Tray& tray) {
  std::vector<TrayFault> faults;
  if (tray.sown < 0) {
    faults.push_back({std::nullopt, TrayColumn::sown, phrase("{} sown is below zero", tray.sown),
                      "Write how many seeds were sown."});
    return faults;
  }
  if (tray.sown > most_sown)
    faults.push_back(
        {std::nullopt, TrayColumn::sown,
         phrase("{} sown in one tray, and no tray holds more than {}", tray.sown, most_sown),
         "Check the digits."});
  for (std::size_t i = 0; i < tray.looks.size(); ++i) {
    faults_of_look(tray.looks[i], i, faults);
    if (i > 0 && tray.looks[i].day == tray.looks[i - 1].day)
      faults.push_back(
          {i, TrayColumn::day,
           phrase("tray '{}' has two inspections on day {}", tray.tray, tray.looks[i].day),
           "Put both counts into one row."});
  }
  faults_of_sums(tray, faults);
  return faults;
}

std::vector<TrayGroup> groups_of(std::span<const Tray> trays) {
  std::vector<TrayGroup> groups;
  std::map<std::string_view, std::size_t> place;
  for (std::size_t i = 0; i < trays.size(); ++i) {
    const auto [found, is_new] = place.try_emplace(trays[i].group, groups.size());
    if (is_new)
      groups.push_back({trays[i].group, {}});
    groups[found->second].trays.push_back(i);
  }
  return groups;
}

Tray as_one(std::span<const Tray> trays) {
  Tray all;
  std::map<double, Look> by_day;
  for (const auto& tray : trays) {
    all.sown += tray.sown;
    for (const auto& look : tray.looks) {
      auto& day = by_day[look.day];
      day.day = look.day;
      day.germinated += look.germinated;
      day.removed += look.removed;
    }
  }
  for (const auto& [day, look] : by_day)
    all.looks.push_back(look);
  return all;
}

} // namespace coneline::stats
