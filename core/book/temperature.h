// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a logger measured at a place. Readings are kept as they came; what looks like a fault of the
// sensor is marked whenever they are read (core/stats/temperature_days.h), never smoothed away.

#include "core/base/moment.h"
#include "core/book/id.h"

namespace coneline::book {

/// One reading; a place has one a moment.
struct Temperature {
  PlaceId place;
  Moment at;
  double celsius = 0;
};

/// Where a lot came to stand, and when.
struct Stay {
  LotId lot;
  Date from;
  PlaceId place;
};

} // namespace coneline::book
