// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/labels/read/families.h"

#include <algorithm>
#include <cmath>

namespace coneline::labels {

std::vector<Family> corpus_families() {
  SceneWish usual;
  usual.width = 2400;
  usual.height = 1800;
  usual.labels = 12;
  std::vector<Family> families;
  const auto add = [&](const char* name, int scenes, auto change) {
    auto wish = usual;
    change(wish);
    families.push_back({name, scenes, 10'000 + 1'000 * families.size(), wish});
  };
  add("clean", 30, [](SceneWish&) {});
  add("clean, 4 to 5 pixels", 20, [](SceneWish& w) {
    w.labels = 24;
    w.most_module = 5;
    w.blur = 0.7;
  });
  add("clean, 8 to 10 pixels", 12, [](SceneWish& w) {
    w.labels = 9;
    w.least_module = 8;
    w.blur = 1.5;
  });
  add("clean, upright", 10, [](SceneWish& w) { w.turned = false; });
  add("clean, still ground", 10, [](SceneWish& w) { w.busy = false; });
  add("clean, blurred", 20, [](SceneWish& w) {
    w.least_module = 5;
    w.blur = 1.5;
  });
  add("clean, moved", 15, [](SceneWish& w) {
    w.least_module = 5;
    w.motion = 3.5;
  });
  add("clean, dim and grainy", 20, [](SceneWish& w) {
    w.shade = 0.8;
    w.grain = 10;
  });
  add("clean, coarse JPEG", 20, [](SceneWish& w) { w.jpeg_quality = 45; });
  add("clean, tilted more", 20, [](SceneWish& w) { w.tilt = 0.2; });
  add("clean, 12 megapixels", 10, [](SceneWish& w) {
    w.width = 4000;
    w.height = 3000;
    w.labels = 24;
  });
  add("dirty beside the corners", 40, [](SceneWish& w) { w.dirt = 0.06; });
  add("dirty anywhere", 40, [](SceneWish& w) {
    w.dirt = 0.06;
    w.corners_clean = false;
  });
  add("dirty, 4 to 5 pixels", 20, [](SceneWish& w) {
    w.labels = 24;
    w.most_module = 5;
    w.blur = 0.7;
    w.dirt = 0.06;
    w.corners_clean = false;
  });
  add("dirty, hard light and blur", 20, [](SceneWish& w) {
    w.least_module = 5;
    w.dirt = 0.06;
    w.blur = 1.3;
    w.shade = 0.75;
    w.grain = 8;
    w.jpeg_quality = 60;
    w.corners_clean = false;
  });
  add("no label", 20, [](SceneWish& w) { w.labels = 0; });
  return families;
}

void Score::add(const Score& other) {
  labels += other.labels;
  readable += other.readable;
  found += other.found;
  beyond += other.beyond;
  untrue += other.untrue;
}

Score score_of(const Scene& scene, const std::vector<FoundCode>& codes) {
  Score score;
  auto left = scene.labels;
  score.labels = static_cast<int>(left.size());
  score.readable = static_cast<int>(std::ranges::count_if(left, &Placed::readable));
  for (const auto& code : codes) {
    const auto there = std::ranges::find_if(left, [&](const Placed& placed) {
      return placed.text == code.text &&
             std::hypot(placed.x - code.x, placed.y - code.y) < 2 * placed.module;
    });
    if (there == left.end()) {
      ++score.untrue;
      score.untrue_texts.push_back(code.text);
      continue;
    }
    ++(there->readable ? score.found : score.beyond);
    left.erase(there);
  }
  std::ranges::copy_if(left, std::back_inserter(score.missed), &Placed::readable);
  return score;
}

} // namespace coneline::labels
