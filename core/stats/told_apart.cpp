// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/told_apart.h"

#include <algorithm>
#include <cstdint>

namespace coneline::stats {

namespace {

/// Members as bits: hundreds of crosses bring tens of thousands of pairs.
class Set {
 public:
  explicit Set(std::size_t order) : words_(order / 64 + 1) {
    for (std::size_t member = 0; member < order; ++member)
      words_[member / 64] |= bit(member);
  }
  [[nodiscard]] bool holds(std::size_t member) const {
    return (words_[member / 64] & bit(member)) != 0;
  }
  [[nodiscard]] Set without(std::size_t member) const {
    Set set = *this;
    set.words_[member / 64] &= ~bit(member);
    return set;
  }
  [[nodiscard]] bool inside(const Set& other) const {
    for (std::size_t i = 0; i < words_.size(); ++i)
      if ((words_[i] & ~other.words_[i]) != 0)
        return false;
    return true;
  }
  [[nodiscard]] std::vector<std::size_t> members(std::size_t order) const {
    std::vector<std::size_t> list;
    for (std::size_t member = 0; member < order; ++member)
      if (holds(member))
        list.push_back(member);
    return list;
  }

 private:
  static std::uint64_t bit(std::size_t member) { return std::uint64_t{1} << (member % 64); }
  std::vector<std::uint64_t> words_;
};

/// Puts a set in unless another holds it. Sets that were not split stay: none lies inside a piece.
void put(std::vector<Set>& sets, const Set& piece) {
  if (std::ranges::none_of(sets, [&](const Set& other) { return piece.inside(other); }))
    sets.push_back(piece);
}

} // namespace

std::vector<std::vector<std::size_t>> not_told_apart(std::size_t order,
                                                     const std::vector<Apart>& apart) {
  if (order == 0)
    return {};
  std::vector<Set> sets{Set(order)};
  for (const auto& [a, b] : apart) {
    std::vector<Set> kept;
    std::vector<Set> split;
    for (const auto& set : sets)
      (set.holds(a) && set.holds(b) ? split : kept).push_back(set);
    std::vector<Set> pieces;
    for (const auto& set : split) {
      pieces.push_back(set.without(a));
      pieces.push_back(set.without(b));
    }
    // Of two pieces that hold each other's members the larger is put in first.
    std::ranges::stable_sort(pieces, std::greater<>(),
                             [&](const Set& set) { return set.members(order).size(); });
    for (const auto& piece : pieces)
      put(kept, piece);
    sets = std::move(kept);
  }
  std::vector<std::vector<std::size_t>> listed;
  for (const auto& set : sets)
    listed.push_back(set.members(order));
  std::ranges::sort(listed);
  return listed;
}

} // namespace coneline::stats
