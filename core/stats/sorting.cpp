// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/sorting.h"

#include "core/base/phrase.h"
#include "core/stats/batch_interval.h"

#include <fmt/format.h>

namespace coneline::stats {

namespace {

Fault in_part(Fault why, const char* part) {
  why.what = phrase("of those that {}: {}", part, why.what);
  return why;
}

Result<Filled> filled_of(const CutTest& test, double confidence) {
  return filled_interval(test, confidence).transform([&](const CountInterval& interval) {
    Filled filled{std::nullopt, interval.low, interval.high};
    if (test.seeds == 0)
      filled.estimate = 0;
    else if (test.opened > 0)
      filled.estimate = static_cast<double>(test.seeds) * static_cast<double>(test.filled) /
                        static_cast<double>(test.opened);
    return filled;
  });
}

bool known_to_the_seed(const CutTest& test) {
  return test.opened == test.seeds;
}

bool says_something(const CutTest& test) {
  return test.opened > 0 && !known_to_the_seed(test);
}

} // namespace

Result<Sorted> sort_by_water(const CutTest& sank, const CutTest& floated, double confidence) {
  if (const auto ok = checked(sank); !ok)
    return refuse(in_part(ok.error(), "sank"));
  if (const auto ok = checked(floated); !ok)
    return refuse(in_part(ok.error(), "floated"));
  const auto down = filled_of(sank, confidence);
  const auto up = filled_of(floated, confidence);
  if (!down)
    return refuse(down.error());
  if (!up)
    return refuse(up.error());

  Filled batch{std::nullopt, down->low + up->low, down->high + up->high};
  if (says_something(sank) && says_something(floated)) {
    const auto both = batch_interval(sank, floated, confidence);
    batch.low = both.low;
    batch.high = both.high;
  }
  if (down->estimate && up->estimate)
    batch.estimate = *down->estimate + *up->estimate;

  const auto destroyed = sank.filled + floated.filled;
  Filled left{std::nullopt, batch.low - destroyed, batch.high - destroyed};
  if (batch.estimate)
    left.estimate = *batch.estimate - static_cast<double>(destroyed);
  return Sorted{*down, *up, batch, left};
}

} // namespace coneline::stats
