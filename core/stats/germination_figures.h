// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Everything that is worked out from germination counts, for trays of a file and of a book alike.

#include "core/stats/germination_data.h"
#include "core/stats/germination_measures.h"
#include "core/stats/share_interval.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace coneline::stats {

/// A share of the seed sown with its range. No values where nothing was sown.
struct FinalShare {
  std::optional<double> share;
  std::optional<Interval> range;
  std::string method; ///< how the range was worked out
};

struct TrayFigures {
  std::size_t tray = 0; ///< place in the trays given
  FinalShare final;
  GerminationMeasures measures;
};

struct GroupFigures {
  TrayGroup group;
  std::int64_t sown = 0;
  std::int64_t germinated = 0;
  FinalShare final;
};

struct GerminationFigures {
  std::vector<TrayFigures> trays;   ///< in the order given
  std::vector<GroupFigures> groups; ///< in the order of their first tray
};

struct GerminationOptions {
  double confidence = 0.95; ///< between 0 and 1
};

/// The figures of sound trays (see faults_of). Fails on a confidence outside 0 to 1.
Result<GerminationFigures> germination_figures(std::span<const Tray> trays,
                                               const GerminationOptions& options);

} // namespace coneline::stats
