// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the program says to a person, in the language of who reads it. The source text is English
// and is looked up whole; what belongs in its places is put in afterwards, so another language may
// put it elsewhere ({0}, {1}) and write days and decimals in its own way.
//
//   phrase("{} has no seed on {}", batch, day.said())
//   phrase_n(count, "{} seed of {}", "{} seeds of {}", batch)
//
// Without another language, as on the command line, everything is English with days in ISO 8601.
// What goes into the book or a file is never said but written with fmt::format.

#include "core/base/date.h"
#include "core/base/quantity.h"

#include <fmt/format.h>

#include <concepts>
#include <cstdint>
#include <string>
#include <string_view>

namespace coneline {

/// A language to say things in. The functions of this class are those of English.
class Language {
 public:
  Language() = default;
  Language(const Language&) = delete;
  Language& operator=(const Language&) = delete;
  virtual ~Language() = default;

  /// The text that says the same; an unknown text stays as it is. May be asked from several
  /// threads.
  [[nodiscard]] virtual std::string text(std::string_view english) const;
  /// The form for a count; in English `one` for 1 and `many` for the rest.
  [[nodiscard]] virtual std::string counted(std::int64_t count, std::string_view one,
                                            std::string_view many) const;
  [[nodiscard]] virtual std::string day(Date day) const;
  /// A number that is written with a decimal point.
  [[nodiscard]] virtual std::string decimal(std::string written) const;
  /// "en", "es": for a file that says which language it is in.
  [[nodiscard]] virtual std::string code() const;
  /// What people reckon in; the book is metric.
  [[nodiscard]] virtual UnitSystem units() const;
};

/// From now on things are said in this language, which must outlive all that is said; nullptr for
/// English. Only the window's front door calls it.
void speak(const Language* language);
const Language& language();

/// The number as people write it, with so many digits behind its decimal sign.
std::string decimal_said(double value, int decimals);

namespace saying {

struct Decimal {
  double value;
};

template <class Value>
decltype(auto) as(const Value& value) {
  if constexpr (std::floating_point<Value>)
    return Decimal{static_cast<double>(value)};
  else
    return (value);
}

} // namespace saying

template <class... Args>
std::string phrase(fmt::format_string<const Args&...> english, const Args&... args) {
  const fmt::string_view source = english;
  return fmt::vformat(language().text({source.data(), source.size()}),
                      fmt::make_format_args(saying::as(args)...));
}

/// The count is the first of the arguments.
template <class... Args>
std::string
phrase_n(std::int64_t count, fmt::format_string<const std::int64_t&, const Args&...> one,
         fmt::format_string<const std::int64_t&, const Args&...> many, const Args&... args) {
  const fmt::string_view first = one;
  const fmt::string_view second = many;
  return fmt::vformat(
      language().counted(count, {first.data(), first.size()}, {second.data(), second.size()}),
      fmt::make_format_args(count, saying::as(args)...));
}

/// "March", for 3.
std::string month_said(unsigned month);

/// "0.50 m²", "0.13 US gal": a kept value in the units people reckon in.
std::string measured(Quantity quantity, double kept, int decimals);

/// A text that is not said here but where it is used, through `phrase_of`; marks it for
/// translation.
constexpr const char* to_phrase(const char* english) {
  return english;
}

/// A text that was marked, or a word of the book.
std::string phrase_of(std::string_view english);

} // namespace coneline

template <>
struct fmt::formatter<coneline::saying::Decimal> : fmt::formatter<double> {
  template <class Context>
  auto format(const coneline::saying::Decimal& number, Context& context) const {
    // Written first in the wanted precision, then with the sign of the language.
    fmt::memory_buffer written;
    auto inner = fmt::format_context(fmt::appender(written), {}, context.locale());
    fmt::formatter<double>::format(number.value, inner);
    const auto said = coneline::language().decimal({written.data(), written.size()});
    return std::copy(said.begin(), said.end(), context.out());
  }
};
