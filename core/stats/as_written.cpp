// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/as_written.h"

#include <charconv>
#include <cstdlib>
#include <string>

namespace coneline::stats {

Rational as_written(double value) {
  using boost::multiprecision::cpp_int;
  char buffer[40];
  const auto written = std::to_chars(std::begin(buffer), std::end(buffer), std::abs(value),
                                     std::chars_format::scientific);
  const std::string text(std::begin(buffer), written.ptr); // such as 9.5e-01
  const auto mark = text.find('e');
  int exponent = 0;
  const char* from = text.data() + mark + (text[mark + 1] == '+' ? 2 : 1);
  std::from_chars(from, text.data() + text.size(), exponent);
  std::string digits = text.substr(0, 1);
  if (mark > 2)
    digits += text.substr(2, mark - 2);
  exponent -= static_cast<int>(digits.size()) - 1;
  const cpp_int scale = boost::multiprecision::pow(cpp_int(10), std::abs(exponent));
  const auto first = digits.find_first_not_of('0'); // cpp_int reads a leading 0 as octal
  const cpp_int whole(first == std::string::npos ? "0" : digits.substr(first));
  const Rational size = exponent < 0 ? Rational(whole, scale) : Rational(whole * scale);
  return value < 0 ? Rational(-size) : size;
}

} // namespace coneline::stats
