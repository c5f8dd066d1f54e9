// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What pots are filled with, by volume.

#include "core/base/fault.h"
#include "core/book/id.h"

#include <string>
#include <vector>

namespace coneline::book {

struct MixPart {
  std::string name;
  double share = 0; ///< volumes, relative to the other parts; above 0
};

struct Mix {
  MixId id;
  std::string name;  ///< one of a kind in the book
  double shrink = 0; ///< share of the volume lost when the parts are mixed, 0 to below 1
  double loss = 0;   ///< finished mix spilt or left over, as a share of what is needed; 0 or more
  std::string source;
  std::vector<MixPart> parts; ///< at least one
};

/// Fails where the mix contains itself, through whatever of the other mixes, where its parts sum to
/// nothing, or where shrink or loss is out of its range. Of `mixes` those of other names are asked.
Result<void> can_be_mixed(const Mix& mix, const std::vector<Mix>& mixes);

} // namespace coneline::book
