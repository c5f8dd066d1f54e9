// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How much of each part a filling of pots takes. Parts are loose and shrink when mixed: the fine
// falls between the coarse, so 3 + 1 + 1 litres make about 4.
//
//   200 litres finished of bark 4, peat 3, sand 3 at 15 % shrink  ->  94.12, 70.59, 70.59 litres

#include "core/base/fault.h"

#include <cstdint>
#include <string>
#include <vector>

namespace coneline::plan {

/// A part of a mix. In an order `amount` is its parts by volume, in an answer its litres.
struct MixPart {
  std::string name;
  double amount = 0;

  bool operator==(const MixPart&) const = default;
};

struct MixOrder {
  std::int64_t pots = 0;
  double litres = 0; ///< real volume of one pot, filled as it is filled
  std::vector<MixPart> parts;
  double shrink = 0.15; ///< share of the volume lost when the parts are mixed; common practice
  double loss = 0;      ///< share spilled and left over
  double rootball = 0;  ///< litres in each pot that the plant brings along
};

struct Mix {
  double finished_litres = 0; ///< pots * (litres - rootball) * (1 + loss)
  std::vector<MixPart> parts; ///< finished / (1 - shrink) * share of the parts, in order
};

/// Fails unless pots >= 1, litres > 0, 0 <= rootball <= litres, 0 <= shrink < 1, 0 <= loss <= 1,
/// there are parts, each with a name of its own and an amount not below zero, and they sum to
/// something.
Result<Mix> mix_for(const MixOrder& order);

} // namespace coneline::plan
