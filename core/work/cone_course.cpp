// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/cone_course.h"

#include "core/base/phrase.h"
#include "core/stats/next_value.h"
#include "core/work/one_reading.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

#include <cmath>

namespace coneline::work {

namespace {

constexpr double days_a_month = 365.25 / 12;
constexpr double about_low = 11;
constexpr double about_high = 13;
constexpr double sure_of_seeds = 0.8;
constexpr std::size_t enough_cones = 9; // between the least and the most of nine: 80 in 100

void add_look(ConeCourse& course, const book::Entry& entry) {
  const auto& look = std::get<book::ConeLook>(entry.detail);
  course.looks.push_back({entry.date, look.scales});
  if (look.fertile_scales)
    course.fertile_scales = look.fertile_scales;
  if (look.scales == book::Scales::closed && !course.closed)
    course.closed = entry.date;
}

void find_receptive(ConeCourse& course) {
  const auto widen = [&](Date day) {
    course.receptive_from = course.receptive_from ? std::min(*course.receptive_from, day) : day;
    course.receptive_to = course.receptive_to ? std::max(*course.receptive_to, day) : day;
  };
  for (const auto& look : course.looks)
    if (look.scales == book::Scales::loose)
      widen(look.date);
  for (const auto& pass : course.line.passes)
    widen(pass);
}

/// Months to ripeness of the harvested cones of each taxon.
std::map<book::TaxonId, std::vector<double>> ripened(const std::vector<ConeCourse>& courses,
                                                     const book::Registers& registers) {
  std::map<book::TaxonId, std::vector<double>> months;
  for (const auto& course : courses)
    if (course.line.harvested > 0 && !course.line.passes.empty())
      months[registers.plant(course.line.cone.plant).taxon].push_back(
          days_between(course.line.passes.front(), *course.line.harvested_on) / days_a_month);
  return months;
}

Expected ripe_months(const book::Taxon& taxon, const std::vector<double>& own) {
  Expected expected{about_low, about_high,
                    phrase("about twelve months (common practice, no source)")};
  if (const auto& given = taxon.ripening.value)
    expected = {given->low, given->high,
                phrase("the taxon{}",
                       taxon.ripening.source.empty() ? "" : " (" + taxon.ripening.source + ")")};
  if (own.empty())
    return expected;
  const auto [least, most] = std::ranges::minmax(own);
  if (own.size() >= enough_cones)
    return {least, most, phrase("{} cones of this book", own.size())};
  return {std::min(expected.low, least), std::max(expected.high, most),
          phrase("{}, and {} of this book", expected.basis,
                 counted(static_cast<std::int64_t>(own.size()), "cone", "cones"))};
}

std::optional<Expected> seeds_expected(const ConeCourse& course,
                                       const std::vector<const ConeCourse*>& earlier) {
  std::vector<double> seeds;
  std::vector<double> shares;
  for (const auto* other : earlier) {
    seeds.push_back(static_cast<double>(other->line.harvested));
    if (other->fertile_scales)
      shares.push_back(seeds.back() / (2.0 * static_cast<double>(*other->fertile_scales)));
  }
  const auto told = [](std::size_t n) {
    return phrase_n(static_cast<std::int64_t>(n),
                    "{} earlier cone of the plant: right 8 times in 10",
                    "{} earlier cones of the plant: right 8 times in 10");
  };
  if (course.fertile_scales) {
    const auto ceiling = 2.0 * static_cast<double>(*course.fertile_scales);
    const auto share = stats::next_value(shares, sure_of_seeds);
    if (!share)
      return Expected{0, ceiling, phrase("two a fertile scale at most")};
    return Expected{std::floor(share->low * ceiling),
                    std::min(ceiling, std::ceil(share->high * ceiling)),
                    phrase("scales and {}", told(shares.size()))};
  }
  const auto range = stats::next_value(seeds, sure_of_seeds);
  if (!range)
    return std::nullopt;
  return Expected{std::floor(range->low), std::ceil(range->high), told(seeds.size())};
}

/// A cone that came into the book with a pass that was reversed, as when the plant was named in
/// place of its cone: nothing of it is left.
bool taken_back(store::Reading& reading, const ConeCourse& course) {
  const auto& line = course.line;
  if (!line.passes.empty() || !course.looks.empty() || line.harvested_on)
    return false;
  const auto entries = reading.entries_of(line.cone.id);
  return !entries.empty() && entries.front().verb == book::Verb::pollinate &&
         line.cone.first_seen == entries.front().date;
}

} // namespace

std::vector<ConeCourse> cone_courses(store::Reading& reading, const book::Registers& registers) {
  OneReading once(reading, registers);
  return cone_courses(once);
}

std::vector<ConeCourse> cone_courses(OneReading& once) {
  const auto& registers = once.registers();
  std::vector<ConeCourse> courses;
  std::map<book::ConeId, std::size_t> at;
  for (auto& line : cone_lines(once)) {
    at[line.cone.id] = courses.size();
    courses.push_back({std::move(line), {}, {}, {}, {}, {}, {}, {}, {}, {}});
  }
  for (const auto& entry : once.standing(book::Verb::check_scales))
    if (entry.cone)
      add_look(courses[at.at(*entry.cone)], entry);
  std::erase_if(courses,
                [&](const ConeCourse& course) { return taken_back(once.reading(), course); });
  auto months = ripened(courses, registers);
  std::map<book::PlantId, std::vector<const ConeCourse*>> of_plant;
  for (const auto& course : courses)
    if (course.line.harvested > 0)
      of_plant[course.line.cone.plant].push_back(&course);
  for (auto& course : courses) {
    find_receptive(course);
    const auto& plant = registers.plant(course.line.cone.plant);
    course.ripe_months = ripe_months(registers.taxon(plant.taxon), months[plant.taxon]);
    if (!course.line.passes.empty()) {
      const auto first = course.line.passes.front();
      course.ripe_from = first.plus_part_months(course.ripe_months.low);
      course.ripe_to = first.plus_part_months(course.ripe_months.high);
    }
    if (!course.line.harvested_on)
      course.seeds = seeds_expected(course, of_plant[plant.id]);
  }
  return courses;
}

Result<Done> check_scales(store::Writing& writing, const CheckScales& wanted) {
  const auto registers = writing.registers();
  auto cone = cone_coded(registers, wanted.cone);
  if (!cone)
    return refuse(cone.error());
  for (const auto& course : cone_courses(writing, registers)) {
    if (course.line.cone.id != cone->id)
      continue;
    if (course.line.harvested_on && *course.line.harvested_on < wanted.noted.on)
      return refuse(fault(phrase("{} was harvested on {}, before this look", wanted.cone.text(),
                                 course.line.harvested_on->said()),
                          "Check the cone and the day."));
    if (course.closed && *course.closed < wanted.noted.on &&
        (wanted.scales == book::Scales::loose || wanted.scales == book::Scales::tight))
      return refuse(fault(
          phrase("{} closed on {}, before this look", wanted.cone.text(), course.closed->said()),
          "Reverse that entry if it was wrong; a ripe cone is coming apart."));
  }
  auto entry = entry_for(book::Verb::check_scales, wanted.noted);
  entry.cone = cone->id;
  entry.detail = book::ConeLook{wanted.scales, wanted.fertile_scales};
  return entered(writing, entry,
                 phrase("scales of {}: {}", wanted.cone.text(), book::said(wanted.scales)));
}

Result<Done> check_scales(store::Book& book, const CheckScales& wanted) {
  return book.write([&](store::Writing& writing) { return check_scales(writing, wanted); });
}

} // namespace coneline::work
