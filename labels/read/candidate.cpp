// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/candidate.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace coneline::labels {

namespace {

constexpr double to_middle = 3.5;      // modules from a code's corner to the middle of its square
constexpr double longest_leg = 50;     // modules between the middles of squares, version 10
constexpr double largest_misfit = 1.1; // lets through a tilt of about 35 degrees

Point minus(Point a, Point b) {
  return {a.x - b.x, a.y - b.y};
}
double length(Point p) {
  return std::hypot(p.x, p.y);
}

/// Squares are measured along the axes; a turned one is met at a slant and looks larger.
double straight_module(const Finder& finder, Point leg) {
  const double size = length(leg);
  return finder.module * std::max(std::abs(leg.x), std::abs(leg.y)) / size;
}

std::optional<Candidate> candidate(const Finder& corner, const Finder& one, const Finder& two) {
  Point right = minus(one.middle, corner.middle);
  Point below = minus(two.middle, corner.middle);
  const double turn = right.x * below.y - right.y * below.x;
  if (turn < 0)
    return std::nullopt; // the pair comes again the other way round
  const double across = length(right);
  const double down = length(below);
  const double slant = std::abs(right.x * below.x + right.y * below.y) / (across * down);
  const double uneven = std::abs(std::log(across / down));
  if (slant > 0.5 || uneven > 0.5)
    return std::nullopt;
  const double module = (straight_module(corner, right) + straight_module(corner, below) +
                         straight_module(one, right) + straight_module(two, below)) /
                        4;
  const double legs = (across + down) / 2 / module;
  const int version = std::max(1, static_cast<int>(std::lround((legs - 14) / 4)) + 1);
  const double expected = 14 + 4 * (version - 1);
  const double stretch = std::abs(std::log(legs / expected));
  const auto sizes = std::minmax({corner.module, one.module, two.module});
  const double misfit = slant + uneven + 2 * stretch + 0.5 * std::log(sizes.second / sizes.first);
  if (misfit > largest_misfit || version > 10)
    return std::nullopt;
  return Candidate{corner.middle, one.middle,   two.middle, 17 + 4 * version, {},
                   misfit,        Missing::none};
}

} // namespace

Point Candidate::at(double across, double down) const {
  const double legs = modules - 2 * to_middle;
  const double a = (across - to_middle) / legs;
  const double d = (down - to_middle) / legs;
  return {corner.x + a * (right.x - corner.x) + d * (below.x - corner.x),
          corner.y + a * (right.y - corner.y) + d * (below.y - corner.y)};
}

double Candidate::module() const {
  return (length(minus(right, corner)) + length(minus(below, corner))) / 2 /
         (modules - 2 * to_middle);
}

std::vector<Candidate> find_candidates(const std::vector<Finder>& finders) {
  std::vector<Candidate> found;
  std::vector<const Finder*> near;
  const auto place = [&](const Finder& finder) {
    return static_cast<std::size_t>(&finder - finders.data());
  };
  for (const auto& corner : finders) {
    near.clear();
    for (const auto& other : finders) {
      const double apart = length(minus(other.middle, corner.middle)) / corner.module;
      const double alike = other.module / corner.module;
      if (apart > 8 && apart < longest_leg * 1.2 && alike > 0.6 && alike < 1.7)
        near.push_back(&other);
    }
    for (const auto* one : near)
      for (const auto* two : near)
        if (one != two)
          if (auto possible = candidate(corner, *one, *two)) {
            possible->squares = {place(corner), place(*one), place(*two)};
            found.push_back(*possible);
          }
  }
  std::ranges::stable_sort(found, {}, &Candidate::misfit);
  return found;
}

} // namespace coneline::labels
