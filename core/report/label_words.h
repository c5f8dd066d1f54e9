// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What stands on the label of a lot, a cone, a pollen lot, a plant or a place, before it is drawn.

#include "core/base/code.h"
#include "core/book/registers.h"
#include "core/store/reading.h"

#include <span>
#include <string>
#include <vector>

namespace coneline::report {

/// Lines ready to be read; an empty one has nothing to say for this kind.
struct LabelWords {
  Code code;
  std::string cross; ///< "Zamia furfuracea · Old Gate × Blue Twin", a plant's taxon, a place's name
  std::string cone;  ///< "cone C171T"
  std::string sown;  ///< "sown 2026-03-09", "potted …", "harvested …", "collected …"
  std::string count; ///< "34 seeds", "12 plants": what came in, since what is there changes
};

/// In the order of the codes. Fails on a code that nothing in the book has.
Result<std::vector<LabelWords>>
label_words(store::Reading& reading, const book::Registers& registers, std::span<const Code> codes);

/// The codes of everything of this kind that may need a label, in the order of the codes: lots that
/// still hold something, cones not yet harvested, and all plants, pollen lots, purchases and
/// places.
std::vector<Code> codes_on_hand(store::Reading& reading, const book::Registers& registers,
                                Kind kind);

} // namespace coneline::report
