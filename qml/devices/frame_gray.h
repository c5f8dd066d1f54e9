// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A frame of a camera as grey pixels, whatever its pixel format: the lightness is taken as it
// stands where the format has one, and made of red, green and blue where not.

#include "labels/read/gray.h"

#include <QVideoFrame>

#include <optional>

namespace coneline::window {

/// Nothing where the frame cannot be read: not mapped, no size, a damaged JPEG.
std::optional<labels::GrayImage> gray_of(QVideoFrame frame);

} // namespace coneline::window
