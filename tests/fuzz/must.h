// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What must hold of every input; where it does not, the fuzzer keeps the input.

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string_view>

namespace coneline::fuzz {

inline void must(bool holds, const char* what) {
  if (holds)
    return;
  std::fprintf(stderr, "does not hold: %s\n", what);
  std::abort();
}

inline std::string_view text_of(const std::uint8_t* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

} // namespace coneline::fuzz
