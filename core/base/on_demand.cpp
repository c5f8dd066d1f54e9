// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/on_demand.h"

#include "core/base/phrase.h"

#include <dlfcn.h>
#include <stdexcept>

namespace coneline {

void* OnDemand::find(const char* function) const {
  // Opened again it is the same one; it stays until the program ends.
  void* library = ::dlopen(name_.c_str(), RTLD_NOW | RTLD_LOCAL);
  void* found = library == nullptr ? nullptr : ::dlsym(library, function);
  if (found == nullptr)
    throw std::runtime_error(
        phrase("{} is missing or of another version; install it as the package says", name_));
  return found;
}

} // namespace coneline
