// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Germination against what may explain it. Each tray brings the conditions that the book knows of
// it; every condition is looked at alone, and then all that can be told apart are looked at
// together by a beta-binomial regression, so that trays which differ by more than chance widen the
// ranges.
//
// What is counted as one is the seed of one cone under the same conditions: its trays share what
// the cone brings, and the spread is that between cones. For the parents, where a cone is what is
// asked about, each tray counts.
//
// A difference that goes with a condition need not come from it: trays were not shared out by lot.

#include "core/stats/share_interval.h"
#include "core/work/germination.h"

#include <array>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace coneline::work {

enum class Condition {
  seed_parent,
  pollen_parents, ///< all that were used on the cone, in the order of their codes
  pollen_age,     ///< days from collecting to pollinating, the mean over all that was used
  pollen_test,    ///< % of grains that germinated in the last test before, the mean likewise
  judged,         ///< what a test said before sowing: "filled (float)", "not judged"
  after_ripening, ///< months from harvest, or purchase, to sowing
  store,          ///< where the seed was kept last before sowing, in the grower's words
  sowing_month,   ///< month of the year, "March"
  medium,         ///< the mix of the tray
  temperature,    ///< mean °C while the tray stood, where it was measured
};
inline constexpr std::array all_conditions{Condition::seed_parent, Condition::pollen_parents,
                                           Condition::pollen_age,  Condition::pollen_test,
                                           Condition::judged,      Condition::after_ripening,
                                           Condition::store,       Condition::sowing_month,
                                           Condition::medium,      Condition::temperature};

/// "seed-parent", "pollen-parents", "pollen-age", "pollen-test", "judged", "after-ripening",
/// "store", "sowing-month", "medium", "temperature": for options and files.
std::string_view condition_word(Condition condition);
std::optional<Condition> condition_named(std::string_view word);
/// For people: "months of after-ripening".
std::string_view condition_title(Condition condition);
/// True for pollen age and test, after-ripening and temperature: a number, not one of several
/// words.
bool measured(Condition condition);

/// Its text for people; the number where the condition is measured.
struct ConditionValue {
  std::string text;
  double number = 0;
};

struct ExplainedTray {
  ObservedTray seen;
  std::int64_t germinated = 0; ///< by `WhyAsked::by_day` where that is asked
  std::int64_t waiting = 0;
  /// By condition; absent where the book does not know.
  std::array<std::optional<ConditionValue>, all_conditions.size()> values;

  [[nodiscard]] const std::optional<ConditionValue>& value(Condition condition) const {
    return values.at(static_cast<std::size_t>(condition));
  }
};

/// A difference in the share germinated, as a share (0.12 is twelve in a hundred).
struct ShareDifference {
  double difference = 0;
  double low = 0;
  double high = 0;
  double p_value = 1;
};

/// What one level of a condition did, or one class of a measured one ("up to 6", "above 6").
struct WhyLevel {
  std::string level;
  std::size_t trays = 0;
  std::size_t cones = 0; ///< or purchases
  std::int64_t sown = 0;
  std::int64_t germinated = 0;
  double share = 0;
  stats::Interval range; ///< counts the spread between trays where there are several
  bool reference = false;
  /// Against the reference, this condition alone. None for the reference itself.
  std::optional<ShareDifference> alone;
  /// The same, the other conditions that could be told apart held as they were. None where it could
  /// not be told; for a measured condition see `WhyCondition::slope`.
  std::optional<ShareDifference> together;
};

/// The change of the share for one more day, month or degree, around the middle of all trays.
struct WhySlope {
  std::string each; ///< "each month more"
  std::optional<ShareDifference> alone;
  std::optional<ShareDifference> together;
};

struct WhyCondition {
  Condition condition = Condition::seed_parent;
  std::size_t trays_known = 0;   ///< trays whose value is known
  std::vector<WhyLevel> levels;  ///< most seed first; by value where measured
  std::optional<WhySlope> slope; ///< of a measured condition with two values at least
  /// Why there is nothing to compare, or nothing together: "the same in every tray", "goes hand in
  /// hand with seed parent". Empty when all is well.
  std::string told;
};

struct WhyAsked {
  Date as_of;
  double confidence = 0.95;
  std::set<Condition> conditions{all_conditions.begin(), all_conditions.end()};
  /// Count what was up so many days after sowing, in trays that were looked at on that day or
  /// later. Without it young trays are compared with old ones.
  std::optional<double> by_day;
  /// Only trays of this taxon.
  std::optional<book::TaxonId> taxon;
  /// Mean °C of trays, where it was measured.
  std::map<book::LotId, double> celsius;
};

struct Why {
  Date as_of;
  double confidence = 0.95;
  std::vector<ExplainedTray> trays;     ///< those compared, in the order of codes
  std::vector<WhyCondition> conditions; ///< in the order of all_conditions
  std::size_t trays_together = 0;       ///< trays with every condition of the joint fit known
  std::optional<double> rho;            ///< spread left between trays in the joint fit
  std::string told;                     ///< cautions: trays still sprouting, few trays
};

/// Fails on a confidence outside 0 to 1 or a day not above 0.
Result<Why> why(store::Reading& reading, const WhyAsked& asked);

/// The same from trays that were gathered already.
Result<Why> why(std::vector<ExplainedTray> trays, const WhyAsked& asked);

/// Every sound tray with its conditions, by what the book holds.
std::vector<ExplainedTray> explained_trays(store::Reading& reading, const WhyAsked& asked);

} // namespace coneline::work
