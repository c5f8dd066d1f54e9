// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The one place where the reader meets the symbol library. Its own search finds a few codes of a
// crowded picture; the files beside this one bring it to them.

#include "labels/read/gray.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace coneline::labels {

/// A symbol that was read: its text, "QRCode", "DataMatrix" or "Code128", and its corners in
/// pixels, in order around it.
struct Sighting {
  std::string text;
  std::string format;
  std::array<Point, 4> corners;
};

/// How grey becomes black and white: by one threshold, or by one for each neighbourhood. Each finds
/// codes that the other misses.
enum class Threshold { one, local };

/// Up to `most` QR codes.
std::vector<Sighting> decode_qr(GrayView picture, Threshold threshold, int most);

/// The code of a picture that holds nothing else: upright, black (0) on white (255).
std::optional<Sighting> decode_clean_qr(GrayView picture);

/// The first Data Matrix or Code 128 found; of the latter, the corners of its bars. Never asked for
/// more than one: searching for several linear symbols at once ends the process in the library at
/// hand.
std::optional<Sighting> decode_lone(GrayView picture);

/// The first Data Matrix that a line through the picture's middle meets.
std::optional<Sighting> decode_data_matrix(GrayView picture);

} // namespace coneline::labels
