// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/fault.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

namespace coneline {

namespace {
Fault make(std::string what, std::string remedy, Blame blame) {
  // Texts without places are said here, those with places were said already and stay.
  return Fault{phrase_of(what), phrase_of(remedy), std::nullopt, blame};
}
} // namespace

Fault Fault::at(Where place) const {
  Fault placed = *this;
  if (!placed.where)
    placed.where = std::move(place);
  return placed;
}

std::string Fault::text() const {
  std::string place;
  if (where) {
    place = where->file;
    if (where->line > 0)
      place += (place.empty() ? "" : ", ") + phrase("line {}", where->line);
    if (!where->column.empty())
      place += (place.empty() ? "" : ", ") + phrase("column {}", where->column);
  }
  std::string said = place.empty() ? what : fmt::format("{}: {}", place, what);
  if (!remedy.empty()) {
    const bool closed =
        !said.empty() && (said.back() == '.' || said.back() == '?' || said.back() == '!');
    said += (closed ? " " : ". ") + remedy;
  }
  return said;
}

Fault fault(std::string what, std::string remedy) {
  return make(std::move(what), std::move(remedy), Blame::input);
}
Fault book_fault(std::string what, std::string remedy) {
  return make(std::move(what), std::move(remedy), Blame::book);
}
Fault usage_fault(std::string what, std::string remedy) {
  return make(std::move(what), std::move(remedy), Blame::usage);
}
Fault program_fault(std::string what, std::string remedy) {
  return make(std::move(what), std::move(remedy), Blame::program);
}

} // namespace coneline
