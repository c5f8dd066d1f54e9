// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Entries in words.

#include "core/store/reading.h"

#include <string>

namespace coneline::work {

/// What happened, without its day: "sow: 40 judged filled of B171K into T1742Q as sown".
std::string tell(store::Reading& reading, const book::Entry& entry);

} // namespace coneline::work
