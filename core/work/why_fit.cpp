// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/why_fit.h"

#include "core/base/phrase.h"
#include "core/stats/beta_binomial.h"

#include <boost/math/distributions/students_t.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace coneline::work {

namespace {

/// One column of the regression: a level against the reference, or a number around its mean.
struct Column {
  Condition condition = Condition::seed_parent;
  std::string level; ///< empty where measured
  double centre = 0;

  [[nodiscard]] double value(const ExplainedTray& tray) const {
    const auto& known = *tray.value(condition);
    if (level.empty())
      return known.number - centre;
    return known.text == level ? 1 : 0;
  }
};

using Trays = std::vector<const ExplainedTray*>;

double mean_of(const Trays& trays, Condition condition) {
  double sum = 0;
  for (const auto* tray : trays)
    sum += tray->value(condition)->number;
  return sum / static_cast<double>(trays.size());
}

std::vector<double> row_of(const ExplainedTray& tray, const std::vector<Column>& columns) {
  std::vector<double> row{1};
  for (const auto& column : columns)
    row.push_back(column.value(tray));
  return row;
}

double logistic(double x) {
  return 1 / (1 + std::exp(-x));
}

/// Seed of one cone under the same conditions counts as one. A fit of all columns to that.
class Fit {
 public:
  /// The columns do not depend on one another.
  Fit(const Trays& trays, const std::vector<Column>& columns) : columns_(columns) {
    std::map<std::pair<book::Origin, std::vector<double>>, stats::Outcome> units;
    for (const auto* tray : trays) {
      auto& unit = units[{tray->seen.lot.origin, row_of(*tray, columns)}];
      unit.trials += tray->seen.sown;
      unit.successes += tray->germinated;
    }
    units_ = units.size();
    std::map<std::vector<double>, std::vector<stats::Outcome>> patterns;
    for (const auto& [key, outcome] : units) {
      patterns[key.second].push_back(outcome);
      seed_ += static_cast<double>(outcome.trials);
      germinated_ += static_cast<double>(outcome.successes);
    }
    for (auto& [row, outcomes] : patterns)
      patterns_.push_back({row, std::move(outcomes)});
  }

  [[nodiscard]] std::size_t units() const { return units_; }

  bool make() {
    if (units_ <= columns_.size() + 1 || germinated_ == 0 || germinated_ == seed_)
      return false;
    found_ = stats::regress(patterns_, stats::SpreadModel::common_rho);
    return !found_.standard_errors.empty();
  }

  [[nodiscard]] double rho() const { return found_.rho; }

  /// What column `which` (the first being 0) changes in the share. Nothing where the counts set no
  /// limit to it.
  [[nodiscard]] std::optional<ShareDifference> effect(std::size_t which, double confidence) const {
    const auto place = which + 1;
    // A coefficient of 15 is a share of 1 in 3 million: nothing came up on one side, or all.
    if (!(std::abs(found_.coefficients[place]) < 15 && found_.standard_errors[place] < 15))
      return std::nullopt;
    const auto k = static_cast<Eigen::Index>(found_.coefficients.size());
    const Eigen::Map<const Eigen::VectorXd> beta(found_.coefficients.data(), k);
    Change all{0, Eigen::VectorXd::Zero(k)};
    for (const auto& pattern : patterns_) {
      double seed = 0;
      for (const auto& outcome : pattern.outcomes)
        seed += static_cast<double>(outcome.trials);
      const Eigen::VectorXd row = Eigen::Map<const Eigen::VectorXd>(pattern.conditions.data(), k);
      const auto here =
          columns_[which].level.empty() ? gradient(row, place, beta) : step(row, which, beta);
      all.by += seed / seed_ * here.by;
      all.of_share += seed / seed_ * here.of_share;
    }
    const double variance = all.by.dot(found_.covariance * all.by);
    if (!(variance > 0))
      return std::nullopt;
    return ranged(all.of_share, std::sqrt(variance), confidence);
  }

 private:
  struct Change {
    double of_share = 0;
    Eigen::VectorXd by; ///< its derivative by the coefficients
  };

  /// From the reference to the level of this column.
  [[nodiscard]] Change step(Eigen::VectorXd row, std::size_t which,
                            const Eigen::VectorXd& beta) const {
    for (std::size_t other = 0; other < columns_.size(); ++other)
      if (columns_[other].condition == columns_[which].condition)
        row[static_cast<Eigen::Index>(other) + 1] = 0;
    auto with = row;
    with[static_cast<Eigen::Index>(which) + 1] = 1;
    const double before = logistic(row.dot(beta));
    const double after = logistic(with.dot(beta));
    return {after - before, after * (1 - after) * with - before * (1 - before) * row};
  }

