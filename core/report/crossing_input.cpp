// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/crossing_input.h"

#include "core/base/phrase.h"
#include "core/book/cross.h"
#include "core/book/pedigree.h"
#include "core/plan/needs.h"
#include "core/report/needs_input.h"
#include "core/stats/beta_binomial.h"
#include "core/stats/next_value.h"
#include "core/work/cone_course.h"
#include "core/work/germination.h"
#include "core/work/pollen.h"

#include <boost/math/distributions/beta.hpp>
#include <fmt/format.h>

#include <cmath>
#include <numeric>

namespace coneline::report {

namespace {

constexpr int days_of_passes = 14;          // common practice, no source
constexpr std::size_t enough_for_range = 3; // with two a range says next to nothing
constexpr double sure_of_next = 0.8;        // from 10 to 90 %
constexpr double assumed_millilitres = 1.5; // three passes of half a millilitre; no source

/// The next one of such numbers: their geometric mean, with the range 8 in 10 fall into.
plan::Estimate next_of(const std::vector<double>& seen, std::string source) {
  double mean = 0;
  for (const double each : seen)
    mean += std::log(each) / static_cast<double>(seen.size());
  plan::Estimate next{std::exp(mean), std::nullopt, std::move(source)};
  if (seen.size() < enough_for_range)
    return next;
  if (const auto range = stats::next_value(seen, sure_of_next))
    next.range = book::Range{range->low, range->high};
  return next;
}

plan::Estimate scaled(plan::Estimate estimate, double by) {
  estimate.likely *= by;
  if (estimate.range)
    estimate.range = book::Range{estimate.range->low * by, estimate.range->high * by};
  return estimate;
}

plan::Estimate at_most(plan::Estimate estimate, double most) {
  estimate.likely = std::min(estimate.likely, most);
  if (estimate.range)
    estimate.range =
        book::Range{std::min(estimate.range->low, most), std::min(estimate.range->high, most)};
  return estimate;
}

double ceiling_of(std::int64_t fertile_scales) {
  return 2.0 * static_cast<double>(fertile_scales);
}

class Gather {
 public:
  Gather(store::Reading& reading, const CrossingAsked& asked) : reading_(reading), asked_(asked) {
    input_.today = asked.today;
    input_.registers = reading.registers();
    input_.parents = book::pedigree_of(input_.registers.plants);
    cones_ = work::cone_courses(reading, input_.registers);
    trays_ = work::observed_trays(reading, input_.registers, asked.today);
  }

  Result<plan::CrossingInput> run() {
    standing_cones();
    if (auto named = named_females(); !named)
      return refuse(named.error());
    pollen();
    germination();
    room();
    return std::move(input_);
  }

 private:
  [[nodiscard]] book::TaxonId taxon(book::PlantId plant) const {
    return input_.registers.plant(plant).taxon;
  }

  /// A number of every cone harvested by the day, of the plant where enough of its cones have it,
  /// else of its taxon; those without it give none.
  template <class Number>
  std::optional<plan::Estimate> of_earlier(book::PlantId plant, std::string_view what,
                                           Number number) const {
    std::vector<double> own;
    std::vector<double> of_taxon;
    for (const auto& course : cones_) {
      const auto& cone = course.line;
      if (cone.harvested <= 0 || *cone.harvested_on > asked_.today ||
          taxon(cone.cone.plant) != taxon(plant))
        continue;
      const std::optional<double> counted = number(course);
      if (!counted)
        continue;
      of_taxon.push_back(*counted);
      if (cone.cone.plant == plant)
        own.push_back(*counted);
    }
    const bool enough = own.size() >= enough_for_range;
    const auto& counts = enough ? own : of_taxon;
    if (counts.empty())
      return std::nullopt;
    return next_of(counts, phrase_n(std::ssize(counts), "{1}{0} earlier cone of {2}",
                                    "{1}{0} earlier cones of {2}", what,
                                    enough ? input_.registers.plant(plant).code.text()
                                           : input_.registers.taxon(taxon(plant)).name));
  }

