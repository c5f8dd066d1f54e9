// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/phrase.h"

#include <array>
#include <atomic>

namespace coneline {

namespace {
const Language english;
// What language is spoken belongs to the whole process, as its locale does.
std::atomic<const Language*> spoken{&english};
} // namespace

std::string Language::text(std::string_view english_text) const {
  return std::string(english_text);
}

std::string Language::counted(std::int64_t count, std::string_view one,
                              std::string_view many) const {
  return std::string(count == 1 ? one : many);
}

std::string Language::day(Date day) const {
  return day.iso();
}

std::string Language::decimal(std::string written) const {
  return written;
}

std::string Language::code() const {
  return "en";
}

void speak(const Language* language) {
  spoken = language == nullptr ? &english : language;
}

const Language& language() {
  return *spoken.load();
}

UnitSystem Language::units() const {
  return UnitSystem::metric;
}

std::string month_said(unsigned month) {
  static constexpr std::array names{
      to_phrase("January"),   to_phrase("February"), to_phrase("March"),    to_phrase("April"),
      to_phrase("May"),       to_phrase("June"),     to_phrase("July"),     to_phrase("August"),
      to_phrase("September"), to_phrase("October"),  to_phrase("November"), to_phrase("December")};
  return phrase_of(names.at(month - 1));
}

std::string measured(Quantity quantity, double kept, int decimals) {
  const auto system = language().units();
  return fmt::format("{} {}", decimal_said(in_units(system, quantity, kept), decimals),
                     unit_word(system, quantity));
}

std::string decimal_said(double value, int decimals) {
  return language().decimal(fmt::format("{:.{}f}", value, decimals));
}

std::string phrase_of(std::string_view english_text) {
  return language().text(english_text);
}

std::string Date::said() const {
  return language().day(*this);
}

} // namespace coneline
