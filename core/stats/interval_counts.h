// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Germination times are known only between looks. This is what the trays of a group say about them,
// pooled: each seed keeps the interval between the looks of its own tray, equal intervals are
// counted together.

#include "core/stats/germination_data.h"

#include <cstdint>
#include <span>
#include <vector>

namespace coneline::stats {

struct IntervalCounts {
  /// Seeds that germinated after bounds[from] and by bounds[to].
  struct Seen {
    std::size_t from = 0;
    std::size_t to = 0;
    double seeds = 0;
  };
  /// Seeds that had not germinated by bounds[since], the last look of their tray.
  struct Waiting {
    std::size_t since = 0;
    double seeds = 0;
  };

  std::vector<double> bounds; ///< ascending and distinct; the first is 0, the sowing
  std::vector<Seen> seen;     ///< no two alike, in order of from, then to
  std::vector<Waiting> waiting;
  double removed = 0; ///< seeds taken out dead: they never germinate

  [[nodiscard]] double germinated() const;
  [[nodiscard]] double sown() const;
  /// Latest begin and earliest end of all intervals seen, as places in `bounds`. One moment lies in
  /// all of them when begin < end; when begin == end they only touch there. Needs a seed seen.
  [[nodiscard]] std::size_t latest_begin() const;
  [[nodiscard]] std::size_t earliest_end() const;
};

/// From the trays at `places`.
IntervalCounts interval_counts(std::span<const Tray> trays, std::span<const std::size_t> places);
/// From all of them.
IntervalCounts interval_counts(std::span<const Tray> trays);

} // namespace coneline::stats
