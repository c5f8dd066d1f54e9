// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A logger's readings day by day. What looks like a fault of the sensor is marked and left out of
// the days; what is missing is said. Nothing is smoothed and no gap is filled.

#include <cstddef>
#include <map>
#include <span>
#include <string_view>
#include <vector>

namespace coneline::stats {

/// `hours` since 1970-01-01 00:00 by the clock of the place.
struct TemperatureReading {
  double hours = 0;
  double celsius = 0;
};

enum class SensorMark {
  sound,
  out_of_range, ///< colder or hotter than any place for plants
  stuck,        ///< the very same number for long
  spike         ///< one to three readings far off from those before and after, which agree
};
std::string_view sensor_word(SensorMark mark); ///< "sound", "out of range", "stuck", "spike"

/// All are common practice without a source.
struct SensorRules {
  double coldest = -40;       ///< °C
  double hottest = 70;        ///< °C
  double stuck_hours = 24;    ///< so long without the slightest change
  double spike_celsius = 8;   ///< so far from both neighbours, on one side
  double spike_hours = 3;     ///< and back within so long
  double gap_hours = 3;       ///< a longer time between sound readings is a gap; also 2.5 times the
                              ///< usual time between readings where that is longer
  double hours_of_a_day = 21; ///< a day with fewer hours measured has no temperature
};

/// One mark a reading. Readings in the order of their hours, no two at one.
std::vector<SensorMark> sensor_marks(std::span<const TemperatureReading> readings,
                                     const SensorRules& rules = {});

/// A time without a sound reading.
struct TemperatureGap {
  double from = 0; ///< hours, of the last sound reading before it
  double to = 0;   ///< hours, of the first after it
};

/// One day of the calendar, from midnight to midnight.
struct DayTemperature {
  double low = 0;
  double high = 0;
  double mean = 0;           ///< over the hours measured, straight lines between readings
  double above_base = 0;     ///< mean of what the temperature was above the base, likewise
  double hours_measured = 0; ///< of 24, gaps left out
  std::size_t readings = 0;  ///< sound ones
};

struct TemperatureDays {
  std::map<int, DayTemperature> known; ///< by days since 1970-01-01; those measured long enough
  std::vector<int> lacking;            ///< days between first and last reading that are not
  std::vector<TemperatureGap> gaps;
};

/// `base` in °C, for `above_base`. `marks` as sensor_marks gave them.
TemperatureDays temperature_days(std::span<const TemperatureReading> readings,
                                 std::span<const SensorMark> marks, double base,
                                 const SensorRules& rules = {});

} // namespace coneline::stats
