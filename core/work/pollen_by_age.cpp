// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/one_reading.h"

namespace coneline::work {

namespace {

using Group = std::pair<std::string, int>; // store, whole years

/// The store and age of all pollen used on a cone; nothing where they differ or nobody knows.
std::optional<Group> group_of(const book::Registers& registers,
                              const std::vector<book::Entry>& passes) {
  std::optional<Group> group;
  for (const auto& pass : passes)
    for (const auto& used : std::get<book::Pollination>(pass.detail).pollen) {
      if (!used.lot)
        return std::nullopt;
      const auto& lot = registers.pollen_lot(*used.lot);
      const Group here{lot.store, days_between(lot.collected, pass.date) * 4 / 1461};
      if (group && *group != here)
        return std::nullopt;
      group = here;
    }
  return group;
}

struct Grown {
  std::int64_t sown = 0;
  std::int64_t germinated = 0;
};

std::map<book::ConeId, Grown> grown(OneReading& once) {
  std::map<book::LotId, book::ConeId> cones;
  for (const auto& lot : once.lots())
    if (const auto* cone = std::get_if<book::ConeId>(&lot.origin))
      cones[lot.id] = *cone;
  std::map<book::ConeId, Grown> sums;
  for (const auto& sown : once.reading().trays_sown())
    if (const auto cone = cones.find(sown.tray); cone != cones.end())
      sums[cone->second].sown += sown.seeds;
  for (const auto& look : once.reading().tray_looks())
    if (const auto cone = cones.find(look.tray); cone != cones.end())
      sums[cone->second].germinated += look.germinated;
  return sums;
}

std::optional<stats::Interval> range(std::int64_t k, std::int64_t n) {
  if (n < 1 || k > n)
    return std::nullopt;
  auto found = stats::wilson(k, n, 0.95);
  return found ? std::optional(*found) : std::nullopt;
}

} // namespace

std::vector<PollenAgeRow> pollen_by_age(store::Reading& reading, const book::Registers& registers) {
  OneReading once(reading, registers);
  auto passes = by_cone(once.standing(book::Verb::pollinate));
  const auto germination = grown(once);
  std::map<Group, PollenAgeRow> rows;
  for (const auto& course : once.cone_courses()) {
    const auto group = group_of(registers, passes[course.line.cone.id]);
    if (!group || course.line.harvested == 0)
      continue;
    auto& row = rows[*group];
    row.store = group->first;
    row.years = group->second;
    ++row.cones;
    row.seeds += course.line.harvested;
    if (course.fertile_scales) {
      row.ceiling += 2 * *course.fertile_scales;
      row.seeds_of_ceiling += course.line.harvested;
    }
    if (const auto found = germination.find(course.line.cone.id); found != germination.end()) {
      row.sown += found->second.sown;
      row.germinated += found->second.germinated;
    }
  }
  std::vector<PollenAgeRow> all;
  for (auto& [group, row] : rows) {
    row.set = range(row.seeds_of_ceiling, row.ceiling);
    row.germination = range(row.germinated, row.sown);
    all.push_back(std::move(row));
  }
  return all;
}

} // namespace coneline::work
