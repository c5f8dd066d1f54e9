// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/account.h"
#include "core/book/entry.h"
#include "core/book/lot.h"
#include "core/book/place.h"
#include "core/book/plant.h"
#include "core/book/pot.h"

#include <gtest/gtest.h>

#include <set>

namespace coneline::book {
namespace {

template <class Set>
void every_word_comes_back() {
  std::set<std::string_view> seen;
  for (const auto& [member, text] : Words<Set>::all) {
    EXPECT_EQ(word(member), text);
    EXPECT_EQ(read_word<Set>(text).value(), member);
    EXPECT_TRUE(seen.insert(text).second) << text;
  }
  const auto unknown = read_word<Set>("no such word");
  ASSERT_FALSE(unknown);
  EXPECT_NE(unknown.error().remedy.find(Words<Set>::all.front().second), std::string::npos);
}

TEST(Words, EveryWordComesBack) {
  every_word_comes_back<State>();
  every_word_comes_back<Verb>();
  every_word_comes_back<Judged>();
  every_word_comes_back<SeedTest>();
  every_word_comes_back<Kind>();
  every_word_comes_back<Sex>();
  every_word_comes_back<Certainty>();
  every_word_comes_back<Light>();
  every_word_comes_back<Frost>();
  every_word_comes_back<LeafColour>();
  every_word_comes_back<FloatTest>();
  every_word_comes_back<PlaceKind>();
  every_word_comes_back<Shape>();
  every_word_comes_back<PollinationMethod>();
}

TEST(Range, RefusesWhatIsNoRange) {
  EXPECT_TRUE(Range::of(0, 6));
  EXPECT_FALSE(Range::of(6, 3));
  EXPECT_FALSE(Range::of(-1, 3));
  EXPECT_FALSE(Range::of(0, std::numeric_limits<double>::infinity()));
}

} // namespace
} // namespace coneline::book
