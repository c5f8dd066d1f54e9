// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What stands on a book's cover.

#include "core/base/date.h"

#include <string>

namespace coneline::book {

struct Title {
  std::string name;      ///< the nursery's name
  int series = 10;       ///< 10 to 99: the first two digits of every code of this book
  bool invented = false; ///< the data are made up; screens and reports say so
  Date made_on;
};

} // namespace coneline::book
