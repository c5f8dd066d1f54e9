// SPDX-License-Identifier: GPL-3.0-or-later
// invent FOLDER: makes the demonstration's season folder anew.
#include "demo/invent.h"

#include <cstdlib>
#include <iostream>

int main(int count, char** arguments) {
  namespace fs = std::filesystem;
  if (count != 2) {
    std::cerr << "invent FOLDER\n";
    return 2;
  }
  auto name = (fs::temp_directory_path() / "coneline-demo-XXXXXX").string();
  if (::mkdtemp(name.data()) == nullptr) {
    std::cerr << "No folder for passing files can be made.\n";
    return 1;
  }
  int status = 0;
  try {
    const auto made = coneline::demo::invent(fs::path(name) / "book", arguments[1],
                                             coneline::exchange::Existing::replace);
    if (made)
      for (const auto& [file, rows] : *made)
        std::cout << file << ' ' << rows << '\n';
    else
      std::cerr << made.error().text() << '\n';
    status = made ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << '\n';
    status = 3;
  }
  std::error_code ignored;
  fs::remove_all(name, ignored);
  return status;
}
