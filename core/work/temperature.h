// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What was measured at the places, and how warm the trays that stood there had it.

#include "core/base/progress.h"
#include "core/stats/degree_days.h"
#include "core/store/writing.h"
#include "core/work/germination.h"

#include <map>

namespace coneline::work {

struct TakenIn {
  std::size_t taken = 0;     ///< new readings
  std::size_t known = 0;     ///< readings the book had already
  std::size_t differing = 0; ///< moments for which the book has another temperature, which stays
};

/// Adds the readings the place does not have yet, so that an overlapping file brings only what is
/// new. Readings by time, no two of one moment. Where `progress` stops it, the caller refuses the
/// transaction.
Result<TakenIn> take_in_temperature(store::Writing& writing, book::PlaceId place,
                                    std::span<const book::Temperature> readings,
                                    const Progress& progress = {});

struct MarkedReading {
  Moment at;
  double celsius = 0;
  stats::SensorMark mark = stats::SensorMark::sound;
};

struct PlaceTemperature {
  book::Place place;
  std::size_t readings = 0;
  Moment first;
  Moment last;
  std::vector<MarkedReading> marked; ///< those that look like a fault of the sensor
  stats::TemperatureDays days;
};

/// Every place with a reading, in the order of their walk. `base` in °C, for degree-days.
std::vector<PlaceTemperature> place_temperatures(store::Reading& reading,
                                                 const book::Registers& registers, double base);

struct DegreeDayRules {
  double base = 10; ///< °C; common practice, no source: set your own
  stats::DegreeDays method = stats::DegreeDays::average;
  /// A tray with a larger share of days without temperature has no degree-days. Common practice, no
  /// source.
  double most_lacking = 0.1;
};

/// A tray by degree-days.
struct TrayWarmth {
  ObservedTray
      tray;        ///< `day` of its looks are degree-days since sowing; looks with as many are one
  int days = 0;    ///< from sowing to its last look
  int lacking = 0; ///< of these without temperature; each counts like the mean of the others
  std::optional<double> celsius; ///< mean of the days known
};

class Warmth;
/// Mean °C from sowing to the last look of every tray where it is known, for `why`.
std::map<book::LotId, double> celsius_of_trays(const Warmth& warmth,
                                               std::span<const ObservedTray> trays);

/// The temperatures of a book, by day and place. A bench or bay without a logger has the
/// temperature of what it is within.
class Warmth {
 public:
  Warmth(store::Reading& reading, const book::Registers& registers, DegreeDayRules rules);

  [[nodiscard]] const DegreeDayRules& rules() const { return rules_; }
  /// Mean °C from sowing to the last look; nothing where fewer than half of the days are known.
  [[nodiscard]] std::optional<double> celsius(const ObservedTray& tray) const;
  /// Fails, saying why, where too many days lack a temperature.
  [[nodiscard]] Result<TrayWarmth> in_degree_days(const ObservedTray& tray) const;

 private:
  [[nodiscard]] const stats::DayTemperature* day_of(const ObservedTray& tray, Date date) const;

  DegreeDayRules rules_;
  std::map<book::PlaceId, std::map<int, stats::DayTemperature>> days_;
  std::map<book::PlaceId, book::PlaceId> within_;
  std::map<book::LotId, std::vector<book::Stay>> stays_;
};

} // namespace coneline::work
