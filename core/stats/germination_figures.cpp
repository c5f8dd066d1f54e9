// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_figures.h"

#include "core/base/phrase.h"
#include "core/stats/germination_boundary.h"
#include "core/stats/probability.h"

#include <vector>

namespace coneline::stats {

namespace {

/// What a group is worked out from, kept for the comparisons.
struct Prepared {
  IntervalCounts counts;
  std::optional<GroupShare> share; ///< none where nothing was sown
  std::vector<FamilyFit> families; ///< those asked for, in the order of all_families
};

std::vector<Outcome> outcomes_of(std::span<const Tray> trays, std::span<const std::size_t> places) {
  std::vector<Outcome> outcomes;
  for (const auto place : places)
    if (trays[place].sown > 0)
      outcomes.push_back({trays[place].sown, trays[place].germinated()});
  return outcomes;
}

FinalShare wilson_share(std::int64_t germinated, std::int64_t sown, double confidence) {
  FinalShare final{{}, {}, to_phrase("Wilson")};
  if (sown == 0)
    return final;
  final.share = static_cast<double>(germinated) / static_cast<double>(sown);
  final.range = wilson(germinated, sown, confidence).value();
  return final;
}

Prepared prepared(std::span<const Tray> trays, const TrayGroup& group,
                  const GerminationOptions& options) {
  Prepared made{interval_counts(trays, group.trays), {}, {}};
  if (const auto outcomes = outcomes_of(trays, group.trays); !outcomes.empty())
    made.share.emplace(outcomes);
  for (const auto family : all_families)
    if (!options.family || *options.family == family)
      made.families.push_back({family, fit_curve(made.counts, family)});
  return made;
}

/// All families have as many parameters, so the lowest AIC is the highest likelihood.
std::optional<CurveFit> best_of(const Prepared& group) {
  constexpr double even =
      1e-9; // what a search leaves of two that are equal: the first one is taken
  std::optional<CurveFit> best;
  for (const auto& family : group.families)
    if (family.fit && (!best || family.fit->log_likelihood > best->log_likelihood + even))
      best = family.fit;
  return best;
}

GroupFigures figures_of(const TrayGroup& group, const Prepared& from, std::span<const Tray> trays,
                        const GerminationOptions& options) {
  GroupFigures figures;
  figures.group = group;
  for (const auto place : group.trays) {
    figures.sown += trays[place].sown;
    figures.germinated += trays[place].germinated();
    figures.removed += trays[place].removed();
  }
  figures.spread = fit_spread(outcomes_of(trays, group.trays));
  figures.curve = best_of(from);
  figures.stepwise = stepwise(from.counts);
  std::vector<Tray> own;
  for (const auto place : group.trays)
    own.push_back(trays[place]);
  figures.told = boundaries_of(own, from.counts, figures.curve);
  figures.still_expected = still_expected(own, from.counts, from.families, options.confidence);
  figures.final =
      from.share ? share_of_cross(*from.share, options.confidence, figures.still_expected.diluted)
                 : FinalShare{{}, {}, "nothing sown"};
  return figures;
}

/// In the family that serves the two groups best together.
std::optional<double> curve_test(const Prepared& a, const Prepared& b) {
  std::optional<std::size_t> family;
  double highest = 0;
  for (std::size_t i = 0; i < a.families.size(); ++i)
    if (a.families[i].fit && b.families[i].fit) {
      const double sum = a.families[i].fit->log_likelihood + b.families[i].fit->log_likelihood;
      if (!family || sum > highest) {
        family = i;
        highest = sum;
      }
    }
  if (!family)
    return std::nullopt;
  return p_value_of_one_curve(a.counts, *a.families[*family].fit, b.counts,
                              *b.families[*family].fit);
}

std::vector<GroupComparison> comparisons_of(std::span<const Prepared> groups, double confidence) {
  std::vector<GroupComparison> comparisons;
  std::vector<double> p_values;
  for (std::size_t a = 0; a < groups.size(); ++a)
    for (std::size_t b = a + 1; b < groups.size(); ++b) {
      GroupComparison pair{a, b, {}, {}, curve_test(groups[a], groups[b])};
      if (groups[a].share && groups[b].share) {
        pair.difference = difference_of(*groups[a].share, *groups[b].share, confidence);
        p_values.push_back(pair.difference->p_value);
      }
      comparisons.push_back(pair);
    }
  const auto adjusted = holm(p_values);
  std::size_t next = 0;
  for (auto& pair : comparisons)
    if (pair.difference)
      pair.p_adjusted = adjusted[next++];
  return comparisons;
}

} // namespace

FinalShare share_of_cross(const GroupShare& share, double confidence, double dilution) {
  return {share.share(), share_range(share, confidence, dilution),
          share.trays() > 1 ? to_phrase("beta-binomial, spread averaged over")
                            : to_phrase("beta-binomial, one tray: spread unknown")};
}

Result<GerminationFigures> germination_figures(std::span<const Tray> trays,
                                               const GerminationOptions& options) {
  if (const auto sound = inside_0_and_1(options.confidence, "confidence"); !sound)
    return refuse(sound.error());
  GerminationFigures figures;
  for (std::size_t i = 0; i < trays.size(); ++i)
    figures.trays.push_back({i,
                             wilson_share(trays[i].germinated(), trays[i].sown, options.confidence),
                             germination_measures(trays[i])});
  std::vector<Prepared> groups;
  for (const auto& group : groups_of(trays)) {
    groups.push_back(prepared(trays, group, options));
    figures.groups.push_back(figures_of(group, groups.back(), trays, options));
  }
  figures.comparisons = comparisons_of(groups, options.confidence);
  return figures;
}

} // namespace coneline::stats
