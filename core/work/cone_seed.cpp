// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/cone_seed.h"

#include "core/base/phrase.h"
#include "core/work/harvest_table.h"
#include "core/work/one_reading.h"

#include <boost/math/distributions/students_t.hpp>
#include <fmt/format.h>

#include <cmath>

namespace coneline::work {

namespace {

/// Seed of a harvested cone that was sown or is judged filled.
struct Harvested {
  book::PlantId plant;
  book::TaxonId taxon;
  std::int64_t seeds = 0;
};

/// Cones of which all seed is sorted; what lies unsorted tells nothing yet.
std::vector<Harvested> harvested(OneReading& once, Date today) {
  const auto& registers = once.registers();
  std::map<Code, std::vector<HarvestTable>> batches;
  for (const auto& lot : once.lots())
    if (lot.code.kind() == Kind::batch && std::holds_alternative<book::ConeId>(lot.origin)) {
      const auto& origin = once.origins().at(lot.origin);
      batches[origin.code].push_back(harvest_table(once.reading(), lot, origin, today));
    }
  std::vector<Harvested> known;
  for (const auto& course : once.cone_courses()) {
    if (course.line.harvested_on && course.line.harvested == 0 &&
        *course.line.harvested_on <= today) // it came off and gave none
      known.push_back({course.line.cone.plant, registers.plant(course.line.cone.plant).taxon, 0});
    const auto found = batches.find(course.line.cone.code);
    if (!course.line.harvested_on || found == batches.end())
      continue;
    Harvested cone{course.line.cone.plant, registers.plant(course.line.cone.plant).taxon, 0};
    bool sorted = true;
    for (const auto& batch : found->second) {
      sorted &= batch.unsorted == 0;
      cone.seeds += batch.sown + batch.filled.on_hand;
    }
    if (sorted)
      known.push_back(cone);
  }
  return known;
}

/// Of like cones: those that gave seed, by the logarithm, and those that gave none.
struct Like {
  std::vector<double> logs;
  int none = 0;
  void add(std::int64_t seeds) {
    if (seeds > 0)
      logs.push_back(std::log(static_cast<double>(seeds)));
    else
      ++none;
  }
  [[nodiscard]] std::size_t cones() const { return logs.size() + static_cast<std::size_t>(none); }
};

/// Seeds of the next cone, equally likely, the least first.
std::vector<std::int64_t> next_seeds(const Like& like, const ConeHabits& habits, double most) {
  constexpr double mean_worth = 1;
  constexpr double spread_worth = 4;
  const auto n = static_cast<double>(like.logs.size());
  const double usual = std::log(habits.seeds);
  double sum = 0;
  for (const double log : like.logs)
    sum += log;
  const double mean = n > 0 ? sum / n : usual;
  double squares = 0;
  for (const double log : like.logs)
    squares += (log - mean) * (log - mean);
  const double middle = (mean_worth * usual + n * mean) / (mean_worth + n);
  const double off = mean - usual;
  const double variance = (spread_worth * habits.spread * habits.spread + squares +
                           mean_worth * n * off * off / (mean_worth + n)) /
                          (spread_worth + n);
  const double scale = std::sqrt(variance * (1 + 1 / (mean_worth + n)));
  const double gives = (habits.gives * habits.gives_weight + n) /
                       (habits.gives_weight + static_cast<double>(like.cones()));
  const boost::math::students_t law(spread_worth + n);
  std::vector<std::int64_t> seeds;
  for (std::size_t draw = 0; draw < habits.draws; ++draw) {
    const double even = (static_cast<double>(draw) + 0.5) / static_cast<double>(habits.draws);
    const double within = (even - (1 - gives)) / gives;
    if (within <= 0) {
      seeds.push_back(0);
      continue;
    }
    const double log = middle + scale * boost::math::quantile(law, within);
    seeds.push_back(std::llround(std::min(most, std::exp(std::min(log, 30.0)))));
  }
  return seeds;
}

/// Numbers spread evenly over 0 to 1 and unlike each other's order: multiples of an irrational.
double evenly(std::size_t draw, double step) {
  const double multiple = (static_cast<double>(draw) + 0.5) * step;
  return multiple - std::floor(multiple);
}

std::vector<ConeSeedDraw> draws(const ConeCourse& course, const book::Taxon& taxon,
                                const std::vector<std::int64_t>& seeds, Date today) {
  constexpr double golden = 0.6180339887498949;
  constexpr double silver = 0.4142135623730951;
  const auto from = std::max(today, *course.ripe_from);
  const int span = std::max(0, days_between(from, *course.ripe_to));
  const auto ripens_on = taxon.after_ripening.value.value_or(book::Range{});
  std::vector<ConeSeedDraw> drawn;
  for (std::size_t at = 0; at < seeds.size(); ++at) {
    const auto ripe = from.plus_days(static_cast<int>(evenly(at, golden) * span));
    const double months = ripens_on.low + evenly(at, silver) * (ripens_on.high - ripens_on.low);
    drawn.push_back({ripe.plus_part_months(months), seeds[at]});
  }
  return drawn;
}

struct Basis {
  Like like;
  std::string told;
  bool usual_alone = false;
};

Basis basis_of(const ConeCourse& course, book::TaxonId taxon, const std::string& taxon_name,
               const std::vector<Harvested>& known) {
  Like own;
  Like of_taxon;
  for (const auto& cone : known) {
    if (cone.plant == course.line.cone.plant)
      own.add(cone.seeds);
    if (cone.taxon == taxon)
      of_taxon.add(cone.seeds);
  }
  constexpr std::size_t enough = 2;
  if (own.cones() >= enough)
    return {own, phrase("{} earlier cones of the plant", own.cones())};
  if (of_taxon.cones() > 0)
    return {of_taxon, phrase_n(static_cast<std::int64_t>(of_taxon.cones()), "{} earlier cone of {}",
                               "{} earlier cones of {}", taxon_name)};
  return {{}, phrase("common practice, no source: the book has no cone of the taxon"), true};
}

} // namespace

ConesToCome cones_to_come(store::Reading& reading, const book::Registers& registers, Date today,
                          const ConeHabits& habits) {
  constexpr double two_a_scale = 2;
  constexpr double no_ceiling = 5000; // more than any cone that is heard of; keeps the tail finite
  OneReading once(reading, registers);
  const auto known = harvested(once, today);
  ConesToCome come;
  for (const auto& course : once.cone_courses()) {
    const auto& cone = course.line.cone;
    if (course.line.harvested_on && *course.line.harvested_on <= today)
      continue;
    if (!course.ripe_from || course.line.passes.front() > today) {
      come.left_out.push_back(
          phrase("{} took no pollen: no seed of it is counted.", cone.code.text()));
      continue;
    }
    if (course.ripe_to->plus_months(habits.months_overdue) < today) {
      come.left_out.push_back(phrase("{} was to be ripe by {}: no seed of it is counted. "
                                     "Harvest it, if it still stands.",
                                     cone.code.text(), course.ripe_to->said()));
      continue;
    }
    const auto& taxon = registers.taxon(registers.plant(cone.plant).taxon);
    const auto basis = basis_of(course, taxon.id, taxon.name, known);
    const double most = course.fertile_scales
                            ? two_a_scale * static_cast<double>(*course.fertile_scales)
                            : no_ceiling;
    come.cones.push_back({cone, course.line.origin,
                          draws(course, taxon, next_seeds(basis.like, habits, most), today),
                          basis.told, basis.usual_alone});
  }
  return come;
}

} // namespace coneline::work
