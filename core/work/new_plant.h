// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A plant comes into the register of parents.

#include "core/work/verb_done.h"

namespace coneline::work {

struct NewPlant {
  std::string name;
  std::string taxon; ///< taken into the register where it is new
  book::Sex sex = book::Sex::not_known;
  std::string origin;
  std::optional<Code> place;
  std::string note;
};

/// Gives the plant's code as what was made. Fails: no taxon, no such place.
Result<Done> new_plant(store::Book& book, const NewPlant& wanted);

} // namespace coneline::work
