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
    std::string name = (folder() / "coneline-XXXXXX").string();
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
  /// In memory where there is such a folder, since these files need not outlive the machine.
  static std::filesystem::path folder() {
    const std::filesystem::path memory = "/dev/shm";
    return std::filesystem::is_directory(memory) ? memory : std::filesystem::temp_directory_path();
  }
  std::filesystem::path folder_;
};

} // namespace coneline::tests
