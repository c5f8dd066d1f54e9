// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Fonts need a QGuiApplication, also where nothing is shown. A command that paints makes one of
// these first.

#include <memory>

class QGuiApplication;

namespace coneline::labels {

/// Makes an application that needs no display, unless there is one already. Reading pictures in
/// processes of their own must be done before (see labels/read/apart.h).
class WithoutDisplay {
 public:
  WithoutDisplay();
  ~WithoutDisplay();
  WithoutDisplay(const WithoutDisplay&) = delete;
  WithoutDisplay& operator=(const WithoutDisplay&) = delete;

 private:
  struct Arguments;
  std::unique_ptr<Arguments> arguments_; // outlives the application
  std::unique_ptr<QGuiApplication> application_;
};

} // namespace coneline::labels
