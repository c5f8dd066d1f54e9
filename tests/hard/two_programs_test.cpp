// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/hard/hard.h"

namespace coneline::hard {
namespace {

TEST(TwoPrograms, WriteOneBookWithoutLossOrHarm) {
  const tests::Scratch scratch;
  const auto path = scratch.at("t.coneline");
  tests::FirstCone first;
  { tests::make_first_cone(path, first); }
  const int each = times(40, 500);
  std::vector<pid_t> programs;
  for (int program = 0; program < 2; ++program)
    programs.push_back(begin([&] {
      for (int n = 0; n < each; ++n) {
        auto book = store::Book::open(path, store::Access::write);
        if (!book || !take_in(*book, first))
          return 1;
      }
      return 0;
    }));
  for (const auto program : programs)
    EXPECT_EQ(ended(program), 0) << "an entry was refused";
  EXPECT_EQ(proven_entries(path), 1 + 2 * each);
  const auto copies = store::copies_of(path);
  EXPECT_FALSE(copies.empty());
  for (const auto& copy : copies)
    EXPECT_TRUE(store::look_into(copy).good) << copy.path;
  fmt::print("two programs, {} openings and entries each: all there\n", each);
}

} // namespace
} // namespace coneline::hard
