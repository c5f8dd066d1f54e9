// SPDX-License-Identifier: GPL-3.0-or-later
// The log of a scanner with a memory: every line is a scan, a fault with its place, or nothing.
#include "core/exchange/scanner_log.h"
#include "tests/fuzz/must.h"

using coneline::fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto text = coneline::fuzz::text_of(data, size);
  const auto log = coneline::exchange::read_scanner_log(text, "log.txt");
  must(log.scans.size() + log.bad.size() + log.repeated <= size + 1, "no more scans than bytes");
  std::size_t line = 0;
  for (const auto& scan : log.scans) {
    must(scan.line >= line && scan.line >= 1, "scans stand in the order of the file");
    line = scan.line;
    must(!scan.second || (*scan.second >= 0 && *scan.second < 86'400), "a second is of the day");
  }
  for (const auto& bad : log.bad)
    must(!bad.what.empty() && bad.where.has_value(), "a bad line has a reason and a place");
  return 0;
}
