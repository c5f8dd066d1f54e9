// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What an entry did, in the words of the trade.

#include "core/book/registers.h"
#include "core/store/reading.h"

#include <QString>

namespace coneline::window {

/// "6 new roots, 1 taken out dead", "moved to Bench 3", "40 sown into T1742Q".
QString said(store::Reading& reading, const book::Registers& registers, const book::Entry& entry);

/// The note that the program writes itself when only the water was changed; in the book, so the
/// same in every language.
inline constexpr std::string_view water_changed = "water changed";
/// A note as it is shown.
QString note_shown(const std::string& note);

} // namespace coneline::window
