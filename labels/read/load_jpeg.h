// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Qt's reader of JPEG files is silent about damage and always makes colours. This one, on the same
// libjpeg, tells of damage and reads the lightness alone, which is quicker.

#include <QImage>

#include <string_view>

namespace coneline::labels {

struct Jpeg {
  QImage picture; ///< Grayscale8, not turned; null when it could not be read at all
  bool damaged = false;
};

/// Reads what can be read; missing parts are grey. Null for a JPEG without a lightness of its own
/// (four inks), which is left to Qt.
Jpeg load_jpeg(std::string_view bytes);

} // namespace coneline::labels
