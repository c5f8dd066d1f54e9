// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/temperature_days.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace coneline::stats {

namespace {

using Readings = std::span<const TemperatureReading>;
using Marks = std::vector<SensorMark>;

void mark_out_of_range(Readings readings, const SensorRules& rules, Marks& marks) {
  for (std::size_t i = 0; i < readings.size(); ++i)
    if (!(readings[i].celsius >= rules.coldest && readings[i].celsius <= rules.hottest))
      marks[i] = SensorMark::out_of_range;
}

void mark_stuck(Readings readings, const SensorRules& rules, Marks& marks) {
  for (std::size_t from = 0; from < readings.size();) {
    std::size_t to = from + 1;
    while (to < readings.size() && readings[to].celsius == readings[from].celsius)
      ++to;
    // Two equal readings a day apart are no sign of anything.
    const bool long_enough =
        to - from >= 6 && readings[to - 1].hours - readings[from].hours >= rules.stuck_hours;
    for (auto i = from; long_enough && i < to; ++i)
      if (marks[i] == SensorMark::sound)
        marks[i] = SensorMark::stuck;
    from = to;
  }
}

/// Whether the readings after `before` and up to `after` are a spike. Places in `sound`.
bool is_spike(Readings readings, std::span<const std::size_t> sound, std::size_t before,
              std::size_t after, const SensorRules& rules) {
  const auto& first = readings[sound[before]];
  const auto& last = readings[sound[after]];
  if (last.hours - first.hours > rules.spike_hours)
    return false;
  double least = std::numeric_limits<double>::infinity();
  int sides = 0;
  for (auto i = before + 1; i < after; ++i) {
    const double off_first = readings[sound[i]].celsius - first.celsius;
    const double off_last = readings[sound[i]].celsius - last.celsius;
    if (off_first * off_last <= 0)
      return false;
    sides += off_first > 0 ? 1 : -1;
    least = std::min({least, std::abs(off_first), std::abs(off_last)});
  }
  const auto many = static_cast<int>(after - before - 1);
  return least > rules.spike_celsius && std::abs(sides) == many &&
         std::abs(last.celsius - first.celsius) < least / 2;
}

void mark_spikes(Readings readings, const SensorRules& rules, Marks& marks) {
  constexpr std::size_t most = 3;
  std::vector<std::size_t> sound;
  for (std::size_t i = 0; i < readings.size(); ++i)
    if (marks[i] == SensorMark::sound)
      sound.push_back(i);
  for (std::size_t before = 0; before + 2 < sound.size(); ++before)
    for (std::size_t many = 1; many <= most && before + many + 1 < sound.size(); ++many)
      if (is_spike(readings, sound, before, before + many + 1, rules)) {
        for (std::size_t i = 1; i <= many; ++i)
          marks[sound[before + i]] = SensorMark::spike;
        before += many;
        break;
      }
}

/// The usual time between readings: the middle one of all.
double usual_step(std::span<const TemperatureReading> sound) {
  std::vector<double> steps;
  for (std::size_t i = 1; i < sound.size(); ++i)
    steps.push_back(sound[i].hours - sound[i - 1].hours);
  if (steps.empty())
    return 0;
  const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2);
  std::ranges::nth_element(steps, middle);
  return *middle;
}

/// Mean of max(0, T - base) along a straight line from `a` to `b`.
double mean_above(double a, double b, double base) {
  a -= base;
  b -= base;
  if (a >= 0 && b >= 0)
    return (a + b) / 2;
  if (a <= 0 && b <= 0)
    return 0;
  const double high = std::max(a, b);
  return high * high / (2 * std::abs(a - b));
}

class Days {
 public:
  explicit Days(double base) : base_(base) {}

  void reading(const TemperatureReading& reading) {
    auto& day = of(reading.hours);
    ++day.readings;
    day.low = std::min(day.low, reading.celsius);
    day.high = std::max(day.high, reading.celsius);
  }

  /// The stretch between two readings, cut at midnights.
  void stretch(const TemperatureReading& from, const TemperatureReading& to) {
    const double slope = (to.celsius - from.celsius) / (to.hours - from.hours);
    for (double begin = from.hours; begin < to.hours;) {
      const double midnight = 24 * (std::floor(begin / 24) + 1);
      const double end = std::min(midnight, to.hours);
      const double a = from.celsius + slope * (begin - from.hours);
      const double b = from.celsius + slope * (end - from.hours);
      auto& day = of(begin);
      day.hours_measured += end - begin;
      day.mean += (a + b) / 2 * (end - begin);
      day.above_base += mean_above(a, b, base_) * (end - begin);
      begin = end;
    }
  }

  TemperatureDays sorted(const SensorRules& rules) {
    TemperatureDays days;
    if (all_.empty())
      return days;
    for (int number = all_.begin()->first; number <= all_.rbegin()->first; ++number) {
      const auto found = all_.find(number);
      if (found == all_.end() || found->second.readings == 0 ||
          found->second.hours_measured < rules.hours_of_a_day) {
        days.lacking.push_back(number);
        continue;
      }
      auto day = found->second;
      day.mean /= day.hours_measured;
      day.above_base /= day.hours_measured;
      days.known.emplace(number, day);
    }
    return days;
  }

 private:
  DayTemperature& of(double hours) {
    const auto [day, fresh] = all_.try_emplace(static_cast<int>(std::floor(hours / 24)));
    if (fresh) {
      day->second.low = std::numeric_limits<double>::infinity();
      day->second.high = -std::numeric_limits<double>::infinity();
    }
    return day->second;
  }

  double base_;
  std::map<int, DayTemperature> all_;
};

} // namespace

std::string_view sensor_word(SensorMark mark) {
  switch (mark) {
  case SensorMark::sound:
    return "sound";
  case SensorMark::out_of_range:
    return "out of range";
  case SensorMark::stuck:
    return "stuck";
  case SensorMark::spike:
    return "spike";
  }
  return "";
}

Marks sensor_marks(Readings readings, const SensorRules& rules) {
  Marks marks(readings.size(), SensorMark::sound);
  mark_out_of_range(readings, rules, marks);
  mark_stuck(readings, rules, marks);
  mark_spikes(readings, rules, marks);
  return marks;
}

TemperatureDays temperature_days(Readings readings, std::span<const SensorMark> marks, double base,
                                 const SensorRules& rules) {
  std::vector<TemperatureReading> sound;
  for (std::size_t i = 0; i < readings.size(); ++i)
    if (marks[i] == SensorMark::sound)
      sound.push_back(readings[i]);
  const double longest = std::max(rules.gap_hours, 2.5 * usual_step(sound));
  Days days(base);
  std::vector<TemperatureGap> gaps;
  for (std::size_t i = 0; i < sound.size(); ++i) {
    days.reading(sound[i]);
    if (i + 1 == sound.size())
      break;
    if (sound[i + 1].hours - sound[i].hours > longest)
      gaps.push_back({sound[i].hours, sound[i + 1].hours});
    else
      days.stretch(sound[i], sound[i + 1]);
  }
  auto made = days.sorted(rules);
  made.gaps = std::move(gaps);
  return made;
}

} // namespace coneline::stats
