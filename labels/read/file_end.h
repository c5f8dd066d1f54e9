// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Whether a picture file has its end. Readers of pictures fill up what is missing with grey and say
// nothing; a grower who sends half a picture must be told.

#include <optional>
#include <string>
#include <string_view>

namespace coneline::labels {

/// What is missing of the file, in words, or nothing when it is whole or of a kind that is not
/// known here. Knows JPEG, PNG, GIF, BMP and WebP.
std::optional<std::string> what_is_missing(std::string_view bytes);

} // namespace coneline::labels
