// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Pollen of one male plant, collected over a few days and kept together.

#include "core/base/code.h"
#include "core/base/date.h"
#include "core/book/id.h"

#include <optional>
#include <string>

namespace coneline::book {

struct PollenLot {
  PollenLotId id;
  Code code;
  PlantId plant; ///< the male it came from
  Date collected;
  std::optional<double> millilitres;
  std::string store; ///< how it is kept, in the grower's words: "refrigerator, dry"
  std::string note;
};

} // namespace coneline::book
