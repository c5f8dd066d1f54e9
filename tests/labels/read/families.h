// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The families of scenes of the corpus, and how a reading of one is scored.

#include "labels/read/found.h"
#include "tests/labels/read/scene.h"

#include <string>
#include <vector>

namespace coneline::labels {

struct Family {
  std::string name;
  int scenes = 0;
  std::uint64_t first_seed = 0;
  SceneWish wish;
};

std::vector<Family> corpus_families();

struct Score {
  int labels = 0;
  int readable = 0; ///< clean ones, and dirty ones that the library reads alone
  int found = 0;    ///< of the readable ones
  int beyond = 0;   ///< found although the library reads them not even alone
  int untrue = 0;   ///< read, but not there: wrong text, wrong place, or twice
  std::vector<Placed> missed;
  std::vector<std::string> untrue_texts;

  void add(const Score& other);
};

/// A middle within two modules is in its place.
Score score_of(const Scene& scene, const std::vector<FoundCode>& codes);

} // namespace coneline::labels
