// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/complete.h"

#include "labels/read/glance.h"
#include "labels/read/pattern.h"

#include <array>
#include <cmath>
#include <numbers>

namespace coneline::labels {

namespace {

constexpr double most_stretch = 0.22; // of the distance, as a logarithm: tilt and measuring
constexpr double least_known = 0.8;   // likeness of the two squares that were found

Point plus(Point a, Point b, double times = 1) {
  return {a.x + times * b.x, a.y + times * b.y};
}
/// A quarter turn, from right to below.
Point turned(Point p) {
  return {-p.y, p.x};
}

/// Where a square stands in a candidate, and the corner of its modules there.
struct Place {
  Point Candidate::*middle;
  bool is_right;
  bool is_below;
};
constexpr Place corner_place{&Candidate::corner, false, false};
constexpr Place right_place{&Candidate::right, true, false};
constexpr Place below_place{&Candidate::below, false, true};

double likeness(GrayView picture, double scale, const Candidate& candidate, const Place& place) {
  const int far = candidate.modules - square_modules;
  return square_likeness(picture, scale, candidate, place.is_below ? far : 0,
                         place.is_right ? far : 0);
}

/// The version, from 1 to 3, whose squares stand so many modules apart, or 0.
int version_at(double modules) {
  for (int version = 1; version <= 3; ++version)
    if (std::abs(std::log(modules / (10 + 4 * version))) < most_stretch / (version == 1 ? 1 : 2))
      return version;
  return 0;
}

void add_pair(std::vector<Candidate>& found, const Finder& a, const Finder& b, std::size_t i,
              std::size_t k) {
  const Point leg = plus(b.middle, a.middle, -1);
  const double apart = std::hypot(leg.x, leg.y);
  const double along = std::max(std::abs(leg.x), std::abs(leg.y)) / apart;
  const double mean = (a.module + b.module) / 2;
  const auto put = [&](Point corner, Point right, Point below, int version, Missing missing) {
    found.push_back({corner, right, below, 17 + 4 * version, {i, k, i}, 0, missing});
  };
  if (const int version = version_at(apart / (mean * along)); version > 0) {
    const Point aside = turned(leg);
    put(a.middle, b.middle, plus(a.middle, aside), version, Missing::below);
    put(b.middle, a.middle, plus(b.middle, aside, -1), version, Missing::below);
    put(a.middle, plus(a.middle, aside, -1), b.middle, version, Missing::right);
    put(b.middle, plus(b.middle, aside), a.middle, version, Missing::right);
  }
  // Across from each other: the legs stand at 45 degrees to the line between them.
  const double slanted =
      std::max(std::abs(leg.x + leg.y), std::abs(leg.x - leg.y)) / apart / std::numbers::sqrt2;
  if (const int version = version_at(apart / std::numbers::sqrt2 / (mean * slanted)); version > 0) {
    const Point half = {leg.x / 2, leg.y / 2};
    const Point middle = plus(a.middle, half);
    put(plus(middle, turned(half)), b.middle, a.middle, version, Missing::corner);
    put(plus(middle, turned(half), -1), a.middle, b.middle, version, Missing::corner);
  }
}

} // namespace

std::vector<Candidate> from_pairs(const std::vector<Finder>& finders) {
  constexpr double longest = 22 * std::numbers::sqrt2 * 1.3; // modules between two squares
  std::vector<Candidate> found;
  for (std::size_t i = 0; i < finders.size(); ++i)
    for (std::size_t k = i + 1; k < finders.size(); ++k) {
      const auto& a = finders[i];
      const auto& b = finders[k];
      const double reach = longest * std::max(a.module, b.module);
      const double alike = a.module / b.module;
      if (std::abs(a.middle.x - b.middle.x) < reach && std::abs(a.middle.y - b.middle.y) < reach &&
          alike > 0.65 && alike < 1.55)
        add_pair(found, a, b, i, k);
    }
  return found;
}

double settle(GrayView picture, double scale, Candidate& candidate) {
  const std::array places{corner_place, right_place, below_place};
  const auto& moved = places[static_cast<std::size_t>(candidate.missing)];
  for (const auto& place : places)
    if (place.middle != moved.middle && likeness(picture, scale, candidate, place) < least_known)
      return 0;
  constexpr double reach = 3; // modules
  constexpr double step = 0.5;
  const double module = candidate.module();
  const Point start = candidate.*moved.middle;
  Point best = start;
  double most = 0;
  for (double down = -reach; down <= reach; down += step)
    for (double across = -reach; across <= reach; across += step) {
      candidate.*moved.middle = {start.x + across * module, start.y + down * module};
      // Of two that look alike the nearer one.
      const double seen =
          likeness(picture, scale, candidate, moved) - 0.004 * std::hypot(across, down);
      if (seen > most) {
        most = seen;
        best = candidate.*moved.middle;
      }
    }
  candidate.*moved.middle = best;
  return most;
}

} // namespace coneline::labels
