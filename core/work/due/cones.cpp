// SPDX-License-Identifier: GPL-3.0-or-later
// Scales to check, passes, and cones that may be ripe.
#include "core/base/phrase.h"
#include "core/work/due/list.h"
#include "core/work/origin_said.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

const ScalesSeen* last_look(const DueGround& ground, const ConeCourse& course) {
  const ScalesSeen* last = nullptr;
  for (const auto& look : course.looks)
    if (look.date <= ground.day)
      last = &look;
  return last;
}

int looks_so_far(const DueGround& ground, const ConeCourse& course) {
  return static_cast<int>(std::ranges::count_if(
      course.looks, [&](const auto& look) { return look.date <= ground.day; }));
}

/// A cone that takes no pollen yet is looked at until it does.
void scales(const DueGround& ground, const ConeCourse& course, DueList& list) {
  const auto& cone = course.line.cone;
  const auto* last = last_look(ground, course);
  const auto begun = cone.first_seen ? cone.first_seen
                     : last          ? std::optional(last->date)
                                     : std::nullopt;
  if (!begun || course.closed || !course.line.passes.empty() ||
      begun->plus_days(ground.habits.days_of_tight_looks) < ground.day ||
      (last && last->scales != book::Scales::tight))
    return;
  const auto& plant = ground.registers.plant(cone.plant);
  list.add({DueKind::check_scales, cone.code, looks_so_far(ground, course),
            (last ? last->date : *begun).plus_days(ground.habits.days_between_tight_looks),
            std::nullopt,
            phrase("{} of {}: are its scales loose?", cone.code.text(), book::plant_name(plant)),
            plant.place});
}

void passes(const DueGround& ground, const ConeCourse& course, DueList& list) {
  const auto& line = course.line;
  const auto& habits = ground.habits;
  const auto* last = last_look(ground, course);
  const bool loose = last && last->scales == book::Scales::loose;
  if (course.closed || (line.passes.empty() && !loose))
    return;
  const auto first = line.passes.empty() ? last->date : line.passes.front();
  // A loose look after so long is stronger than the habit.
  const auto end = std::max(first, loose ? last->date : first).plus_days(habits.days_of_passes);
  if (ground.day > end)
    return;
  const auto from =
      line.passes.empty() ? first : line.passes.back().plus_days(habits.days_between_passes);
  const auto to = line.passes.empty()
                      ? first.plus_days(1)
                      : line.passes.back().plus_days(habits.days_between_passes_at_most);
  list.add({DueKind::pollinate, line.cone.code, static_cast<int>(line.passes.size()), from, to,
            phrase("pass {} on {}, if the cone is still loose", line.passes.size() + 1,
                   line.passes.empty() ? book::plant_name(ground.registers.plant(line.cone.plant))
                                       : origin_said(line.origin.name)),
            ground.registers.plant(line.cone.plant).place});
}

void ripe(const DueGround& ground, const ConeCourse& course, DueList& list) {
  if (!course.ripe_from)
    return;
  const auto* last = last_look(ground, course);
  const auto& plant = ground.registers.plant(course.line.cone.plant);
  if (last && last->scales == book::Scales::coming_apart)
    return list.add({DueKind::harvest, course.line.cone.code, looks_so_far(ground, course),
                     last->date, last->date.plus_days(3),
                     phrase("{} comes apart: harvest it", origin_said(course.line.origin.name)),
                     plant.place});
  // Looked at within the time of ripeness, it waits for the next look.
  auto from = *course.ripe_from;
  if (last && last->date >= from)
    from = last->date.plus_days(ground.habits.days_between_ripe_looks);
  list.add(
      {DueKind::harvest, course.line.cone.code, looks_so_far(ground, course), from,
       std::max(from, *course.ripe_to),
       phrase("{} may be ripe: look whether it comes loose", origin_said(course.line.origin.name)),
       plant.place});
}

} // namespace

void cones_due(const DueGround& ground, DueList& list) {
  for (const auto& course : ground.cones) {
    if (course.line.harvested_on)
      continue;
    scales(ground, course, list);
    passes(ground, course, list);
    ripe(ground, course, list);
  }
}

} // namespace coneline::work
