// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/scan_text.h"

#include "core/base/code.h"
#include "core/base/phrase.h"

#include <fmt/format.h>

#include <array>
#include <span>

namespace coneline::work {

namespace {

/// A key of the American layout and what it gives on another one.
struct Key {
  std::string_view comes;
  char meant;
};
constexpr std::array french{
    Key{"&", '1'}, Key{"\xc3\xa9", '2'}, Key{"\"", '3'}, Key{"'", '4'},        Key{"(", '5'},
    Key{"-", '6'}, Key{"\xc3\xa8", '7'}, Key{"_", '8'},  Key{"\xc3\xa7", '9'}, Key{"\xc3\xa0", '0'},
    Key{"Q", 'A'}, Key{"A", 'Q'},        Key{"q", 'A'},  Key{"a", 'Q'},        Key{"W", 'Z'},
    Key{"Z", 'W'}, Key{"w", 'Z'},        Key{"z", 'W'},  Key{"?", 'M'},        Key{",", 'M'}};
constexpr std::array german{Key{"Y", 'Z'}, Key{"Z", 'Y'}, Key{"y", 'Z'}, Key{"z", 'Y'}};
/// Digits sent with the shift key held, on an American keyboard.
constexpr std::array shifted{Key{"!", '1'}, Key{"@", '2'}, Key{"#", '3'}, Key{"$", '4'},
                             Key{"%", '5'}, Key{"^", '6'}, Key{"&", '7'}, Key{"*", '8'},
                             Key{"(", '9'}, Key{")", '0'}};

std::string typed_on(std::span<const Key> layout, std::string_view text) {
  std::string meant;
  while (!text.empty()) {
    std::string_view taken = text.substr(0, 1);
    char letter = text.front();
    for (const auto& key : layout)
      if (text.starts_with(key.comes)) {
        taken = key.comes;
        letter = key.meant;
        break;
      }
    meant += letter;
    text.remove_prefix(taken.size());
  }
  return meant;
}

std::string without_ends(std::string_view raw, std::string_view prefix) {
  std::string text;
  for (const char c : raw)
    if (static_cast<unsigned char>(c) >= 0x20U && c != 0x7F)
      text += c;
  const auto first = text.find_first_not_of(' ');
  text =
      first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(' ') + 1 - first);
  if (!prefix.empty() && text.starts_with(prefix))
    text.erase(0, prefix.size());
  if (text.size() > 3 && text.front() == ']')
    text.erase(0, 3);
  return text;
}

} // namespace

ScanText scan_text(std::string_view raw, std::string_view prefix) {
  const auto text = without_ends(raw, prefix);
  if (Code::parse(text))
    return {text, {}};
  struct Layout {
    std::string_view name;
    std::span<const Key> keys;
  };
  for (const auto& [name, keys] :
       {Layout{to_phrase("as a French keyboard (AZERTY) gives them"), french},
        Layout{to_phrase("as a German keyboard (QWERTZ) gives them"), german},
        Layout{to_phrase("with the shift key held or Caps Lock on"), shifted}}) {
    const auto meant = typed_on(keys, text);
    if (const auto code = Code::parse(meant); code && meant != text)
      return {code->text(),
              phrase("the scanner's letters come {}: set the scanner to this computer's "
                     "keyboard",
                     phrase_of(name))};
  }
  return {text, {}};
}

bool RepeatedScan::is_new(std::string_view text, Moment now) {
  const bool same = last_ == text && now - heard_ < pause_;
  last_ = text;
  heard_ = now;
  return !same;
}

} // namespace coneline::work
