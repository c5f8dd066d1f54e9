// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/without_display.h"

#include <QGuiApplication>

#include <array>

namespace coneline::labels {

namespace {
/// Arguments that Qt keeps a reference to for as long as the program runs.
struct Arguments {
  std::array<char, 9> program{"coneline"};
  std::array<char, 10> option{"-platform"};
  std::array<char, 10> platform{"offscreen"};
  std::array<char*, 4> values{program.data(), option.data(), platform.data(), nullptr};
  int count = 3;
};
} // namespace

WithoutDisplay::WithoutDisplay() {
  if (QGuiApplication::instance() != nullptr)
    return;
  static Arguments arguments;
  application_ = std::make_unique<QGuiApplication>(arguments.count, arguments.values.data());
}

WithoutDisplay::~WithoutDisplay() = default;

} // namespace coneline::labels
