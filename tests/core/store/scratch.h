// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A folder of its own for each test, gone afterwards.

#include <cstdlib>
#include <filesystem>
#include <string>

namespace coneline::tests {

class Scratch {
 public:
  Scratch() {
    std::string name = (std::filesystem::temp_directory_path() / "coneline-XXXXXX").string();
    folder_ = ::mkdtemp(name.data());
  }
  ~Scratch() {
    std::error_code ignored;
    std::filesystem::remove_all(folder_, ignored);
  }
  Scratch(const Scratch&) = delete;
  Scratch& operator=(const Scratch&) = delete;

  [[nodiscard]] std::filesystem::path at(const std::string& name) const { return folder_ / name; }

 private:
  std::filesystem::path folder_;
};

} // namespace coneline::tests
