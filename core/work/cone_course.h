// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A female cone from the first look to the harvest: its scales, when it took pollen, when it may be
// ripe and how many seeds it may hold.

#include "core/work/overview.h"
#include "core/work/verb_done.h"

namespace coneline::work {

struct CheckScales {
  Code cone;
  book::Scales scales = book::Scales::tight;
  std::optional<std::int64_t> fertile_scales;
  Noted noted;
};
/// Fails: no such cone, harvested before, loose or tight again after it closed.
Result<Done> check_scales(store::Book& book, const CheckScales& wanted);
/// Within a transaction that does more.
Result<Done> check_scales(store::Writing& writing, const CheckScales& wanted);

struct ScalesSeen {
  Date date;
  book::Scales scales = book::Scales::tight;
};

/// A range and what it rests on.
struct Expected {
  double low = 0;
  double high = 0;
  std::string basis;
};

struct ConeCourse {
  ConeLine line;
  std::vector<ScalesSeen> looks;      ///< in the order of their days
  std::optional<Date> receptive_from; ///< the first loose look or pass
  std::optional<Date> receptive_to;   ///< the last loose look or pass
  std::optional<Date> closed;
  std::optional<std::int64_t> fertile_scales; ///< the last count
  /// Months from the first pass to the ripe cone. From the taxon, about twelve months where it says
  /// nothing (common practice, no source), widened by the book's own cones of the taxon; from nine
  /// such cones on they alone decide: the next of n like ones falls between the least and the most
  /// with a chance of (n - 1)/(n + 1).
  Expected ripe_months;
  std::optional<Date> ripe_from;
  std::optional<Date> ripe_to;
  /// At most two a fertile scale. From two earlier cones of the plant on, where the next of their
  /// kind falls 8 times in 10 (stats/next_value.h), as a share of that ceiling where scales were
  /// counted.
  std::optional<Expected> seeds;
};

std::vector<ConeCourse> cone_courses(store::Reading& reading, const book::Registers& registers);

} // namespace coneline::work
