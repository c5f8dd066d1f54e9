// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/temperature.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::work {

Result<TakenIn> take_in_temperature(store::Writing& writing, book::PlaceId place,
                                    std::span<const book::Temperature> readings,
                                    const Progress& progress) {
  constexpr std::size_t between = 1000;
  std::map<Moment, double> known;
  for (const auto& reading : writing.temperatures(place))
    known.emplace(reading.at, reading.celsius);
  TakenIn taken;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    if (progress && i % between == 0 && !progress(i, readings.size()))
      return refuse(stopped_taking_in());
    auto reading = readings[i];
    const auto found = known.find(reading.at);
    if (found == known.end()) {
      reading.place = place;
      if (auto added = writing.add(reading); !added)
        return refuse(added.error());
      ++taken.taken;
    } else if (found->second == reading.celsius) {
      ++taken.known;
    } else {
      ++taken.differing;
    }
  }
  if (progress && !progress(1, 1))
    return refuse(stopped_taking_in());
  return taken;
}

namespace {

std::vector<stats::TemperatureReading>
plain_readings(const std::vector<book::Temperature>& temperatures) {
  std::vector<stats::TemperatureReading> readings;
  readings.reserve(temperatures.size());
  for (const auto& one : temperatures)
    readings.push_back({one.at.hours(), one.celsius});
  return readings;
}

PlaceTemperature place_temperature(const book::Place& place,
                                   const std::vector<book::Temperature>& temperatures,
                                   double base) {
  const auto readings = plain_readings(temperatures);
  const auto marks = stats::sensor_marks(readings);
  PlaceTemperature made{place,
                        readings.size(),
                        temperatures.front().at,
                        temperatures.back().at,
                        {},
                        stats::temperature_days(readings, marks, base)};
  for (std::size_t i = 0; i < marks.size(); ++i)
    if (marks[i] != stats::SensorMark::sound)
      made.marked.push_back({temperatures[i].at, temperatures[i].celsius, marks[i]});
  return made;
}

} // namespace

std::vector<PlaceTemperature> place_temperatures(store::Reading& reading,
                                                 const book::Registers& registers, double base) {
  std::vector<PlaceTemperature> places;
  const auto measured = reading.places_measured();
  for (const auto& place : registers.places)
    if (std::ranges::find(measured, place.id) != measured.end())
      places.push_back(place_temperature(place, reading.temperatures(place.id), base));
  std::ranges::stable_sort(places, {}, [](const PlaceTemperature& one) { return one.place.walk; });
  return places;
}

Warmth::Warmth(store::Reading& reading, const book::Registers& registers, DegreeDayRules rules)
    : rules_(rules) {
  for (auto& one : place_temperatures(reading, registers, rules.base))
    days_[one.place.id] = std::move(one.days.known);
  if (days_.empty())
    return;
  for (const auto& place : registers.places)
    if (place.within)
      within_[place.id] = *place.within;
  for (const auto& stay : reading.stays())
    stays_[stay.lot].push_back(stay);
}

const stats::DayTemperature* Warmth::day_of(const ObservedTray& tray, Date date) const {
  const auto found = stays_.find(tray.lot.id);
  if (found == stays_.end())
    return nullptr;
  const book::Stay* stay = nullptr;
  for (const auto& one : found->second)
    if (one.from <= date)
      stay = &one;
  if (stay == nullptr)
    return nullptr;
  auto place = stay->place;
  constexpr int deepest = 10; // bay, bench, house; a damaged book may go in a circle
  for (int step = 0; step < deepest; ++step) {
    if (const auto days = days_.find(place); days != days_.end())
      if (const auto day = days->second.find(date.days()); day != days->second.end())
        return &day->second;
    const auto outer = within_.find(place);
    if (outer == within_.end())
      return nullptr;
    place = outer->second;
  }
  return nullptr;
}

std::optional<double> Warmth::celsius(const ObservedTray& tray) const {
  if (tray.looks.empty())
    return std::nullopt;
  const int days = days_between(tray.sown_on, tray.looks.back().date);
  double sum = 0;
  int known = 0;
  for (int day = 0; day < days; ++day)
    if (const auto* one = day_of(tray, tray.sown_on.plus_days(day))) {
      sum += one->mean;
      ++known;
    }
  if (known == 0 || 2 * known < days)
    return std::nullopt;
  return sum / known;
}

std::map<book::LotId, double> celsius_of_trays(const Warmth& warmth,
                                               std::span<const ObservedTray> trays) {
  std::map<book::LotId, double> celsius;
  for (const auto& tray : trays)
    if (const auto mean = warmth.celsius(tray))
      celsius[tray.lot.id] = *mean;
  return celsius;
}

Result<TrayWarmth> Warmth::in_degree_days(const ObservedTray& tray) const {
  TrayWarmth made{tray, 0, 0, celsius(tray)};
  if (tray.looks.empty())
    return made;
  made.days = days_between(tray.sown_on, tray.looks.back().date);
  std::vector<std::optional<double>> brought;
  double sum = 0;
  for (int day = 0; day < made.days; ++day) {
    const auto* one = day_of(tray, tray.sown_on.plus_days(day));
    brought.push_back(one != nullptr
                          ? std::optional(stats::degree_days(rules_.method, *one, rules_.base))
                          : std::nullopt);
    sum += brought.back().value_or(0);
    made.lacking += one == nullptr ? 1 : 0;
  }
  if (made.lacking > rules_.most_lacking * made.days)
    return refuse(fault(phrase("{} of its {} days have no temperature", made.lacking, made.days),
                        "Take in the logger's file of the place where it stood."));
  const double mean = made.days > made.lacking ? sum / (made.days - made.lacking) : 0;
  made.tray.looks.clear();
  double reached = 0;
  auto day = brought.begin();
  for (auto look : tray.looks) {
    for (const auto until = brought.begin() + days_between(tray.sown_on, look.date); day < until;
         ++day)
      reached += day->value_or(mean);
    look.day = reached;
    if (made.tray.looks.empty() || made.tray.looks.back().day < reached) {
      made.tray.looks.push_back(look);
      continue;
    }
    // No warmth came between the two looks: by degree-days they are one.
    auto& same = made.tray.looks.back();
    same.date = look.date;
    same.germinated += look.germinated;
    same.leaves += look.leaves;
    same.straight_to_leaf += look.straight_to_leaf;
    same.removed += look.removed;
  }
  return made;
}

} // namespace coneline::work
