// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/binary_program.h"

#include "core/base/phrase.h"

#include <algorithm>
#include <coin/Cbc_C_Interface.h>
#include <memory>

namespace coneline::plan {

namespace {

using Model = std::unique_ptr<Cbc_Model, decltype(&Cbc_deleteModel)>;

/// The matrix column by column, as the solver takes it.
struct Columns {
  std::vector<CoinBigIndex> start{0};
  std::vector<int> rows;
  std::vector<double> entries;
};

Columns columns_of(const BinaryProgram& program) {
  std::vector<std::vector<std::pair<int, double>>> by_column(program.values.size());
  for (std::size_t row = 0; row < program.limits.size(); ++row)
    for (const auto& [column, entry] : program.limits[row].terms)
      by_column.at(column).emplace_back(static_cast<int>(row), entry);
  Columns columns;
  for (const auto& column : by_column) {
    for (const auto& [row, entry] : column) {
      columns.rows.push_back(row);
      columns.entries.push_back(entry);
    }
    columns.start.push_back(static_cast<CoinBigIndex>(columns.rows.size()));
  }
  return columns;
}

void load(Cbc_Model* model, const BinaryProgram& program) {
  const auto count = program.values.size();
  std::vector<double> low(count, 0.0);
  std::vector<double> high(count, 1.0);
  for (const auto at : program.kept)
    low.at(at) = 1;
  for (const auto at : program.out)
    high.at(at) = 0;
  std::vector<double> row_low;
  std::vector<double> row_high;
  for (const auto& limit : program.limits) {
    row_low.push_back(limit.low);
    row_high.push_back(limit.high);
  }
  const auto columns = columns_of(program);
  Cbc_loadProblem(model, static_cast<int>(count), static_cast<int>(program.limits.size()),
                  columns.start.data(), columns.rows.data(), columns.entries.data(), low.data(),
                  high.data(), program.values.data(), row_low.data(), row_high.data());
  for (int at = 0; at < static_cast<int>(count); ++at)
    Cbc_setInteger(model, at);
  constexpr double greatest = -1;
  Cbc_setObjSense(model, greatest);
}

/// A variable kept and out at once, which the solver need not be asked about.
bool contradicts_itself(const BinaryProgram& program) {
  return std::ranges::any_of(program.kept, [&](std::size_t at) {
    return std::ranges::find(program.out, at) != program.out.end();
  });
}

std::optional<Chosen> nothing_to_choose(const BinaryProgram& program) {
  const bool kept = std::ranges::all_of(program.limits, [](const BinaryProgram::Limit& limit) {
    return limit.low <= 0 && limit.high >= 0;
  });
  return kept ? std::optional(Chosen{{}, 0, 0, true}) : std::nullopt;
}

} // namespace

Fault none_found_within(double seconds) {
  return fault(phrase("no proposal was found within {:g} seconds; there may be one", seconds),
               "Pin or forbid some crosses, so that fewer are left to choose from.");
}

Result<std::optional<Chosen>> choose(const BinaryProgram& program, double seconds) {
  if (program.values.empty())
    return nothing_to_choose(program);
  if (contradicts_itself(program))
    return std::nullopt;
  const Model model(Cbc_newModel(), &Cbc_deleteModel);
  Cbc_setLogLevel(model.get(), 0);
  load(model.get(), program);
  Cbc_setMaximumSeconds(model.get(), seconds);
  // The solver's own tolerances stop at a gap of its choosing; asked for none it proves the best.
  Cbc_setAllowableGap(model.get(), 0);
  Cbc_setAllowableFractionGap(model.get(), 0);
  Cbc_solve(model.get());
  const bool nothing_does = Cbc_isProvenInfeasible(model.get()) != 0 ||
                            Cbc_isInitialSolveProvenPrimalInfeasible(model.get()) != 0;
  const double* solution = Cbc_bestSolution(model.get());
  if (solution == nullptr && nothing_does)
    return std::nullopt;
  if (solution == nullptr || Cbc_isAbandoned(model.get()) != 0)
    return refuse(none_found_within(seconds));
  Chosen chosen;
  for (std::size_t at = 0; at < program.values.size(); ++at) {
    chosen.chosen.push_back(solution[at] > 0.5);
    chosen.value += chosen.chosen.back() ? program.values[at] : 0;
  }
  chosen.proven = Cbc_isProvenOptimal(model.get()) != 0;
  chosen.bound = std::max(chosen.value, Cbc_getBestPossibleObjValue(model.get()));
  return chosen;
}

} // namespace coneline::plan
