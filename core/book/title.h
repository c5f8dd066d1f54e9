// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What stands on a book's cover.

#include "core/base/date.h"
#include "core/book/words.h"

#include <string>

namespace coneline::book {

enum class Hemisphere { not_known, northern, southern };

struct Title {
  std::string name;      ///< the nursery's name
  int series = 10;       ///< 10 to 99: the first two digits of every code of this book
  bool invented = false; ///< the data are made up; screens and reports say so
  Date made_on;
  Hemisphere hemisphere = Hemisphere::not_known; ///< when winter is
};

template <>
struct Words<Hemisphere> {
  static constexpr std::string_view what = "hemisphere";
  static constexpr std::array<std::pair<Hemisphere, std::string_view>, 3> all{
      {{Hemisphere::not_known, "not known"},
       {Hemisphere::northern, "northern"},
       {Hemisphere::southern, "southern"}}};
};

} // namespace coneline::book
