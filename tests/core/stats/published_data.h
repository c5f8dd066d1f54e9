// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Reads the published data of tests/data/germination (its README names the publications).

#include "core/base/csv.h"
#include "core/base/number.h"
#include "core/stats/beta_binomial.h"
#include "core/stats/germination_data.h"

namespace coneline::stats {

inline CsvTable published(const std::string& file) {
  return read_csv_file(fmt::format("{}/germination/{}", CONELINE_TEST_DATA, file)).value();
}

/// Ritz, Pipper & Streibig 2013: one tray of 200 seeds, hours.
inline std::vector<Tray> chickweed() {
  const auto table = published("chickweed-hours.csv");
  Tray tray{"chickweed", "1", 200, {}};
  for (const auto& row : table.rows)
    tray.looks.push_back(
        {parse_real(row.fields[3]).value(), parse_whole(row.fields[4]).value(), 0});
  return {tray};
}

/// Finkelstein & Wolfe 1985: every person is a tray of one, looked at where an interval begins and
/// where it ends.
inline std::vector<Tray> cosmesis() {
  std::vector<Tray> trays;
  const auto table = published("cosmesis-months.csv");
  for (const auto& row : table.rows) {
    Tray tray{"radiotherapy", std::to_string(row.line), 1, {}};
    const double from = parse_real(row.fields[0]).value();
    if (from > 0)
      tray.looks.push_back({from, 0, 0});
    if (!row.fields[1].empty())
      tray.looks.push_back({parse_real(row.fields[1]).value(), 1, 0});
    trays.push_back(tray);
  }
  return trays;
}

/// Crowder 1978, Applied Statistics 27:34-37: intercept (O.a.75, bean), O.a.73, cucumber, both.
inline std::vector<Pattern> orobanche() {
  const auto table = published("orobanche-plates.csv");
  std::vector<Pattern> patterns;
  for (const double variety : {0.0, 1.0})
    for (const double extract : {0.0, 1.0}) {
      Pattern pattern{{1, variety, extract, variety * extract}, {}};
      for (const auto& row : table.rows)
        if ((row.fields[0] == "O.a.73") == (variety == 1) &&
            (row.fields[1] == "cucumber") == (extract == 1))
          pattern.outcomes.push_back(
              {parse_whole(row.fields[3]).value(), parse_whole(row.fields[4]).value()});
      patterns.push_back(pattern);
    }
  return patterns;
}

} // namespace coneline::stats
