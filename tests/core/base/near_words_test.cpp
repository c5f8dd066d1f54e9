// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/near_words.h"

#include <gtest/gtest.h>

namespace coneline {
namespace {

using Words = std::vector<std::string>;

TEST(NearWords, CountsLettersChangedAddedAndLeftOut) {
  EXPECT_EQ(letters_between("mix", "mix"), 0U);
  EXPECT_EQ(letters_between("mixx", "mix"), 1U);
  EXPECT_EQ(letters_between("sel", "sell"), 1U);
  EXPECT_EQ(letters_between("sow", "row"), 1U);
  EXPECT_EQ(letters_between("lables", "labels"), 2U);
  EXPECT_EQ(letters_between("", "due"), 3U);
}

TEST(NearWords, AreThoseOfFewestLettersAway) {
  const Words verbs{"mix", "mixes", "sell", "germination", "germination-table"};
  EXPECT_EQ(near_words("mixx", verbs), (Words{"mix"}));
  EXPECT_EQ(near_words("sel", verbs), (Words{"sell"}));
  EXPECT_EQ(near_words("germinaton", verbs), (Words{"germination"}));
  EXPECT_EQ(near_words("tix", (Words{"six", "mix", "fix", "nix"})), (Words{"six", "mix", "fix"}));
  EXPECT_EQ(near_words("sowing", (Words{"sow", "towing", "moving"})), (Words{"towing"}))
      << "one letter away hides two";
}

TEST(NearWords, AreElseThoseThatBeginWithIt) {
  const Words verbs{"pot", "pot-on", "germination"};
  EXPECT_EQ(near_words("germ", verbs), (Words{"germination"}));
  EXPECT_TRUE(near_words("g", verbs).empty()) << "one letter is no beginning";
  EXPECT_TRUE(near_words("sow", verbs).empty());
}

} // namespace
} // namespace coneline
