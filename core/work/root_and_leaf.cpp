// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/root_and_leaf.h"

#include "core/base/phrase.h"
#include "core/work/coming.h"

#include <fmt/format.h>

#include <algorithm>
#include <deque>

namespace coneline::work {

namespace {

using Trays = std::vector<const ObservedTray*>;

/// First leaves in place of roots.
stats::Tray leaves_of(const ObservedTray& seen) {
  stats::Tray tray{seen.origin.name, seen.lot.code.text(), seen.sown, {}};
  for (const auto& look : seen.looks)
    tray.looks.push_back({look.day, look.leaves, look.removed});
  return tray;
}

void add_waits(LeafWait& wait, const ObservedTray& tray) {
  std::deque<double> leafless; // the day of each root, the earliest first
  for (const auto& look : tray.looks) {
    for (auto root = look.germinated - look.straight_to_leaf; root > 0; --root) {
      leafless.push_back(look.day);
      ++wait.roots;
    }
    wait.straight_to_leaf += static_cast<std::size_t>(look.straight_to_leaf);
    for (auto leaf = look.leaves - look.straight_to_leaf; leaf > 0 && !leafless.empty(); --leaf) {
      wait.waits.push_back({look.day - leafless.front(), true});
      leafless.pop_front();
      ++wait.leafed;
    }
  }
  for (const double day : leafless)
    wait.waits.push_back({tray.looks.back().day - day, false});
}

stats::GroupFigures figures_of(const std::vector<stats::Tray>& trays, double confidence) {
  return stats::germination_figures(trays, {{}, confidence}).value().groups.front();
}

RootAndLeaf cross_of(const Trays& seen, double confidence) {
  RootAndLeaf cross;
  cross.name = seen.front()->origin.name;
  cross.taxon = seen.front()->origin.taxon;
  cross.trays = seen.size();
  std::vector<stats::Tray> roots;
  std::vector<stats::Tray> leaves;
  for (const auto* tray : seen) {
    roots.push_back(counts_of(*tray));
    leaves.push_back(leaves_of(*tray));
  }
  cross.root = figures_of(roots, confidence);
  cross.leaf = figures_of(leaves, confidence);
  cross.root_measures = stats::germination_measures(stats::as_one(roots));
  cross.leaf_measures = stats::germination_measures(stats::as_one(leaves));
  cross.wait = leaf_wait(seen, confidence);
  return cross;
}

std::vector<WaitComparison> comparisons_of(const std::vector<RootAndLeaf>& crosses) {
  std::vector<WaitComparison> pairs;
  std::vector<double> p_values;
  for (std::size_t a = 0; a < crosses.size(); ++a)
    for (std::size_t b = a + 1; b < crosses.size(); ++b) {
      pairs.push_back({a, b, stats::log_rank(crosses[a].wait.waits, crosses[b].wait.waits), {}});
      if (pairs.back().test)
        p_values.push_back(pairs.back().test->p_value);
    }
  const auto adjusted = stats::holm(p_values);
  std::size_t next = 0;
  for (auto& pair : pairs)
    if (pair.test)
      pair.p_adjusted = adjusted[next++];
  return pairs;
}

} // namespace

LeafWait leaf_wait(std::span<const ObservedTray* const> trays, double confidence) {
  LeafWait wait;
  for (const auto* tray : trays)
    if (!tray->looks.empty())
      add_waits(wait, *tray);
  const auto steps = stats::kaplan_meier(wait.waits);
  wait.half = stats::time_of_share(steps, 0.5);
  wait.half_range = stats::range_of_share(steps, 0.5, confidence);
  wait.nine_tenths = stats::time_of_share(steps, 0.9);
  return wait;
}

Result<RootAndLeafBook> root_and_leaf(store::Reading& reading, Date as_of, double confidence) {
  if (!(confidence > 0 && confidence < 1))
    return refuse(usage_fault(phrase("a confidence of {}", confidence),
                              "Write a share between 0 and 1, such as 0.95."));
  RootAndLeafBook book{as_of, confidence, {}, {}};
  const auto trays = observed_trays(reading, reading.registers(), as_of);
  std::map<std::pair<std::string, std::string>, Trays> crosses;
  for (const auto& tray : trays)
    if (tray.sown > 0 && stats::faults_of(counts_of(tray)).empty() &&
        stats::faults_of(leaves_of(tray)).empty())
      crosses[{tray.origin.name, tray.origin.taxon}].push_back(&tray);
  for (const auto& [name, seen] : crosses)
    book.crosses.push_back(cross_of(seen, confidence));
  book.comparisons = comparisons_of(book.crosses);
  return book;
}

} // namespace coneline::work
