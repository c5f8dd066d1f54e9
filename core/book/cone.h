// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A female cone: one chance a year.

#include "core/base/code.h"
#include "core/base/date.h"
#include "core/book/id.h"

#include <optional>
#include <string>

namespace coneline::book {

struct Cone {
  ConeId id;
  Code code;
  PlantId plant; ///< the female it stands on
  std::optional<Date> first_seen;
  std::string note;
};

/// Seed or plants that came from elsewhere; like a cone it is where lots begin.
struct Purchase {
  PurchaseId id;
  Code code;
  TaxonId taxon;
  std::string supplier;
  Date bought;
  std::string note; ///< what the supplier says of the parents, papers
};

} // namespace coneline::book
