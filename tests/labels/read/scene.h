// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Makes pictures of benches with labels on them, as a telephone would take them: turned, tilted, a
// little blurred, unevenly lit, on a busy ground, with grain and JPEG loss. Everything follows from
// a seed, so what must be read is known exactly.

#include <QImage>
#include <QString>

#include <cstdint>
#include <string>
#include <vector>

namespace coneline::labels {

struct SceneWish {
  int width = 4000;
  int height = 3000;
  int labels = 24;
  double least_module = 4; ///< pixels
  double most_module = 10;
  double tilt = 0.12; ///< how far corners are drawn in, as a share of the side
  bool turned = true; ///< any angle; else upright
  double blur = 0.8;  ///< pixels, standard deviation
  double shade = 0.5; ///< darkest light as a share of the brightest, taken away
  double grain = 5;   ///< grey levels, standard deviation
  bool busy = true;
  double motion = 0;         ///< pixels that the hand moved, along a line of any direction
  double dirt = 0;           ///< share of each code covered in blots
  bool corners_clean = true; ///< no blot touches the three squares
  int jpeg_quality = 85;     ///< 0 leaves the picture as it is
};

struct Placed {
  std::string text;
  double x = 0;
  double y = 0;
  double module = 0;
  /// Dirty ones only: whether the library reads the label alone, upright and sharp, 8 pixels a
  /// module.
  bool readable = true;
};

struct Scene {
  QImage picture; ///< RGB
  std::vector<Placed> labels;
};

Scene make_scene(const SceneWish& wish, std::uint64_t seed);

} // namespace coneline::labels
