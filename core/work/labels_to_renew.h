// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Labels that nobody has had before his eyes for a while: they may have faded, or gone.

#include "core/base/code.h"
#include "core/base/date.h"
#include "core/store/reading.h"

#include <map>
#include <optional>
#include <vector>

namespace coneline::work {

/// Every label that was printed of one thing.
struct LabelHistory {
  int times = 0;
  Date last;
};

/// By code; what was never printed is missing.
std::map<Code, LabelHistory> label_histories(store::Reading& reading);

/// One lot whose label may need a new print.
struct LabelToRenew {
  Code code;
  std::optional<Date> seen;    ///< the last day something was entered about the lot
  std::optional<Date> printed; ///< the last print
  std::optional<book::PlaceId> place;
  int times_printed = 0;
};

/// Days after which a label outdoors should have been seen: common practice, no source.
constexpr int usual_days_unseen = 365;

/// Lots with something in them whose label was, by `today`, neither printed nor seen for more than
/// `days`, in walking order of their places, then by codes. Every entry about a lot that stands
/// (looked at, moved, potted, counted …) is a day on which it was seen, and so is every sighting by
/// scan, picture or log.
std::vector<LabelToRenew> labels_to_renew(store::Reading& reading, Date today,
                                          int days = usual_days_unseen);

} // namespace coneline::work
