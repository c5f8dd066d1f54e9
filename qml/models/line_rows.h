// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The line back and the history of one thing, as rows.

#include "session.h"

namespace coneline::window {

/// Columns: code, what, day, came, through, here, elsewhere (counts), lost, kept (words), share,
/// throughShare, lostShare (of the widest step, 0 to 1). From the cone down; empty for what is no
/// lot.
std::vector<Rows::Row> line_rows(Session& session, const Code& code);

/// Columns: entry, day, told, note, stands, reversible. The latest first; reversals and what they
/// reversed stay to be read.
std::vector<Rows::Row> history_rows(Session& session, const Code& code);

} // namespace coneline::window
