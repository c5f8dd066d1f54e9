// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/find_code.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

namespace coneline::work {

bool registered(const book::Registers& registers, const Code& code) {
  switch (code.kind()) {
  case Kind::plant:
    return book::coded(registers.plants, code) != nullptr;
  case Kind::pollen:
    return book::coded(registers.pollen_lots, code) != nullptr;
  case Kind::cone:
    return book::coded(registers.cones, code) != nullptr;
  case Kind::purchase:
    return book::coded(registers.purchases, code) != nullptr;
  case Kind::place:
    return book::coded(registers.places, code) != nullptr;
  case Kind::batch:
  case Kind::tray:
  case Kind::pot_group:
    return false;
  }
  return false;
}

bool exists(store::Reading& reading, const book::Registers& registers, const Code& code) {
  return registered(registers, code) || reading.lot(code).has_value();
}

Result<Code> find_code(store::Reading& reading, const book::Registers& registers,
                       std::string_view typed) {
  auto code = Code::parse(typed);
  if (!code) {
    std::vector<Code> likely;
    for (const auto& candidate : corrections(typed))
      if (exists(reading, registers, candidate))
        likely.push_back(candidate);
    if (likely.size() == 1)
      code.error().remedy = phrase("Is {} meant?", likely.front().text());
    return code;
  }
  if (code->series() != registers.title.series)
    return refuse(
        fault(phrase("{} is the label of another book: its series is {}, this book's is {}",
                     code->text(), code->series(), registers.title.series),
              "Open the book it belongs to."));
  if (!exists(reading, registers, *code))
    return refuse(
        fault(phrase("there is no {} {} in this book", kind_said(code->kind()), code->text()),
              "Check the code, or the book."));
  return code;
}

} // namespace coneline::work
