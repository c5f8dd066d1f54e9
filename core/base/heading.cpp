// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/heading.h"

#include "core/base/phrase.h"

namespace coneline {

std::string as_heading(std::string_view english) {
  const auto source = "heading: " + std::string(english);
  auto said = language().text(source);
  return said == source ? language().text(english) : said;
}

std::string decimal_said(std::string written) {
  return language().decimal(std::move(written));
}

std::string language_code() {
  return phrase_of(to_phrase("en")); // each catalogue has its own code for it
}

} // namespace coneline
