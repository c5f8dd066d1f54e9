// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Every page of the window and how one gets there, for pictures and for checks.

#include "tests/qml/shown_window.h"

#include <QDir>
#include <QImage>

#include <functional>

namespace coneline::window {

struct Page {
  const char* name;
  std::function<void(ShownWindow&)> go;
};
/// Those alone that CONELINE_PAGES names, with commas between, where it is set.
std::vector<Page> every_page();

/// Where pictures go: the folder of CONELINE_PICTURES, or that of the build.
QDir pictures_folder();
void is_not_blank(const QImage& picture);

} // namespace coneline::window
