// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_words.h"

#include "core/plan/shown_units.h"
#include "wording.h"

namespace coneline::window {

QString plan_unit(plan::Shown shown) {
  return text(plan::readers_unit(shown));
}

QString plan_value(plan::Shown kind, double value, int decimals) {
  return shown(plan::in_readers_units(kind, value), decimals);
}

QString plan_range(plan::Shown shown, const plan::Likely& range, int decimals) {
  if (range.high <= 0)
    return QStringLiteral("–");
  const auto point = [&](double value) { return plan_value(shown, value, decimals); };
  return point(range.low) + QStringLiteral(" – ") + point(range.middle) + QStringLiteral(" – ") +
         point(range.high);
}

} // namespace coneline::window
