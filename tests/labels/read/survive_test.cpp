// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/parallel.h"
#include "labels/read/survive.h"

#include <gtest/gtest.h>

#include <array>
#include <cstdlib>
#include <stdexcept>

namespace coneline::labels {
namespace {

TEST(Survive, AnAbortEndsThatWorkAlone) {
  int done = 0;
  EXPECT_TRUE(survives([&] { ++done; }));
  EXPECT_FALSE(survives([] { std::abort(); }));
  EXPECT_FALSE(survives([] { std::abort(); })); // and not the first time only
  EXPECT_TRUE(survives([&] { ++done; }));
  EXPECT_EQ(done, 2);
}

TEST(Survive, OnSeveralThreadsAtOnce) {
  std::array<bool, 64> survived{};
  in_parallel(64, [&](int i) {
    survived[static_cast<std::size_t>(i)] = survives([&] {
      if (i % 2 == 0)
        std::abort();
    });
  });
  for (std::size_t i = 0; i < survived.size(); ++i)
    EXPECT_EQ(survived[i], i % 2 == 1);
}

TEST(Survive, LetsExceptionsThrough) {
  EXPECT_THROW(survives([] { throw std::runtime_error("x"); }), std::runtime_error);
}

TEST(SurviveDeathTest, AnAbortElsewhereStillEndsTheProcess) {
  survives([] {});
  EXPECT_EXIT(std::abort(), testing::KilledBySignal(SIGABRT), "");
}

} // namespace
} // namespace coneline::labels
