// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/assumptions.h"

#include "core/base/number.h"
#include "core/plan/potting_months.h"

#include <algorithm>

namespace coneline::report {

namespace {

std::optional<double> kept(const book::Registers& registers, const char* name) {
  const auto* found = book::named(registers.figures, name);
  return found == nullptr ? std::nullopt : std::optional(found->value);
}

} // namespace

plan::Assumptions assumptions_in(const book::Registers& registers) {
  plan::Assumptions assumed;
  if (const auto months = kept(registers, book::figure::potting_months))
    assumed.potting = plan::months_of_number(*months);
  if (const auto months = kept(registers, book::figure::ready_stands); months && *months >= 0)
    assumed.sold_after = static_cast<int>(std::min(*months, static_cast<double>(most_whole)));
  assumed.settling = kept(registers, book::figure::settling).value_or(assumed.settling);
  assumed.wet_kilograms_a_litre =
      kept(registers, book::figure::wet_kilograms).value_or(assumed.wet_kilograms_a_litre);
  return assumed;
}

std::vector<book::Figure> figures_of(const plan::Assumptions& assumed) {
  std::vector<book::Figure> figures(3 + (assumed.sold_after ? 1 : 0));
  figures[0] = {book::figure::potting_months, plan::months_as_number(assumed.potting)};
  figures[1] = {book::figure::settling, assumed.settling};
  figures[2] = {book::figure::wet_kilograms, assumed.wet_kilograms_a_litre};
  if (assumed.sold_after)
    figures[3] = {book::figure::ready_stands, static_cast<double>(*assumed.sold_after)};
  return figures;
}

double assurance_in(const book::Registers& registers) {
  constexpr double usual = 0.9;
  const double share = kept(registers, book::figure::plan_assurance).value_or(usual);
  return share > 0 && share < 1 ? share : usual;
}

} // namespace coneline::report
