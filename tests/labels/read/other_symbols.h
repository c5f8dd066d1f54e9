// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Symbols that the program does not print but must read.

#include <QImage>

#include <string>

namespace coneline::labels {

enum class OtherSymbol { qr, data_matrix, code_128 };

/// Black on white with a blank border, `scale` pixels a module.
QImage other_symbol(const std::string& text, OtherSymbol kind, int scale);

} // namespace coneline::labels
