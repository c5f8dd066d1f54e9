// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What was seen at a place, as an answer: seen, not seen, moves, and what could not be placed.

#include "core/commands/command_line.h"
#include "core/store/book.h"
#include "core/work/seen_there.h"

namespace coneline::commands {

/// What the person decided about the moves.
enum class Moves { propose, accept };

/// Notes what was seen; with Moves::accept enters the moves. `who` is noted with them.
Result<Answer> seen_answer(store::Book& book, const work::SeenThere& found, book::SeenBy how,
                           Moves moves, const std::string& who);

} // namespace coneline::commands