  [[nodiscard]] std::optional<plan::Estimate>
  seeds_of(book::PlantId plant, std::optional<std::int64_t> fertile_scales) const {
    const auto seeds = [](const work::ConeCourse& course) -> std::optional<double> {
      return static_cast<double>(course.line.harvested);
    };
    const auto set = [](const work::ConeCourse& course) -> std::optional<double> {
      if (course.fertile_scales.value_or(0) <= 0)
        return std::nullopt;
      return static_cast<double>(course.line.harvested) / ceiling_of(*course.fertile_scales);
    };
    if (fertile_scales) {
      const auto ceiling = ceiling_of(*fertile_scales);
      const auto told = phrase("{} fertile scales, ", *fertile_scales);
      if (const auto share = of_earlier(plant, told, set))
        return at_most(scaled(*share, ceiling), ceiling);
      if (const auto counted = of_earlier(plant, told + phrase("two seeds each at most, "), seeds))
        return at_most(*counted, ceiling);
    }
    if (auto counted = of_earlier(plant, "", seeds))
      return counted;
    if (asked_.seeds_a_cone)
      return plan::Estimate{*asked_.seeds_a_cone, std::nullopt, phrase("as asked")};
    return std::nullopt;
  }

  /// Of the seeds a cone gives, those that come to be sown.
  [[nodiscard]] std::optional<plan::Estimate>
  sown_of(book::PlantId plant, std::optional<std::int64_t> fertile_scales) const {
    auto seeds = seeds_of(plant, fertile_scales);
    const auto share = sown_share(taxon(plant));
    if (!seeds || !share)
      return seeds;
    seeds = scaled(*seeds, *share);
    seeds->source += phrase(", of which {:.0f} % were sown", 100 * *share);
    return seeds;
  }

  /// Of the seed of cones that were sown from at all.
  [[nodiscard]] std::optional<double> sown_share(book::TaxonId of) const {
    double harvested = 0;
    double sown = 0;
    for (const auto& course : cones_) {
      const auto& cone = course.line;
      if (cone.harvested <= 0 || *cone.harvested_on > asked_.today || taxon(cone.cone.plant) != of)
        continue;
      std::int64_t from_it = 0;
      for (const auto& tray : trays_)
        if (tray.lot.origin == book::Origin{cone.cone.id})
          from_it += tray.sown;
      if (from_it == 0)
        continue;
      harvested += static_cast<double>(cone.harvested);
      sown += static_cast<double>(from_it);
    }
    return harvested > 0 ? std::optional(std::min(1.0, sown / harvested)) : std::nullopt;
  }

  void add_female(const Code& code, book::PlantId plant, std::string when,
                  std::optional<std::int64_t> fertile_scales = {}) {
    input_.females.push_back({code, plant, sown_of(plant, fertile_scales), std::move(when)});
  }

  void standing_cones() {
    for (const auto& course : cones_) {
      const auto& cone = course.line;
      const bool seen = !cone.cone.first_seen || *cone.cone.first_seen <= asked_.today;
      const bool harvested = cone.harvested_on && *cone.harvested_on <= asked_.today;
      if (!seen || harvested)
        continue;
      const auto leave_out = [&](std::string why) {
        input_.left_out.emplace_back(cone.cone.code, std::move(why));
      };
      const auto first = std::ranges::min_element(cone.passes);
      const int since = first == cone.passes.end() ? 0 : days_between(*first, asked_.today);
      if (course.closed && *course.closed <= asked_.today)
        leave_out(phrase("it closed on {}", course.closed->said()));
      else if (since > days_of_passes)
        leave_out(phrase("its first pass was {} days ago", since));
      else
        add_female(cone.cone.code, cone.cone.plant, state_of(course), course.fertile_scales);
    }
  }

  /// "loose on 2026-05-02, first pass 2026-05-02".
  [[nodiscard]] std::string state_of(const work::ConeCourse& course) const {
    std::string told;
    for (const auto& look : course.looks)
      if (look.date <= asked_.today)
        told = phrase("{} on {}, ", book::said(look.scales), look.date.said());
    const auto first = std::ranges::min_element(course.line.passes);
    return told + (first == course.line.passes.end() ? phrase("not pollinated yet")
                                                     : phrase("first pass {}", first->said()));
  }

