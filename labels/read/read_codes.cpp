// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/read_codes.h"

#include "labels/read/candidate.h"
#include "labels/read/complete.h"
#include "labels/read/decode.h"
#include "labels/read/finder.h"
#include "labels/read/glance.h"
#include "labels/read/grid.h"
#include "labels/read/parallel.h"
#include "labels/read/straighten.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace coneline::labels {

namespace {

/// The picture and its halvings, the largest first.
class Levels {
 public:
  explicit Levels(GrayView picture) : views_{picture} {
    while (std::min(views_.back().width, views_.back().height) >= 160) {
      smaller_.push_back(halved(views_.back()));
      views_.push_back(smaller_.back().view());
    }
  }

  [[nodiscard]] int count() const { return static_cast<int>(views_.size()); }
  [[nodiscard]] GrayView view(int level) const { return views_[static_cast<std::size_t>(level)]; }
  /// The level at which a module of so many pixels is 4 to 8, or as near as there is.
  [[nodiscard]] int fitting(double module) const {
    return std::clamp(static_cast<int>(std::floor(std::log2(module / 4))), 0, count() - 1);
  }

 private:
  std::vector<GrayView> views_;
  std::vector<GrayImage> smaller_;
};

double distance(Point a, Point b) {
  return std::hypot(a.x - b.x, a.y - b.y);
}

/// The middle of a four-sided shape is where its diagonals cross, seen at a slant as well.
Point middle_of(const std::array<Point, 4>& corners) {
  const auto& [a, b, c, d] = corners;
  const double across = (b.x - d.x) * (c.y - a.y) - (b.y - d.y) * (c.x - a.x);
  if (std::abs(across) < 1e-9)
    return {(a.x + b.x + c.x + d.x) / 4, (a.y + b.y + c.y + d.y) / 4};
  const double t = ((b.x - d.x) * (b.y - a.y) - (b.y - d.y) * (b.x - a.x)) / across;
  return {a.x + t * (c.x - a.x), a.y + t * (c.y - a.y)};
}

/// A symbol that was read, and how far from its middle another one cannot be.
struct Read {
  Sighting seen;
  Point middle;
  double radius; ///< half of its shorter side

