// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/check_character.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace coneline {
namespace {

const std::string alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

rc::Gen<std::string> bodies() {
  return rc::gen::mapcat(rc::gen::inRange<std::size_t>(1, 12), [](std::size_t length) {
    return rc::gen::container<std::string>(length, rc::gen::elementOf(alphabet));
  });
}

// ISO/IEC 7064:2003, MOD 37,36: the standard's own example and two published identifiers that use
// it.
TEST(CheckCharacter, AgreesWithPublishedCases) {
  EXPECT_EQ(check_character("A12425GABC1234002"), 'M');
  EXPECT_EQ(check_character("A12425GXYZ9876008"), '6');
  EXPECT_EQ(check_character("B159D8FA01240000"), 'K');
}

TEST(CheckCharacter, RefusesWhatIsNotInItsAlphabet) {
  EXPECT_EQ(check_character(""), std::nullopt);
  EXPECT_EQ(check_character("t42"), std::nullopt);
  EXPECT_EQ(check_character("T 42"), std::nullopt);
  EXPECT_FALSE(check_holds(""));
  EXPECT_FALSE(check_holds("M"));
}

RC_GTEST_PROP(CheckCharacter, CatchesEverySingleWrongCharacter, ()) {
  const auto body = *bodies();
  const auto text = body + *check_character(body);
  RC_ASSERT(check_holds(text));
  for (std::size_t i = 0; i < text.size(); ++i)
    for (const char c : alphabet) {
      auto wrong = text;
      wrong[i] = c;
      RC_ASSERT(check_holds(wrong) == (c == text[i]));
    }
}

} // namespace
} // namespace coneline