  Result<void> named_females() {
    for (const auto& code : asked_.females) {
      const auto* plant = book::coded(input_.registers.plants, code);
      if (plant == nullptr)
        return refuse(fault(phrase("{} is no plant of this book", code.text()),
                            "Name a female plant of the register."));
      if (plant->sex == book::Sex::male)
        return refuse(fault(phrase("{} ({}) is a male plant: it has no cone to pollinate",
                                   code.text(), book::plant_name(*plant)),
                            "Name a female plant, or correct the sex."));
      add_female(code, plant->id, phrase("expected"));
    }
    if (asked_.every_female)
      for (const auto& plant : input_.registers.plants)
        if (plant.sex == book::Sex::female && !is_there(plant.id))
          add_female(plant.code, plant.id, phrase("expected"));
    return {};
  }
  [[nodiscard]] bool is_there(book::PlantId plant) const {
    return std::ranges::find(input_.females, plant, &plan::FemaleToCross::plant) !=
           input_.females.end();
  }

  void pollen() {
    std::map<book::ConeId, double> by_cone;
    for (const auto& entry : reading_.standing_entries(book::Verb::pollinate))
      if (const auto* pass = std::get_if<book::Pollination>(&entry.detail);
          pass != nullptr && entry.date <= asked_.today)
        for (const auto& share : pass->pollen)
          if (entry.cone && share.millilitres)
            by_cone[*entry.cone] += *share.millilitres;
    for (const auto& line : work::pollen_lines(reading_, input_.registers))
      add_pollen(line);
    take_a_cone(by_cone);
  }

  void add_pollen(const work::PollenLine& line) {
    const auto& lot = line.lot;
    const auto& father = input_.registers.plant(lot.plant);
    const auto leave_out = [&](std::string why) {
      input_.left_out.emplace_back(lot.code, std::move(why));
    };
    if (lot.collected > asked_.today)
      return leave_out(
          phrase("it is collected on {}, later than the day asked about", lot.collected.said()));
    if (father.sex == book::Sex::female)
      return leave_out(phrase("it is said to come from {}, a female plant: correct the sex or "
                              "the plant",
                              father.code.text()));
    if (line.gone)
      return leave_out(phrase("it is gone since {}", line.gone->said()));
    if (line.left && *line.left <= 1e-9)
      return leave_out(phrase("it has run out: {:g} ml collected, {:g} ml used",
                              line.collected.value_or(0), line.used + line.discarded));
    input_.pollen.push_back(
        {lot.code, lot.plant, line.left, viability(line), lot.collected, lot.store});
  }

  /// From the last test by the day asked about.
  [[nodiscard]] std::optional<plan::Estimate> viability(const work::PollenLine& line) const {
    std::optional<plan::Estimate> found;
    for (const auto& test : line.tests)
      if (test.date <= asked_.today)
        found = plan::Estimate{
            static_cast<double>(test.germinated) / static_cast<double>(test.counted),
            book::Range{test.range.low, test.range.high},
            phrase("{} of {} grains on {}", test.germinated, test.counted, test.date.said())};
    return found;
  }

  void take_a_cone(const std::map<book::ConeId, double>& by_cone) {
    if (asked_.millilitres_a_cone) {
      input_.millilitres_a_cone = *asked_.millilitres_a_cone;
      return;
    }
    std::vector<double> amounts;
    for (const auto& [cone, millilitres] : by_cone)
      amounts.push_back(millilitres);
    std::ranges::sort(amounts);
    input_.millilitres_a_cone = amounts.empty() ? assumed_millilitres : amounts[amounts.size() / 2];
    input_.remarks.push_back(
        amounts.empty()
            ? phrase("{:g} ml of pollen for a cone are assumed (no source).",
                     input_.millilitres_a_cone)
            : phrase_n(std::ssize(amounts),
                       "{1:g} ml of pollen for a cone: the middle of {0} cone in the book.",
                       "{1:g} ml of pollen for a cone: the middle of {0} cones in the book.",
                       input_.millilitres_a_cone));
  }

  void germination() {
    std::map<book::TaxonId, std::vector<stats::Outcome>> over;
    for (const auto& tray : trays_) {
      const auto route =
          std::ranges::find(input_.registers.routes, tray.origin.taxon_id, &book::Route::taxon);
      if (route == input_.registers.routes.end() ||
          tray.sown_on.plus_part_months(route->germination_months.high) > asked_.today)
        continue;
      std::int64_t up = 0;
      for (const auto& look : tray.looks)
        up += look.germinated;
      over[tray.origin.taxon_id].push_back({tray.sown, std::min(up, tray.sown)});
    }
    for (const auto& [id, outcomes] : over)
      if (outcomes.size() >= enough_for_range)
        if (const auto own = share_of(outcomes))
          input_.germination[id] = *own;
  }