  explicit Read(Sighting sighting)
      : seen(std::move(sighting)), middle(middle_of(seen.corners)),
        radius(std::min(distance(seen.corners[0], seen.corners[1]),
                        distance(seen.corners[1], seen.corners[2])) /
               2) {}
};

/// Adds what is not there yet. Two codes are one when their middles are closer than two labels can
/// lie.
void add(std::vector<Read>& reads, const Read& read) {
  if (std::ranges::none_of(reads, [&](const Read& known) {
        return distance(known.middle, read.middle) < std::max(known.radius, read.radius);
      }))
    reads.push_back(read);
}

constexpr int row_step = 3; // rows; a square of the smallest module still meets two
constexpr int strip_height = 512;
constexpr int strip_overlap = 96; // the largest square of a level lies whole in one strip

/// The squares of all levels, in pixels of the whole picture. One met at two levels is kept as the
/// larger picture shows it.
std::vector<Finder> all_finders(const Levels& levels) {
  struct Strip {
    int level;
    int top;
    std::vector<Finder> finders;
  };
  std::vector<Strip> strips;
  for (int level = 0; level < levels.count(); ++level)
    for (int top = 0; top < levels.view(level).height; top += strip_height)
      strips.push_back({level, top, {}});
  in_parallel(static_cast<int>(strips.size()), [&](int i) {
    auto& strip = strips[static_cast<std::size_t>(i)];
    const auto view = levels.view(strip.level);
    strip.finders =
        find_finders(view.part(0, strip.top, view.width, strip_height + strip_overlap), row_step);
  });
  std::vector<Finder> all;
  for (const auto& strip : strips)
    for (auto finder : strip.finders) {
      const double scale = std::exp2(strip.level);
      finder.middle = {finder.middle.x * scale, (finder.middle.y + strip.top) * scale};
      finder.module *= scale;
      finder.sureness = std::min(1.0, finder.rows * row_step * scale / (3 * finder.module));
      const bool known = std::ranges::any_of(all, [&](const Finder& other) {
        return distance(other.middle, finder.middle) < 2 * std::max(other.module, finder.module);
      });
      if (!known)
        all.push_back(finder);
    }
  return all;
}

constexpr int pixels = 6; // a module of a straightened candidate

Read placed(Sighting seen, const Candidate& candidate) {
  for (auto& corner : seen.corners)
    corner = candidate.at(corner.x / pixels - kept_around, corner.y / pixels - kept_around);
  return Read(std::move(seen));
}

std::optional<Read> read_candidate(const Levels& levels, const Candidate& candidate) {
  const int level = levels.fitting(candidate.module());
  const double scale = std::exp2(-level);
  if (!worth_reading(levels.view(level), scale, candidate))
    return std::nullopt;
  const auto upright = straightened(levels.view(level), scale, candidate, pixels);
  const auto reading = read_grid(upright.view(), candidate.modules, pixels);
  auto seen = reading.seen;
  for (const auto threshold : {Threshold::one, Threshold::local})
    if (!seen && reading.promising()) {
      auto found = decode_qr(upright.view(), threshold, 1);
      if (!found.empty())
        seen = std::move(found.front());
    }
  if (!seen && reading.squares > 0.85)
    seen = read_grid(upright.view(), candidate.modules, pixels, Care::careful).seen;
  if (!seen)
    return std::nullopt;
  return placed(*std::move(seen), candidate);
}

/// Reads candidates in rounds, the best fits first. What was read takes its squares with it, so
/// that the many false triples between neighbouring labels are never looked at.
void read_candidates(const Levels& levels, const std::vector<Candidate>& candidates,
                     std::size_t finders, std::vector<Read>& reads) {
  std::vector<bool> spent(finders, false);
  auto next = candidates.begin();
  for (const double misfit : {0.15, 0.35, 0.6, 1e9}) {
    std::vector<const Candidate*> round;
    for (; next != candidates.end() && next->misfit <= misfit; ++next)
      if (std::ranges::none_of(next->squares, [&](std::size_t i) { return spent[i]; }))
        round.push_back(&*next);
    std::vector<std::optional<Read>> each(round.size());
    in_parallel(static_cast<int>(round.size()), [&](int i) {
      const auto piece = static_cast<std::size_t>(i);
      each[piece] = read_candidate(levels, *round[piece]);
    });
    for (std::size_t i = 0; i < round.size(); ++i)
      if (each[i]) {
        add(reads, *each[i]);
        for (const auto used : round[i]->squares)
          spent[used] = true;
      }
  }
}

bool belongs(const std::vector<Read>& reads, const Finder& finder) {
  return std::ranges::any_of(reads, [&](const Read& read) {
    return distance(read.middle, finder.middle) < 1.6 * read.radius;
  });
}

/// Reads codes of which one square was not found.
void read_pairs(const Levels& levels, std::vector<Finder> finders, std::vector<Read>& reads) {
  constexpr double least_third = 0.6; // likeness of a square under a blot
  constexpr std::size_t most = 400;   // squares; more are a ground of their own
  std::erase_if(finders, [&](const Finder& f) { return f.sureness < 0.4 || belongs(reads, f); });
  std::ranges::stable_sort(finders, std::ranges::greater(), &Finder::sureness);
  finders.resize(std::min(finders.size(), most));
  auto candidates = from_pairs(finders);
  std::vector<std::optional<Read>> each(candidates.size());
  in_parallel(static_cast<int>(candidates.size()), [&](int i) {
    const auto piece = static_cast<std::size_t>(i);
    auto& candidate = candidates[piece];
    const int level = levels.fitting(candidate.module());
    const double scale = std::exp2(-level);
    if (settle(levels.view(level), scale, candidate) < least_third)
      return;
    const auto upright = straightened(levels.view(level), scale, candidate, pixels);
    const auto first = read_grid(upright.view(), candidate.modules, pixels);
    auto seen = first.seen;
    if (!seen && first.squares > 0.78 && first.dots >= 0.6)
      seen = read_grid(upright.view(), candidate.modules, pixels, Care::careful).seen;
    if (seen)
      each[piece] = placed(*std::move(seen), candidate);
  });
  for (const auto& read : each)
    if (read)
      add(reads, *read);
}

/// Takes in what the decoder saw in a part of a level.
void add_all(std::vector<Read>& reads, std::vector<Sighting> seen, Point corner, double scale) {
  for (auto& sighting : seen) {
    for (auto& place : sighting.corners)
      place = {(place.x + corner.x) * scale, (place.y + corner.y) * scale};
    add(reads, Read(std::move(sighting)));
  }
}

/// Lets the decoder itself search around squares that belong to nothing read so far, the surest
/// first: codes whose third square is spoilt for the finder, and versions above 10.
void read_around_squares(const Levels& levels, std::vector<Finder> finders,
                         std::vector<Read>& reads) {
  constexpr std::size_t most = 24; // a busy ground has hundreds that only look like squares
  constexpr double sure = 0.7;     // of the rows that a square of this size would meet
  constexpr int half = 208;        // pixels: a code of version 1 lies whole beside its square
  std::erase_if(finders, [&](const Finder& f) { return f.sureness < sure || belongs(reads, f); });
  std::ranges::stable_sort(finders, std::ranges::greater(), &Finder::sureness);
  finders.resize(std::min(finders.size(), most));
  std::vector<std::vector<Read>> each(finders.size());
  in_parallel(static_cast<int>(finders.size()), [&](int i) {
    const auto& finder = finders[static_cast<std::size_t>(i)];
    const int level = levels.fitting(finder.module);
    const double scale = std::exp2(level);
    const int left = std::max(0, static_cast<int>(finder.middle.x / scale) - half);
    const int top = std::max(0, static_cast<int>(finder.middle.y / scale) - half);
    const auto tile = levels.view(level).part(left, top, 2 * half, 2 * half);
    for (const auto threshold : {Threshold::one, Threshold::local})
      add_all(each[static_cast<std::size_t>(i)], decode_qr(tile, threshold, 9),
              {static_cast<double>(left), static_cast<double>(top)}, scale);
  });
  for (const auto& some : each)
    for (const auto& read : some)
      add(reads, read);
}

/// A picture in which no square led to a code: the decoder sees the whole of it, large and small.
void read_whole(const Levels& levels, std::vector<Read>& reads) {
  for (int level = 0; level < levels.count() && reads.empty(); ++level)
    for (const auto threshold : {Threshold::one, Threshold::local})
      add_all(reads, decode_qr(levels.view(level), threshold, 255), {}, std::exp2(level));
}

/// A Data Matrix anywhere. The library looks along lines through a picture's middle, so that each
/// strip of the picture is one to it; a symbol is met by that strip whose middle it lies across.
void read_data_matrix(const Levels& levels, std::vector<Read>& reads) {
  constexpr int most_wide =
      1600;                 // pixels; in a larger picture it is large enough in the halved one
  constexpr int half = 200; // pixels; larger symbols are met in the next level
  constexpr int step = 24;  // pixels, less than the smallest symbol is high
  for (int level = 0; level < levels.count(); ++level) {
    const auto view = levels.view(level);
    if (view.width > most_wide && level + 1 < levels.count())
      continue;
    const int strips = view.height / step;
    // As far below its middle as above it.
    const auto reach = [&](int i) {
      return std::min({(i + 1) * step, view.height - (i + 1) * step, half});
    };
    std::vector<std::optional<Sighting>> each(static_cast<std::size_t>(strips));
    in_parallel(strips, [&](int i) {
      each[static_cast<std::size_t>(i)] =
          decode_data_matrix(view.part(0, (i + 1) * step - reach(i), view.width, 2 * reach(i)));
    });
    for (int i = 0; i < strips; ++i)
      if (auto& seen = each[static_cast<std::size_t>(i)]) {
        const auto top = static_cast<double>((i + 1) * step - reach(i));
        add_all(reads, {*std::move(seen)}, {0, top}, std::exp2(level));
        return;
      }
  }
}

/// A Data Matrix or Code 128, looked for in the halved picture first where the picture is large.
/// One that lies within a QR code is none.
void read_lone(const Levels& levels, std::vector<Read>& reads) {
  const bool alone = reads.empty();
  const int first = levels.view(0).width > 1600 ? 1 : 0;
  for (const int level : {first, 0, first + 1}) {
    if (level >= levels.count())
      continue;
    if (auto seen = decode_lone(levels.view(level))) {
      add_all(reads, {*std::move(seen)}, {}, std::exp2(level));
      return;
    }
    if (!alone)
      return; // beside QR codes one look is enough
  }
  read_data_matrix(levels, reads);
}

} // namespace

std::vector<FoundCode> read_codes(GrayView picture) {
  const Levels levels(picture);
  const auto finders = all_finders(levels);
  std::vector<Read> reads;
  read_candidates(levels, find_candidates(finders), finders.size(), reads);
  read_pairs(levels, finders, reads);
  read_around_squares(levels, finders, reads);
  if (reads.empty())
    read_whole(levels, reads);
  read_lone(levels, reads);
  std::vector<FoundCode> codes;
  for (const auto& read : reads)
    codes.push_back({read.seen.text, read.seen.format, static_cast<int>(std::lround(read.middle.x)),
                     static_cast<int>(std::lround(read.middle.y))});
  std::ranges::sort(codes, {},
                    [](const FoundCode& code) { return std::tuple(code.y, code.x, code.text); });
  return codes;
}

} // namespace coneline::labels
