// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/pot_volume.h"

#include "core/base/number.h"
#include "core/base/phrase.h"

#include <fmt/format.h>

#include <numbers>

namespace coneline::plan {

Result<double> pot_litres(const PotMeasures& pot) {
  constexpr double most = 10'000;
  for (const double measure : {pot.top, pot.bottom, pot.height})
    if (!(measure >= 0 && measure <= most))
      return refuse(fault(phrase("a pot that measures {} mm cannot be", write_real(measure)),
                          "Give its inside measures in millimetres."));
  if (pot.top == 0 || pot.height == 0)
    return refuse(fault("a pot without width or height holds nothing",
                        "Give its inside measures in millimetres."));
  constexpr double cubic_millimetres_a_litre = 1e6;
  return std::numbers::pi / 12 * pot.height *
         (pot.bottom * pot.bottom + pot.bottom * pot.top + pot.top * pot.top) /
         cubic_millimetres_a_litre;
}

} // namespace coneline::plan
