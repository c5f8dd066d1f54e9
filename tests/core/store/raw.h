// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The file behind a book, past the program: to do to it what another program might.

#include <filesystem>
#include <sqlite3.h>
#include <string>

namespace coneline::tests {

/// Runs SQL on the file and returns what the engine said, or nothing when it was done.
inline std::string run_raw(const std::filesystem::path& path, const std::string& sql) {
  sqlite3* file = nullptr;
  sqlite3_open(path.c_str(), &file);
  char* message = nullptr;
  sqlite3_exec(file, sql.c_str(), nullptr, nullptr, &message);
  std::string said = message != nullptr ? message : "";
  sqlite3_free(message);
  sqlite3_close(file);
  return said;
}

} // namespace coneline::tests
