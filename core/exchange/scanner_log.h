// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The file that a scanner with a memory gives: one scan a line, code and moment in whatever order
// and form its maker chose. Line forms that are read, with comma, semicolon, tab or blanks between:
//
//   T1742Q
//   2026-11-20 14:05:00,T1742Q       T1742Q;20.11.2026;14:05       2026-11-20T14:05:00Z T1742Q
//   "2026/11/20","14:05:00","QR","T1742Q",1                       ]Q1T1742Q
//
// 03/04/2026 can be two days and is refused; 2026-04-03, 3.4.2026 and 23/04/2026 can not. A time
// with a zone is read as it stands: the scanner's own clock.

#include "core/base/code.h"
#include "core/base/date.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace coneline::exchange {

struct LogScan {
  std::size_t line = 0; ///< of the file, from 1
  Code code;
  std::optional<Date> date;
  std::optional<int> second; ///< of the day, 0 to 86 399
  std::string note;          ///< what is odd about the scanner's text; usually empty
};

struct ScannerLog {
  std::string file;
  std::vector<LogScan> scans; ///< in the order of the file
  std::size_t repeated = 0;   ///< scans left out: the same code again within three seconds
  std::vector<Fault> bad;     ///< one a line that could not be read, with its place
};

/// Reads the lines that can be read and names the others. `file` is what faults call it.
ScannerLog read_scanner_log(std::string_view text, const std::string& file);
/// Fails: no such file, larger than 16 MB, nothing in it.
Result<ScannerLog> read_scanner_log_file(const std::filesystem::path& path);

} // namespace coneline::exchange
