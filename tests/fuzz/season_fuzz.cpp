// SPDX-License-Identifier: GPL-3.0-or-later
// A season folder whose files are spoilt. The input is the folder in one text: a line "== NAME"
// begins the file of that name. Names lead nowhere but into the folder.
#include "core/exchange/read_folder.h"
#include "tests/fuzz/must.h"

#include <fstream>
#include <unistd.h>

namespace fs = std::filesystem;
using coneline::fuzz::must;

namespace {

/// A folder of this process in memory, where there is one.
const fs::path& folder() {
  static const fs::path made = [] {
    const fs::path memory = "/dev/shm";
    const auto path = (fs::exists(memory) ? memory : fs::temp_directory_path()) /
                      ("season-fuzz-" + std::to_string(::getpid()));
    fs::create_directories(path);
    std::atexit([] { fs::remove_all(folder()); });
    return path;
  }();
  return made;
}

bool plain(std::string_view name) {
  return !name.empty() && name.size() < 100 && name.front() != '.' &&
         name.find_first_of(std::string_view("/\0", 2)) == name.npos;
}

void unpack(std::string_view text) {
  for (const auto& entry : fs::directory_iterator(folder()))
    fs::remove(entry.path());
  std::ofstream file;
  while (!text.empty()) {
    const auto end = std::min(text.find('\n'), text.size() - 1) + 1;
    const auto line = text.substr(0, end);
    text.remove_prefix(end);
    if (!line.starts_with("== ")) {
      file << line;
      continue;
    }
    file.close();
    const auto name = line.substr(3, line.find_last_not_of("\r\n") - 2);
    if (plain(name))
      file.open(folder() / name, std::ios::binary);
  }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  unpack(coneline::fuzz::text_of(data, size));
  const auto read = coneline::exchange::read_folder(folder());
  must(read.has_value(), "a folder that is there is read");
  for (const auto& fault : read->faults.listed())
    must(!fault.what.empty(), "a fault says what");
  return 0;
}
