// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the grower assumes for the season plan, kept among the figures of the book.

#include "core/book/registers.h"
#include "core/plan/forecast_input.h"

namespace coneline::report {

/// What is not kept is as Assumptions has it.
plan::Assumptions assumptions_in(const book::Registers& registers);
/// As figures to be kept.
std::vector<book::Figure> figures_of(const plan::Assumptions& assumed);
/// The share of seasons in which nothing is to run short; 0.9 where none is kept.
double assurance_in(const book::Registers& registers);

} // namespace coneline::report
