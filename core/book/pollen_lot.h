// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Pollen of one male plant, collected over a few days and kept together.

#include "core/base/code.h"
#include "core/base/date.h"
#include "core/book/id.h"
#include "core/book/sourced.h"

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

/// A way of keeping pollen and how long it may be expected to last there.
struct PollenStore {
  PollenStoreId id;
  std::string name;                    ///< what a lot's store begins with: "refrigerator"
  Sourced<std::optional<Range>> years; ///< none where nobody can say
};

} // namespace coneline::book
