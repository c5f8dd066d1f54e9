// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Numbers for scenes that are the same with every standard library.

#include <cmath>
#include <cstdint>
#include <random>

namespace coneline::labels {

class Chance {
 public:
  explicit Chance(std::uint64_t seed) : engine_(seed) {}
  double between(double low, double high) {
    return low + (high - low) * static_cast<double>(engine_() >> 11U) * 0x1.0p-53;
  }
  int whole(int low, int high) { // both included
    return static_cast<int>(std::floor(between(low, high + 1)));
  }
  /// Near enough to a normal deviate.
  double normal() { return between(-1, 1) + between(-1, 1) + between(-1, 1); }

 private:
  std::mt19937_64 engine_;
};

} // namespace coneline::labels
