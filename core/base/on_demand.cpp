// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/on_demand.h"

#include "core/base/phrase.h"

#include <dlfcn.h>
#include <stdexcept>

namespace coneline {

void* loaded(const char* library, const char* function) {
  // Opened again it is the same one; it stays until the program ends.
  void* opened = ::dlopen(library, RTLD_NOW | RTLD_LOCAL);
  void* found = opened == nullptr ? nullptr : ::dlsym(opened, function);
  if (found == nullptr)
    throw std::runtime_error(
        phrase("{} is missing or of another version; install it as the package says", library));
  return found;
}

} // namespace coneline
