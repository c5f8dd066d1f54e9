// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What an entry did, in the words of the trade.

#include "core/book/registers.h"
#include "core/store/reading.h"

#include <QString>

namespace coneline::window {

/// "6 new roots, 1 taken out dead", "moved to Bench 3", "40 sown into T1742Q".
QString said(store::Reading& reading, const book::Registers& registers, const book::Entry& entry);

/// A note as it is shown; one that the program wrote itself is said.
QString note_shown(const std::string& note);

} // namespace coneline::window
