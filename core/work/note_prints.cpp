// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/note_prints.h"

#include <map>

namespace coneline::work {

Result<void> note_prints(store::Writing& writing, std::span<const Code> codes, Date printed,
                         const std::string& stock) {
  std::map<Code, int> copies;
  for (const auto& code : codes)
    ++copies[code];
  for (const auto& [code, times] : copies)
    if (auto put = writing.put(book::LabelPrint{{}, code, printed, stock, times}); !put)
      return refuse(put.error());
  return {};
}

} // namespace coneline::work
