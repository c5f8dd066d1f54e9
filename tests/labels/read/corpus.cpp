// SPDX-License-Identifier: GPL-3.0-or-later
// The corpus: scenes of benches by families of trouble, each scene from a seed, so that it need not
// be kept. Reads them all and prints what was found as a table; with a folder, keeps the pictures
// and what stands in them.
//
//   label_corpus [--scenes N] [--only FAMILY] [--keep FOLDER] [--missed]
//
// A dirty label counts when the library reads it alone from a perfect crop.
#include "labels/read/read_codes.h"
#include "tests/labels/read/blots.h"
#include "tests/labels/read/families.h"

#include <QDir>
#include <QGuiApplication>

#include <chrono>
#include <cstdio>
#include <cstring>
#include <fstream>

namespace {

using namespace coneline::labels;

struct Wish {
  int scenes = 0; ///< of a family; 0 for as many as it has
  const char* only = "";
  const char* keep = nullptr;
  bool missed = false;
};

Wish wish_of(int count, char** words) {
  Wish wish;
  for (int i = 1; i < count; ++i) {
    const bool more = i + 1 < count;
    if (std::strcmp(words[i], "--missed") == 0)
      wish.missed = true;
    else if (std::strcmp(words[i], "--scenes") == 0 && more)
      wish.scenes = std::atoi(words[++i]);
    else if (std::strcmp(words[i], "--only") == 0 && more)
      wish.only = words[++i];
    else if (std::strcmp(words[i], "--keep") == 0 && more)
      wish.keep = words[++i];
  }
  return wish;
}

void keep(const Scene& scene, const QString& folder, const std::string& name) {
  const auto path = folder + '/' + QString::fromStdString(name);
  scene.picture.save(path + ".png");
  std::ofstream expected((path + ".txt").toStdString());
  for (const auto& label : scene.labels)
    expected << label.text << ' ' << label.x << ' ' << label.y << ' ' << label.module << ' '
             << (label.readable ? "readable" : "spoilt") << '\n';
}

double milliseconds(std::chrono::steady_clock::duration time) {
  return std::chrono::duration<double, std::milli>(time).count();
}

} // namespace

int main(int count, char** words) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication application(count, words);
  const auto wish = wish_of(count, words);
  std::printf("%-34s %6s %7s %9s %8s %8s %6s %6s %9s %9s\n", "family", "scenes", "labels",
              "readable", "found", "share", "extra", "false", "ours ms", "plain ms");
  for (const auto& family : corpus_families()) {
    if (family.name.find(wish.only) == std::string::npos)
      continue;
    Score sum;
    double ours = 0;
    double plain = 0;
    const int scenes = wish.scenes > 0 ? wish.scenes : family.scenes;
    for (int i = 0; i < scenes; ++i) {
      const auto seed = family.first_seed + static_cast<std::uint64_t>(i);
      const auto scene = make_scene(family.wish, seed);
      const auto name = family.name + "-" + std::to_string(seed);
      if (wish.keep != nullptr)
        keep(scene, wish.keep, name);
      const auto begin = std::chrono::steady_clock::now();
      const auto codes = read_codes({scene.picture.constBits(), scene.picture.width(),
                                     scene.picture.height(), scene.picture.bytesPerLine()});
      const auto middle = std::chrono::steady_clock::now();
      plain_pass(scene.picture, 255);
      plain += milliseconds(std::chrono::steady_clock::now() - middle);
      ours += milliseconds(middle - begin);
      const auto score = score_of(scene, codes);
      if (wish.missed)
        for (const auto& label : score.missed)
          std::printf("  missed %s in %s at %.0f, %.0f, module %.1f\n", label.text.c_str(),
                      name.c_str(), label.x, label.y, label.module);
      for (const auto& text : score.untrue_texts)
        std::printf("  false %s in %s\n", text.c_str(), name.c_str());
      sum.add(score);
    }
    std::printf("%-34s %6d %7d %9d %8d %7.2f%% %6d %6d %9.1f %9.1f\n", family.name.c_str(), scenes,
                sum.labels, sum.readable, sum.found,
                sum.readable > 0 ? 100.0 * sum.found / sum.readable : 100.0, sum.beyond, sum.untrue,
                ours / scenes, plain / scenes);
    std::fflush(stdout);
  }
  return 0;
}
