// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/integer_program.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <Cbc_C_Interface.h>
#include <algorithm>
#include <cmath>
#include <memory>

namespace coneline::plan {

namespace {

struct Delete {
  void operator()(Cbc_Model* model) const { Cbc_deleteModel(model); }
};
using Model = std::unique_ptr<Cbc_Model, Delete>;

/// What the solver takes for endless.
double bounded(double value) {
  constexpr double much = 1e30;
  return std::clamp(value, -much, much);
}

} // namespace

double Solved::gap() const {
  return cost > bound + 1e-6 ? (cost - bound) / std::abs(cost) : 0;
}

std::size_t IntegerProgram::column(double cost, double low, double high, Takes takes) {
  columns_.push_back({cost, low, high, takes, {}});
  return columns_.size() - 1;
}

void IntegerProgram::row(double low, double high, const std::vector<Term>& terms) {
  for (const auto& term : terms)
    columns_[term.column].rows.emplace_back(static_cast<int>(rows_.size()), term.times);
  rows_.emplace_back(low, high);
}

Result<std::optional<Solved>> IntegerProgram::least_cost(double seconds, Gap gap) const {
  std::vector<CoinBigIndex> start{0};
  std::vector<int> row_of;
  std::vector<double> times;
  std::vector<double> low;
  std::vector<double> high;
  std::vector<double> cost;
  for (const auto& column : columns_) {
    for (const auto& [row, value] : column.rows) {
      row_of.push_back(row);
      times.push_back(value);
    }
    start.push_back(static_cast<CoinBigIndex>(row_of.size()));
    low.push_back(bounded(column.low));
    high.push_back(bounded(column.high));
    cost.push_back(column.cost);
  }
  std::vector<double> row_low;
  std::vector<double> row_high;
  for (const auto& [from, to] : rows_) {
    row_low.push_back(bounded(from));
    row_high.push_back(bounded(to));
  }
  const Model model(Cbc_newModel());
  Cbc_setLogLevel(model.get(), 0);
  Cbc_setParameter(model.get(), "log", "0"); // the answer alone goes to standard output
  Cbc_loadProblem(model.get(), static_cast<int>(columns_.size()), static_cast<int>(rows_.size()),
                  start.data(), row_of.data(), times.data(), low.data(), high.data(), cost.data(),
                  row_low.data(), row_high.data());
  for (std::size_t at = 0; at < columns_.size(); ++at)
    if (columns_[at].takes == Takes::whole)
      Cbc_setInteger(model.get(), static_cast<int>(at));
  Cbc_setMaximumSeconds(model.get(), seconds);
  Cbc_setAllowableGap(model.get(), gap.cost);
  Cbc_setAllowableFractionGap(model.get(), gap.share);
  Cbc_solve(model.get());
  const bool nothing_does = Cbc_isProvenInfeasible(model.get()) != 0 ||
                            Cbc_isInitialSolveProvenPrimalInfeasible(model.get()) != 0;
  // Where no number is to be whole there is nothing to search, and only the first solve answers.
  const bool solved_at_once =
      Cbc_getNumIntegers(model.get()) == 0 && Cbc_isInitialSolveProvenOptimal(model.get()) != 0;
  const double* found =
      solved_at_once ? Cbc_getColSolution(model.get()) : Cbc_bestSolution(model.get());
  if (found == nullptr && nothing_does)
    return std::nullopt;
  if (found == nullptr || Cbc_isAbandoned(model.get()) != 0)
    return refuse(fault(phrase("no plan was found within {:g} seconds", seconds),
                        "Plan fewer months or lots at a time, or allow more time."));
  Solved solved{
      {found, found + columns_.size()}, 0, Cbc_getBestPossibleObjValue(model.get()), false};
  for (std::size_t at = 0; at < columns_.size(); ++at) {
    if (columns_[at].takes == Takes::whole)
      solved.values[at] = std::round(solved.values[at]);
    solved.cost += columns_[at].cost * solved.values[at];
  }
  solved.proven = solved_at_once || Cbc_isProvenOptimal(model.get()) != 0;
  solved.bound = std::min(solved.cost, solved.proven ? Cbc_getObjValue(model.get()) : solved.bound);
  return solved;
}

} // namespace coneline::plan
