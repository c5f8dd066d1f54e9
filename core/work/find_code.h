// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// From what was typed or scanned to a code of this book.

#include "core/base/code.h"
#include "core/book/registers.h"
#include "core/store/reading.h"

#include <string_view>

namespace coneline::work {

/// Whether a plant, pollen lot, cone, purchase or place has the code; lots are in no register.
bool registered(const book::Registers& registers, const Code& code);

/// Whether anything in this book has the code.
bool exists(store::Reading& reading, const book::Registers& registers, const Code& code);

/// Fails: no code at all, a wrong character (the fault offers the code meant when just one of this
/// book fits), the label of another book, a code that nothing here has.
Result<Code> find_code(store::Reading& reading, const book::Registers& registers,
                       std::string_view typed);

} // namespace coneline::work
