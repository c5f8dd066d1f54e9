// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/mix.h"

#include "core/base/number.h"
#include "core/base/phrase.h"

#include <fmt/format.h>

#include <cmath>
#include <set>

namespace coneline::plan {

namespace {

std::optional<Fault> wrong_with_pots(const MixOrder& order) {
  if (order.pots < 1)
    return fault(phrase("{} pots take no mix", order.pots), "Give 1 or more.");
  if (order.pots > 1'000'000'000)
    return fault(phrase("{} pots are more than any nursery fills", order.pots),
                 "Check the digits.");
  if (!(order.litres > 0) || order.litres > 1e6)
    return fault(phrase("a pot of {} litres cannot be", write_real(order.litres)),
                 "Give the real litres of one pot.");
  if (!(order.rootball >= 0))
    return fault(phrase("a root ball of {} litres cannot be", write_real(order.rootball)),
                 "Give its litres, 0 for none.");
  if (order.rootball > order.litres)
    return fault(phrase("a root ball of {} litres does not fit a pot of {} litres: {} too much",
                        write_real(order.rootball), write_real(order.litres),
                        fmt::format("{:.6g}", order.rootball - order.litres)),
                 "Take a larger pot or correct the root ball.");
  return std::nullopt;
}

std::optional<Fault> wrong_with_shares(const MixOrder& order) {
  if (!(order.shrink >= 0 && order.shrink < 1))
    return fault(phrase("a shrink of {} cannot be", write_real(order.shrink)),
                 "Write 15 % as 0.15; it is below 1.");
  if (!(order.loss >= 0 && order.loss <= 1))
    return fault(phrase("a loss of {} cannot be", write_real(order.loss)),
                 "Write 10 % as 0.1; it is at most 1.");
  return std::nullopt;
}

std::optional<Fault> wrong_with_parts(const std::vector<MixPart>& parts) {
  std::set<std::string> names;
  double sum = 0;
  for (const auto& part : parts) {
    if (part.name.empty())
      return fault("a part has no name", "Write each as name=amount, such as bark=4.");
    if (!names.insert(part.name).second)
      return fault(phrase("{} is there twice", part.name), "Give each part once.");
    if (!(part.amount >= 0 && part.amount <= 1e9))
      return fault(phrase("{} parts of {} cannot be", write_real(part.amount), part.name),
                   "Give a number not below zero.");
    sum += part.amount;
  }
  if (!(sum > 0))
    return fault("the parts sum to nothing", "Give at least one part above zero.");
  return std::nullopt;
}

} // namespace

Result<Mix> mix_for(const MixOrder& order) {
  for (const auto& wrong :
       {wrong_with_pots(order), wrong_with_shares(order), wrong_with_parts(order.parts)})
    if (wrong)
      return refuse(*wrong);
  double sum = 0;
  for (const auto& part : order.parts)
    sum += part.amount;
  Mix mix;
  mix.finished_litres =
      static_cast<double>(order.pots) * (order.litres - order.rootball) * (1 + order.loss);
  const double loose = mix.finished_litres / (1 - order.shrink);
  for (const auto& part : order.parts)
    mix.parts.push_back({part.name, loose * (part.amount / sum)});
  return mix;
}

} // namespace coneline::plan