  static std::optional<plan::Estimate> share_of(const std::vector<stats::Outcome>& outcomes) {
    const auto fit = stats::fit_spread(outcomes);
    if (!fit || !(fit->mean > 0) || !(fit->mean < 1))
      return std::nullopt;
    plan::Estimate share{fit->mean, std::nullopt,
                         phrase_n(std::ssize(outcomes), "{} tray of the taxon that is over",
                                  "{} trays of the taxon that are over")};
    // Trays alike but for chance still leave the mean itself unsure.
    const double trials =
        std::accumulate(outcomes.begin(), outcomes.end(), 0.0, [](double sum, const auto& each) {
          return sum + static_cast<double>(each.trials);
        });
    const double rho = std::max(fit->rho, 1 / (trials + 1));
    const boost::math::beta_distribution<> spread(fit->mean * (1 - rho) / rho,
                                                  (1 - fit->mean) * (1 - rho) / rho);
    share.range =
        book::Range{boost::math::quantile(spread, 0.1), boost::math::quantile(spread, 0.9)};
    return share;
  }

  void room() {
    if (asked_.any_room) {
      input_.remarks.emplace_back(phrase("Room on the benches is not asked about."));
      return;
    }
    if (asked_.room) {
      input_.room = asked_.room;
      return;
    }
    const auto needs = plan::needs(needs_input(reading_, asked_.today, 1));
    std::map<book::Light, double> free;
    double offered = 0;
    if (needs)
      for (const auto& space : needs->space) {
        free[space.light] = std::max(0.0, space.offered - space.today);
        offered += space.offered;
      }
    if (offered <= 0) {
      input_.remarks.emplace_back(
          phrase("No place of the book is measured, so room is not asked about."));
      return;
    }
    input_.room = free;
    input_.remarks.push_back(
        phrase("Room: what the measured places offer less what stands there on the day; what will "
               "be sold or planted out until the plants are there is not foreseen."));
  }

  store::Reading& reading_;
  const CrossingAsked& asked_;
  plan::CrossingInput input_;
  std::vector<work::ConeCourse> cones_;
  std::vector<work::ObservedTray> trays_;
};

Fault not_among(const plan::CrossingInput& input, const Code& code, Kind what) {
  for (const auto& [left_out, why] : input.left_out)
    if (left_out == code)
      return fault(phrase("{} cannot be used: {}", code.text(), why),
                   phrase("Choose another {}.", kind_said(what)));
  if (const auto* plant = book::coded(input.registers.plants, code);
      plant != nullptr && what == Kind::pollen)
    return fault(plant->sex == book::Sex::female
                     ? phrase("{} ({}) is a female plant: it gives no pollen and cannot be "
                              "the father",
                              code.text(), book::plant_name(*plant))
                     : phrase("{} is a plant, not a pollen lot", code.text()),
                 "Name one of its pollen lots, or another father's.");
  return fault(phrase("{} is no {} to choose from", code.text(), kind_said(what)),
               "The list of possible crosses shows those there are.");
}

} // namespace

Result<plan::CrossingInput> crossing_input(store::Reading& reading, const CrossingAsked& asked) {
  return Gather(reading, asked).run();
}

Result<std::size_t> cross_meant(const plan::CrossingInput& input,
                                const std::vector<plan::PossibleCross>& possible,
                                const Code& female, const Code& pollen) {
  if (std::ranges::find(input.females, female, &plan::FemaleToCross::code) == input.females.end())
    return refuse(not_among(input, female, Kind::cone));
  if (std::ranges::find(input.pollen, pollen, &plan::PollenToUse::code) == input.pollen.end())
    return refuse(not_among(input, pollen, Kind::pollen));
  const auto found = std::ranges::find_if(possible, [&](const plan::PossibleCross& cross) {
    return input.females[cross.female].code == female && input.pollen[cross.pollen].code == pollen;
  });
  return static_cast<std::size_t>(found - possible.begin());
}

} // namespace coneline::report