  /// For one more, as a slope.
  static Change gradient(const Eigen::VectorXd& row, std::size_t at, const Eigen::VectorXd& beta) {
    const auto place = static_cast<Eigen::Index>(at);
    const double share = logistic(row.dot(beta));
    const double steep = share * (1 - share);
    Change change{steep * beta[place], steep * (1 - 2 * share) * beta[place] * row};
    change.by[place] += steep;
    return change;
  }

  [[nodiscard]] ShareDifference ranged(double difference, double error, double confidence) const {
    const auto freedom =
        static_cast<double>(units_) - static_cast<double>(found_.coefficients.size());
    const boost::math::students_t student(freedom);
    const double reach = quantile(student, (1 + confidence) / 2) * error;
    return {difference, std::max(-1.0, difference - reach), std::min(1.0, difference + reach),
            2 * cdf(complement(student, std::abs(difference) / error))};
  }

  std::vector<Column> columns_;
  std::vector<stats::Pattern> patterns_;
  std::size_t units_ = 0;
  double seed_ = 0;
  double germinated_ = 0;
  stats::Regression found_;
};

std::string each_more(Condition condition) {
  switch (condition) {
  case Condition::pollen_age:
    return phrase("each day older");
  case Condition::pollen_test:
    return phrase("each % more");
  case Condition::after_ripening:
    return phrase("each month more");
  default:
    return phrase("each °C more");
  }
}

std::vector<Column> columns_of(const WhyCondition& condition, const Trays& trays) {
  if (measured(condition.condition))
    return {{condition.condition, {}, mean_of(trays, condition.condition)}};
  std::vector<Column> columns;
  for (const auto& level : condition.levels)
    if (!level.reference)
      columns.push_back({condition.condition, level.level, 0});
  return columns;
}

Eigen::Index rank_of(const Trays& trays, const std::vector<Column>& columns) {
  Eigen::MatrixXd rows(trays.size(), columns.size() + 1);
  for (std::size_t i = 0; i < trays.size(); ++i) {
    const auto row = row_of(*trays[i], columns);
    for (std::size_t j = 0; j < row.size(); ++j)
      rows(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)) = row[j];
  }
  for (Eigen::Index j = 0; j < rows.cols(); ++j)
    if (const double norm = rows.col(j).norm(); norm > 0)
      rows.col(j) /= norm;
  Eigen::ColPivHouseholderQR<Eigen::MatrixXd> factor(rows);
  factor.setThreshold(1e-8);
  return factor.rank();
}

bool independent(const Trays& trays, const std::vector<Column>& columns) {
  return rank_of(trays, columns) == static_cast<Eigen::Index>(columns.size()) + 1;
}

std::vector<Column> joined(std::vector<Column> columns, const std::vector<Column>& more) {
  columns.insert(columns.end(), more.begin(), more.end());
  return columns;
}

void tell(WhyCondition& condition, const std::string& text) {
  condition.told += (condition.told.empty() ? "" : "; ") + text;
}

/// Conditions that can be looked at together, and what they bring to the regression.
struct Chosen {
  std::vector<WhyCondition*> conditions;
  std::vector<Column> columns;
  Trays trays;
};

Trays knowing_all(const Trays& trays, Condition condition) {
  Trays known;
  std::ranges::copy_if(trays, std::back_inserter(known),
                       [&](const auto* tray) { return tray->value(condition).has_value(); });
  return known;
}

/// Which of those chosen it goes hand in hand with.
std::string partner(const Chosen& chosen, const std::vector<Column>& columns) {
  for (const auto* other : chosen.conditions)
    if (!independent(chosen.trays, joined(columns_of(*other, chosen.trays), columns)))
      return std::string(condition_title(other->condition));
  return phrase("those before it, taken together");
}

/// Trays without one level.
Trays without(const Trays& trays, Condition condition, const std::string& level) {
  Trays left;
  std::ranges::copy_if(trays, std::back_inserter(left),
                       [&](const auto* tray) { return tray->value(condition)->text != level; });
  return left;
}

bool occurs(const Trays& trays, const Column& column) {
  return column.level.empty() || std::ranges::any_of(trays, [&](const auto* tray) {
           return tray->value(column.condition)->text == column.level;
         });
}

