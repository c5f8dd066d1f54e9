// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Counts labels that went out to a file or a printer. A label printed again keeps its code.

#include "core/store/writing.h"

#include <span>
#include <string>

namespace coneline::work {

/// One print for every code; a code that stands twice was printed twice.
Result<void> note_prints(store::Writing& writing, std::span<const Code> codes, Date printed,
                         const std::string& stock);

} // namespace coneline::work
