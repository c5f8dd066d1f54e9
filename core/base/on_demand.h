// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Functions of a shared library that is loaded when one of them is first called, since loading it
// takes longer than the window needs to open and most starts of the program never call it.

namespace coneline {

/// A function of the library that the system's loader finds under the name, such as "libz.so.1",
/// loaded with the first call. Throws std::runtime_error where library or function is missing. May
/// be called from several threads.
void* loaded(const char* library, const char* function);

/// The same with its type, looked up once.
template <auto* Function>
decltype(Function) on_demand(const char* library, const char* name) {
  static const auto found = reinterpret_cast<decltype(Function)>(loaded(library, name));
  return found;
}

} // namespace coneline

/// In a source that the build names by coneline_on_demand: the function of its library.
#define CONELINE_LOADED(function) (coneline::on_demand<&::function>(CONELINE_LIBRARY, #function))
