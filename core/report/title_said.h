// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A book's name as reports and papers bear it.

#include "core/base/phrase.h"
#include "core/book/title.h"

namespace coneline::report {

inline std::string title_said(const book::Title& title) {
  return title.invented ? phrase("{} (invented data)", title.name) : title.name;
}

} // namespace coneline::report
