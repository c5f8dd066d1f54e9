// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/mix.h"

#include "core/base/phrase.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>
#include <string_view>

namespace coneline::book {

namespace {

bool contains_itself(const Mix& mix, const std::vector<Mix>& mixes) {
  std::set<std::string_view> passed;
  std::vector<const Mix*> to_follow{&mix};
  while (!to_follow.empty()) {
    const auto& next = *to_follow.back();
    to_follow.pop_back();
    for (const auto& part : next.parts) {
      if (part.name == mix.name)
        return true;
      if (!passed.insert(part.name).second)
        continue;
      const auto inner = std::ranges::find(mixes, part.name, &Mix::name);
      if (inner != mixes.end())
        to_follow.push_back(&*inner);
    }
  }
  return false;
}

} // namespace

Result<void> can_be_mixed(const Mix& mix, const std::vector<Mix>& mixes) {
  if (contains_itself(mix, mixes))
    return refuse(fault(phrase("the mix '{}' contains itself", mix.name),
                        "Take it out of its own parts, or rename the part."));
  const double sum =
      std::accumulate(mix.parts.begin(), mix.parts.end(), 0.0,
                      [](double all, const MixPart& part) { return all + part.share; });
  if (!(sum > 0) || !std::isfinite(sum))
    return refuse(fault(phrase("the parts of the mix '{}' sum to nothing", mix.name),
                        "Give at least one part a share above 0."));
  if (!(mix.shrink >= 0 && mix.shrink < 1) || !(mix.loss >= 0))
    return refuse(
        fault(phrase("the mix '{}' shrinks by {} and loses {}", mix.name, mix.shrink, mix.loss),
              "A shrink is from 0 to below 1, a loss 0 or more."));
  return {};
}

} // namespace coneline::book
