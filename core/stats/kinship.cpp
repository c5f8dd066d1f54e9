// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/kinship.h"

#include <algorithm>
#include <stdexcept>

namespace coneline::stats {

namespace {

enum class Seen { not_yet, on_the_way, done };

/// Walks up through the parents. `order` gets every plant after its ancestors; the result is a way
/// back to itself, or empty.
class Walk {
 public:
  explicit Walk(const std::vector<Parents>& plants)
      : plants_(plants), seen_(plants.size(), Seen::not_yet) {}

  std::vector<std::size_t> run() {
    for (std::size_t plant = 0; plant < plants_.size(); ++plant)
      if (visit(plant))
        return std::move(circle_);
    return {};
  }
  [[nodiscard]] const std::vector<std::size_t>& order() const { return order_; }

 private:
  bool visit(std::size_t plant) {
    auto& seen = seen_.at(plant);
    if (seen == Seen::done)
      return false;
    if (seen == Seen::on_the_way) {
      circle_.assign(std::ranges::find(way_, plant), way_.end());
      circle_.push_back(plant);
      return true;
    }
    seen = Seen::on_the_way;
    way_.push_back(plant);
    for (const auto& parent : {plants_[plant].mother, plants_[plant].father})
      if (parent && visit(*parent))
        return true;
    way_.pop_back();
    seen_[plant] = Seen::done;
    order_.push_back(plant);
    return false;
  }

  const std::vector<Parents>& plants_;
  std::vector<Seen> seen_;
  std::vector<std::size_t> way_;
  std::vector<std::size_t> order_;
  std::vector<std::size_t> circle_;
};

std::vector<std::size_t> ancestors_first(const std::vector<Parents>& plants) {
  Walk walk(plants);
  if (!walk.run().empty())
    throw std::invalid_argument("a plant is its own ancestor");
  return walk.order();
}

} // namespace

std::vector<std::size_t> own_ancestor(const std::vector<Parents>& plants) {
  return Walk(plants).run();
}

Kinship::Kinship(const std::vector<Parents>& plants)
    : size_(plants.size()), table_(plants.size() * plants.size(), 0.0) {
  const auto order = ancestors_first(plants);
  const auto with = [&](std::optional<std::size_t> parent, std::size_t other) {
    return parent ? of(*parent, other) : 0.0;
  };
  for (std::size_t turn = 0; turn < order.size(); ++turn) {
    const auto plant = order[turn];
    const auto [mother, father] = plants[plant];
    for (std::size_t earlier = 0; earlier < turn; ++earlier) {
      const auto other = order[earlier];
      table_[plant * size_ + other] = table_[other * size_ + plant] =
          (with(mother, other) + with(father, other)) / 2;
    }
    const double inbred = mother && father ? of(*mother, *father) : 0.0;
    table_[plant * size_ + plant] = (1 + inbred) / 2;
  }
}

double Kinship::mean(std::size_t plant, const std::vector<std::size_t>& group) const {
  if (group.empty())
    return 0;
  double sum = 0;
  for (const auto other : group)
    sum += of(plant, other);
  return sum / static_cast<double>(group.size());
}

Founders founders_of(const std::vector<Parents>& plants, const Kinship& kinship,
                     const std::vector<std::size_t>& group) {
  Founders founders;
  founders.share.assign(plants.size(), 0.0);
  if (group.empty())
    return founders;
  const auto order = ancestors_first(plants);
  // Each plant hands half of what it holds to each parent, descendants first.
  std::vector<double> held(plants.size(), 0.0);
  for (const auto plant : group)
    held[plant] += 1.0 / static_cast<double>(group.size());
  double squares = 0;
  for (auto at = order.rbegin(); at != order.rend(); ++at) {
    const auto [mother, father] = plants[*at];
    const double share = held[*at];
    if (!mother && !father) {
      founders.share[*at] = share;
      founders.named += share > 0 ? 1U : 0U;
      squares += share * share;
      continue;
    }
    for (const auto& parent : {mother, father}) {
      if (parent) {
        held[*parent] += share / 2;
      } else {
        founders.unnamed += share / 2;
        squares += share * share / 4;
      }
    }
  }
  founders.effective = squares > 0 ? 1 / squares : 0;
  double sum = 0;
  for (const auto plant : group)
    sum += kinship.mean(plant, group);
  founders.mean_kinship = sum / static_cast<double>(group.size());
  founders.genome_equivalents = 1 / (2 * founders.mean_kinship);
  return founders;
}

std::vector<std::size_t> founders_behind(const std::vector<Parents>& plants, std::size_t plant) {
  std::vector<std::size_t> found;
  std::vector<std::size_t> open{plant};
  std::vector<bool> seen(plants.size(), false);
  while (!open.empty()) {
    const auto at = open.back();
    open.pop_back();
    if (seen.at(at))
      continue;
    seen[at] = true;
    const auto [mother, father] = plants[at];
    if (!mother && !father)
      found.push_back(at);
    for (const auto& parent : {mother, father})
      if (parent)
        open.push_back(*parent);
  }
  std::ranges::sort(found);
  return found;
}

} // namespace coneline::stats
