// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The hybrid check-character system of ISO/IEC 7064, MOD 37,36: one character of 0-9 A-Z that
// catches every single wrong character and all swaps of neighbours but one pair.

#include <optional>
#include <string_view>

namespace coneline {

/// The check character of `body`, which holds 0-9 A-Z only; nothing for any other character or an
/// empty text.
std::optional<char> check_character(std::string_view body);

/// True when the last character of `text` is the check character of those before it.
bool check_holds(std::string_view text);

} // namespace coneline
