// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A shared library that is loaded when it is first called, since loading it takes longer than the
// window needs to open and most starts of the program never call it.

#include <string>

namespace coneline {

class OnDemand {
 public:
  /// By the name the system's loader finds it under, such as "libz.so.1".
  explicit OnDemand(std::string name) : name_(std::move(name)) {}

  /// Loads the library with the first call. Throws std::runtime_error where library or function is
  /// missing. May be called from several threads.
  [[nodiscard]] void* find(const char* function) const;

 private:
  std::string name_;
};

} // namespace coneline