/// The columns of all chosen conditions and one more, on these trays.
std::vector<Column> columns_on(const Trays& trays, const Chosen& chosen,
                               const WhyCondition& condition) {
  std::vector<Column> all;
  for (const auto* each : chosen.conditions)
    all = joined(all, columns_of(*each, trays));
  all = joined(all, columns_of(condition, trays));
  std::erase_if(all, [&](const Column& column) { return !occurs(trays, column); });
  return all;
}

/// Levels whose trays have to stay out, one after the other, until the rest can be told apart:
/// bought seed is all "not judged" and all of one seed parent. Nothing where no two levels are
/// left.
std::optional<Trays> told_apart(Trays trays, const Chosen& chosen, const WhyCondition& condition) {
  while (!trays.empty()) {
    const auto columns = columns_on(trays, chosen, condition);
    const bool any_left = std::ranges::any_of(
        columns, [&](const Column& c) { return c.condition == condition.condition; });
    if (!any_left)
      return std::nullopt;
    if (independent(trays, columns))
      return trays;
    const auto all = trays.size();
    for (const auto& column : columns) {
      if (column.condition != condition.condition || column.level.empty())
        continue;
      auto left = without(trays, column.condition, column.level);
      if (!left.empty() &&
          rank_of(left, columns_on(left, chosen, condition)) ==
              static_cast<Eigen::Index>(columns_on(left, chosen, condition).size()) + 1) {
        trays = std::move(left);
        break;
      }
    }
    if (trays.size() == all)
      return std::nullopt;
  }
  return std::nullopt;
}

void take_in(Chosen& chosen, WhyCondition& condition) {
  if (condition.levels.size() < 2)
    return;
  const auto known = knowing_all(chosen.trays, condition.condition);
  if (2 * known.size() <= chosen.trays.size())
    return tell(condition, phrase("not looked at together with the others: known of {} in {} "
                                  "trays",
                                  known.size(), chosen.trays.size()));
  const auto apart = told_apart(known, chosen, condition);
  if (!apart || 2 * apart->size() <= chosen.trays.size())
    return tell(condition,
                phrase("goes hand in hand with {}",
                       partner({chosen.conditions, {}, known}, columns_of(condition, known))));
  const auto columns = columns_on(*apart, chosen, condition);
  if (Fit(*apart, columns).units() < 2 * (columns.size() + 1))
    return tell(condition,
                phrase("too few cones and trays to look at it together with the others"));
  if (apart->size() < known.size())
    tell(condition, phrase("{} trays stay out of what is looked at together: what sets them "
                           "apart goes hand in hand",
                           known.size() - apart->size()));
  chosen.trays = *apart;
  chosen.columns = columns;
  chosen.conditions.push_back(&condition);
}

void fill(WhyCondition& condition, const Chosen& chosen, const Fit& fit, double confidence) {
  for (std::size_t i = 0; i < chosen.columns.size(); ++i) {
    const auto& column = chosen.columns[i];
    if (column.condition != condition.condition)
      continue;
    const auto found = fit.effect(i, confidence);
    if (column.level.empty()) {
      if (condition.slope)
        condition.slope->together = found;
      continue;
    }
    for (auto& level : condition.levels)
      if (level.level == column.level)
        level.together = found;
  }
}

} // namespace

std::optional<WhySlope> slope_alone(const Trays& trays, Condition condition, double confidence) {
  const std::vector<Column> columns{{condition, {}, mean_of(trays, condition)}};
  WhySlope slope{each_more(condition), {}, {}};
  if (!independent(trays, columns))
    return std::nullopt;
  Fit fit(trays, columns);
  if (fit.make())
    slope.alone = fit.effect(0, confidence);
  return slope;
}

void look_together(Why& why) {
  Chosen chosen;
  for (const auto& tray : why.trays)
    chosen.trays.push_back(&tray);
  // Seed parents are many and take the most; what the grower can change comes first.
  static constexpr std::array order{Condition::judged,         Condition::after_ripening,
                                    Condition::store,          Condition::medium,
                                    Condition::temperature,    Condition::pollen_age,
                                    Condition::sowing_month,   Condition::seed_parent,
                                    Condition::pollen_parents, Condition::pollen_test};
  for (const auto which : order)
    for (auto& condition : why.conditions)
      if (condition.condition == which)
        take_in(chosen, condition);
  if (chosen.conditions.size() < 2)
    return;
  Fit fit(chosen.trays, chosen.columns);
  if (!fit.make())
    return;
  why.trays_together = chosen.trays.size();
  why.rho = fit.rho();
  for (auto* condition : chosen.conditions)
    fill(*condition, chosen, fit, why.confidence);
}

} // namespace coneline::work
