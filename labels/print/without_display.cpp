// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/without_display.h"

#include <QGuiApplication>

#include <array>

namespace coneline::labels {

/// Qt keeps a reference to them, and takes out those it has read.
struct WithoutDisplay::Arguments {
  std::array<char, 9> program{"coneline"};
  std::array<char, 10> option{"-platform"};
  std::array<char, 10> platform{"offscreen"};
  std::array<char*, 4> values{program.data(), option.data(), platform.data(), nullptr};
  int count = 3;
};

WithoutDisplay::WithoutDisplay() {
  if (QGuiApplication::instance() != nullptr)
    return;
  arguments_ = std::make_unique<Arguments>();
  application_ = std::make_unique<QGuiApplication>(arguments_->count, arguments_->values.data());
}

WithoutDisplay::~WithoutDisplay() = default;

} // namespace coneline::labels
