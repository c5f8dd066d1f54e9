// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/why.h"

#include "core/base/phrase.h"
#include "core/stats/germination_compare.h"
#include "core/work/why_fit.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::work {

namespace {

struct Words {
  std::string_view word;
  std::string_view title;
  bool measured;
};

const Words& words_of(Condition condition) {
  static constexpr std::array<Words, all_conditions.size()> words{
      {{"seed-parent", to_phrase("seed parent"), false},
       {"pollen-parents", to_phrase("pollen parents"), false},
       {"pollen-age", to_phrase("age of the pollen, days"), true},
       {"pollen-test", to_phrase("pollen that germinated in its test, %"), true},
       {"judged", to_phrase("float or other seed test"), false},
       {"after-ripening", to_phrase("months of after-ripening"), true},
       {"store", to_phrase("where the seed was kept"), false},
       {"sowing-month", to_phrase("month of sowing"), false},
       {"medium", to_phrase("medium"), false},
       {"temperature", to_phrase("mean temperature, °C"), true}}};
  return words.at(static_cast<std::size_t>(condition));
}

bool about_parents(Condition condition) {
  return condition == Condition::seed_parent || condition == Condition::pollen_parents;
}

/// Trays at one level, as outcomes of what counts as one.
struct Level {
  std::string name;
  std::size_t trays = 0;
  std::map<book::Origin, stats::Outcome> cones;
  std::vector<stats::Outcome> by_tray;

