// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What must hold of any page that is shown; each fault is a failure of the test that asks.

#include "tests/qml/shown_window.h"

namespace coneline::window {

/// No text is cut off, by its own box, its parent, the window, or one lying over it.
void no_text_is_cut(ShownWindow& shown);

/// No two controls lie over each other.
void no_controls_overlap(ShownWindow& shown);

/// Each control stands in the accessibility tree with a role and a name.
void controls_are_named(ShownWindow& shown);

/// Each control is large enough for a wet hand: 44 pixels at least.
void controls_are_large(ShownWindow& shown);

} // namespace coneline::window
