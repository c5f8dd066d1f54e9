// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Groups of things that cannot be told apart, from tests of every pair.

#include <cstddef>
#include <vector>

namespace coneline::stats {

/// Two things whose difference is beyond chance.
struct Apart {
  std::size_t a = 0;
  std::size_t b = 0;
};

/// The fewest sets such that two things share a set exactly when they are not in `apart`: insert
/// and absorb, Piepho 2004, J. Computational and Graphical Statistics 13:456-466 (from memory). A
/// thing may stand in several sets; one that is apart from all others stands alone. Each set is in
/// ascending order, the sets in the order of their first members. `order` things, numbered from 0.
std::vector<std::vector<std::size_t>> not_told_apart(std::size_t order,
                                                     const std::vector<Apart>& apart);

} // namespace coneline::stats