  void add(const ExplainedTray& tray) {
    ++trays;
    auto& cone = cones[tray.seen.lot.origin];
    cone.trials += tray.seen.sown;
    cone.successes += tray.germinated;
    by_tray.push_back({tray.seen.sown, tray.germinated});
  }
  [[nodiscard]] std::vector<stats::Outcome> units(bool of_trays) const {
    if (of_trays)
      return by_tray;
    std::vector<stats::Outcome> all;
    for (const auto& [origin, outcome] : cones)
      all.push_back(outcome);
    return all;
  }
  [[nodiscard]] stats::Outcome sum() const {
    stats::Outcome all;
    for (const auto& outcome : by_tray) {
      all.trials += outcome.trials;
      all.successes += outcome.successes;
    }
    return all;
  }
};

std::vector<const ExplainedTray*> knowing(const std::vector<ExplainedTray>& trays,
                                          Condition condition) {
  std::vector<const ExplainedTray*> known;
  for (const auto& tray : trays)
    if (tray.value(condition))
      known.push_back(&tray);
  return known;
}

/// Halves of the trays by value, cut where values differ.
std::vector<Level> halves(const std::vector<const ExplainedTray*>& trays, Condition condition) {
  std::vector<double> numbers;
  for (const auto* tray : trays)
    numbers.push_back(tray->value(condition)->number);
  std::ranges::sort(numbers);
  double cut = numbers[(numbers.size() - 1) / 2];
  if (cut == numbers.back()) { // more than half are alike: those below against those
    const auto first = std::ranges::lower_bound(numbers, cut);
    if (first != numbers.begin())
      cut = *std::prev(first);
  }
  std::vector<Level> levels(2);
  levels[0].name = phrase("up to {:.1f}", cut);
  levels[1].name = phrase("above {:.1f}", cut);
  for (const auto* tray : trays)
    levels[tray->value(condition)->number > cut ? 1 : 0].add(*tray);
  std::erase_if(levels, [](const Level& level) { return level.trays == 0; });
  return levels;
}

std::vector<Level> named_levels(const std::vector<const ExplainedTray*>& trays,
                                Condition condition) {
  std::map<std::string, Level> by_name;
  for (const auto* tray : trays) {
    auto& level = by_name[tray->value(condition)->text];
    level.name = tray->value(condition)->text;
    level.add(*tray);
  }
  std::vector<Level> levels;
  for (auto& [name, level] : by_name)
    levels.push_back(std::move(level));
  std::ranges::stable_sort(levels, std::ranges::greater{},
                           [](const Level& level) { return level.sum().trials; });
  return levels;
}

WhyLevel shown(const Level& level, bool of_trays, double confidence) {
  const auto sum = level.sum();
  const auto units = level.units(of_trays);
  WhyLevel made;
  made.level = level.name;
  made.trays = level.trays;
  made.cones = level.cones.size();
  made.sown = sum.trials;
  made.germinated = sum.successes;
  made.share = static_cast<double>(sum.successes) / static_cast<double>(sum.trials);
  made.range = units.size() > 1 ? stats::share_range(stats::GroupShare(units), confidence)
                                : stats::wilson(sum.successes, sum.trials, confidence).value();
  return made;
}

void compare(WhyCondition& condition, const std::vector<Level>& levels, double confidence) {
  const bool of_trays = about_parents(condition.condition);
  const stats::GroupShare reference(levels.front().units(of_trays));
  bool one_cone = false;
  for (const auto& level : levels) {
    condition.levels.push_back(shown(level, of_trays, confidence));
    auto& made = condition.levels.back();
    one_cone = one_cone || level.cones.size() < 2;
    made.reference = condition.levels.size() == 1;
    if (made.reference)
      continue;
    const auto found =
        stats::difference_of(stats::GroupShare(level.units(of_trays)), reference, confidence);
    made.alone = ShareDifference{found.difference, found.low, found.high, found.p_value};
  }
  if (levels.size() > 1 && one_cone && !of_trays)
    condition.told = phrase("one cone only on a side: the difference may be the cone's");
}

WhyCondition looked_at_alone(const std::vector<ExplainedTray>& trays, Condition which,
                             double confidence) {
  WhyCondition condition;
  condition.condition = which;
  const auto known = knowing(trays, which);
  condition.trays_known = known.size();
  if (known.empty()) {
    condition.told = phrase("the book does not know it");
    return condition;
  }
  const auto levels = measured(which) ? halves(known, which) : named_levels(known, which);
  compare(condition, levels, confidence);
  if (levels.size() == 1)
    condition.told = phrase("the same in every tray");
  else if (measured(which))
    condition.slope = slope_alone(known, which, confidence);
  return condition;
}

std::string cautions(const Why& why, const WhyAsked& asked) {
  if (why.trays.empty())
    return phrase("No tray to compare: none was looked at by then.");
  std::string text;
  const auto waiting =
      std::ranges::count_if(why.trays, [](const ExplainedTray& tray) { return tray.waiting > 0; });
  if (waiting > 0 && !asked.by_day)
    text = phrase("In {} of {} trays seed still waits, and young trays are held against old "
                  "ones; compare them at one day after sowing. ",
                  waiting, why.trays.size());
  return text + phrase("A difference that goes with a condition need not come from it. Each range "
                       "stands for itself: of many, some miss 0 by chance.");
}

} // namespace

std::string_view condition_word(Condition condition) {
  return words_of(condition).word;
}

std::optional<Condition> condition_named(std::string_view word) {
  for (const auto condition : all_conditions)
    if (condition_word(condition) == word)
      return condition;
  return std::nullopt;
}

std::string_view condition_title(Condition condition) {
  return words_of(condition).title;
}

bool measured(Condition condition) {
  return words_of(condition).measured;
}

Result<Why> why(std::vector<ExplainedTray> trays, const WhyAsked& asked) {
  if (!(asked.confidence > 0 && asked.confidence < 1))
    return refuse(usage_fault(phrase("a confidence of {}", asked.confidence),
                              "Write a share between 0 and 1, such as 0.95."));
  if (asked.by_day && !(*asked.by_day > 0))
    return refuse(
        usage_fault(phrase("day {}", *asked.by_day), "Write a day after sowing, above 0."));
  Why why;
  why.as_of = asked.as_of;
  why.confidence = asked.confidence;
  why.trays = std::move(trays);
  for (const auto condition : all_conditions)
    if (asked.conditions.contains(condition))
      why.conditions.push_back(looked_at_alone(why.trays, condition, asked.confidence));
  look_together(why);
  why.told = cautions(why, asked);
  return why;
}

Result<Why> why(store::Reading& reading, const WhyAsked& asked) {
  return why(explained_trays(reading, asked), asked);
}

} // namespace coneline::work
