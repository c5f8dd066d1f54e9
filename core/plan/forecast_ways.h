// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A book's lots laid out along their routes, ready to be walked: by draws (forecast_run) or as
// expected values (forecast_expected). Everything that is forecast is linear in two kinds of
// numbers: plants that stand at a spot at a month's end, and plants that go through an event (a
// move, becoming ready) within a month. What they yield is laid out here once.

#include "core/plan/forecast_times.h"

#include <cstdint>
#include <memory>

namespace coneline::plan {

enum class Shown {
  into,            ///< plants moved into a pot
  standing,        ///< plants in a pot at the month's end
  mix,             ///< litres finished, loss and settling in
  part,            ///< litres of a part of mixes, before they shrink
  square_metres,   ///< by light class, at the month's end
  load,            ///< kg by m² taken, by light class
  place_metres,    ///< m² by place: what stands there today and can stay
  place_load,      ///< kg by m² of the place
  unplaced_metres, ///< m² that has no place of its light class yet, by light class
  ready,           ///< plants becoming ready, by cross
};

/// One line of the forecast over its months.
struct SeriesName {
  Shown shown = Shown::into;
  std::string name; ///< of the pot, mix, part, light class, place or cross
  bool operator==(const SeriesName&) const = default;
};

struct Yield {
  std::size_t series = 0;
  double by_plant = 0;
};

/// Where plants, or for `tray` whole trays, stand.
struct Spot {
  std::vector<Yield> yields;
};
struct Event {
  std::vector<Yield> yields;
};

/// A step of a taxon's route.
struct WayStep {
  std::size_t survival = 0;       ///< place in Ways::survivals
  std::vector<LeaveMonths> leave; ///< by the month in which it was entered; not for the tray
};

/// What is known of a step's survival in the long run: a beta distribution.
struct Survival {
  double alive = 0;
  double died = 0;
  std::uint64_t key = 0; ///< of its random numbers
  [[nodiscard]] double mean() const { return alive / (alive + died); }
};

/// A cross whose seed may come up: those of ForecastInput::sprouting first, in their order, then
/// those that are still to be sown.
struct CrossWay {
  std::size_t draws = 0; ///< how many there are to choose from
  std::uint64_t key = 0; ///< of its random numbers
};

/// A sowing to come: which of its draws a run takes.
struct SowingWay {
  std::size_t draws = 0;
  std::uint64_t key = 0;
};

/// One lot from where it stands, or a sowing to come in one of its months. Lists by step begin with
/// the one it is at.
struct LotWay {
  Code code;             ///< of a sowing: its batch's or cone's, or none
  std::string name;      ///< the code, or what the sowing is
  std::uint64_t key = 0; ///< of its random numbers
  std::size_t first_step = 0;
  std::vector<const WayStep*> steps;
  std::vector<std::size_t> spots;  ///< by step
  std::vector<std::size_t> events; ///< by step: entering it; the first of no use
  std::size_t ready_event = 0;
  LeaveMonths leave; ///< the first step
  std::int64_t plants = 0;

  // of a tray
  std::int64_t waiting = 0;
  std::optional<std::size_t> cross; ///< place in Ways::crosses
  std::size_t tray = 0;             ///< place in CrossSprouting::trays
  std::optional<std::size_t> tray_spot;
  int sprouts_until = 0; ///< the month from which on it is given up

  // of a sowing
  std::optional<std::size_t> sowing;        ///< place in Ways::sowings
  int sown_in = 0;                          ///< the month
  int cells = 1;                            ///< seeds a tray takes
  std::vector<std::int64_t> seeds;          ///< by draw of the sowing
  std::vector<std::vector<double>> chances; ///< by draw of its cross, then by month
  [[nodiscard]] std::int64_t trays_of(std::int64_t sown) const {
    return (sown + cells - 1) / cells;
  }
};

struct Ways {
  Calendar calendar;
  std::vector<SeriesName> series = {};
  std::vector<Spot> spots = {};
  std::vector<Event> events = {};
  std::vector<std::unique_ptr<std::vector<WayStep>>> routes = {};
  std::vector<Survival> survivals = {};
  std::vector<CrossWay> crosses = {};
  std::vector<SowingWay> sowings = {};
  std::vector<LotWay> lots = {};
  std::vector<double> always = {}; ///< by series: what stands and is on no route
  std::vector<LeftOut> left_out = {};
  std::vector<std::string> remarks = {};
  std::optional<int> sold_after = {};
};

/// Of an input that can be planned.
Ways ways_of(const ForecastInput& input);

} // namespace coneline::plan
