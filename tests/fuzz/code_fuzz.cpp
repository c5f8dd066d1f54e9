// SPDX-License-Identifier: GPL-3.0-or-later
// Codes as they are typed or scanned: what is read has one text, and every correction is a code.
#include "core/base/code.h"
#include "core/work/scan_text.h"
#include "tests/fuzz/must.h"

using coneline::Code;
using coneline::fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto typed = coneline::fuzz::text_of(data, size);
  if (const auto code = Code::parse(typed)) {
    const auto again = Code::parse(code->text());
    must(again && *again == *code, "a code's text is read as that code");
    must(code->text().size() <= 10, "a code has ten characters at most");
    must(code->series() >= 10 && code->series() <= 99, "a series has two digits");
    must(code->number_in_series() >= 1, "numbers count from 1");
  }
  for (const auto& meant : coneline::corrections(typed))
    must(Code::parse(meant.text()).has_value(), "a correction is a code");
  const auto half = size / 2;
  static_cast<void>(coneline::work::scan_text(typed));
  static_cast<void>(coneline::work::scan_text(typed.substr(half), typed.substr(0, half)));
  return 0;
}
