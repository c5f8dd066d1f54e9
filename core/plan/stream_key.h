// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What random numbers are told apart by, so that the same thing draws the same ones in every plan,
// whatever else is in it.

#include <cstdint>
#include <string_view>

namespace coneline::plan {

/// Neighbouring numbers give far ones: splitmix64's finalizer (Steele, Lea & Flood 2014, OOPSLA,
/// 453-472). One to one.
constexpr std::uint64_t mixed(std::uint64_t z) {
  z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
  z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
  return z ^ (z >> 31U);
}

/// The same on every computer: FNV-1a of the letters, mixed.
constexpr std::uint64_t stream_key(std::string_view text) {
  std::uint64_t key = 0xcbf29ce484222325U;
  for (const char letter : text)
    key = (key ^ static_cast<unsigned char>(letter)) * 0x100000001b3U;
  return mixed(key);
}

} // namespace coneline::plan
