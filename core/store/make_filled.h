// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A new book with what belongs into it from the start.

#include "core/store/book.h"

#include <functional>

namespace coneline::store {

/// Makes a book that stands at `path` when `fill` has put everything into it, and not before; its
/// first copy is made then too. Fails where something stands there already, where it cannot be
/// written, and where `fill` fails, of which nothing is left.
Result<void> make_filled(const std::filesystem::path& path, const book::Title& title,
                         const std::function<Result<void>(Book&)>& fill);

} // namespace coneline::store
