// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/heading.h"

#include "core/base/phrase.h"

namespace coneline {

std::string as_heading(std::string_view english) {
  const auto source = "heading: " + std::string(english);
  auto said = language().text(source);
  return said == source ? language().text(english) : said;
}

} // namespace coneline
