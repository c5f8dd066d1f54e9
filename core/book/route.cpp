// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/route.h"

#include "core/base/phrase.h"

namespace coneline::book {

namespace {

bool ends(const Range& months) {
  return months.low >= 0 && months.low <= months.high && months.high <= longest_months;
}

Fault endless(std::string what) {
  return fault(std::move(what), "Give months from low to high, at most 1200.");
}

} // namespace

Result<void> leads_to_an_end(const Route& route, const std::string& taxon) {
  if (route.steps.empty())
    return refuse(fault(phrase("the route of '{}' has no steps", taxon),
                        "Enter at least the tray; after the last step a plant is ready."));
  if (!ends(route.germination_months))
    return refuse(endless(phrase("germination of '{}' lasts {} to {} months: it has no end", taxon,
                                 route.germination_months.low, route.germination_months.high)));
  for (std::size_t step = 0; step < route.steps.size(); ++step) {
    const auto& here = route.steps[step];
    if (!ends(here.months))
      return refuse(
          endless(phrase("step {} of the route of '{}' lasts {} to {} months: it has no end",
                         step + 1, taxon, here.months.low, here.months.high)));
    if (!(here.survival > 0 && here.survival <= 1))
      return refuse(fault(
          phrase("step {} of the route of '{}' is survived by {}", step + 1, taxon, here.survival),
          "Give a share above 0, at most 1."));
  }
  return {};
}

} // namespace coneline::book
