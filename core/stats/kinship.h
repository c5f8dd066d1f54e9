// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How closely plants are related, from who their parents are.
//
// Kinship of two plants (Malécot's coefficient of coancestry): the probability that a gene drawn
// from the one and a gene drawn from the other, at the same place, come from one and the same gene
// of an ancestor. It is also the inbreeding of their offspring. By the tabular method, ancestors
// before descendants (Falconer & Mackay, Introduction to Quantitative Genetics, 4th ed. 1996,
// chapter 5; from memory):
//
//   f(x, x) = (1 + F(x)) / 2          F(x) = f(mother of x, father of x)
//   f(x, y) = (f(x, mother of y) + f(x, father of y)) / 2         y no ancestor of x
//
// A parent that is not known is taken to be related to nobody: kinship may then be higher than
// said, never lower.
//
//   parent and child 0.25, full sibs 0.25, half sibs 0.125, first cousins 0.0625

#include <cstddef>
#include <optional>
#include <vector>

namespace coneline::stats {

/// A plant's parents as places in the list of all plants; none where not known.
struct Parents {
  std::optional<std::size_t> mother;
  std::optional<std::size_t> father;
};

/// A way from a plant through its parents back to itself: the plant, a parent, ..., the plant.
/// Empty where no plant is its own ancestor. A parent outside the list throws std::out_of_range.
std::vector<std::size_t> own_ancestor(const std::vector<Parents>& plants);

/// Kinship of every two plants.
class Kinship {
 public:
  /// No plant may be its own ancestor; that throws std::invalid_argument.
  explicit Kinship(const std::vector<Parents>& plants);

  [[nodiscard]] double of(std::size_t one, std::size_t other) const {
    return table_[one * size_ + other];
  }
  /// 0 for a plant with a parent that is not known.
  [[nodiscard]] double inbreeding(std::size_t plant) const { return 2 * of(plant, plant) - 1; }
  [[nodiscard]] std::size_t size() const { return size_; }

  /// Mean kinship of one plant with all of a group, itself included where it is of the group. Fails
  /// never; an empty group gives 0.
  [[nodiscard]] double mean(std::size_t plant, const std::vector<std::size_t>& group) const;

 private:
  std::size_t size_;
  std::vector<double> table_;
};

/// What the founders (a parent not known counts as a founder of its own, without a name) gave to a
/// group of plants.
struct Founders {
  /// By plant: the share of the group's genes that come from it as a founder, 0 for others.
  std::vector<double> share;
  double unnamed = 0;      ///< the share that comes from parents not known of plants that have one
  std::size_t named = 0;   ///< founders with a share above 0
  double effective = 0;    ///< 1 / Σ share², each unknown parent counted by itself
  double mean_kinship = 0; ///< of every two of the group, a plant with itself included
  double genome_equivalents = 0; ///< 1 / (2 × mean kinship) (Lacy 1989, Zoo Biology 8:111-123;
                                 ///< from memory)
};

/// All zero for an empty group.
Founders founders_of(const std::vector<Parents>& plants, const Kinship& kinship,
                     const std::vector<std::size_t>& group);

/// The founders among the ancestors of one plant, itself where it is one; places in the list, in
/// their order. Unknown parents beside a known one are not counted.
std::vector<std::size_t> founders_behind(const std::vector<Parents>& plants, std::size_t plant);

} // namespace coneline::stats
