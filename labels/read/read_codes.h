// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Finds every QR code of a picture, and a lone Data Matrix or Code 128.
//
// The decoder's own search loses most codes of a crowded picture, and searching it in many small
// tiles is slow. So the corner squares are looked for first, in one cheap pass over the picture and
// its smaller copies; each place that has three of them is straightened and decoded by itself. Only
// squares that belong to nothing read so far are looked at again, in a tile of their own.

#include "labels/read/found.h"
#include "labels/read/gray.h"

#include <vector>

namespace coneline::labels {

/// Every QR code counts, also two with one text; one code is listed once. Texts are UTF-8. Sorted
/// from top to bottom, then from left to right.
std::vector<FoundCode> read_codes(GrayView picture);

} // namespace coneline::labels
