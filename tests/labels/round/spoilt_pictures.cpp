// SPDX-License-Identifier: GPL-3.0-or-later
// Spoils pictures of labels at random, in every form that is read, and reads them as the program
// does: none may take it down, hang it or let it read a text that was not printed.
//   spoilt_pictures [SEED [FILES]]
#include "labels/print/without_display.h"
#include "labels/round/bench_pictures.h"
#include "tests/core/store/scratch.h"
#include "tests/qml/label_picture.h"

#include <QBuffer>

#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <random>

namespace coneline::labels {
namespace {

struct Spoiler {
  std::mt19937_64 chance;

  std::size_t below(std::size_t limit) {
    return std::uniform_int_distribution<std::size_t>(0, limit - 1)(chance);
  }

  /// Bytes changed, parts cut out, doubled or moved, the end cut off, sizes in the head blown up.
  std::string spoil(std::string file) {
    const auto times = 1 + below(6);
    for (std::size_t i = 0; i < times && file.size() > 16; ++i) {
      const auto at = below(below(2) == 0 ? std::min<std::size_t>(file.size(), 200) : file.size());
      const auto length = std::min(1 + below(64), file.size() - at);
      switch (below(6)) {
      case 0:
        file[at] = static_cast<char>(below(256));
        break;
      case 1:
        file.erase(at, length);
        break;
      case 2:
        file.insert(at, file.substr(at, length));
        break;
      case 3:
        std::fill_n(file.begin() + static_cast<std::ptrdiff_t>(at), length, '\xFF');
        break;
      case 4:
        std::fill_n(file.begin() + static_cast<std::ptrdiff_t>(at), length, '\0');
        break;
      default:
        if (below(8) == 0)
          file.resize(at);
      }
    }
    return file;
  }
};

std::vector<std::string> sound_files(const std::vector<Code>& codes) {
  std::vector<std::string> files;
  const auto page = tests::label_picture(codes).copy(0, 0, 1130, 600);
  for (const auto* format : {"PNG", "JPG", "BMP", "PPM", "WEBP", "GIF", "TIFF"}) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (page.save(&buffer, format, 85))
      files.push_back(bytes.toStdString());
  }
  return files;
}

int run(std::uint64_t seed, std::size_t many) {
  const std::vector codes{Code::of(Kind::tray, 37, 1).value(), Code::of(Kind::tray, 37, 2).value()};
  std::vector<std::string> sound;
  {
    const WithoutDisplay fonts;
    sound = sound_files(codes);
  }
  Spoiler spoiler{std::mt19937_64(seed)};
  std::size_t read = 0;
  std::size_t refused = 0;
  std::size_t without = 0;
  constexpr std::size_t at_once = 200;
  for (std::size_t done = 0; done < many; done += at_once) {
    const tests::Scratch scratch;
    std::vector<std::string> files;
    for (std::size_t i = 0; i < std::min(at_once, many - done); ++i) {
      files.push_back(scratch.at(std::to_string(i)).string());
      std::ofstream(files.back(), std::ios::binary)
          << spoiler.spoil(sound[spoiler.below(sound.size())]);
    }
    for (const auto& picture : read_bench_pictures(files, [](std::size_t) {})) {
      for (const auto& text : picture.texts)
        if (text != codes[0].text() && text != codes[1].text()) {
          std::printf("seed %llu: '%s' was read, which nobody printed\n",
                      static_cast<unsigned long long>(seed), text.c_str());
          return 1;
        }
      ++(picture.error ? refused : picture.texts.empty() ? without : read);
    }
  }
  std::printf(
      "%zu spoilt pictures of %zu forms: %zu read, %zu without a label, %zu refused or only "
      "in part; the program stands\n",
      many, sound.size(), read, without, refused);
  return 0;
}

} // namespace
} // namespace coneline::labels

int main(int count, char** words) {
  return coneline::labels::run(count > 1 ? std::strtoull(words[1], nullptr, 10) : 1,
                               count > 2 ? std::strtoull(words[2], nullptr, 10) : 300);
}
