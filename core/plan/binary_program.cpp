// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/binary_program.h"

#include "core/base/phrase.h"
#include "core/plan/integer_program.h"

#include <algorithm>

namespace coneline::plan {

namespace {

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
  IntegerProgram integers;
  for (std::size_t at = 0; at < program.values.size(); ++at) {
    const bool kept = std::ranges::find(program.kept, at) != program.kept.end();
    const bool out = std::ranges::find(program.out, at) != program.out.end();
    integers.column(-program.values[at], kept ? 1 : 0, out ? 0 : 1, IntegerProgram::Takes::whole);
  }
  for (const auto& limit : program.limits) {
    std::vector<IntegerProgram::Term> terms;
    for (const auto& [column, times] : limit.terms)
      terms.push_back({column, times});
    integers.row(limit.low, limit.high, terms);
  }
  // The solver's own tolerances stop at a gap of its choosing; asked for none it proves the best.
  const auto solved = integers.least_cost(seconds, {.share = 0, .cost = 0});
  if (!solved)
    return refuse(none_found_within(seconds));
  if (!*solved)
    return std::nullopt;
  Chosen chosen;
  for (std::size_t at = 0; at < program.values.size(); ++at) {
    chosen.chosen.push_back((*solved)->values[at] > 0.5);
    chosen.value += chosen.chosen.back() ? program.values[at] : 0;
  }
  chosen.proven = (*solved)->proven;
  chosen.bound = chosen.proven ? chosen.value : std::max(chosen.value, -(*solved)->bound);
  return chosen;
}

} // namespace coneline::plan
